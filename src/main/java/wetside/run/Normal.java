package wetside.run;

/** The normal law's quantile, by Newton steps on its own distribution from a rough start. */
final class Normal {
    private Normal() {}

    /** z with Φ(z) = p, good to 1e-9 for p in 1e-9..1-1e-9. */
    static double quantile(double p) {
        if (p < 0.5) {
            return -quantile(1 - p);
        }
        double t = Math.sqrt(-2 * Math.log(Math.max(1e-12, 1 - p)));
        double z =
                t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
        for (int i = 0; i < 2; i++) {
            double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
            z -= (cdf(z) - p) / Math.max(1e-12, density);
        }
        return z;
    }

    /** Φ(z) by its series, for |z| below about 7. */
    static double cdf(double z) {
        double term = z;
        double sum = z;
        for (int i = 1; i < 120 && Math.abs(term) > 1e-17; i++) {
            term *= z * z / (2 * i + 1);
            sum += term;
        }
        return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }
}
