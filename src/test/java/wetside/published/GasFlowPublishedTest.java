package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.GasFlow;
import wetside.physics.Liquid;
import wetside.physics.Steam;
import wetside.physics.Water;
import wetside.physics.WaterState;

class GasFlowPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Steam through holes and safety valves");

    private static final double POUND = 0.45359237;
    private static final double INCH2 = 0.0254 * 0.0254;
    private static final double PSI = POUND * 9.80665 / INCH2;
    private static final double ATMOSPHERE = 101325;

    @Test
    void aNapier() {
        published.check(
                "flow at 100 psia through 2 in² [lb/s]",
                "Hughes, The Steam Injector, 1912, p. 24",
                2.86,
                GasFlow.napier(2 * INCH2, 100 * PSI) / POUND,
                Tolerance.digit(0.01),
                "last printed digit");
        published.check(
                "flow of a valve with K A 0.250 in², set 200 psi [lb/h]",
                "ASME VIII-2 appendix 10, example 1 (stamped 3020 lb/h)",
                3020,
                GasFlow.napier(0.250 * INCH2, (1.1 * 200 + 14.7) * PSI) / POUND * 3600,
                Tolerance.relative(0.002),
                "three digits of K A; 51.5 there for 3600/70");
    }

    @Test
    void bChokedTheory() {
        published.check(
                "critical pressure ratio, k 1.3",
                "White, Fluid Mechanics, §9.3",
                0.5457,
                GasFlow.criticalRatio(1.3),
                Tolerance.digit(1e-4),
                "last printed digit");
        published.check(
                "critical pressure ratio, k 1.135",
                "steam-table practice for dry saturated steam",
                0.577,
                GasFlow.criticalRatio(1.135),
                Tolerance.digit(1e-3),
                "last printed digit");
        String source = "ISO 4126-1:2013 (formula from memory)";
        published.check("C(1.135)", source, 2.50934, GasFlow.iso4126(1.135), Tolerance.digit(1e-5), "last digit");
        published.check("C(1.3)", source, 2.63435, GasFlow.iso4126(1.3), Tolerance.digit(1e-5), "last digit");
        published.check("C(1.4)", source, 2.70332, GasFlow.iso4126(1.4), Tolerance.digit(1e-5), "last digit");
        published.check(
                "choked flow at 2.993 bar through 1 mm² [kg/h], by ISO's mixed units",
                source,
                1.6064,
                GasFlow.choked(1e-6, 2.993e5, 0.60707, 1.135) * 3600,
                Tolerance.relative(2e-4),
                "the standard's rounded factor 0.2883 · 3.948");
    }

    /** Gauge pressure [bar], largest mass flux of the homogeneous equilibrium [kg/(s m²)], critical ratio. */
    private static final double[][] EQUILIBRIUM = {
        {0.5, 230.7},
        {1.0, 304.2},
        {1.2, 333.5},
        {1.5, 377.3},
        {2.0, 449.9},
        {3.0, 594.1},
        {6.0, 1022.1},
        {9.0, 1445.8},
        {12, 1867.4},
    };

    @Test
    void cEquilibriumExpansionOfRealSteam() {
        String source = "isentropic homogeneous equilibrium of IAPWS-IF97 steam, computed with python3-iapws 1.5.3";
        for (double[] row : EQUILIBRIUM) {
            double p0 = row[0] * 1e5 + ATMOSPHERE;
            String at = " at %s barg".formatted(Published.digits(row[0], 2));
            double flux = largestFlux(p0);
            published.check(
                    "largest flux" + at + " [kg/(s m²)]",
                    source,
                    row[1],
                    flux,
                    Tolerance.relative(3e-4),
                    "four printed digits");
            double v0 = Steam.state(p0, Water.saturationTemperature(p0)).volume();
            if (row[0] <= 3) {
                published.check(
                        "ideal gas with k 1.135 against it" + at + " [kg/(s m²)]",
                        source,
                        row[1],
                        GasFlow.choked(1, p0, v0, GasFlow.SATURATED_STEAM),
                        Tolerance.relative(2.5e-3),
                        "how far a constant k carries");
            }
            published.check(
                    "Napier against it" + at + " [kg/(s m²)]",
                    source,
                    row[1],
                    GasFlow.napier(1, p0),
                    Tolerance.relative(0.045),
                    "the rule of thumb is that far off at low pressure");
        }
    }

    /** Maximum over the throat pressure of the flux of dry saturated steam expanding wet at constant entropy. */
    private static double largestFlux(double p0) {
        WaterState inlet = Steam.state(p0, Water.saturationTemperature(p0));
        double low = 0.4 * p0;
        double high = 0.9 * p0;
        for (int turn = 0; turn < 80; turn++) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            if (flux(inlet, a) < flux(inlet, b)) {
                low = a;
            } else {
                high = b;
            }
        }
        return flux(inlet, (low + high) / 2);
    }

    private static double flux(WaterState inlet, double pressure) {
        double t = Water.saturationTemperature(pressure);
        WaterState liquid = Liquid.state(pressure, t);
        WaterState vapour = Steam.state(pressure, t);
        double x = (inlet.entropy() - liquid.entropy()) / (vapour.entropy() - liquid.entropy());
        double h = liquid.enthalpy() + x * (vapour.enthalpy() - liquid.enthalpy());
        double v = liquid.volume() + x * (vapour.volume() - liquid.volume());
        return Math.sqrt(2 * (inlet.enthalpy() - h)) / v;
    }
}
