package wetside.map;

import java.util.Map;
import java.util.stream.Collectors;
import wetside.drawing.Svg;
import wetside.drawing.Theme;
import wetside.drawing.symbol.Symbol;

/** Draws a symbol at a place, in the ink of a theme. */
final class SymbolPen {
    static final double PART = 1.8;

    private final Svg svg;
    private final String ink;

    SymbolPen(Svg svg, Theme theme) {
        this.svg = svg;
        ink = theme.of(Theme.Token.INK);
    }

    void draw(Symbol symbol, double x, double y, double scale) {
        svg.raw(
                "<g transform=\"translate(%.1f %.1f)%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.2f\""
                        + " stroke-linejoin=\"round\">",
                x,
                y,
                scale == 1 ? "" : String.format(java.util.Locale.ROOT, " scale(%.3f)", scale),
                ink,
                PART / Math.sqrt(scale));
        symbol.shapes().forEach(this::shape);
        svg.raw("</g>");
    }

    private void shape(Symbol.Shape s) {
        String geometry = s.geometry().entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(SymbolPen::attribute)
                .collect(Collectors.joining());
        String style = switch (s.weight()) {
            case THIN -> " stroke-width=\"1.3\"";
            case THICK -> " stroke-width=\"3.2\"";
            case DASHED -> " stroke-dasharray=\"3.5 2.5\" stroke-width=\"1.4\"";
            case SOLID -> " fill=\"" + ink + "\" stroke=\"none\"";
            case USUAL -> "";
        };
        if (s.text().isBlank()) {
            svg.raw("%s", "<" + s.tag() + geometry + style + "/>");
        } else {
            svg.raw("%s", "<" + s.tag() + geometry + style + ">" + Svg.escape(s.text()) + "</" + s.tag() + ">");
        }
    }

    private static String attribute(Map.Entry<String, String> e) {
        return " " + e.getKey() + "=\"" + e.getValue() + "\"";
    }
}
