package wetside.physics;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * Makes the coefficients of {@link Saturation} from the full formulation: run {@code main} and paste what it prints.
 *
 * <p>Interpolates at Chebyshev nodes over 0 to 220 °C, x = (T − 383.15 K) / 110 K, and turns the result into powers of x
 * (harmless at these degrees). {@link SaturationTest} fails if the class no longer holds what this prints.
 */
final class SaturationFit {
    static final double CENTRE = 383.15;
    static final double HALF = 110;

    private SaturationFit() {}

    enum Property {
        LIQUID_VOLUME(9, t -> 1e3 * liquid(t).volume()),
        LIQUID_ENERGY(7, t -> 1e-6 * liquid(t).internalEnergy()),
        VAPOUR_ENERGY(7, t -> 1e-6 * steam(t).internalEnergy()),
        VAPOUR_FACTOR(7, t -> Water.saturationPressure(t) * steam(t).volume() / (WaterState.GAS_CONSTANT * t)),
        LOG_VISCOSITY(8, t -> Math.log(1e3 * Transport.viscosity(liquid(t).density(), t)));

        final int degree;
        final DoubleUnaryOperator exact;

        Property(int degree, DoubleUnaryOperator exact) {
            this.degree = degree;
            this.exact = exact;
        }

        double[] coefficients() {
            return fit(exact, degree);
        }
    }

    public static void main(String[] args) {
        for (Property property : Property.values()) {
            double[] c = property.coefficients();
            StringBuilder line = new StringBuilder("    private static final double[] " + property + " = {");
            for (int k = 0; k < c.length; k++) {
                line.append(String.format(Locale.ROOT, "%s%.12e", k == 0 ? "" : ", ", c[k]));
            }
            System.out.println(line.append("};"));
            double worst = 0;
            double range = 0;
            for (double t = 273.15; t <= 493.15; t += 0.1) {
                worst = Math.max(worst, Math.abs(horner(c, (t - CENTRE) / HALF) / property.exact.applyAsDouble(t) - 1));
                range = Math.max(range, Math.abs(horner(c, (t - CENTRE) / HALF) - property.exact.applyAsDouble(t)));
            }
            System.out.println("// worst relative " + worst + ", absolute " + range);
        }
    }

    private static WaterState liquid(double t) {
        return Liquid.state(Water.saturationPressure(t), t);
    }

    private static WaterState steam(double t) {
        return Steam.state(Water.saturationPressure(t), t);
    }

    static double horner(double[] c, double x) {
        double sum = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            sum = sum * x + c[k];
        }
        return sum;
    }

    private static double[] fit(DoubleUnaryOperator f, int degree) {
        int n = degree + 1;
        double[] chebyshev = new double[n];
        for (int node = 0; node < n; node++) {
            double angle = Math.PI * (node + 0.5) / n;
            double value = f.applyAsDouble(CENTRE + HALF * Math.cos(angle));
            for (int k = 0; k < n; k++) {
                chebyshev[k] += (k == 0 ? 1.0 : 2.0) / n * value * Math.cos(k * angle);
            }
        }
        return powers(chebyshev);
    }

    private static double[] powers(double[] chebyshev) {
        int n = chebyshev.length;
        double[] result = new double[n];
        double[] before = new double[n];
        double[] now = new double[n];
        before[0] = 1;
        now[1] = 1;
        result[0] = chebyshev[0];
        result[1] = chebyshev[1];
        for (int k = 2; k < n; k++) {
            double[] next = new double[n];
            for (int i = 0; i < n; i++) {
                next[i] = (i == 0 ? 0 : 2 * now[i - 1]) - before[i];
                result[i] += chebyshev[k] * next[i];
            }
            before = now;
            now = next;
        }
        return result;
    }
}
