package wetside.drawing;

import java.util.List;
import java.util.Locale;

/**
 * How often things are, as far as that is known, all on one axis from nothing: band, core and mark as learnt, a dashed mark
 * as it was thought before. Colours come from classes of the page's style.
 */
public final class RateRails {
    private static final double TEXT = 13.5;
    private static final double FOOT = 26;
    /** The face of the page is vendored, so names need no room for wider ones. */
    private static final double NARROWER = 0.84;

    private final List<Row> rows;
    private final Axis axis;
    private final String unit;

    /**
     * One of them.
     *
     * @param low    2.5 % of the belief lie below
     * @param core   25 %
     * @param mean   of the belief
     * @param coreTo 75 %
     * @param high   97.5 %
     * @param before as it was thought before; NaN for nothing
     * @param note   stands at the end of the rail
     */
    public record Row(
            String name,
            double low,
            double core,
            double mean,
            double coreTo,
            double high,
            double before,
            String note) {}

    /** @param unit of the axis, in words */
    public RateRails(List<Row> rows, String unit) {
        this.rows = List.copyOf(rows);
        this.unit = unit;
        double most = rows.stream()
                .mapToDouble(r -> Math.max(r.high, Double.isNaN(r.before) ? 0 : r.before))
                .max()
                .orElse(1);
        axis = Axis.over(0, most, 5);
    }

    /** Names left, notes right. */
    public String wide() {
        return new Ink(760, 262, 102, 31, false).draw();
    }

    /** Names above their rails. */
    public String narrow() {
        return new Ink(340, 8, 12, 42, true).draw();
    }

    /** In words, for whoever cannot see it. */
    private String words() {
        StringBuilder words = new StringBuilder();
        for (Row r : rows) {
            String before = Double.isNaN(r.before) ? "" : ", before " + number(r.before);
            words.append(String.format(
                    Locale.ROOT,
                    "%s%s: %s, %s to %s%s",
                    words.length() == 0 ? "" : "; ",
                    r.name,
                    number(r.mean),
                    number(r.low),
                    number(r.high),
                    before));
        }
        return words + "; " + unit;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
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
            this.left = left;
            this.right = right;
            this.pitch = pitch;
            this.above = above;
        }

        private double x(double value) {
            return left + Math.max(0, Math.min(1, axis.share(value))) * (width - left - right);
        }

        String draw() {
            double base = rows.size() * pitch + 4;
            add(
                    "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"often %s\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                            + " aria-label=\"%s\">",
                    above ? "narrow" : "wide",
                    width,
                    base + FOOT,
                    Svg.escape(words()).replace("\"", "&quot;"));
            for (double tick : axis.ticks()) {
                add("<path d=\"M%.1f 0V%.1f\" class=\"grid\"/>", x(tick), base);
            }
            for (int i = 0; i < rows.size(); i++) {
                row(rows.get(i), i * pitch);
            }
            foot(base);
            return out.append("</svg>").toString();
        }

        private void row(Row r, double top) {
            double y = above ? top + 30 : top + pitch / 2;
            List<String> name = Svg.wrapped(r.name, TEXT * NARROWER, above ? width - 84 : left - 10);
            double first = above ? top + 15 : y + 4.5 - 7 * (Math.min(2, name.size()) - 1);
            int lines = Math.min(above ? 1 : 2, name.size());
            for (int i = 0; i < lines; i++) {
                boolean cut = i == lines - 1 && lines < name.size();
                text(0, first + 14 * i, "start", "name", name.get(i) + (cut ? " …" : ""));
            }
            box(r.low, r.high, y, "band");
            box(r.core, r.coreTo, y, "core");
            add("<path d=\"M%.1f %.1fV%.1f\" class=\"mark\"/>", x(r.mean), y - 9, y + 9);
            if (!Double.isNaN(r.before)) {
                add("<path d=\"M%.1f %.1fV%.1f\" class=\"before\"/>", x(r.before), y - 9, y + 9);
            }
            text(above ? width : width - right + 10, above ? first : y + 4.5, above ? "end" : "start", "weak", r.note);
        }

        private void box(double from, double to, double y, String look) {
            add(
                    "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"12\" class=\"%s\"/>",
                    x(from), y - 6, Math.max(1.5, x(to) - x(from)), look);
        }

        private void foot(double base) {
            add("<path d=\"M%.1f %.1fH%.1f\" class=\"axis\"/>", left, base, width - right);
            for (double tick : axis.ticks()) {
                add("<path d=\"M%.1f %.1fv4\" class=\"axis\"/>", x(tick), base);
                text(x(tick), base + 18, "middle", "weak", axis.label(tick));
            }
            text(width - right + 16, base + 18, "start", "weak", above ? "" : unit);
        }

        private void text(double x, double y, String anchor, String look, String words) {
            if (!words.isEmpty()) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"%s\" class=\"%s\">%s</text>",
                        x, y, TEXT, anchor, look, Svg.escape(words));
            }
        }

        private void add(String format, Object... values) {
            out.append(String.format(Locale.ROOT, format, values)).append('\n');
        }
    }
}
