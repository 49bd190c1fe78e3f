package wetside.bench;

import java.util.Locale;

/** What is expected and what was read on one axis that begins where the quantity does. */
final class Band {
    private static final double WIDTH = 150;

    private Band() {}

    /** @param read NaN when nothing was */
    static String of(double low, double high, double read) {
        double room = Math.max(high - low, Math.abs(high) * 0.02);
        double from = low >= 0 && low < 4 * room ? 0 : low - 2.5 * room;
        double to = high + 2.5 * room;
        if (!Double.isNaN(read)) {
            from = Math.min(from, read - room / 4);
            to = Math.max(to, read + room / 4);
        }
        double a = WIDTH * (low - from) / (to - from);
        double b = WIDTH * (high - from) / (to - from);
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"band-chart\" viewBox=\"0 0 150 26\" width=\"150\" height=\"26\" aria-hidden=\"true\""
                        + " data-from=\"%s\" data-to=\"%s\"><rect class=\"core-band\" x=\"%.1f\" y=\"9\" width=\"%.1f\""
                        + " height=\"12\"/><path class=\"axis\" d=\"M0 21.500h150\"/>",
                from,
                to,
                a,
                Math.max(2, b - a)));
        double m = Double.isNaN(read) ? -9 : WIDTH * (read - from) / (to - from);
        svg.append(
                String.format(Locale.ROOT, "<path class=\"markline\" stroke-width=\"3\" d=\"M%.1f 4v18\"/></svg>", m));
        return svg.toString();
    }
}
