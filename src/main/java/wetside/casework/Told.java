package wetside.casework;

import java.util.Arrays;

/**
 * How one number of a cause follows the severity s and what the same machine reads when nothing is wrong, h, told from some
 * simulated draws. Tried are
 *
 * <pre>
 * y = h + f(s) + c h     y = h f(s)     y = f(s)
 * </pre>
 *
 * with f a constant, a line, a parabola, or straight between neighbouring draws; taken is what tells each draw best from the
 * others. What a fit leaves at a draw, grown by the degrees of freedom it used, is an honest sample of what it cannot tell.
 */
final class Told {
    /** Draws it takes. */
    static final int LEAST = 3;

    private static final int POWERS = 2;
    /** A form with more in it has to be that much better. */
    private static final double BETTER = 0.95;
    /** Leaving a draw out doubles the gap its neighbours have to bridge: what is missed then counts less. */
    private static final double GAP = 0.8;
    /** Told readings may go beyond the simulated ones by a share of their range. */
    private static final double BEYOND = 0.15;
    /** Below this share of their mean the readings of whole machines are one, or too near nothing to take shares of. */
    private static final double ONE = 1e-4;

    private static final double NEAR_NOTHING = 0.2;

    private final int[] draws;
    private final double[] s;
    private final double[] h;
    private final double[] y;
    private final double middle;
    private final double scale;
    private final double least;
    private final double most;
    private Law law;
    private double miss = Double.POSITIVE_INFINITY;

    /** What is told: the change, the share of what the whole machine reads, or the reading itself. */
    private enum Base {
        CHANGE,
        SHARE,
        READING;

        double of(double y, double h) {
            return this == CHANGE ? y - h : this == SHARE ? y / h : y;
        }

        double reading(double told, double h) {
            return this == CHANGE ? told + h : this == SHARE ? told * h : told;
        }
    }

    private interface Law {
        double at(double severity, double whole, int donor);
    }

    /**
     * From simulated draws, {@link #LEAST} at least.
     *
     * @param draws    their numbers
     * @param severity of each
     * @param whole    what each reads when nothing is wrong
     * @param reading  what each reads
     */
    Told(int[] draws, double[] severity, double[] whole, double[] reading) {
        this.draws = draws;
        s = severity;
        h = whole;
        y = reading;
        least = Arrays.stream(y).min().orElseThrow();
        most = Arrays.stream(y).max().orElseThrow();
        middle = Arrays.stream(h).average().orElseThrow();
        scale = deviation(h);
        boolean varies = scale > ONE * Math.abs(middle);
        boolean shares = Arrays.stream(h).map(Math::abs).min().orElseThrow() > NEAR_NOTHING * Math.abs(middle);
        for (Base base : Base.values()) {
            if (base == Base.CHANGE || varies && (base == Base.READING || shares)) {
                for (int power = 0; power <= POWERS; power++) {
                    line(base, power, false);
                    if (base == Base.CHANGE && varies) {
                        line(base, power, true);
                    }
                }
                between(base);
            }
        }
    }

    private static double deviation(double[] v) {
        double mean = Arrays.stream(v).average().orElseThrow();
        return Math.sqrt(
                Arrays.stream(v).map(x -> (x - mean) * (x - mean)).average().orElseThrow());
    }

    /** Typical distance of a simulated reading from what the others make of it. */
    double miss() {
        return miss;
    }

    /** How far the simulated readings spread. */
    double spread() {
        return deviation(y);
    }

    /** The largest reading there is. */
    double size() {
        return Math.max(Math.abs(least), Math.abs(most));
    }

    boolean knows(int draw) {
        return Arrays.binarySearch(draws, draw) >= 0;
    }

    /** A reading at a severity, with what is left over at the donor draw. */
    float at(double severity, double whole, int donor) {
        double told = law.at(severity, whole, Arrays.binarySearch(draws, donor));
        double room = BEYOND * (most - least);
        double low = least >= 0 ? Math.max(0, least - room) : least - room;
        return (float) Math.max(low, Math.min(most + room, told));
    }

    private void consider(Law next, double[] missed) {
        double m = Math.sqrt(Arrays.stream(missed).map(e -> e * e).average().orElseThrow());
        if (law == null || m < BETTER * miss) {
            law = next;
            miss = m;
        }
    }

    private void line(Base base, int power, boolean sharing) {
        int terms = 1 + power + (sharing ? 1 : 0);
        int n = y.length;
        if (terms + 2 > n) {
            return;
        }
        double[][] x = new double[n][];
        double[] target = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = terms(s[i], h[i], power, sharing);
            target[i] = base.of(y[i], h[i]);
        }
        LeastSquares fit = LeastSquares.of(x, target);
        if (fit == null) {
            return;
        }
        double grown = Math.sqrt((double) n / (n - terms));
        double[] left = new double[n];
        double[] missed = new double[n];
        for (int i = 0; i < n; i++) {
            left[i] = grown * (target[i] - fit.at(x[i]));
            missed[i] = base == Base.SHARE ? fit.missed()[i] * h[i] : fit.missed()[i];
        }
        consider(
                (severity, whole, donor) ->
                        base.reading(fit.at(terms(severity, whole, power, sharing)) + left[donor], whole),
                missed);
    }

    private double[] terms(double severity, double whole, int power, boolean sharing) {
        double[] x = new double[1 + power + (sharing ? 1 : 0)];
        x[0] = 1;
        for (int i = 1; i <= power; i++) {
            x[i] = x[i - 1] * (severity - 0.5);
        }
        if (sharing) {
            x[power + 1] = (whole - middle) / scale;
        }
        return x;
    }

    private void between(Base base) {
        double[] missed = new double[y.length];
        for (int i = 0; i < missed.length; i++) {
            missed[i] = GAP * (y[i] - base.reading(between(base, s[i], i), h[i]));
        }
        consider((severity, whole, donor) -> base.reading(between(base, severity, -1), whole), missed);
    }

    /** On the straight line between the neighbours in severity, one draw left out; beyond the last as the last. */
    private double between(Base base, double severity, int without) {
        int below = -1;
        int above = -1;
        for (int i = 0; i < s.length; i++) {
            if (i != without && s[i] <= severity && (below < 0 || s[i] > s[below])) {
                below = i;
            }
            if (i != without && s[i] > severity && (above < 0 || s[i] < s[above])) {
                above = i;
            }
        }
        if (below < 0 || above < 0) {
            int end = below < 0 ? above : below;
            return base.of(y[end], h[end]);
        }
        double low = base.of(y[below], h[below]);
        return low + (severity - s[below]) / (s[above] - s[below]) * (base.of(y[above], h[above]) - low);
    }
}
