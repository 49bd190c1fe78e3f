package wetside.map;

import java.util.List;
import java.util.Locale;
import wetside.blueprint.FluidPlan;
import wetside.drawing.PartNumbers;
import wetside.drawing.Svg;
import wetside.drawing.Theme;
import wetside.drawing.symbol.Symbol;
import wetside.drawing.symbol.Symbols;
import wetside.machine.Component;
import wetside.machine.Machine;

/** Draws parts: symbols, boilers with their level and what sits in them, boxes with named terminals; and names. */
final class PartPen {
    private static final double ROUND = 26;
    private static final double FULL = 0.95;

    private final Svg svg;
    private final Theme theme;
    private final Measured measured;
    private final MapPlan plan;
    private final SymbolPen symbols;
    private final LinePen lines;
    private final Lettering lettering;

    PartPen(Svg svg, Theme theme, MapPlan plan, Measured measured, LinePen lines, Lettering lettering) {
        this.lettering = lettering;
        this.lines = lines;
        this.svg = svg;
        this.theme = theme;
        this.plan = plan;
        this.measured = measured;
        symbols = new SymbolPen(svg, theme);
    }

    void draw(Sheet.Placed p, int waysAtDot) {
        Glyph g = p.glyph();
        if (g.isDot()) {
            if (waysAtDot < 3) {
                svg.raw("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>", p.x() + 4, p.y() + 4, ink());
            }
        } else if (g.isVessel()) {
            vessel(p);
        } else if (g.symbol == null) {
            box(p);
        } else {
            symbols.draw(g.symbol, p.x() + g.own.x(), p.y() + g.own.y(), g.scale());
        }
        g.stubs.forEach((port, corners) -> stub(p, port, corners));
        g.tags.forEach(t -> tag(p, t));
        words(p.label(), Theme.Token.INK2);
    }

    private String ink() {
        return theme.of(Theme.Token.INK);
    }

    private String token(Theme.Token token) {
        return theme.of(token);
    }

    /** From the symbol to the edge of its box, as the line that goes on from there. */
    private void stub(Sheet.Placed p, String port, List<Symbol.Spot> corners) {
        Machine.End end = new Machine.End(p.glyph().part.component().id(), port);
        Way way = plan.ways().stream().filter(w -> w.touches(end)).findFirst().orElseThrow();
        lines.draw(
                way,
                corners.stream()
                        .map(c -> new double[] {p.x() + c.x(), p.y() + c.y()})
                        .toList());
    }

    private void box(Sheet.Placed p) {
        Glyph g = p.glyph();
        svg.raw(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"3\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.8\"/>",
                p.x() + g.own.x(), p.y(), g.own.width(), g.height, ink());
        for (Glyph.Name n : g.names) {
            text(
                    g.small(),
                    p.x() + n.x(),
                    p.y() + n.y() + 0.36 * g.small().size(),
                    n.right() ? "end" : "start",
                    500,
                    Theme.Token.INK2,
                    n.words());
        }
    }

    private void vessel(Sheet.Placed p) {
        Glyph g = p.glyph();
        double level = level(g.part.component());
        double x = p.x();
        double y = p.y();
        String colour = token(level >= FULL ? Theme.Token.WATER_TINT : Theme.Token.STEAM_TINT);
        String outline = "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"" + ROUND + "\" %s/>";
        svg.raw(outline, x, y, g.width, g.height, "fill=\"" + colour + "\"");
        if (level < FULL) {
            double surface = Math.max(ROUND, Math.min(g.height - ROUND, g.height * (1 - level)));
            svg.raw(
                    "<path d=\"M%.1f %.1fV%.1fa%5$.0f %5$.0f 0 0 0 %5$.0f %5$.0fH%4$.1fa%5$.0f %5$.0f 0 0 0 %5$.0f -%5$.0fV%2$.1fz\" fill=\"%6$s\"/>",
                    x, y + surface, y + g.height - ROUND, x + g.width - ROUND, ROUND, token(Theme.Token.WATER_TINT));
            svg.line(x, y + surface, x + g.width, y + surface, token(Theme.Token.WATER), 1.5, "");
        }
        svg.raw(outline, x, y, g.width, g.height, "fill=\"none\" stroke=\"" + ink() + "\" stroke-width=\"2\"");
        double room = g.part.inside().size() * g.inset();
        double at = x + (g.width - room) / 2;
        for (Component c : g.part.inside()) {
            inset(c, at, y + g.height - 56 * g.grown, g);
            at += g.inset();
        }
    }

