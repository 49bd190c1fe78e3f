package wetside.water;

import java.util.function.DoubleUnaryOperator;

/** Where a function that only rises passes zero: regula falsi with the retained end weighed down (Illinois). */
final class Roots {
    private static final int STEPS = 200;

    private Roots() {}

    /**
     * Looks near a guess first and widens.
     *
     * @param near  guess
     * @param least nothing is asked below
     * @param most  nothing is asked above
     * @param exact how exact the answer has to be, in its own unit
     * @return the root, or the end of the range nearest to it where there is none inside
     */
    static double increasing(DoubleUnaryOperator f, double near, double least, double most, double exact) {
        double step = (most - least) / 200;
        double x = Math.min(most, Math.max(least, near));
        double fx = f.applyAsDouble(x);
        double a = x;
        double fa = fx;
        while (fx != 0) {
            a = x;
            fa = fx;
            x = fx < 0 ? Math.min(most, x + step) : Math.max(least, x - step);
            fx = f.applyAsDouble(x);
            if (fx * fa <= 0) {
                return between(f, a, fa, x, fx, exact);
            }
            if (x == least || x == most) {
                return x;
            }
            step *= 3;
        }
        return x;
    }

    /**
     * The same from two good guesses by secants, as long as they come nearer; else as above.
     */
    static double close(DoubleUnaryOperator f, double near, double by, double least, double most, double exact) {
        double a = Math.min(most, Math.max(least, near));
        double b = Math.min(most, Math.max(least, near + by));
        if (a == b) {
            return increasing(f, near, least, most, exact);
        }
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        for (int i = 0; i < 8; i++) {
            double x = b - fb * (b - a) / (fb - fa);
            if (!(x > least && x < most)) {
                break;
            }
            a = b;
            fa = fb;
            b = x;
            fb = f.applyAsDouble(x);
            if (Math.abs(b - a) <= exact || fb == 0) {
                return b;
            }
            if (Math.abs(fb) > Math.abs(fa)) {
                break;
            }
        }
        return increasing(f, near, least, most, exact);
    }

    private static double between(DoubleUnaryOperator f, double a0, double fa0, double b0, double fb0, double exact) {
        double a = a0;
        double b = b0;
        double fa = fa0;
        double fb = fb0;
        for (int i = 0; i < STEPS && Math.abs(b - a) > exact && fb != 0; i++) {
            double x = b - fb * (b - a) / (fb - fa);
            double fx = f.applyAsDouble(x);
            boolean crossed = fx * fb < 0;
            double moved = Math.abs(x - b);
            if (crossed) {
                a = b;
                fa = fb;
            } else {
                fa /= 2;
            }
            b = x;
            fb = fx;
            if (moved < exact / 100) {
                return b;
            }
        }
        return b;
    }
}
