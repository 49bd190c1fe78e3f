package wetside.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A growing SVG text. */
public final class Svg {
    private final StringBuilder text = new StringBuilder();

    public Svg(double width, double height, String title, String description) {
        raw(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\" role=\"img\""
                        + " font-family=\"'Encode Sans Semi Condensed','Encode Sans','DejaVu Sans Condensed',sans-serif\""
                        + " style=\"font-variant-numeric:tabular-nums lining-nums\">",
                width, height, width, height);
        text.append("<title>").append(escape(title)).append("</title>\n");
        text.append("<desc>").append(escape(description)).append("</desc>\n");
    }

    public void rect(double x, double y, double w, double h, String fill) {
        raw("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"/>", x, y, w, h, fill);
    }

    public void line(double x1, double y1, double x2, double y2, String stroke, double width, String dash) {
        raw(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.1f\"%s/>",
                x1, y1, x2, y2, stroke, width, dashes(dash));
    }

    public void path(String d, String stroke, double width, String dash) {
        if (!d.isEmpty()) {
            raw(
                    "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.1f\" stroke-linejoin=\"round\"%s/>",
                    d, stroke, width, dashes(dash));
        }
    }

    private static String dashes(String dash) {
        return dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
    }

    public void text(double x, double y, String anchor, double size, int weight, String fill, String words) {
        raw(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"%.1f\" font-weight=\"%d\" fill=\"%s\">%s</text>",
                x, y, anchor, size, weight, fill, escape(words));
    }

    /** Text that stays legible where it crosses a line. */
    public void halo(double x, double y, String anchor, double size, String fill, String words) {
        raw(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"%.1f\" font-weight=\"500\" fill=\"%s\""
                        + " stroke=\"%s\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\">%s</text>",
                x, y, anchor, size, fill, Look.SHEET, escape(words));
    }

    /** A piece of markup of the caller's own, numbers as {@link String#format} writes them. */
    public void raw(String format, Object... args) {
        text.append(String.format(Locale.ROOT, format, args)).append('\n');
    }

    public String end() {
        return text.append("</svg>\n").toString();
    }

    /** Text in lines no wider than {@code width} [px] as far as words allow. */
    public static List<String> wrapped(String words, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            if (line.length() > 0 && Look.width(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    public static String escape(String s) {
        return s.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
