package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FrictionTest {
    private final double[] into = new double[2];

    @Test
    void slopeIsADifferenceInEveryRegime() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 3000; i++) {
            double roughness = random.nextDouble(0, 0.02);
            double bore = random.nextDouble(1e-3, 12e-3);
            double flow = Math.exp(random.nextDouble(-12, 0)) * (random.nextBoolean() ? 1 : -1);
            double drop = drop(flow, bore, roughness);
            double slope = into[1];
            double step = 1e-5 * Math.abs(flow);
            double difference = (drop(flow + step, bore, roughness) - drop(flow - step, bore, roughness)) / (2 * step);
            assertThat(slope).isCloseTo(difference, within(1e-5 * slope));
            double re = Friction.reynolds(flow, bore, 1e-3);
            double v = flow / (1000 * Math.PI / 4 * bore * bore);
            double darcy = Friction.churchill(re, roughness) / bore * 1000 * v * Math.abs(v) / 2;
            assertThat(drop).isCloseTo(darcy, within(1e-9 * Math.abs(darcy)));
        }
    }

    @Test
    void dropAlwaysGrowsWithFlowAndIsZeroAtRest() {
        assertThat(drop(0, 4e-3, 1e-3)).isZero();
        assertThat(into[1]).isCloseTo(128 * 1e-3 / (Math.PI * 1000 * 2.56e-10), within(1.0));
        double before = 0;
        for (double flow = 1e-6; flow < 1; flow *= 1.01) {
            double now = drop(flow, 4e-3, 1e-3);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void noRegimeJumpsInTheBridgedFactor() {
        assertThat(Friction.dunlop(2000.001, 1e-3)).isCloseTo(Friction.dunlop(2000, 1e-3), within(1e-6));
        assertThat(Friction.dunlop(3999.999, 1e-3)).isCloseTo(Friction.dunlop(4000, 1e-3), within(1e-6));
    }

    private double drop(double flow, double bore, double roughness) {
        Friction.pipe(flow, 1, bore, roughness, 1000, 1e-3, into);
        return into[0];
    }
}
