package wetside.drawing;

import java.util.List;
import java.util.Locale;

/** How often what was said with so much confidence was right: points on the diagonal are honest. */
public final class ReliabilityChart {
    private static final double SIDE = 320;
    private static final double LEFT = 64;
    private static final double TOP = 80;
    private static final double LINE = 19;
    private static final double GAP = 5;
    private static final String LEGEND = "Each dot with its 95 % interval; on the broken line it is honest.";

    private ReliabilityChart() {}

    /**
     * Forecasts of about the same confidence.
     *
     * @param n          how many
     * @param confidence their mean, 0 to 1
     * @param right      share that was right
     * @param low        lower end of that share's interval
     * @param high       its upper end
     */
    public record Point(int n, double confidence, double right, double low, double high) {}

    /**
     * @param title what is shown
     * @param notes lines of text beside the diagram
     */
    public static String svg(String title, List<Point> points, List<String> notes) {
        double width = LEFT + SIDE + 420;
        List<List<String>> beside =
                notes.stream().map(n -> Svg.wrapped(n, Look.NAME, 370)).toList();
        double lines = beside.stream().mapToInt(List::size).sum();
        double height = Math.max(TOP + SIDE + 80, TOP + LINE * lines + GAP * notes.size() + 24);
        Svg svg = new Svg(width, height, title, described(points));
        svg.rect(0, 0, width, height, Look.SHEET);
        svg.text(20, 32, "start", Look.TITLE, 600, Look.INK, title);
        for (int i = 0; i <= 5; i++) {
            double share = i / 5.0;
            svg.line(LEFT, y(share), LEFT + SIDE, y(share), Look.LINE, 1, "");
            svg.text(LEFT - 8, y(share) + 4, "end", Look.LABEL, 400, Look.INK2, percent(share));
            svg.text(x(share), y(0) + 20, "middle", Look.LABEL, 400, Look.INK2, percent(share));
        }
        svg.line(x(0), y(0), x(1), y(1), Look.EDGE, 1.2, "5 4");
        svg.text(LEFT + SIDE / 2, y(0) + 42, "middle", Look.LABEL, 500, Look.INK2, "share said of what stands first");
        svg.text(20, y(0) + 64, "start", Look.LABEL, 400, Look.INK2, LEGEND);
        svg.text(LEFT, TOP - 28, "start", Look.LABEL, 500, Look.INK2, "was right");
        svg.text(LEFT - 8, TOP - 10, "end", Look.LABEL, 400, Look.INK2, "jobs");
        for (Point p : points) {
            svg.line(x(p.confidence), y(p.low), x(p.confidence), y(p.high), Look.INK3, 1.4, "");
            svg.raw(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\"/>",
                    x(p.confidence),
                    y(p.right),
                    Math.min(9, 3 + Math.sqrt(p.n) / 2),
                    Theme.LIGHT.of(Theme.Token.ENAMEL));
            svg.text(x(p.confidence), TOP - 10, "middle", Look.LABEL, 400, Look.INK2, "" + p.n);
        }
        double at = TOP + 12;
        for (List<String> note : beside) {
            for (String line : note) {
                svg.text(LEFT + SIDE + 36, at, "start", Look.NAME, 400, Look.INK, line);
                at += LINE;
            }
            at += GAP;
        }
        return svg.end();
    }

    private static String described(List<Point> points) {
        StringBuilder text = new StringBuilder("How often causes were right, by the confidence they were named with.");
        points.forEach(p -> text.append(
                String.format(Locale.ROOT, " Said %s: right %s of %d.", percent(p.confidence), percent(p.right), p.n)));
        return text.toString();
    }

    private static double x(double share) {
        return LEFT + share * SIDE;
    }

    private static double y(double share) {
        return TOP + (1 - share) * SIDE;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
