package wetside.feedwater;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wetside.analysis.Heated;
import wetside.analysis.Waters;
import wetside.drawing.HeatCurve;
import wetside.drawing.IonBalance;
import wetside.units.Unit;
import wetside.water.Composition;
import wetside.water.ConstantSet;

/** A water as drawings. */
public final class WaterDrawings {
    private static final double COLDEST = 10;
    private static final double HOTTEST = 140;
    private static final double STEP = 10;

    private WaterDrawings() {}

    /** What is in it, charge against charge. */
    public static String balance(Advice advice) {
        List<IonBalance.Ion> positive = new ArrayList<>();
        List<IonBalance.Ion> negative = new ArrayList<>();
        for (Contents.Row row : Contents.of(advice.waters())) {
            if (!Double.isNaN(row.charges())) {
                (row.positive() ? positive : negative)
                        .add(new IonBalance.Ion(
                                row.name(),
                                row.charges(),
                                Said.number(row.milligrams().middle(), row.digits()) + " mg/l"));
            }
        }
        Composition c = advice.waters().middle();
        return IonBalance.draw(positive, negative, 1e3 * Math.min(2 * c.hardness(), Math.max(0, c.alkalinity())));
    }

    /** Calcite's index over temperature, the machine's temperatures marked; after treatment dashed. */
    public static String curve(Advice advice, HeatCurve.Curve index, Optional<Advice> treated, Unit unit) {
        List<HeatCurve.Mark> marks = advice.machine().hot().stream()
                .map(h -> new HeatCurve.Mark(unit.fromSi(h.kelvin()), h.name()))
                .toList();
        return HeatCurve.draw(
                "calcite index: above 0 lime can fall" + (treated.isPresent() ? "; dashed: treated" : ""),
                "temperature, " + unit.symbol(),
                in(unit, index),
                treated.map(t -> in(unit, index(Waters.exactly(t.waters().middle()), t.set()))),
                marks);
    }

    private static HeatCurve.Curve in(Unit unit, HeatCurve.Curve c) {
        double[] shown = Arrays.stream(c.at()).map(t -> unit.fromSi(t + 273.15)).toArray();
        return new HeatCurve.Curve(shown, c.low(), c.middle(), c.high());
    }

    /** Calcite's index over temperature in °C, with its range. */
    public static HeatCurve.Curve index(Waters waters, ConstantSet set) {
        int n = (int) ((HOTTEST - COLDEST) / STEP) + 1;
        double[][] v = new double[4][n];
        for (int i = 0; i < n; i++) {
            v[0][i] = COLDEST + i * STEP;
            Heated h = Heated.of(waters, set, v[0][i] + 273.15);
            v[1][i] = h.index().low();
            v[2][i] = h.index().middle();
            v[3][i] = h.index().high();
        }
        return new HeatCurve.Curve(v[0], v[1], v[2], v[3]);
    }
}
