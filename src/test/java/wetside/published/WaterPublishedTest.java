package wetside.published;

import com.hummeling.if97.IF97;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Atmosphere;
import wetside.physics.Liquid;
import wetside.physics.Saturation;
import wetside.physics.Steam;
import wetside.physics.Water;
import wetside.physics.WaterState;

class WaterPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Water and steam");

    private static final Tolerance PRINTED = Tolerance.relative(3e-9);
    private static final String NINE_DIGITS = "nine printed digits";
    private static final String BACKWARD = "the table is of the backward equation, which may be 25 mK off";

    /** T [K], p [MPa], v [m³/kg], h [kJ/kg], u [kJ/kg], s [kJ/(kg K)], cp [kJ/(kg K)], w [m/s]. */
    private static final double[][] TABLE_5 = {
        {300, 3, 0.100215168e-2, 0.115331273e3, 0.112324818e3, 0.392294792, 0.417301218e1, 0.150773921e4},
        {300, 80, 0.971180894e-3, 0.184142828e3, 0.106448356e3, 0.368563852, 0.401008987e1, 0.163469054e4},
        {500, 3, 0.120241800e-2, 0.975542239e3, 0.971934985e3, 0.258041912e1, 0.465580682e1, 0.124071337e4},
    };

    private static final double[][] TABLE_15 = {
        {300, 0.0035, 0.394913866e2, 0.254991145e4, 0.241169160e4, 0.852238967e1, 0.191300162e1, 0.427920172e3},
        {700, 0.0035, 0.923015898e2, 0.333568375e4, 0.301262819e4, 0.101749996e2, 0.208141274e1, 0.644289068e3},
        {700, 30, 0.542946619e-2, 0.263149474e4, 0.246861076e4, 0.517540298e1, 0.103505092e2, 0.480386523e3},
    };

    @Test
    void aLiquid() {
        for (double[] row : TABLE_5) {
            compare("IAPWS R7-97(2012) table 5", row, Liquid.state(row[1] * 1e6, row[0]));
        }
    }

    @Test
    void bSteam() {
        for (double[] row : TABLE_15) {
            compare("IAPWS R7-97(2012) table 15", row, Steam.state(row[1] * 1e6, row[0]));
        }
    }

    private static void compare(String source, double[] row, WaterState state) {
        String at = " at %s K, %s MPa".formatted(Published.digits(row[0], 4), Published.digits(row[1], 4));
        check("v" + at + " [m³/kg]", source, row[2], state.volume());
        check("h" + at + " [kJ/kg]", source, row[3], state.enthalpy() / 1e3);
        check("u" + at + " [kJ/kg]", source, row[4], state.internalEnergy() / 1e3);
        check("s" + at + " [kJ/(kg K)]", source, row[5], state.entropy() / 1e3);
        check("cp" + at + " [kJ/(kg K)]", source, row[6], state.heatCapacity() / 1e3);
        check("speed of sound" + at + " [m/s]", source, row[7], state.soundSpeed());
    }

    private static void check(String quantity, String source, double expected, double computed) {
        published.check(quantity, source, expected, computed, PRINTED, NINE_DIGITS);
    }

    @Test
    void cBoilingLine() {
        String source = "IAPWS R7-97(2012) table 35";
        check("boiling pressure at 300 K [MPa]", source, 0.353658941e-2, Water.saturationPressure(300) / 1e6);
        check("boiling pressure at 500 K [MPa]", source, 0.263889776e1, Water.saturationPressure(500) / 1e6);
        check("boiling pressure at 600 K [MPa]", source, 0.123443146e2, Water.saturationPressure(600) / 1e6);
        source = "IAPWS R7-97(2012) table 36";
        check("boiling temperature at 0.1 MPa [K]", source, 0.372755919e3, Water.saturationTemperature(1e5));
        check("boiling temperature at 1 MPa [K]", source, 0.453035632e3, Water.saturationTemperature(1e6));
        check("boiling temperature at 10 MPa [K]", source, 0.584149488e3, Water.saturationTemperature(1e7));
    }

    @Test
    void dTemperatureFromEnthalpy() {
        double[][] liquid = {{3, 500, 391.798509}, {80, 500, 378.108626}, {80, 1500, 611.041229}};
        for (double[] row : liquid) {
            temperature("table 7", row, Liquid.temperature(row[0] * 1e6, row[1] * 1e3));
        }
        double[][] steam = {
            {0.001, 3000, 534.433241}, {3, 3000, 575.373370}, {3, 4000, 1010.77577},
            {5, 3500, 801.299102}, {5, 4000, 1015.31583}, {25, 3500, 875.279054},
        };
        for (double[] row : steam) {
            temperature("table 24", row, Steam.temperature(row[0] * 1e6, row[1] * 1e3));
        }
    }

    private static void temperature(String table, double[] row, double computed) {
        published.check(
                "T at %s MPa, %.0f kJ/kg [K]".formatted(Published.digits(row[0], 4), row[1]),
                "IAPWS R7-97(2012) " + table,
                row[2],
                computed,
                Tolerance.absolute(0.025),
                BACKWARD);
    }

    @Test
    void eAnotherProgramOfTheSameFormulation() {
        IF97 oracle = new IF97(IF97.UnitSystem.SI);
        String source = "com.hummeling:if97 1.0.5, 2000 random states 0-200 °C";
        SplittableRandom random = new SplittableRandom(97);
        double liquid = 0;
        double steam = 0;
        double boiling = 0;
        for (int i = 0; i < 2000; i++) {
            double t = random.nextDouble(273.16, 473.15);
            double ps = Water.saturationPressure(t);
            boiling = Math.max(boiling, Math.abs(ps / oracle.saturationPressureT(t) - 1));
            double above = ps * random.nextDouble(1.001, 20) + 1e5;
            WaterState state = Liquid.state(above, t);
            liquid = Math.max(liquid, Math.abs(state.volume() / oracle.specificVolumePT(above, t) - 1));
            liquid = Math.max(liquid, Math.abs(state.enthalpy() - oracle.specificEnthalpyPT(above, t)) / 1e6);
            double below = ps * random.nextDouble(0.01, 0.999);
            state = Steam.state(below, t);
            steam = Math.max(steam, Math.abs(state.volume() / oracle.specificVolumePT(below, t) - 1));
            steam = Math.max(steam, Math.abs(state.enthalpy() / oracle.specificEnthalpyPT(below, t) - 1));
        }
        String rounding = "the same equations: rounding only";
        published.atMost("boiling pressure, largest relative difference", source, 1e-12, boiling, rounding);
        published.atMost("liquid v and h, largest relative difference", source, 1e-12, liquid, rounding);
        published.atMost("steam v and h, largest relative difference", source, 1e-12, steam, rounding);
    }

    @Test
    void fIndependentHandbook() {
        String source = "Perry's Chemical Engineers' Handbook, 9th ed., table 2-135";
        double[][] table = {
            {290, .001920, 55.440}, {330, .017213, 54.662}, {360, .062194, 53.698},
            {370, .090535, 53.321}, {390, .17964, 52.490}, {400, .24577, 52.038},
        };
        for (double[] row : table) {
            double ps = Water.saturationPressure(row[0]);
            String at = " at %.0f K ".formatted(row[0]);
            published.check(
                    "boiling pressure" + at + "[MPa]",
                    source,
                    row[1],
                    ps / 1e6,
                    Tolerance.relative(3e-4),
                    "printed digits; another formulation");
            published.check(
                    "density of boiling water" + at + "[mol/dm³]",
                    source,
                    row[2],
                    Liquid.state(ps, row[0]).density() / 18.015268,
                    Tolerance.relative(3e-5),
                    "printed digits; another formulation");
        }
    }

    @Test
    void gBoilingAtAltitude() {
        String source = "ISO 2533 with IAPWS-IF97, computed with python3-iapws 1.5.3";
        double[][] table = {
            {0, 99.974}, {500, 98.313}, {1000, 96.649}, {1610, 94.616}, {2000, 93.315}, {3000, 89.972}, {4000, 86.620},
        };
        for (double[] row : table) {
            published.check(
                    "water boils at %.0f m [°C]".formatted(row[0]),
                    source,
                    row[1],
                    Water.saturationTemperature(Atmosphere.pressure(row[0])) - 273.15,
                    Tolerance.absolute(0.001),
                    "last printed digit, and the rounded exponent used there");
        }
    }

    /** Absolute pressure [bar], T [°C], v' [m³/kg], v'' [m³/kg], h' [kJ/kg], h'' [kJ/kg]. */
    private static final double[][] BY_PRESSURE = {
        {1.01325, 99.9743, 0.00104344, 1.673295, 418.991, 2675.531},
        {2.2, 123.2514, 0.00106331, 0.810119, 517.615, 2710.618},
        {3.01325, 133.6757, 0.00107333, 0.603287, 562.099, 2725.094},
        {10, 179.8856, 0.00112723, 0.194349, 762.683, 2777.120},
    };

    @Test
    void hBoilingWaterByPressureThroughThePlantsFit() {
        String source = "IAPWS-IF97 by python3-iapws 1.5.3, against the fit the plant uses";
        double[] at = new double[Saturation.SIZE];
        for (double[] row : BY_PRESSURE) {
            double p = row[0] * 1e5;
            double t = Water.saturationTemperature(p);
            Saturation.at(t, at);
            String name = " at %s bar ".formatted(Published.digits(row[0], 6));
            double vl = at[Saturation.LIQUID_VOLUME];
            double vv = at[Saturation.VAPOUR_VOLUME];
            String fit = "printed digits and the fit's 5e-6";
            published.check("T" + name + "[°C]", source, row[1], t - 273.15, Tolerance.digit(1e-4), "printed digits");
            published.check("v'" + name + "[m³/kg]", source, row[2], vl, Tolerance.relative(1e-5), fit);
            published.check("v''" + name + "[m³/kg]", source, row[3], vv, Tolerance.relative(1e-5), fit);
            double hl = (at[Saturation.LIQUID_ENERGY] + p * vl) / 1e3;
            double hv = (at[Saturation.VAPOUR_ENERGY] + p * vv) / 1e3;
            published.check(
                    "h'" + name + "[kJ/kg]", source, row[4], hl, Tolerance.absolute(0.013), "the fit's 12 J/kg");
            published.check(
                    "h''" + name + "[kJ/kg]", source, row[5], hv, Tolerance.absolute(0.006), "the fit's 4 J/kg");
        }
    }
}
