package wetside.drawing;

import java.util.Locale;

/** A growing SVG text. */
final class Svg {
    private final StringBuilder text = new StringBuilder();

    Svg(double width, double height, String title) {
        text.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\""
                        + " role=\"img\" font-family=\"'Encode Sans Semi Condensed','Encode Sans',sans-serif\">%n",
                width,
                height,
                width,
                height));
        text.append("<title>").append(escape(title)).append("</title>\n");
    }

    Svg rect(double x, double y, double w, double h, String fill) {
        return raw("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"/>", x, y, w, h, fill);
    }

    Svg line(double x1, double y1, double x2, double y2, String stroke, double width) {
        return raw(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.1f\"/>",
                x1, y1, x2, y2, stroke, width);
    }

    Svg path(String d, String stroke, String dash) {
        String dashes = dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
        text.append("<path d=\"")
                .append(d)
                .append("\" fill=\"none\" stroke=\"")
                .append(stroke)
                .append("\" stroke-width=\"2\" stroke-linejoin=\"round\"")
                .append(dashes)
                .append("/>\n");
        return this;
    }

    Svg text(double x, double y, String anchor, double size, int weight, String fill, String words) {
        raw(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"%.1f\" font-weight=\"%d\" fill=\"%s\""
                        + " style=\"font-variant-numeric:tabular-nums lining-nums\">",
                x, y, anchor, size, weight, fill);
        text.setLength(text.length() - 1);
        text.append(escape(words)).append("</text>\n");
        return this;
    }

    private Svg raw(String format, Object... args) {
        text.append(String.format(Locale.ROOT, format, args)).append('\n');
        return this;
    }

    String end() {
        return text.append("</svg>\n").toString();
    }

    static String escape(String s) {
        return s.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
