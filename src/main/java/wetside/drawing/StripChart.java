package wetside.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Readings of a run, one strip each, over one time axis: name and last value on the left, the line on a grid that counts in
 * round numbers, what was done above. A strip holds up to three lines of one unit: solid, dashed, dotted.
 */
public final class StripChart {
    /** Lines one strip can hold. */
    public static final int MOST_LINES = 3;

    private static final double WIDTH = 960;
    private static final double MARGIN = 24;
    private static final double LEFT = 250;
    private static final double RIGHT = WIDTH - MARGIN;
    private static final double STRIP = 112;
    private static final double FLAT = 36;
    private static final double GAP = 28;
    private static final double HEAD = 62;
    private static final double NAMES = 178;
    private static final double ROW = 17;
    private static final String[] DASH = {"", "8 4", "2 4"};
    private static final String[] STYLE = {"solid", "dashed", "dotted"};

    private final double[] minutes;
    private final Axis time;
    private final boolean seconds;

    private StripChart(double[] minutes) {
        this.minutes = minutes;
        double span = minutes.length == 0 ? 1 : Math.max(1e-3, minutes[minutes.length - 1]);
        seconds = span <= 3;
        time = Axis.upTo(seconds ? span * 60 : span, 8);
    }

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
     * @param name    of the reading
     * @param values  at the times of the chart, in the unit of the strip; NaN leaves a gap
     * @param last    the last value as words
     * @param without the same without a fault, drawn thinly behind; empty for none
     */
    public record Line(String name, double[] values, String last, double[] without) {}

    /** Lines of one unit; {@code words} when they are words rather than numbers. */
    public record Strip(String unit, Medium medium, List<String> words, List<Line> lines) {}

    /** Something done at a time [min]. */
    public record Mark(double minute, String words) {}

    /** First line, and what stands small below it. */
    public record Title(String title, String subtitle) {}

    /** @param minutes times [min], rising */
    public static String draw(Title title, double[] minutes, List<Mark> marks, List<Strip> strips) {
        return new StripChart(minutes).drawn(title, marks, strips);
    }

    private String drawn(Title title, List<Mark> marks, List<Strip> strips) {
        MarkLabels labels = MarkLabels.of(marks, m -> x(m.minute()), RIGHT);
        double top = HEAD + labels.rows() * ROW + 14;
        double bottom = top;
        for (Strip s : strips) {
            bottom += height(s) + GAP;
        }
        Svg svg = new Svg(WIDTH, bottom + 8, title.title(), "Readings over time, one strip each");
        svg.rect(0, 0, WIDTH, bottom + 8, Look.SHEET);
        svg.text(MARGIN, 32, "start", Look.TITLE, 600, Look.INK, title.title());
        svg.text(MARGIN, 52, "start", Look.LABEL, 500, Look.INK3, title.subtitle());
        double y = top;
        for (Strip s : strips) {
            grid(svg, y, y + height(s));
            y += height(s) + GAP;
        }
        labels.draw(svg, HEAD, ROW, bottom - GAP);
        y = top;
        for (Strip s : strips) {
            strip(svg, s, y);
            y += height(s) + GAP;
        }
        timeLabels(svg, bottom - GAP + 18);
        return svg.end();
    }

    private double x(double minute) {
        return LEFT + (RIGHT - LEFT) * time.share(seconds ? minute * 60 : minute);
    }

    private void grid(Svg svg, double top, double bottom) {
        for (double t : time.ticks()) {
            double x = LEFT + (RIGHT - LEFT) * time.share(t);
            svg.line(x, top, x, bottom, Look.LINE, 1, "");
        }
    }

