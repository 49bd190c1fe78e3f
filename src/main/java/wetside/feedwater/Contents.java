package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import wetside.analysis.Ranged;
import wetside.analysis.Waters;
import wetside.water.Composition;

/** What is dissolved, as tables and pictures show it. */
public final class Contents {
    private Contents() {}

    /**
     * @param positive   true for what is charged positively
     * @param milligrams a litre
     * @param charges    milliequivalents a litre at the middle; NaN for what has none
     * @param digits     of milligrams
     */
    public record Row(String name, boolean positive, Ranged milligrams, double charges, int digits) {}

    public static List<Row> of(Waters waters) {
        List<Row> rows = new ArrayList<>();
        add(rows, waters, "calcium", true, Composition::calcium, 40.078, 2);
        add(rows, waters, "magnesium", true, Composition::magnesium, 24.305, 2);
        add(rows, waters, "sodium", true, Composition::sodium, 22.990, 1);
        add(rows, waters, "potassium", true, Composition::potassium, 39.098, 1);
        add(rows, waters, "bicarbonate", false, c -> Math.max(0, c.alkalinity()), 61.016, 1);
        add(rows, waters, "sulfate", false, Composition::sulfate, 96.06, 2);
        add(rows, waters, "chloride", false, Composition::chloride, 35.45, 1);
        add(rows, waters, "nitrate", false, Composition::nitrate, 62.004, 1);
        add(rows, waters, "silica", false, Composition::silica, 60.083, Double.NaN);
        return rows;
    }

    private static void add(
            List<Row> rows,
            Waters waters,
            String name,
            boolean positive,
            ToDoubleFunction<Composition> amount,
            double molar,
            double charge) {
        Ranged r = waters.of(c -> 1e3 * molar * amount.applyAsDouble(c));
        rows.add(new Row(
                name, positive, r, 1e3 * charge * amount.applyAsDouble(waters.middle()), r.high() < 10 ? 1 : 0));
    }
}