    private double level(Component c) {
        if (measured != null) {
            return measured.level(c.id());
        }
        return plan.owned().blueprint().fluid().vessels().stream()
                .filter(v -> v.name().equals(c.id()))
                .mapToDouble(FluidPlan.Vessel::fill)
                .findFirst()
                .orElse(1);
    }

    /** A small symbol with its number. */
    private void inset(Component c, double x, double y, Glyph g) {
        String kind = c.kind().name();
        Symbol s = Symbols.of(kind + ".glyph").or(() -> Symbols.wired(kind)).orElse(null);
        if (s != null && s.form() == Symbol.Form.PART) {
            double scale = g.grown * Math.min(1, Math.min(32 / s.width(), 24 / s.height()));
            symbols.draw(
                    s, x + (g.inset() - s.width() * scale) / 2, y + (24 * g.grown - s.height() * scale) / 2, scale);
        }
        PartNumbers numbers = plan.numbers();
        String number = String.valueOf(numbers.of(c.id()).orElse(0));
        text(lettering, x + g.inset() / 2, y + 38 * g.grown, "middle", 500, Theme.Token.INK2, number);
    }

    private void tag(Sheet.Placed p, Glyph.Tag t) {
        double x = p.x() + t.at().x();
        double y = p.y() + t.at().y();
        String colour = token(t.rail().earth() ? Theme.Token.OK : Theme.Token.CURRENT);
        if (t.rail().earth()) {
            earth(x, y, t, colour);
            return;
        }
        svg.line(x, y, x + 6.0 * t.dx(), y + 6.0 * t.dy(), colour, 1.5, "");
        double size = p.glyph().small().size();
        double tx = x + (t.dx() == 0 ? 0 : 8.0 * t.dx());
        double ty = y + (t.dy() == 0 ? 0.36 * size : t.dy() > 0 ? 6 + size : -9);
        String anchor = t.dx() == 0 ? "middle" : t.dx() > 0 ? "start" : "end";
        svg.text(tx, ty, anchor, size, 600, colour, t.rail().name());
    }

    /** The earth symbol at the end of a stub. */
    private void earth(double x, double y, Glyph.Tag t, String colour) {
        double dx = t.dx();
        double dy = t.dy();
        StringBuilder d = new StringBuilder(String.format(Locale.ROOT, "M%.1f %.1fl%.1f %.1f", x, y, 8 * dx, 8 * dy));
        for (int i = 0; i < 3; i++) {
            double half = 7 - 2.5 * i;
            double out = 8 + 4 * i;
            d.append(String.format(
                    Locale.ROOT,
                    "M%.1f %.1fL%.1f %.1f",
                    x + out * dx - half * dy,
                    y + out * dy - half * dx,
                    x + out * dx + half * dy,
                    y + out * dy + half * dx));
        }
        svg.path(d.toString(), colour, 1.6, "");
    }

    /** Lines of a name; those on their own line or on a boiler keep a margin free of it. */
    void words(Sheet.Words words, Theme.Token colour) {
        if (words == null) {
            return;
        }
        Rect box = words.box();
        List<String> lines = words.lines();
        for (int i = 0; i < lines.size(); i++) {
            double x = box.x() + box.width() / 2;
            text(
                    lettering,
                    x,
                    box.y() + i * lettering.line() + 0.76 * lettering.line(),
                    "middle",
                    500,
                    colour,
                    lines.get(i));
        }
    }

    void onLine(Sheet.Words words) {
        svg.rect(
                words.box().x(),
                words.box().y() + 1,
                words.box().width(),
                words.box().height() - 2,
                token(Theme.Token.SHEET));
        words(words, Theme.Token.INK2);
    }

    private void text(
            Lettering letters, double x, double y, String anchor, int weight, Theme.Token colour, String words) {
        svg.text(x, y, anchor, letters.size(), weight, token(colour), words);
    }
}
