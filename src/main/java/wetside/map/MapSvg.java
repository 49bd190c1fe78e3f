package wetside.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import wetside.drawing.Svg;
import wetside.drawing.Theme;
import wetside.machine.Component;
import wetside.machine.Machine;

/** The finished drawing: title, circuit, legend. */
final class MapSvg {
    private static final double HEAD = 56;
    private static final double MARGIN = 16;
    private static final double LEAST_WIDTH = 640;
    private static final double BETWEEN = 28;

    private final MapPlan plan;
    private final Sheet sheet;
    private final Measured measured;
    private final Theme theme;
    private final Lettering lettering;
    private final double width;
    private final List<String> named;
    private final List<String> notes;
    private final double column;
    private final int rows;
    private final UnaryOperator<String> link;
    private final boolean bare;
    private final double head;

    MapSvg(MapPlan plan, Sheet sheet, Measured measured, Theme theme) {
        this(plan, sheet, measured, theme, null, false);
    }

    /**
     * @param link address of a part; with it the drawing has no heading of its own. Null for none.
     * @param bare the page says which number is what
     */
    MapSvg(MapPlan plan, Sheet sheet, Measured measured, Theme theme, UnaryOperator<String> link, boolean bare) {
        this.bare = bare;
        this.link = link;
        head = link == null ? HEAD : MARGIN;
        this.plan = plan;
        this.sheet = sheet;
        this.measured = measured;
        this.theme = theme;
        lettering = sheet.lettering();
        width = Math.ceil(Math.max(link == null ? LEAST_WIDTH : 0, sheet.width() + 2 * MARGIN));
        notes = bare ? List.of() : notes();
        named = bare ? List.of() : named();
        column = lettering.width(named) + BETWEEN;
        int columns = (int) Math.max(1, (width - 2 * MARGIN + BETWEEN) / column);
        rows = (named.size() + columns - 1) / columns;
    }

    double width() {
        return width;
    }

    double height() {
        return Math.ceil(
                legend() + (saysLines() ? 44 * larger() : bare ? 0 : 22) + (rows + notes.size()) * lettering.line());
    }

    /** A page with switches for what is shown says by them what the lines mean. */
    private boolean saysLines() {
        return link == null || measured != null;
    }

    /** Letters for a map that is shown small need more room. */
    private double larger() {
        return Math.max(1, lettering.size() / Lettering.NUMBERS.size());
    }

    private double legend() {
        return head + sheet.height() + 14;
    }

    String draw() {
        double height = height();
        double legend = legend();
        Machine.Identity identity = plan.machine().identity();
        String title = identity.title() + ", " + identity.making();
        Svg svg = new Svg(width, height, "Map of " + title, "Parts and what joins them: " + layers());
        svg.rect(0, 0, width, height, theme.of(Theme.Token.SHEET));
        if (link == null) {
            svg.text(MARGIN, 28, "start", 19, 600, theme.of(Theme.Token.INK), title);
            svg.text(MARGIN, 48, "start", lettering.size(), 500, theme.of(Theme.Token.INK3), subtitle());
        }
        svg.raw("<g transform=\"translate(%.1f %.1f)\">", (width - sheet.width()) / 2, head);
        circuit(svg);
        svg.raw("</g>");
        if (!bare) {
            svg.line(MARGIN, legend - 8, width - MARGIN, legend - 8, theme.of(Theme.Token.LINE), 1, "");
        }
        if (saysLines()) {
            legend(svg, legend + 14 * larger() + 6 * (larger() - 1));
        }
        double y = legend + (saysLines() ? 40 * larger() : 18);
        for (int i = 0; i < named.size(); i++) {
            double x = MARGIN + (i / rows) * column;
            text(svg, x, y + (i % rows) * lettering.line(), named.get(i));
        }
        y += rows * lettering.line();
        for (String note : notes) {
            text(svg, MARGIN, y, note);
            y += lettering.line();
        }
        return svg.end();
    }

    private String layers() {
        return plan.layers().stream().map(Layer::word).collect(Collectors.joining(", "));
    }

    private String subtitle() {
        if (measured == null) {
            return "What joins what: " + layers()
                    + (plan.isWet()
                            ? ". Arrows show the way it is meant to flow."
                            : ". Places with the same letter or sign are joined.");
        }
        return "By " + measured.quantity().word() + " at "
                + clock(measured.run().time())
                + " of the run. Arrows show where something flows"
                + (measured.quantity() == Measured.Quantity.TEMPERATURE ? "; dotted lines stand still." : ".");
    }

    private static String clock(double seconds) {
        long s = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d min", s / 60, s % 60);
    }