    private void timeLabels(Svg svg, double y) {
        double[] ticks = time.ticks();
        for (double t : ticks) {
            boolean last = t == ticks[ticks.length - 1];
            String words = time.label(t) + (last ? seconds ? " s" : " min" : "");
            double x = LEFT + (RIGHT - LEFT) * time.share(t);
            boolean edge = x + Look.width(words, Look.LABEL) / 2 > WIDTH;
            svg.text(edge ? RIGHT : x, y, edge ? "end" : "middle", Look.LABEL, 500, Look.INK2, words);
        }
    }

    private static double height(Strip strip) {
        double names = 0;
        for (Line l : strip.lines()) {
            names += Svg.wrapped(l.name(), Look.NAME, NAMES).size() * ROW + ROW + 6;
        }
        double plot = strip.words().isEmpty()
                ? (isFlat(strip) ? FLAT : STRIP)
                : strip.words().size() * 20.0;
        return Math.max(plot, names);
    }

    /** Nothing happens in it. */
    private static boolean isFlat(Strip strip) {
        double[] ends = extremes(strip);
        return ends[0] == ends[1];
    }

    private void strip(Svg svg, Strip strip, double top) {
        double height = height(strip);
        Axis axis = strip.words().isEmpty() ? range(strip) : Axis.of(strip.words());
        for (double v : axis.ticks()) {
            double y = top + height * (1 - axis.share(v));
            svg.line(LEFT, y, RIGHT, y, Look.LINE, 1, "");
            String unit = v + axis.step() > axis.high() + axis.step() / 2 ? " " + strip.unit() : "";
            svg.text(LEFT - 8, y + 4.5, "end", Look.LABEL, 500, Look.INK2, (axis.label(v) + unit).strip());
        }
        for (Line l : strip.lines()) {
            svg.path(path(l.without(), axis, top, height), Look.CORE, 4, "");
        }
        double y = top + 12;
        for (int i = 0; i < strip.lines().size(); i++) {
            Line l = strip.lines().get(i);
            svg.path(path(l.values(), axis, top, height), strip.medium().colour, 2, DASH[i]);
            y = name(svg, l, strip.lines().size() > 1 ? STYLE[i] + ", " : "", y);
        }
    }

    private static double name(Svg svg, Line line, String style, double from) {
        double y = from;
        for (String part : Svg.wrapped(line.name(), Look.NAME, NAMES)) {
            svg.text(MARGIN, y, "start", Look.NAME, 600, Look.INK, part);
            y += ROW;
        }
        svg.text(MARGIN, y, "start", Look.LABEL, 500, Look.INK2, style + line.last());
        return y + ROW + 6;
    }

    /** From zero where zero is near; temperatures begin where they are. */
    private static Axis range(Strip strip) {
        double[] ends = extremes(strip);
        double low = ends[0];
        double high = ends[1];
        boolean fromZero = low >= 0 && low < 0.6 * high || high == low;
        return Axis.over(fromZero ? Math.min(0, low) : low, high == low && high == 0 ? 1 : high, isFlat(strip) ? 1 : 4);
    }

    private static double[] extremes(Strip strip) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Line l : strip.lines()) {
            for (double[] values : new double[][] {l.values(), l.without()}) {
                for (double v : values) {
                    low = Double.isNaN(v) ? low : Math.min(low, v);
                    high = Double.isNaN(v) ? high : Math.max(high, v);
                }
            }
        }
        return low > high ? new double[] {0, 0} : new double[] {low, high};
    }

    private String path(double[] v, Axis axis, double top, double height) {
        StringBuilder d = new StringBuilder();
        boolean pen = false;
        boolean steps = !axis.words().isEmpty();
        for (int i = 0; i < v.length; i++) {
            if (Double.isNaN(v[i])) {
                pen = false;
                continue;
            }
            double x = x(minutes[i]);
            double y = top + height * (1 - axis.share(v[i]));
            d.append(String.format(Locale.ROOT, pen && steps ? "H%.1fV%.1f" : pen ? "L%.1f %.1f" : "M%.1f %.1f", x, y));
            pen = true;
        }
        return d.toString();
    }
}
