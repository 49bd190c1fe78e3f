package wetside.diagnosis.learning;

/**
 * Shares of causes among jobs with the same complaint, believed to follow a Dirichlet distribution. A job whose cause was
 * not proved counts in parts, by what was believed of it.
 */
public final class Counts {
    private final double[] weight;

    private Counts(double[] weight) {
        this.weight = weight;
    }

    /** Prior counts, all positive. */
    public static Counts of(double... prior) {
        for (double p : prior) {
            if (!(p > 0)) {
                throw new IllegalArgumentException("prior counts must be positive: " + p);
            }
        }
        return new Counts(prior.clone());
    }

    /** With one more job; shares may be spread over causes; negative takes back. */
    public Counts with(double... job) {
        double[] sum = weight.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += job[i];
        }
        return new Counts(sum);
    }

    private double all() {
        double sum = 0;
        for (double w : weight) {
            sum += w;
        }
        return sum;
    }

    public double mean(int cause) {
        return weight[cause] / all();
    }

    public double sd(int cause) {
        return Math.sqrt(variance(cause));
    }

    private double variance(int cause) {
        return mean(cause) * (1 - mean(cause)) / (all() + 1);
    }

    /** The share below which it lies with this probability. */
    public double quantile(int cause, double probability) {
        return Beta.quantile(weight[cause], all() - weight[cause], probability);
    }

    /** How many jobs a share counts as, those of the prior among them. */
    public double count(int cause) {
        return weight[cause];
    }

    /** Standard deviation of the difference of two shares. */
    public double sdOfDifference(int one, int other) {
        double covariance = -mean(one) * mean(other) / (all() + 1);
        return Math.sqrt(variance(one) + variance(other) - 2 * covariance);
    }

    /** Log probability of having seen these counts in one particular order, before seeing them. */
    public double logChance(int... counts) {
        double log = 0;
        int n = 0;
        for (int i = 0; i < counts.length; i++) {
            log += Rate.logGamma(weight[i] + counts[i]) - Rate.logGamma(weight[i]);
            n += counts[i];
        }
        return log + Rate.logGamma(all()) - Rate.logGamma(all() + n);
    }
}
