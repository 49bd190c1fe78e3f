package wetside.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Readings of a run, one strip each, over one time axis: name and last value on the left, the line on a grid that counts in
 * round numbers. A strip holds up to three lines of one unit: solid, dashed, dotted.
 */
public final class StripChart {
    private static final double WIDTH = 960;
    private static final double LEFT = 220;
    private static final double RIGHT = 24;
    private static final double STRIP = 112;
    private static final double GAP = 26;
    private static final double TOP = 64;
    private static final String INK = "#16201C";
    private static final String INK2 = "#46554E";
    private static final String INK3 = "#5A6962";
    private static final String GRID = "#C9D2CD";
    private static final String SHEET = "#FBFCFB";
    private static final String[] DASH = {"", "8 4", "2 4"};
    private static final String[] STYLE = {"solid", "dashed", "dotted"};

    private StripChart() {}

    /** What a strip is about; decides its colour. */
    public enum Medium {
        WATER("#1B5E9E"),
        STEAM("#86366F"),
        DRAIN("#625E38"),
        CURRENT("#94470F"),
        SENSING("#46545E");

        private final String colour;

        Medium(String colour) {
            this.colour = colour;
        }
    }

    /**
     * @param name   of the reading
     * @param values at the times of the chart, in the unit of the strip; NaN leaves a gap
     * @param last   the last value as words
     */
    public record Line(String name, double[] values, String last) {}

    /** Lines of one unit. */
    public record Strip(String unit, Medium medium, List<Line> lines) {}

    /**
     * @param title    first line
     * @param subtitle second line, e.g. the balance of the run
     * @param minutes  times [min], rising
     */
    public static String draw(String title, String subtitle, double[] minutes, List<Strip> strips) {
        double height = TOP + strips.size() * (STRIP + GAP) + 34;
        Svg svg = new Svg(WIDTH, height, title);
        svg.rect(0, 0, WIDTH, height, SHEET);
        svg.text(24, 30, "start", 19, 600, INK, title);
        svg.text(24, 50, "start", 13, 500, INK3, subtitle);
        double span = minutes.length == 0 ? 1 : Math.max(1e-6, minutes[minutes.length - 1]);
        for (int i = 0; i < strips.size(); i++) {
            strip(svg, strips.get(i), minutes, span, TOP + i * (STRIP + GAP));
        }
        timeAxis(svg, span, TOP + strips.size() * (STRIP + GAP) - GAP, strips.size());
        return svg.end();
    }

    private static void strip(Svg svg, Strip strip, double[] minutes, double span, double top) {
        double low = 0;
        double high = 0;
        for (Line l : strip.lines()) {
            for (double v : l.values()) {
                if (!Double.isNaN(v)) {
                    low = Math.min(low, v);
                    high = Math.max(high, v);
                }
            }
        }
        double step = round((high - low) / 3);
        low = Math.floor(low / step) * step;
        high = Math.max(low + step, Math.ceil(high / step) * step);
        for (double v = low; v <= high + step / 2; v += step) {
            double y = top + STRIP * (high - v) / (high - low);
            svg.line(LEFT, y, WIDTH - RIGHT, y, GRID, 1);
            svg.text(LEFT - 8, y + 4.5, "end", 12.5, 500, INK2, number(v, step));
        }
        double y = top + 12;
        for (int i = 0; i < strip.lines().size(); i++) {
            Line l = strip.lines().get(i);
            svg.path(path(l.values(), minutes, span, low, high, top), strip.medium().colour, DASH[Math.min(i, 2)]);
            svg.text(24, y, "start", 13.5, 600, INK, l.name());
            String how = strip.lines().size() > 1 ? STYLE[Math.min(i, 2)] + ", " : "";
            svg.text(24, y + 16, "start", 13, 500, INK2, how + l.last());
            y += 37;
        }
        svg.text(LEFT + 6, top - 6, "start", 12.5, 500, INK3, strip.unit());
    }

    private static String path(double[] v, double[] minutes, double span, double low, double high, double top) {
        StringBuilder d = new StringBuilder();
        boolean pen = false;
        for (int i = 0; i < v.length; i++) {
            if (Double.isNaN(v[i])) {
                pen = false;
                continue;
            }
            double x = LEFT + (WIDTH - LEFT - RIGHT) * minutes[i] / span;
            double y = top + STRIP * (high - v[i]) / (high - low);
            d.append(String.format(Locale.ROOT, "%s%.1f %.1f", pen ? "L" : "M", x, y));
            pen = true;
        }
        return d.toString();
    }

    private static void timeAxis(Svg svg, double span, double bottom, int strips) {
        double step = round(span / 8);
        for (double t = 0; t <= span + 1e-9; t += step) {
            double x = LEFT + (WIDTH - LEFT - RIGHT) * t / span;
            for (int i = 0; i < strips; i++) {
                double top = TOP + i * (STRIP + GAP);
                svg.line(x, top, x, top + STRIP, GRID, 1);
            }
            svg.text(x, bottom + 20, "middle", 12.5, 500, INK2, number(t, step));
        }
        svg.text(WIDTH - RIGHT, bottom + 38, "end", 12.5, 500, INK3, "minutes");
    }

    /** 1, 2 or 5 times a power of ten, at least {@code least}. */
    private static double round(double least) {
        double p = Math.pow(10, Math.floor(Math.log10(Math.max(1e-9, least))));
        for (double f : new double[] {1, 2, 5}) {
            if (f * p >= least * 0.999) {
                return f * p;
            }
        }
        return 10 * p;
    }

    private static String number(double v, double step) {
        int digits = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        return String.format(Locale.ROOT, "%." + digits + "f", Math.abs(v) < step / 1e6 ? 0.0 : v);
    }
}
