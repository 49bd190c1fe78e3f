package wetside.bench;

import java.util.Locale;
import wetside.units.Display;
import wetside.units.Unit;

/** A round gauge over three quarters of a turn, its needle turned by script. */
final class Dial {
    private static final double SWEEP = 270;
    private static final double FIRST = -135;

    private Dial() {}

    static String of(RunPanel.Gauge gauge, Display units) {
        Unit unit = units.unit(gauge.dimension());
        double most = unit.fromSi(gauge.most());
        double step = step(most);
        StringBuilder svg = new StringBuilder(
                String.format(
                        Locale.ROOT,
                        "<svg class=\"dial\" viewBox=\"0 0 150 150\" width=\"150\" height=\"150\" aria-hidden=\"true\">"
                                + "<circle class=\"rim\" cx=\"75\" cy=\"75\" r=\"70\"/><circle class=\"inner\" cx=\"75\" cy=\"75\" r=\"65\"/>"));
        int n = (int) Math.round(Math.floor(most / step + 1e-9));
        for (int i = 0; i <= n * 5 && i * step / 5 <= most + 1e-9; i++) {
            boolean main = i % 5 == 0;
            double a = angle(i * step / 5 / most);
            svg.append(String.format(
                    Locale.ROOT,
                    "<path class=\"tick\" stroke-width=\"%s\" d=\"M%.1f %.1fL%.1f %.1f\"/>",
                    main ? "2" : "1",
                    x(a, 60),
                    y(a, 60),
                    x(a, main ? 50 : 55),
                    y(a, main ? 50 : 55)));
            if (main) {
                svg.append(String.format(
                        Locale.ROOT,
                        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>",
                        x(a, 39),
                        y(a, 39) + 4.5,
                        label(i * step / 5)));
            }
        }
        svg.append(String.format(
                Locale.ROOT,
                "<text class=\"unit\" x=\"75\" y=\"112\" text-anchor=\"middle\">%s</text><path class=\"needle\""
                        + " data-most=\"%s\" d=\"M75 25L78 78L72 78z\" transform=\"rotate(%.1f 75 75)\"/><circle class=\"hub\""
                        + " cx=\"75\" cy=\"75\" r=\"6\"/></svg>",
                unit.symbol(),
                most,
                FIRST));
        return svg.toString();
    }

    private static double step(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most / 4)));
        for (double f : new double[] {1, 2, 2.5, 5, 10}) {
            if (most / (f * power) <= 8.01) {
                return f * power;
            }
        }
        return 10 * power;
    }

    private static String label(double v) {
        return v == Math.rint(v) ? String.format(Locale.ROOT, "%.0f", v) : String.format(Locale.ROOT, "%.1f", v);
    }

    private static double angle(double share) {
        return Math.toRadians(FIRST + SWEEP * share);
    }

    private static double x(double angle, double r) {
        return 75 + r * Math.sin(angle);
    }

    private static double y(double angle, double r) {
        return 75 - r * Math.cos(angle);
    }
}