    private void circuit(Svg svg) {
        LinePen lines = new LinePen(svg, theme, measured);
        PartPen parts = new PartPen(svg, theme, plan, measured, lines, lettering);
        List<double[]> junctions = new ArrayList<>();
        sheet.lines().forEach(l -> junctions.addAll(l.junctions()));
        sheet.parts().stream()
                .filter(p -> p.glyph().isDot())
                .forEach(p -> junctions.add(new double[] {p.x() + 4, p.y() + 4}));
        for (int i = 0; i < sheet.lines().size(); i++) {
            Sheet.Line line = sheet.lines().get(i);
            open(svg, i, line.way());
            lines.draw(line, junctions);
            svg.raw("</g>");
        }
        for (Sheet.Placed p : sheet.parts()) {
            String id = p.glyph().part.component().id();
            svg.raw(
                    "%s",
                    link == null ? "<g>" : anchor(id, p.glyph().part.component().name()));
            if (link != null && !p.glyph().isDot()) {
                Rect box = p.box().grown(5);
                svg.raw(
                        "<rect class=\"around\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"6\" fill=\"none\""
                                + " pointer-events=\"all\"/>",
                        box.x(), box.y(), box.width(), box.height());
            }
            parts.draw(p, ways(p));
            svg.raw(link == null ? "</g>" : "</a>");
        }
        for (int i = 0; i < sheet.lines().size(); i++) {
            open(svg, i, sheet.lines().get(i).way());
            sheet.lines().get(i).words().forEach(w -> {
                if (w.onLine()) {
                    parts.onLine(w);
                } else {
                    parts.words(w, Theme.Token.INK3);
                }
            });
            svg.raw("</g>");
        }
    }

    private void open(Svg svg, int line, Way way) {
        svg.raw(
                "%s",
                link == null
                        ? "<g>"
                        : "<g data-line=\"" + line + "\" data-layer=\""
                                + way.layer().word() + "\">");
    }

    private String anchor(String id, String name) {
        return "<a href=\"" + Svg.escape(link.apply(id)) + "\" data-part=\"" + Svg.escape(id) + "\" aria-label=\""
                + plan.numbers().of(id).orElse(0) + " " + Svg.escape(name).replace("\"", "&quot;") + "\"><title>"
                + plan.numbers().of(id).orElse(0) + " " + Svg.escape(name) + "</title>";
    }

    private int ways(Sheet.Placed p) {
        String id = p.glyph().part.component().id();
        return (int) plan.ways().stream()
                .filter(w ->
                        w.from().component().equals(id) || w.to().component().equals(id))
                .count();
    }

    private void text(Svg svg, double x, double y, String words) {
        svg.text(x, y, "start", lettering.size(), 500, theme.of(Theme.Token.INK2), words);
    }

    private void legend(Svg svg, double y) {
        double x = measured == null ? MARGIN : scale(svg, y);
        LinePen pen = new LinePen(svg, theme, null);
        for (Layer layer : Layer.values()) {
            boolean earth = false;
            if (plan.ways().stream()
                    .anyMatch(w -> w.layer() == layer && !w.earth() && (measured == null || w.wire()))) {
                x = sample(svg, pen, layer, earth, x, y);
            }
        }
        if (plan.ways().stream().anyMatch(Way::earth)) {
            sample(svg, pen, Layer.CURRENT, true, x, y);
        }
    }

    private double sample(Svg svg, LinePen pen, Layer layer, boolean earth, double x, double y) {
        double k = larger();
        pen.style(String.format(Locale.ROOT, "M%.1f %.1fh%.0f", x, y - 4 * k, 36 * k), layer, earth);
        String word = earth ? "earth" : layer.word();
        text(svg, x + 43 * k, y, word);
        return x + 43 * k + lettering.width(word) + 26 * k;
    }

    private double scale(Svg svg, double y) {
        Scale scale = Scale.of(measured.quantity());
        double k = larger();
        double x = MARGIN;
        for (double point : scale.points) {
            double thick = scale.thickness(point) * k;
            String d = String.format(Locale.ROOT, "M%.1f %.1fh%.0f", x, y - 4 * k, 30 * k);
            svg.path(d, theme.of(Theme.Token.INK), thick + 2, "");
            svg.path(d, scale.colour(point), thick, "");
            String words = String.format(Locale.ROOT, "%.0f %s", point, scale.unit);
            text(svg, x + 36 * k, y, words);
            x += 36 * k + lettering.width(words) + 16 * k;
        }
        return x + 10 * k;
    }

    /** Numbers with their names, where parts show numbers only; and what sits in boilers, which always does. */
    private List<String> named() {
        List<Component> all = new ArrayList<>();
        for (Component c : plan.machine().components()) {
            boolean inside =
                    plan.parts().values().stream().anyMatch(p -> p.inside().contains(c));
            boolean part = plan.parts().containsKey(c.id());
            boolean along = sheet.lines().stream().anyMatch(l -> l.way().along().contains(c) && !isNamed(l, c));
            boolean dot = part
                    && sheet.parts().stream()
                            .anyMatch(p ->
                                    p.glyph().part.component() == c && p.glyph().isDot());
            if (inside || dot || sheet.numbers() && part || along) {
                all.add(c);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingInt(c -> plan.numbers().of(c.id()).orElseThrow()))
                .map(c -> plan.numbers().of(c.id()).orElseThrow() + " " + c.name())
                .toList();
    }

    /** Whether the name of a hose stands beside it in full. */
    private static boolean isNamed(Sheet.Line line, Component c) {
        return line.words().stream().anyMatch(w -> w.lines().get(0).endsWith(" " + c.name()));
    }

    private List<String> notes() {
        return sheet.missing().isEmpty()
                ? List.of()
                : lettering.wrapped(
                        "No room at its line: "
                                + sheet.missing().stream()
                                        .map(Sheet.Missing::words)
                                        .collect(Collectors.joining(", ")),
                        width - 2 * MARGIN);
    }
}
