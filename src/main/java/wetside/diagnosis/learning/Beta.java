package wetside.diagnosis.learning;

/** The beta distribution, which each share of a Dirichlet distribution has by itself. */
public final class Beta {
    private static final double TINY = 1e-300;

    private Beta() {}

    /**
     * Probability of a share below a value: the regularised incomplete beta function, by its continued fraction.
     *
     * <pre>I_x(a, b) = x^a (1-x)^b / (a B(a, b)) * 1 / (1 + d1 / (1 + d2 / (1 + ...)))</pre>
     *
     * <p>Validity: a, b above 0, x 0 to 1. Source: Abramowitz and Stegun 26.5.8, recalled from memory. Checked:
     * LearningPublishedTest.
     *
     * @param a counts of it
     * @param b counts of all others
     * @param x share
     */
    public static double below(double a, double b, double x) {
        return below(a, b, x, logBeta(a, b));
    }

    /** The share below which it lies with a probability, by bisection. */
    public static double quantile(double a, double b, double probability) {
        double scale = logBeta(a, b);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 45; i++) {
            double middle = 0.5 * (low + high);
            boolean under = below(a, b, middle, scale) < probability;
            low = under ? middle : low;
            high = under ? high : middle;
        }
        return 0.5 * (low + high);
    }

    private static double logBeta(double a, double b) {
        return Rate.logGamma(a) + Rate.logGamma(b) - Rate.logGamma(a + b);
    }

    private static double below(double a, double b, double x, double scale) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        // The fraction converges quickly on the side of the mean where the tail is.
        return x < (a + 1) / (a + b + 2) ? lower(a, b, x, scale) : 1 - lower(b, a, 1 - x, scale);
    }

    private static double lower(double a, double b, double x, double scale) {
        double front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - scale) / a;
        double c = 1;
        double d = 1 / away(1 - (a + b) * x / (a + 1));
        double fraction = d;
        for (int m = 1; m < 1000; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / away(1 + even * d);
            c = away(1 + even / c);
            fraction *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / away(1 + odd * d);
            c = away(1 + odd / c);
            fraction *= d * c;
            if (Math.abs(d * c - 1) < 1e-15) {
                break;
            }
        }
        return front * fraction;
    }

    private static double away(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }
}
