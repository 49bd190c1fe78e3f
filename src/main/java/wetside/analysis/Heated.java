package wetside.analysis;

import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Constants;
import wetside.water.Equilibrium;
import wetside.water.Mineral;
import wetside.water.Precipitation;
import wetside.water.Solution;

/**
 * Waters heated in a closed vessel.
 *
 * @param index        calcite's, ±0.2 wider above 90 °C, where constants are carried on past their measurements
 * @param potential    calcite they can drop, negative what they would dissolve [mg/l]
 * @param conductivity at this temperature [S/m]
 */
public record Heated(double kelvin, Ranged ph, Ranged index, Ranged potential, Ranged anhydrite, Ranged conductivity) {
    private static final double MEASURED_TO = 363.15;
    private static final double UNSURE = 0.2;

    public static Heated of(Waters waters, ConstantSet set, double kelvin) {
        Constants constants = set.at(kelvin);
        Equilibrium at = new Equilibrium(constants);
        int n = waters.drawn().size();
        double[][] all = new double[5][n];
        double[] middle = new double[5];
        for (int k = -1; k < n; k++) {
            Composition c = k < 0 ? waters.middle() : waters.drawn().get(k);
            Solution s = at.of(c);
            double[] values = {
                s.ph(),
                s.index(Mineral.CALCITE),
                potential(at, c),
                s.index(Mineral.ANHYDRITE),
                Conductivity.at(c, kelvin)
            };
            for (int i = 0; i < values.length; i++) {
                if (k < 0) {
                    middle[i] = values[i];
                } else {
                    all[i][k] = values[i];
                }
            }
        }
        Ranged[] r = new Ranged[5];
        for (int i = 0; i < r.length; i++) {
            r[i] = waters.ranged(middle[i], all[i]);
        }
        return new Heated(kelvin, r[0], kelvin > MEASURED_TO ? r[1].widened(UNSURE) : r[1], r[2], r[3], r[4]);
    }

    /** [mg/l] */
    public static double potential(Equilibrium at, Composition c) {
        return Precipitation.calcite(at, c) * Precipitation.CALCITE_MILLIGRAMS;
    }
}
