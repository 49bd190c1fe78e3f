package wetside.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a reading should be under each of some causes, all on one axis: band, core, middle, and the mark where it was read.
 * Colours come from classes of the page's style, so that it follows the theme without a style attribute.
 */
public final class Rails {
    private static final double NAME = 13.5;
    private static final double TICK = 13.5;
    private static final double FOOT = 32;

    private final List<Row> rows;
    private final Mark mark;
    private final Axis axis;
    private final String unit;
    private final boolean dial;

    /** Whether the reading marked fits. */
    public enum Verdict {
        NONE("", ""),
        FITS("●", "fits"),
        HARDLY("◐", "hardly"),
        NO("○", "no");

        private final String sign;
        private final String word;

        Verdict(String sign, String word) {
            this.sign = sign;
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * One cause.
     *
     * @param from   5 % of draws, the instrument's error in it
     * @param core   25 %
     * @param middle median; NaN when nothing can be read
     * @param coreTo 75 %
     * @param to     95 %
     * @param whole  works as it should: hatched
     * @param strong among the leading causes
     */
    public record Row(
            String name,
            double from,
            double core,
            double middle,
            double coreTo,
            double to,
            boolean whole,
            boolean strong,
            Verdict verdict) {}

    /**
     * Where it was read.
     *
     * @param error of the instrument, to both sides
     */
    public record Mark(double value, double error, String label) {}

    /**
     * @param mark null while nothing has been read
     * @param dial true for what has a dial: the axis begins where the dial does, at nothing
     */
    public Rails(List<Row> rows, Mark mark, String unit, boolean dial) {
        this.dial = dial;
        this.rows = rows;
        this.mark = mark;
        this.unit = unit;
        axis = axis();
    }

    private Axis axis() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Row r : rows) {
            if (!Double.isNaN(r.middle) && Math.abs(r.middle) < BEYOND) {
                least = Math.min(least, r.from);
                most = Math.max(most, Math.abs(r.to) < BEYOND ? r.to : r.middle);
            }
        }
        if (mark != null && Math.abs(mark.value) < BEYOND) {
            least = Math.min(least, mark.value);
            most = Math.max(most, mark.value);
        }
        if (least > most) {
            return Axis.over(0, 1, 5);
        }
        return Axis.over(least > 0 && (dial || least < 0.6 * most) ? 0 : least, most, 6);
    }

    /** From here on nothing is measured: an open circuit. */
    private static final double BEYOND = 1e6;

    /** Names left, verdicts right. */
    public String wide() {
        return new Ink(622, 216, 88, 25, false).draw();
    }

    /** Names above their rails, verdicts as signs only. */
    public String narrow() {
        return new Ink(340, 4, 30, 40, true).draw();
    }

    /** In words, for whoever cannot see it. */
    public String words() {
        List<String> parts = new ArrayList<>();
        for (Row r : rows) {
            String fits = r.verdict == Verdict.NONE ? "" : ", " + r.verdict.word;
            parts.add(r.name
                    + (Double.isNaN(r.middle)
                            ? ": nothing to read"
                            : Math.abs(r.middle) >= BEYOND
                                    ? ": open"
                                    : ": " + number(r.from) + " to " + number(r.to) + " " + unit)
                    + fits);
        }
        return String.join("; ", parts);
    }

    private static String number(double v) {
        return String.format(Locale.ROOT, Math.abs(v) < 20 ? "%.1f" : "%.0f", v).replace('-', '−');
    }

    /** One drawing. */
    private final class Ink {
        private final double width;
        private final double left;
        private final double right;
        private final double pitch;
        private final boolean above;
        private final StringBuilder out = new StringBuilder();

        Ink(double width, double left, double right, double pitch, boolean above) {
            this.width = width;
            this.left = left + (above ? 6 : 0);
            this.right = right;
            this.above = above;
            boolean long2 =
                    !above && rows.stream().anyMatch(r -> lines(r.name()).size() > 1);
            this.pitch = long2 ? pitch + 6 : pitch;
        }

        /** A name in as many lines as it needs, two at most. */
        private List<String> lines(String name) {
            List<String> lines = Svg.wrapped(name, above ? NAME : NAME * 0.83, above ? width - 40 : left - 8);
            return lines.size() < 3 ? lines : List.of(lines.get(0), lines.get(1) + " …");
        }

        private double x(double value) {
            double share = Math.max(0, Math.min(1, axis.share(value)));
            return left + share * (width - left - right);
        }

