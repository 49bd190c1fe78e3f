package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Liquid;
import wetside.physics.Transport;
import wetside.physics.Water;

class WaterTransportPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Viscosity, conductivity and surface tension of water");

    @Test
    void aViscosity() {
        double[][] table = {
            {298.15, 998, 889.735100}, {298.15, 1200, 1437.649467}, {373.15, 1000, 307.883622}, {433.15, 1, 14.538324},
            {433.15, 1000, 217.685358}, {873.15, 1, 32.619287}, {873.15, 100, 35.802262}, {873.15, 600, 77.430195},
            {1173.15, 1, 44.217245}, {1173.15, 100, 47.640433}, {1173.15, 400, 64.154608},
        };
        for (double[] row : table) {
            published.check(
                    "viscosity at %.2f K, %.0f kg/m³ [µPa·s]".formatted(row[0], row[1]),
                    "IAPWS R12-08 table 4",
                    row[2],
                    Transport.viscosity(row[1], row[0]) * 1e6,
                    Tolerance.digit(2e-6),
                    "last printed digit");
        }
    }

    @Test
    void bConductivity() {
        double[][] table = {
            {298.15, 0, 18.4341883}, {298.15, 998, 607.712868}, {298.15, 1200, 799.038144}, {873.15, 0, 79.1034659},
        };
        for (double[] row : table) {
            published.check(
                    "thermal conductivity at %.2f K, %.0f kg/m³ [mW/(m K)]".formatted(row[0], row[1]),
                    "IAPWS R15-11 table 4 (rows 3 and 4 from memory)",
                    row[2],
                    Transport.conductivity(row[1], row[0]) * 1e3,
                    Tolerance.relative(5e-9),
                    "printed digits");
        }
    }

    @Test
    void cSurfaceTension() {
        double[][] table = {{300, 71.6859625}, {450, 42.8914992}, {600, 8.37561}};
        for (double[] row : table) {
            published.check(
                    "surface tension at %.0f K [mN/m]".formatted(row[0]),
                    "IAPWS R1-76(2014) (600 K from memory)",
                    row[1],
                    Water.surfaceTension(row[0]) * 1e3,
                    Tolerance.relative(1e-6),
                    "printed digits");
        }
    }

    @Test
    void dLiquidTable() {
        String source = "IAPWS-IF97, R12-08 and R15-11 by python3-iapws 1.5.3, at the higher of 1 atm and saturation";
        // °C, density, µPa·s, W/(m K), kJ/(kg K), 1e-4/K
        double[][] table = {
            {20, 998.2061, 1001.597, 0.59801, 4.18479, 2.0661},
            {60, 983.2106, 466.043, 0.65102, 4.18276, 5.2313},
            {93, 963.2787, 303.724, 0.67427, 4.20828, 7.1330},
            {120, 943.1057, 232.033, 0.68224, 4.24637, 8.5798},
            {150, 917.0066, 182.610, 0.68101, 4.31027, 10.2640},
        };
        for (double[] row : table) {
            double t = row[0] + 273.15;
            double p = Math.max(101325, Water.saturationPressure(t));
            var state = Liquid.state(p, t);
            String at = " at %.0f °C ".formatted(row[0]);
            liquid("density" + at + "[kg/m³]", source, row[1], state.density(), 1e-4);
            liquid("viscosity" + at + "[µPa·s]", source, row[2], Transport.viscosity(state.density(), t) * 1e6, 1e-3);
            // that program adds the critical enhancement, up to 0.1 % here
            published.check(
                    "thermal conductivity" + at + "[W/(m K)]",
                    source,
                    row[3],
                    Transport.conductivity(state.density(), t),
                    Tolerance.relative(1.5e-3),
                    "critical enhancement left out here");
            liquid("cp" + at + "[kJ/(kg K)]", source, row[4], state.heatCapacity() / 1e3, 1e-5);
            liquid("expansion" + at + "[1e-4/K]", source, row[5], state.expansion() * 1e4, 1e-4);
        }
    }

    @Test
    void eHandbookViscosity() {
        double[][] table = {{290, 1084.0}, {330, 489.49}, {360, 326.10}, {370, 291.36}, {390, 238.77}};
        for (double[] row : table) {
            double density =
                    Liquid.state(Water.saturationPressure(row[0]), row[0]).density();
            published.check(
                    "viscosity of boiling water at %.0f K [µPa·s]".formatted(row[0]),
                    "Perry's Chemical Engineers' Handbook, 9th ed., table 2-135",
                    row[1],
                    Transport.viscosity(density, row[0]) * 1e6,
                    Tolerance.relative(4e-3),
                    "an older correlation stands behind the handbook");
        }
    }

    private static void liquid(String quantity, String source, double expected, double computed, double lastDigit) {
        published.check(quantity, source, expected, computed, Tolerance.digit(lastDigit), "last printed digit");
    }
}
