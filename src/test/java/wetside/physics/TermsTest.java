package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TermsTest {
    private final double[] flow = new double[2];

    @Test
    void flowSolvesTheQuadraticAndItsSlopeIsADifference() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 1000; i++) {
            double a = Math.exp(random.nextDouble(0, 20));
            double b = Math.exp(random.nextDouble(0, 30));
            double drop = random.nextDouble(-1e6, 1e6);
            Terms.flow(a, b, drop, flow);
            double q = flow[0];
            double slope = flow[1];
            assertThat(a * q + b * q * Math.abs(q)).isCloseTo(drop, within(1e-9 * Math.abs(drop)));
            double step = 1e-4 * Math.abs(drop);
            Terms.flow(a, b, drop + step, flow);
            double above = flow[0];
            Terms.flow(a, b, drop - step, flow);
            assertThat(slope).isCloseTo((above - flow[0]) / (2 * step), within(1e-6 * slope));
        }
    }

    @Test
    void atRestNothingFlowsAndTheSlopeIsFinite() {
        Terms.flow(2e6, 1e9, 0, flow);
        assertThat(flow).containsExactly(0, 5e-7);
    }

    @Test
    void pipeTermsAreTheFrictionLaws() {
        double drop = Friction.laminar(1e-6, 1.5, 4e-3, Terms.Liquid.COLD.mu());
        double a = Terms.pipeLaminar(4e-3, 1.5, Terms.Liquid.COLD);
        assertThat(a * 1e-6 * Terms.Liquid.COLD.rho()).isCloseTo(drop, within(1e-9 * drop));
        double b = Terms.pipeTurbulent(8e-3, 2, 3.5, Terms.Liquid.HOT);
        double k = 0.03 * 2 / 8e-3 + 3.5;
        double loss = MinorLoss.pressureDrop(k, 0.05, 8e-3, Terms.Liquid.HOT.rho());
        assertThat(b * 0.05 * 0.05).isCloseTo(loss, within(1e-9 * loss));
    }

    @Test
    void jetTermsAreTheOrificeLaw() {
        double bore = 0.7e-3;
        double b = Terms.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        double area = Math.PI / 4 * bore * bore;
        double expected = Orifice.massFlow(Terms.SHARP, area, Terms.Liquid.COLD.rho(), 9e5);
        assertThat(Math.sqrt(9e5 / b)).isCloseTo(expected, within(1e-9 * expected));
        Terms.flow(Terms.jetLaminar(b), b, 9e5, flow);
        assertThat(flow[0]).isCloseTo(expected, within(0.012 * expected));
    }

    @Test
    void aValveDropsOneBarAtItsFlowCoefficient() {
        double kv = 0.6;
        double flow = kv / 3600 * 999.1;
        assertThat(FlowCoefficient.quadratic(kv, 999.1) * flow * flow).isCloseTo(1e5, within(1e-6));
        double needed = FlowCoefficient.liquid(kv / 3600, 999.1, 5e5, 4e5, 2339, 22.064e6, 0.9);
        assertThat(needed).isCloseTo(kv, within(1e-12));
    }

    @Test
    void propertiesOfTheNamedWatersAreThoseOfTheFormulation() {
        named(Terms.Liquid.COLD, 20);
        named(Terms.Liquid.HOT, 93);
        named(Terms.Liquid.BOILER, 120);
    }

    private static void named(Terms.Liquid water, double celsius) {
        double t = celsius + 273.15;
        double rho =
                Liquid.state(Math.max(101325, Water.saturationPressure(t)), t).density();
        assertThat(water.rho()).isCloseTo(rho, within(0.01));
        assertThat(water.mu()).isCloseTo(Transport.viscosity(rho, t), within(1e-7));
    }
}
