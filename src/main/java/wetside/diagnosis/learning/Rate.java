package wetside.diagnosis.learning;

/**
 * A rate of events, believed to follow a gamma distribution.
 *
 * <pre>rate ~ Gamma(shape, exposure);  y events in x more  ->  Gamma(shape + y, exposure + x)</pre>
 *
 * @param shape events seen, the prior's included
 * @param exposure hours, jobs or whatever the rate is per, the prior's included
 */
public record Rate(double shape, double exposure) {
    public Rate {
        if (!(shape > 0) || !(exposure > 0)) {
            throw new IllegalArgumentException(
                    "a rate needs a positive shape and exposure: " + shape + ", " + exposure);
        }
    }

    /** After events in a further exposure; negative takes back. */
    public Rate with(double events, double further) {
        return new Rate(shape + events, exposure + further);
    }

    public double mean() {
        return shape / exposure;
    }

    public double sd() {
        return Math.sqrt(shape) / exposure;
    }

    /** Probability that the rate is above a value. */
    public double above(double rate) {
        return 1 - lower(shape, exposure * rate);
    }

    /** Probability of at least one event in an exposure to come. */
    public double anyIn(double time) {
        return 1 - Math.pow(exposure / (exposure + time), shape);
    }

    /** The rate below which it lies with this probability, by bisection. */
    public double quantile(double probability) {
        double low = 0;
        double high = mean() + 20 * sd() + 1 / exposure;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (low + high);
            boolean under = 1 - above(middle) < probability;
            low = under ? middle : low;
            high = under ? high : middle;
        }
        return 0.5 * (low + high);
    }

    /** Regularised lower incomplete gamma function: its series, summed until terms no longer count. */
    private static double lower(double a, double x) {
        double term = 1 / a;
        double sum = term;
        for (int n = 1; n < 10_000 && term > 1e-17 * sum; n++) {
            term *= x / (a + n);
            sum += term;
        }
        return Math.min(1, Math.exp(a * Math.log(x) - x - logGamma(a)) * sum);
    }

    /** Logarithm of the gamma function: recurrence up to 15, then Stirling's series. */
    static double logGamma(double x) {
        double shift = 0;
        double z = x;
        while (z < 15) {
            shift += Math.log(z);
            z++;
        }
        double r = 1 / (z * z);
        double series = (1.0 / 12 - r * (1.0 / 360 - r * (1.0 / 1260 - r * (1.0 / 1680 - r / 1188)))) / z;
        return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - shift;
    }
}
