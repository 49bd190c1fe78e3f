package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.FlowCoefficient;
import wetside.physics.Friction;
import wetside.physics.Liquid;
import wetside.physics.MinorLoss;
import wetside.physics.Orifice;
import wetside.physics.Transport;

class OrificePublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Holes, valves and fittings");

    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168;
    private static final double GPM = 3.785411784e-3 / 60;

    @Test
    void aPlateInLitresAMinute() {
        // 50 mm in a 73.66 mm pipe, water at 15 °C, 17 kPa, D and D/2 tappings
        double flow = plateFlow(0.05, 0.07366, 15, 17e3);
        double rho = Liquid.state(101325, 288.15).density();
        published.check(
                "flow through the plate [l/min]",
                "Crane TP-410M, example 7.29 (with the printed unit corrected)",
                478,
                flow / rho * 60000,
                Tolerance.relative(0.006),
                "discharge factor read from a chart");
        published.check(
                "flow through the plate [kg/s]",
                "independent on-line calculator",
                7.93916,
                flow,
                Tolerance.relative(0.003),
                "its water properties and bore correction are not stated");
    }

    @Test
    void bPlateInGallonsAMinute() {
        double d = 2 * INCH;
        double pipe = 4.026 * INCH;
        double drop = 4.4 * 3376.85;
        double celsius = (60 - 32) * 5 / 9.0;
        double rho = Liquid.state(101325, celsius + 273.15).density();
        // the manometer's mercury stands under water
        double flow = plateFlow(d, pipe, celsius, drop * (13.57 - 1) / 13.57);
        published.check(
                "flow through the plate [US gal/min]",
                "Crane TP-410, example 7.23",
                106,
                flow / rho / GPM,
                Tolerance.relative(0.01),
                "three printed digits, factor read from a chart");
    }

    private static double plateFlow(double hole, double pipe, double celsius, double drop) {
        double t = celsius + 273.15;
        double rho = Liquid.state(101325, t).density();
        double mu = Transport.viscosity(rho, t);
        double beta = hole / pipe;
        double area = Math.PI / 4 * hole * hole / Math.sqrt(1 - Math.pow(beta, 4));
        double flow = Orifice.massFlow(0.6, area, rho, drop);
        for (int turn = 0; turn < 20; turn++) {
            double c = Orifice.plate(beta, Friction.reynolds(flow, pipe, mu), 1, 0.47);
            flow = Orifice.massFlow(c, area, rho, drop);
        }
        return flow;
    }

    @Test
    void cControlValve() {
        published.check(
                "K_v, water at 90 °C, 6.8 to 2.2 bar, 360 m³/h",
                "IEC 60534-2-1, example 1 (printed 165)",
                164.9955,
                FlowCoefficient.liquid(360 / 3600.0, 965.4, 680e3, 220e3, 70.1e3, 22120e3, 0.9),
                Tolerance.relative(1e-5),
                "rounded density of the reference water");
        published.check(
                "the same, flashing (F_L 0.6)",
                "IEC 60534-2-1, example 2 (printed 238)",
                238.06,
                FlowCoefficient.liquid(360 / 3600.0, 965.4, 680e3, 220e3, 70.1e3, 22120e3, 0.6),
                Tolerance.relative(1e-4),
                "five digits, rounded critical pressure");
    }

    @Test
    void dAmericanFlowCoefficient() {
        double rho = 60.998 * 0.45359237 / Math.pow(0.3048, 3);
        double p1 = 80.6 * PSI;
        double p2 = 70.8 * PSI;
        double kv = FlowCoefficient.liquid(250 * GPM, rho, p1, p2, 20e3, 22.064e6, 0.9);
        published.check(
                "C_v for 250 gpm",
                "Crane TP-410, example 7.27",
                79.94,
                kv * FlowCoefficient.CV_PER_KV,
                Tolerance.relative(0.015),
                "there for a valve one size below its pipe; its reducers are left out here");
    }

    @Test
    void eLiftCheckValve() {
        // 62.7 mm valve in 77.9 mm pipe: K = [K_valve + b (0.5 (1 - b²) + (1 - b²)²)] / b⁴ on the pipe
        String source = "Crane TP-410M, example 7.5 (its text and appendix differ by 6 %)";
        double beta = 62.7 / 77.9;
        double b2 = beta * beta;
        double k = (600 * 0.017 + beta * (0.5 * (1 - b2) + MinorLoss.expansion(62.7, 77.9))) / (b2 * b2);
        double flow = 300 / 60000.0 * 998.2;
        published.check("K of the valve on its pipe", source, 26.3, k, Tolerance.relative(0.06), "as the source says");
        published.check(
                "pressure drop [Pa]",
                source,
                14450,
                MinorLoss.pressureDrop(k, flow, 0.0779, 998.2),
                Tolerance.relative(0.06),
                "as the source says");
    }

    @Test
    void fSuddenChanges() {
        published.check(
                "K of a sudden widening 1 : 2 in bore",
                "White, Fluid Mechanics, §6.9 (from memory)",
                0.5625,
                MinorLoss.expansion(1, 2),
                Tolerance.relative(1e-12),
                "exact");
        published.check(
                "K of a sudden narrowing 2 : 1 in bore",
                "White, Fluid Mechanics, §6.9 (from memory)",
                0.315,
                MinorLoss.contraction(1, 2),
                Tolerance.relative(1e-12),
                "exact");
    }
}
