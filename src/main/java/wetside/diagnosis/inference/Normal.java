package wetside.diagnosis.inference;

/** The normal distribution: density, distribution function, its inverse at a few places, and a wide-tailed cousin. */
final class Normal {
    static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);

    private static final double HALF_ROOT = 1 / Math.sqrt(2);

    private Normal() {}

    /** Logarithm of the density at a deviation from the mean. */
    static double logDensity(double deviation, double variance) {
        return -LOG_ROOT_TWO_PI - 0.5 * (Math.log(variance) + deviation * deviation / variance);
    }

    /**
     * Logarithm of the density of a Student t distribution with three degrees of freedom.
     *
     * <pre>f(z) = 2 / (pi sqrt(3) s (1 + z^2/3)^2),  z = deviation / s</pre>
     */
    static double logWideDensity(double deviation, double scale) {
        double z = deviation / scale;
        return Math.log(2 / (Math.PI * Math.sqrt(3) * scale)) - 2 * Math.log1p(z * z / 3);
    }

    /**
     * Probability that a standard normal variable is below {@code z}, by a Chebyshev fit of the complementary error
     * function; relative error below 1.2e-7 everywhere, far below what a reading can carry.
     */
    static double below(double z) {
        if (z < -38 || z > 9) {
            return z < 0 ? 0 : 1;
        }
        double x = Math.abs(z) * HALF_ROOT;
        double t = 1 / (1 + 0.5 * x);
        double series = -1.26551223
                + t
                        * (1.00002368
                                + t
                                        * (0.37409196
                                                + t
                                                        * (0.09678418
                                                                + t
                                                                        * (-0.18628806
                                                                                + t
                                                                                        * (0.27886807
                                                                                                + t
                                                                                                        * (-1.13520398
                                                                                                                + t
                                                                                                                        * (1.48851587
                                                                                                                                + t
                                                                                                                                        * (-0.82215223
                                                                                                                                                + t
                                                                                                                                                        * 0.17087277))))))));
        double tail = 0.5 * t * Math.exp(-x * x + series);
        return z < 0 ? tail : 1 - tail;
    }

    /** Probability that a reading is at least as far from the mean as {@code z} standard deviations. */
    static double beyond(double z) {
        return 2 * below(-Math.abs(z));
    }

    /**
     * Probability that a chi-square variable exceeds {@code square}: closed sum over the degrees of freedom, even ones
     * from the exponential, odd ones from the normal tail.
     */
    static double chiSquareBeyond(double square, int degrees) {
        double term =
                degrees % 2 == 0 ? Math.exp(-square / 2) : Math.sqrt(2 * square / Math.PI) * Math.exp(-square / 2);
        double sum = degrees % 2 == 0 ? term : beyond(Math.sqrt(square)) + (degrees > 1 ? term : 0);
        for (int d = degrees % 2 == 0 ? 2 : 3; d + 2 <= degrees; d += 2) {
            term *= square / d;
            sum += term;
        }
        return Math.min(1, sum);
    }
}
