package wetside.drawing;

import java.util.List;
import java.util.Locale;

/**
 * What is dissolved as two columns of the same height, positive and negative charges, each ion as tall as its charges; a
 * bracket where hardness meets bicarbonate.
 */
public final class IonBalance {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 270;
    private static final double TOP = 40;
    private static final double TALL = 190;
    private static final double LEFT = 238;
    private static final double COLUMN = 76;
    private static final double GAP = 16;
    private static final double ROW = 18;
    private static final String[] FILLS = {"#D8E7F5", "#DBEAE2", "#E2E8EB", "#7C9791"};

    private IonBalance() {}

    /**
     * @param charges meq/l
     * @param words   what stands beside its name, such as {@code 48 mg/l}
     */
    public record Ion(String name, double charges, String words) {}

    /**
     * @param positive  from the top down: calcium, magnesium, sodium, potassium
     * @param negative  from the top down: bicarbonate, sulfate, chloride, nitrate
     * @param temporary hardness that meets bicarbonate [meq/l]
     */
    public static String draw(List<Ion> positive, List<Ion> negative, double temporary) {
        double all = Math.max(1e-6, Math.max(sum(positive), sum(negative)));
        Svg svg =
                new Svg(WIDTH, HEIGHT, "What is in it", "Charges of the dissolved ions, positive left, negative right");
        svg.rect(0, 0, WIDTH, HEIGHT, Look.SHEET);
        svg.text(0, 20, "start", Look.LABEL, 500, Look.INK3, "positive charges");
        svg.text(WIDTH, 20, "end", Look.LABEL, 500, Look.INK3, "negative charges");
        svg.text(
                WIDTH / 2,
                20,
                "middle",
                Look.LABEL,
                500,
                Look.INK3,
                String.format(Locale.ROOT, "meq/l, the taller sums to %.2f", all));
        column(svg, positive, all, LEFT, true);
        column(svg, negative, all, LEFT + COLUMN + GAP, false);
        if (temporary > 0) {
            double x = LEFT + COLUMN + GAP / 2;
            double y = TOP + TALL * temporary / all;
            svg.line(x, TOP, x, y, "#86366F", 2.5, "");
            svg.line(x - 5, TOP, x + 5, TOP, "#86366F", 2.5, "");
            svg.line(x - 5, y, x + 5, y, "#86366F", 2.5, "");
        }
        svg.text(
                WIDTH / 2,
                HEIGHT - 12,
                "middle",
                Look.LABEL,
                500,
                Look.INK2,
                String.format(
                        Locale.ROOT,
                        "Bracket: %.2f meq/l, hardness and bicarbonate that meet and can fall out when heated",
                        temporary));
        return svg.end();
    }

    private static double sum(List<Ion> ions) {
        return ions.stream().mapToDouble(Ion::charges).sum();
    }

    private static void column(Svg svg, List<Ion> ions, double all, double x, boolean labelsLeft) {
        double y = TOP;
        double[] places = new double[ions.size()];
        for (int i = 0; i < ions.size(); i++) {
            double h = TALL * ions.get(i).charges() / all;
            if (h > 0.3) {
                svg.rect(x, y, COLUMN, h, FILLS[i % FILLS.length]);
                svg.raw(
                        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"none\" stroke=\"%s\"/>",
                        x, y, COLUMN, h, Look.INK);
            }
            places[i] = y + h / 2;
            y += h;
        }
        apart(places);
        y = TOP;
        for (int i = 0; i < ions.size(); i++) {
            Ion ion = ions.get(i);
            double h = TALL * ion.charges() / all;
            double edge = labelsLeft ? x : x + COLUMN;
            double out = labelsLeft ? -1 : 1;
            svg.line(edge, y + h / 2, edge + out * 14, places[i], Look.EDGE, 1, "");
            String anchor = labelsLeft ? "end" : "start";
            double at = edge + out * 20;
            svg.text(at, places[i] + 4.5, anchor, Look.LABEL, 600, Look.INK, ion.name() + " " + ion.words());
            String charges = String.format(Locale.ROOT, "%.2f", ion.charges());
            svg.text(
                    labelsLeft ? 0 : WIDTH,
                    places[i] + 4.5,
                    labelsLeft ? "start" : "end",
                    Look.LABEL,
                    500,
                    Look.INK2,
                    charges);
            y += h;
        }
    }

    /** Labels at least a row apart, inside the column's height and a little more. */
    private static void apart(double[] y) {
        for (int i = 1; i < y.length; i++) {
            y[i] = Math.max(y[i], y[i - 1] + ROW);
        }
        double most = TOP + TALL + 4;
        for (int i = y.length - 1; i >= 0 && y[i] > most; i--) {
            y[i] = most;
            most -= ROW;
        }
        for (int i = y.length - 2; i >= 0; i--) {
            y[i] = Math.min(y[i], y[i + 1] - ROW);
        }
    }
}
