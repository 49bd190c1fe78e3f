package wetside.cabinet;

import static wetside.drawing.Theme.Token.EDGE;
import static wetside.drawing.Theme.Token.ENAMEL;
import static wetside.drawing.Theme.Token.ENAMEL_TINT;
import static wetside.drawing.Theme.Token.INK;
import static wetside.drawing.Theme.Token.INK2;
import static wetside.drawing.Theme.Token.INK3;
import static wetside.drawing.Theme.Token.INSET;
import static wetside.drawing.Theme.Token.SHEET;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wetside.drawing.Look;
import wetside.drawing.Svg;
import wetside.drawing.Theme;
import wetside.machine.Side;

/** Puts a laid-out view on paper: line weights, colours, what is dashed and what is thin. */
final class ViewInk {
    private final Svg svg;
    private final Cabinet cabinet;
    private final Optional<Fitted> chosen;
    private final Set<String> named;

    private final UnaryOperator<String> link;

    ViewInk(Svg svg, Cabinet cabinet, Optional<Fitted> chosen, Set<String> named) {
        this(svg, cabinet, chosen, named, null);
    }

    /** @param link address of a part, null for none */
    ViewInk(Svg svg, Cabinet cabinet, Optional<Fitted> chosen, Set<String> named, UnaryOperator<String> link) {
        this.link = link;
        this.svg = svg;
        this.cabinet = cabinet;
        this.chosen = chosen;
        this.named = named;
    }

    private boolean isChosen(Fitted part) {
        return chosen.filter(part::equals).isPresent();
    }

    /** Case, panel, parts, leaders and numbers. */
    void view(Frame frame, Map<Fitted, Callouts.Callout> callouts) {
        Rect c = frame.outline();
        Side side = frame.view().side();
        svg.raw(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"3\" fill=\"%s\" stroke=\"%s\" stroke-width=\"2\"/>",
                c.x(), c.y(), c.width(), c.height(), paint(INSET), paint(INK));
        stand(c, side);
        if (!cabinet.panels(side).isEmpty()) {
            svg.raw(
                    "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"none\" stroke=\"%s\" stroke-width=\"1\""
                            + " stroke-dasharray=\"6 4\"/>",
                    c.x() + 5, c.y() + 5, c.width() - 10, c.height() - 10, paint(EDGE));
        }
        parts(frame);
        callouts.forEach((p, at) -> leader(p, at));
        callouts.forEach((p, at) -> number(p, at));
    }

    /** The lid's edge above and feet below; nothing when seen from above. */
    private void stand(Rect c, Side side) {
        if (side.axis() == 2) {
            return;
        }
        svg.line(c.x() - 4, c.y(), c.right() + 4, c.y(), paint(INK), 2, "");
        for (double x : new double[] {c.x() + 24, c.right() - 24}) {
            svg.line(x, c.bottom(), x, c.bottom() + CabinetDrawing.FOOT, paint(INK), 4, "");
        }
    }

    private void parts(Frame frame) {
        PartShape shape = new PartShape(svg, frame);
        for (View.Seen s : frame.view().parts()) {
            boolean isPlain = s.manner() == View.Manner.PLAIN
                    && (named.isEmpty() || named.contains(s.part().id()));
            if (s.manner() == View.Manner.BEHIND || s.manner() == View.Manner.LEFT_OUT || isChosen(s.part())) {
                continue;
            }
            draw(shape, s.part(), isPlain ? ink(SHEET, INK2, 1.8, "") : ink(INSET, EDGE, 1, ""));
        }
        for (View.Seen s : frame.view().parts()) {
            boolean isNamed = named.isEmpty() || named.contains(s.part().id());
            if (s.manner() == View.Manner.BEHIND && isNamed && !isChosen(s.part())) {
                draw(shape, s.part(), ink(null, INK3, 1, "3 3"));
            }
        }
        chosen.filter(p -> frame.view().of(p) != null).ifPresent(p -> {
            boolean hidden = frame.view().of(p).free() < 0.25;
            draw(shape, p, ink(ENAMEL_TINT, ENAMEL, hidden ? 2 : 3, hidden ? "5 3" : ""));
        });
    }

    private void draw(PartShape shape, Fitted part, String ink) {
        open(part, true);
        shape.draw(part, ink);
        close();
    }

    private void open(Fitted part, boolean hidden) {
        if (link != null) {
            svg.raw(
                    "%s",
                    "<a href=\"" + Svg.escape(link.apply(part.id())) + "\" data-part=\"" + Svg.escape(part.id()) + "\""
                            + (hidden
                                    ? " tabindex=\"-1\" aria-hidden=\"true\""
                                    : " aria-label=\"" + part.number() + " "
                                            + Svg.escape(part.name()).replace("\"", "&quot;") + "\"")
                            + ">");
        }
    }

    private void close() {
        if (link != null) {
            svg.raw("</a>");
        }
    }

    private static String ink(Theme.Token fill, Theme.Token stroke, double width, String dash) {
        return "fill=\"" + (fill == null ? "none" : paint(fill)) + "\" stroke=\"" + paint(stroke) + "\" stroke-width=\""
                + width + "\"" + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
    }

    private void leader(Fitted part, Callouts.Callout at) {
        boolean it = isChosen(part);
        svg.line(at.x(), at.y(), at.partX(), at.partY(), paint(it ? ENAMEL : EDGE), it ? 2 : 1, "");
        svg.raw(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\"/>",
                at.partX(), at.partY(), it ? 3.0 : 2.2, paint(it ? ENAMEL : INK2));
    }

    private void number(Fitted part, Callouts.Callout at) {
        boolean it = isChosen(part);
        open(part, false);
        svg.raw(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.2\"/>",
                at.x(), at.y(), Callouts.RADIUS, paint(it ? ENAMEL : SHEET), paint(it ? ENAMEL : INK2));
        svg.text(
                at.x(),
                at.y() + 4.4,
                "middle",
                Look.LABEL,
                600,
                paint(it ? SHEET : INK),
                String.valueOf(part.number()));
        close();
    }

    /** A line of the legend. */
    void line(CabinetDrawing.Line line) {
        boolean it = chosen.filter(c -> c.number() == line.number()).isPresent();
        String colour = paint(it ? ENAMEL : INK2);
        if (!line.goesOn()) {
            svg.text(
                    line.x() + 20,
                    line.y(),
                    "end",
                    Look.NAME,
                    600,
                    it ? colour : paint(INK),
                    String.valueOf(line.number()));
        }
        svg.text(line.x() + 28, line.y(), "start", Look.NAME, it ? 600 : 500, colour, line.words());
    }

    private static String paint(Theme.Token token) {
        return Theme.LIGHT.of(token);
    }
}
