package wetside.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Something of a water over temperature with its range as a band, and a machine's temperatures marked on it. */
public final class HeatCurve {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 330;
    private static final double LEFT = 48;
    private static final double RIGHT = WIDTH - 20;
    private static final double TOP = 44;
    private static final double BOTTOM = HEIGHT - 44;
    private static final String BAND = "#D8E7F5";
    private static final String LINE = "#1B5E9E";
    private static final String TREATED = "#24663B";
    /** Water of a membrane has an index far below anything of interest: it may run along the bottom. */
    private static final double LEAST = -4;

    private HeatCurve() {}

    /** @param at temperatures, rising; the others in the unit of the curve */
    public record Curve(double[] at, double[] low, double[] middle, double[] high) {}

    /** A temperature of the machine. */
    public record Mark(double at, String name) {}

    /**
     * @param heading what the curve shows, with its unit
     * @param along   what runs along, with its unit
     * @param treated the same after something was done, dashed and without its band
     */
    public static String draw(String heading, String along, Curve curve, Optional<Curve> treated, List<Mark> marks) {
        double least = treated.map(c -> Arrays.stream(c.middle).min().orElse(0)).orElse(0.0);
        double most = treated.map(c -> Arrays.stream(c.middle).max().orElse(0)).orElse(0.0);
        least = Math.max(LEAST, Math.min(0, least));
        most = Math.max(0, most);
        for (int i = 0; i < curve.at.length; i++) {
            least = Math.min(least, Math.max(LEAST, curve.low[i]));
            most = Math.max(most, curve.high[i]);
        }
        Axis across = Axis.over(curve.at[0], curve.at[curve.at.length - 1], 8);
        Axis up = Axis.over(least, most, 5);
        Svg svg = new Svg(WIDTH, HEIGHT, heading, "A curve over temperature with a band for what is not known");
        svg.rect(0, 0, WIDTH, HEIGHT, Look.SHEET);
        svg.text(0, 18, "start", Look.LABEL, 500, Look.INK3, heading);
        for (double v : up.ticks()) {
            double y = y(up, v);
            svg.line(LEFT, y, RIGHT, y, Math.abs(v) < 1e-9 ? Look.INK2 : Look.LINE, Math.abs(v) < 1e-9 ? 1.5 : 1, "");
            svg.text(LEFT - 8, y + 4.5, "end", Look.LABEL, 500, Look.INK2, up.label(v));
        }
        for (double v : across.ticks()) {
            svg.text(x(across, v), BOTTOM + 18, "middle", Look.LABEL, 500, Look.INK2, across.label(v));
        }
        svg.text(RIGHT, BOTTOM + 36, "end", Look.LABEL, 500, Look.INK2, along);
        svg.raw("<path d=\"%s\" fill=\"%s\"/>", band(curve, across, up), BAND);
        svg.path(path(curve.at, curve.middle, across, up), LINE, 2.5, "");
        treated.ifPresent(c -> svg.path(path(c.at, c.middle, across, up), TREATED, 2.5, "8 4"));
        marks(svg, curve, marks, across, up);
        return svg.end();
    }

    private static void marks(Svg svg, Curve curve, List<Mark> marks, Axis across, Axis up) {
        List<double[]> taken = new ArrayList<>();
        for (Mark m : marks) {
            double value = valueAt(curve, m.at);
            double x = x(across, m.at);
            double y = y(up, value);
            svg.line(x, y, x, BOTTOM, Look.INK, 1.2, "2 3");
            svg.raw(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\" fill=\"%s\" stroke=\"%s\" stroke-width=\"2\"/>",
                    x, y, Look.SHEET, Look.INK);
            String words = String.format(Locale.ROOT, up.step() <= 1 ? "%s %.1f" : "%s %.0f", m.name, value)
                    .replace("-", "−");
            double width = Look.width(words, Look.LABEL);
            double right = Math.max(LEFT + width, x - 8);
            double row = Math.max(TOP - 6, y - 10);
            for (boolean moved = true; moved; ) {
                moved = false;
                for (double[] t : taken) {
                    if (Math.abs(t[1] - row) < 17 && right > t[0] - t[2] - 6 && right - width < t[0] + 6) {
                        row = t[1] - 17.5;
                        moved = true;
                    }
                }
            }
            taken.add(new double[] {right, row, width});
            svg.halo(right, row, "end", Look.LABEL, Look.INK, words);
        }
    }

    private static double valueAt(Curve c, double at) {
        int n = c.at.length;
        for (int i = 1; i < n; i++) {
            if (at <= c.at[i]) {
                double s = (at - c.at[i - 1]) / (c.at[i] - c.at[i - 1]);
                return c.middle[i - 1] + s * (c.middle[i] - c.middle[i - 1]);
            }
        }
        return c.middle[n - 1];
    }

    private static double x(Axis a, double v) {
        return LEFT + (RIGHT - LEFT) * a.share(v);
    }

    private static double y(Axis a, double v) {
        return BOTTOM - (BOTTOM - TOP) * a.share(v);
    }

    private static String path(double[] t, double[] v, Axis across, Axis up) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < t.length; i++) {
            double y = Math.min(BOTTOM, y(up, v[i]));
            d.append(String.format(Locale.ROOT, i == 0 ? "M%.1f %.1f" : "L%.1f %.1f", x(across, t[i]), y));
        }
        return d.toString();
    }

    private static String band(Curve c, Axis across, Axis up) {
        StringBuilder d = new StringBuilder(path(c.at, c.high, across, up));
        for (int i = c.at.length - 1; i >= 0; i--) {
            d.append(String.format(Locale.ROOT, "L%.1f %.1f", x(across, c.at[i]), y(up, c.low[i])));
        }
        return d.append('Z').toString();
    }
}
