package wetside.diagnosis.inference;

/**
 * Sums and shares of weights kept as logarithms, so that two hundred readings multiply without running out of exponent.
 */
public final class Shares {
    private Shares() {}

    /** Logarithm of the sum of {@code exp(logWeights[i])}; minus infinity for no weight at all. */
    public static double logSum(double... logWeights) {
        double most = Double.NEGATIVE_INFINITY;
        for (double weight : logWeights) {
            most = Math.max(most, weight);
        }
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double weight : logWeights) {
            sum += Math.exp(weight - most);
        }
        return most + Math.log(sum);
    }

    /** Logarithm of {@code exp(a) + exp(b)}. */
    public static double logAdd(double a, double b) {
        double most = Math.max(a, b);
        return most == Double.NEGATIVE_INFINITY ? most : most + Math.log1p(Math.exp(-Math.abs(a - b)));
    }

    /** The weights as shares of one; throws when every weight is zero, because then nothing known can have happened. */
    public static double[] of(double... logWeights) {
        double sum = logSum(logWeights);
        if (!(Math.abs(sum) < Double.POSITIVE_INFINITY)) {
            throw new IllegalStateException("no explanation is left: all weights are zero");
        }
        double[] shares = new double[logWeights.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.exp(logWeights[i] - sum);
        }
        return shares;
    }

    /** Logarithm of the odds of a share. */
    public static double logOdds(double share) {
        return Math.log(share) - Math.log1p(-share);
    }

    /** Entropy of shares that add up to one [bit]. */
    public static double bits(double... shares) {
        double sum = 0;
        for (double share : shares) {
            sum -= share > 0 ? share * Math.log(share) : 0;
        }
        return Math.max(0, sum / Math.log(2));
    }
}
