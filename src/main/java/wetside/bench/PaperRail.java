package wetside.bench;

import java.util.Locale;

/** A reading's rail as a drawing for paper: band, as it came dotted, as it leaves solid. */
final class PaperRail {
    private PaperRail() {}

    static String svg(RailBox rail) {
        StringBuilder s = new StringBuilder(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"300\" height=\"26\" viewBox=\"0 0 300 26\">");
        s.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"8\" width=\"%.1f\" height=\"14\" fill=\"#C3D0CD\"/>",
                3 * rail.from(),
                3 * (rail.to() - rail.from())));
        line(s, "M0 22H300", 1, "");
        if (rail.hasBefore()) {
            line(s, up(rail.before()), 1.5, "2 2");
        }
        line(s, up(rail.mark()), 3, "");
        return s.append("</svg>").toString();
    }

    private static String up(double percent) {
        return String.format(Locale.ROOT, "M%.1f 3V22", 3 * percent);
    }

    private static void line(StringBuilder s, String path, double width, String dashes) {
        s.append("<path d=\"")
                .append(path)
                .append("\" fill=\"none\" stroke=\"#16201C\" stroke-width=\"")
                .append(width);
        s.append(dashes.isEmpty() ? "\"/>" : "\" stroke-dasharray=\"" + dashes + "\"/>");
    }
}
