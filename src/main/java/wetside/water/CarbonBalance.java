package wetside.water;

/**
 * Carbon and alkalinity of a water as functions of the activity of hydrogen h, while pairs and activity coefficients stand
 * still.
 *
 * <pre>
 * carbon     = a (p2 h² + p1 h + p0),   a activity of carbonate
 * alkalinity = a (p1 h + 2 p0) + o / h + s σ / (h + σ) − q h
 * </pre>
 */
record CarbonBalance(double p2, double p1, double p0, double o, double q, double s, double sigma) {
    private static final double LEAST = 1e-13;
    private static final double MOST = 0.1;
    private static final int STEPS = 60;

    double carbonPerCarbonate(double h) {
        return (p2 * h + p1) * h + p0;
    }

    /** Activity of carbonate that gives an alkalinity; 0 where others give more. */
    double carbonate(double h, double alkalinity) {
        return Math.max(0, (alkalinity - others(h)) / (p1 * h + 2 * p0));
    }

    private double others(double h) {
        return o / h + s * sigma / (h + sigma) - q * h;
    }

    /** Slope of {@link #others} over the logarithm of h. */
    private double othersSlope(double h) {
        return -o / h - s * sigma * h / ((h + sigma) * (h + sigma)) - q * h;
    }

    /** Hydrogen in a closed vessel that holds an amount of carbon. */
    double closed(double near, double carbon, double alkalinity) {
        double h = near;
        for (int i = 0; i < STEPS; i++) {
            double d = carbonPerCarbonate(h);
            double n = p1 * h + 2 * p0;
            double f = carbon * n / d + others(h) - alkalinity;
            double slope = carbon * (p1 * h * d - n * (2 * p2 * h * h + p1 * h)) / (d * d) + othersSlope(h);
            double next = moved(h, f / slope);
            if (Math.abs(next - h) <= 1e-13 * h) {
                return next;
            }
            h = next;
        }
        return h;
    }

    /** Hydrogen where carbonate is {@code held} / h². */
    double open(double near, double held, double alkalinity) {
        double h = near;
        for (int i = 0; i < STEPS; i++) {
            double f = held * (p1 / h + 2 * p0 / (h * h)) + others(h) - alkalinity;
            double slope = -held * (p1 / h + 4 * p0 / (h * h)) + othersSlope(h);
            double next = moved(h, f / slope);
            if (Math.abs(next - h) <= 1e-13 * h) {
                return next;
            }
            h = next;
        }
        return h;
    }

    /** A step in the logarithm, held to a factor where the curve is flat. */
    private static double moved(double h, double step) {
        double held = Math.max(-1.5, Math.min(1.5, step));
        return Math.max(LEAST, Math.min(MOST, h * Math.exp(-held)));
    }
}
