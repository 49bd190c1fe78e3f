package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GasFlowTest {
    private static final double RT = 1.8e5;
    private final double[] into = new double[3];

    @Test
    void slopesAreDifferences() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2000; i++) {
            double k = random.nextDouble(1.05, 1.4);
            double p0 = random.nextDouble(1.1e5, 1e6);
            double p2 = p0 * random.nextDouble(0.05, 0.98);
            flow(p0, p2, k);
            double up = into[1];
            double down = into[2];
            double step = 1e-5 * p0;
            if (Math.abs(p2 / p0 - GasFlow.criticalRatio(k)) < 1e-4) {
                continue;
            }
            double scale = 1e-5 * up;
            assertThat(up).isCloseTo((flow(p0 + step, p2, k) - flow(p0 - step, p2, k)) / (2 * step), within(scale));
            assertThat(down).isCloseTo((flow(p0, p2 + step, k) - flow(p0, p2 - step, k)) / (2 * step), within(scale));
        }
    }

    @Test
    void chokingSetsInWithoutAJump() {
        double k = GasFlow.SATURATED_STEAM;
        double p2 = 2e5 * GasFlow.criticalRatio(k);
        assertThat(flow(2e5, p2 * 1.000001, k)).isCloseTo(flow(2e5, p2, k), within(1e-12));
        assertThat(flow(2e5, 1e3, k)).isEqualTo(flow(2e5, p2, k));
        assertThat(flow(2e5, p2, k)).isCloseTo(GasFlow.choked(1e-6, 2e5, RT / 2e5, k), within(1e-15));
    }

    @Test
    void nothingFlowsBackwards() {
        assertThat(flow(1e5, 1e5, 1.4)).isZero();
        assertThat(flow(1e5, 2e5, 1.4)).isZero();
    }

    private double flow(double p0, double p2, double k) {
        GasFlow.orifice(1e-6, p0, RT / p0, p2, k, into);
        return into[0];
    }
}