        String draw() {
            double base = rows.size() * pitch + 4;
            add(
                    "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"rails %s\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                            + " aria-label=\"%s\">",
                    above ? "narrow" : "wide", width, base + FOOT, attribute(words()));
            add(
                    "<defs><pattern id=\"hatch%s\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
                            + " patternTransform=\"rotate(35)\"><path d=\"M0 0V6\" class=\"hatch\"/></pattern></defs>",
                    suffix());
            grid(base);
            if (mark != null && Math.abs(mark.value) < BEYOND) {
                double from = x(mark.value - mark.error);
                add(
                        "<rect x=\"%.1f\" y=\"0\" width=\"%.1f\" height=\"%.1f\" class=\"zone\"/>",
                        from, Math.max(1, x(mark.value + mark.error) - from), base);
            }
            for (int i = 0; i < rows.size(); i++) {
                row(rows.get(i), i * pitch);
            }
            axisLine(base);
            flag(base);
            return out.append("</svg>").toString();
        }

        private String suffix() {
            return above ? "-n" : "-w";
        }

        private void grid(double base) {
            for (double tick : axis.ticks()) {
                add("<path d=\"M%.1f 0V%.1f\" class=\"grid\"/>", x(tick), base);
            }
        }

        private void row(Row r, double top) {
            double y = above ? top + 28 : top + pitch / 2 + 1;
            String weight = r.strong ? "strong" : "weak";
            List<String> lines = lines(r.name);
            double first = above ? top + 15 : y + 4.5 - 7 * (lines.size() - 1);
            for (int i = 0; i < (above ? 1 : lines.size()); i++) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" class=\"%s\">%s</text>",
                        above ? 4.0 : 0.0,
                        first + 14 * i,
                        above ? NAME + 1 : NAME,
                        "name " + weight,
                        Svg.escape(lines.get(i)));
            }
            if (Double.isNaN(r.middle)) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" class=\"weak\">nothing to read</text>",
                        left + 6, y + 4.5, NAME);
            } else if (Math.abs(r.middle) >= BEYOND) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" class=\"strong\" text-anchor=\"end\">open ▸</text>",
                        width - right - 4, y + 4.5, NAME);
            } else {
                bar(r, y);
            }
            verdict(r, y, weight);
        }

        private void bar(Row r, double y) {
            box(r.from, r.to, y, 11, r.whole ? "\" fill=\"url(#hatch" + suffix() + ")" : "band");
            if (!r.whole) {
                box(r.core, r.coreTo, y, 11, "core");
            }
            add("<path d=\"M%.1f %.1fV%.1f\" class=\"middle\"/>", x(r.middle), y - 5.5, y + 5.5);
        }

        private void box(double from, double to, double y, double high, String look) {
            add(
                    "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.0f\" class=\"%s\"/>",
                    x(from), y - high / 2, Math.max(2, x(to) - x(from)), high, look);
        }

        private void verdict(Row r, double y, String weight) {
            if (r.verdict == Verdict.NONE) {
                return;
            }
            double at = width - right + 15;
            add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" class=\"ring %s\"/>", at, y, weight);
            if (r.verdict == Verdict.FITS) {
                add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" class=\"dot\"/>", at, y);
            } else if (r.verdict == Verdict.HARDLY) {
                add("<path d=\"M%.1f %.1fa5 5 0 0 0 0 10z\" class=\"dot\"/>", at, y - 5);
            }
            if (!above) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" class=\"%s\">%s</text>",
                        at + 13, y + 4.5, NAME, weight, r.verdict.word);
            }
        }

        private void axisLine(double base) {
            add("<path d=\"M%.1f %.1fH%.1f\" class=\"axis\"/>", left, base, width - right);
            double flag = mark == null || Math.abs(mark.value) >= BEYOND ? Double.NaN : x(mark.value);
            for (double tick : axis.ticks()) {
                add("<path d=\"M%.1f %.1fv4\" class=\"axis\"/>", x(tick), base);
                if (!(Math.abs(x(tick) - flag) < 28)) {
                    add(
                            "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"middle\" class=\"tick\">%s</text>",
                            x(tick), base + 18, TICK, axis.label(tick));
                }
            }
            add(
                    "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" class=\"tick\">%s</text>",
                    width - right + 22, base + 18, TICK, Svg.escape(above ? "" : unit));
        }

        private void flag(double base) {
            if (mark == null) {
                return;
            }
            double at = Math.abs(mark.value) < BEYOND ? x(mark.value) : width - right;
            add("<path d=\"M%.1f 0V%.1f\" class=\"mark\"/>", at, base + 2);
            add("<rect x=\"%.1f\" y=\"%.1f\" width=\"40\" height=\"22\" rx=\"3\" class=\"flag\"/>", at - 20, base + 2);
            add(
                    "<text x=\"%.1f\" y=\"%.1f\" font-size=\"14\" text-anchor=\"middle\" class=\"onflag\">%s</text>",
                    at, base + 17.5, Svg.escape(mark.label));
        }

        private void add(String format, Object... values) {
            out.append(String.format(Locale.ROOT, format, values)).append('\n');
        }

        private static String attribute(String text) {
            return Svg.escape(text).replace("\"", "&quot;");
        }
    }
}
