package wetside.map;

import java.util.List;
import java.util.Locale;
import wetside.drawing.Svg;
import wetside.drawing.Theme;

/** Draws lines in the style of what they carry, or in the colour of what was measured in them; and the way it flows. */
final class LinePen {
    private static final double ARROW = 30;

    private final Svg svg;
    private final Theme theme;
    private final Measured measured;

    LinePen(Svg svg, Theme theme, Measured measured) {
        this.svg = svg;
        this.theme = theme;
        this.measured = measured;
    }

    /** @param junctions of all lines, and ends at dots: no arrow head goes there */
    void draw(Sheet.Line line, List<double[]> junctions) {
        draw(line.way(), line.points());
        double r = line.way().wire() ? 2.6 : 4;
        line.junctions().forEach(p -> dot(p, r, line.way()));
        arrow(line, junctions);
    }

    /** A line alone. */
    void draw(Way way, List<double[]> points) {
        String d = path(points);
        if (measured == null || way.wire()) {
            style(d, way.layer(), way.earth());
        } else {
            coloured(d, way);
        }
    }

    private void dot(double[] p, double r, Way way) {
        String colour = measured != null && !way.wire() ? theme.of(Theme.Token.INK) : colour(way);
        svg.raw("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\"/>", p[0], p[1], r, colour);
    }

    private String colour(Way way) {
        return theme.of(way.earth() ? Theme.Token.OK : way.layer().colour());
    }

    /** A sample of a style: solid, double, long dashes, thin with terminals, dots. */
    void style(String d, Layer layer, boolean earth) {
        String colour = theme.of(earth ? Theme.Token.OK : layer.colour());
        if (earth) {
            svg.path(d, colour, 1.5, "8 3 2 3");
            return;
        }
        switch (layer) {
            case WATER -> svg.path(d, colour, 2.5, "");
            case STEAM -> {
                svg.path(d, colour, 6, "");
                svg.path(d, theme.of(Theme.Token.SHEET), 2.4, "");
            }
            case DRAIN -> svg.path(d, colour, 2, "7 4");
            case CURRENT -> svg.path(d, colour, 1.5, "");
            case SENSING -> svg.path(d, colour, 1.6, "1.5 3.5");
        }
    }

    /** A black outline holds the colour, so that pale ones are seen and thickness can be told. */
    private void coloured(String d, Way way) {
        Scale scale = Scale.of(measured.quantity());
        double value = measured.value(way);
        if (Double.isNaN(value)) {
            svg.path(d, theme.of(Theme.Token.INK3), 1.4, "2 3");
            return;
        }
        double width = scale.thickness(value);
        svg.path(d, theme.of(Theme.Token.INK), width + 2, "");
        svg.path(d, scale.colour(value), width, "");
        if (scale == Scale.PRESSURE && value < -0.02) {
            svg.path(d, theme.of(Theme.Token.INK), width, "2 3");
        }
    }

    /** A head on the longest piece; when something was measured, only where it flows. */
    private void arrow(Sheet.Line line, List<double[]> junctions) {
        Way way = line.way();
        double flow = measured == null ? 1 : measured.flow(way);
        if (way.wire() || way.layer() == Layer.SENSING || !(Math.abs(flow) >= Measured.STILL)) {
            return;
        }
        double[] best = null;
        for (int i = 1; i < line.points().size(); i++) {
            double[] a = line.points().get(i - 1);
            double[] b = line.points().get(i);
            double length = Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]);
            for (double share : new double[] {0.5, 0.3, 0.7}) {
                double[] at = {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])};
                if (length >= ARROW && (best == null || length > best[4] + 1) && isBare(line, at, junctions)) {
                    best = new double[] {at[0], at[1], b[0] - a[0], b[1] - a[1], length};
                }
            }
        }
        if (best != null) {
            head(way, best, flow < 0 ? -1 : 1);
        }
    }

    /** Words that stand on the line, and where lines part, would be covered. */
    private static boolean isBare(Sheet.Line line, double[] at, List<double[]> junctions) {
        Rect middle = new Rect(at[0], at[1], 0, 0).grown(9);
        return line.words().stream().noneMatch(w -> w.onLine() && w.box().hits(middle))
                && junctions.stream().noneMatch(j -> middle.grown(3).hits(new Rect(j[0], j[1], 0.1, 0.1)));
    }

    private void head(Way way, double[] piece, int turn) {
        double x = piece[0];
        double y = piece[1];
        double ux = Math.signum(piece[2]) * turn;
        double uy = Math.signum(piece[3]) * turn;
        svg.raw(
                "<path class=\"head\" d=\"M%.1f %.1fL%.1f %.1fL%.1f %.1fz\" fill=\"%s\"/>",
                x + 6 * ux,
                y + 6 * uy,
                x - 5 * ux - 5 * uy,
                y - 5 * uy + 5 * ux,
                x - 5 * ux + 5 * uy,
                y - 5 * uy - 5 * ux,
                measured == null ? colour(way) : theme.of(Theme.Token.INK));
    }

    static String path(List<double[]> points) {
        StringBuilder d = new StringBuilder();
        for (double[] p : points) {
            d.append(String.format(Locale.ROOT, "%s%.1f %.1f", d.length() == 0 ? "M" : "L", p[0], p[1]));
        }
        return d.toString();
    }
}
