package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RegulationTest {
    private final Tuning tuning = new Tuning(0.12, 150, 0);

    @Test
    void aLongWarmUpDoesNotWindUpTheIntegral() {
        double[] memory = new double[1];
        for (int second = 0; second < 600; second++) {
            assertThat(Regulation.proportionalIntegral(tuning, 50, 1, 0, 1, memory))
                    .isEqualTo(1);
        }
        assertThat(memory[0]).isZero();
        assertThat(Regulation.proportionalIntegral(tuning, -1, 1, 0, 1, memory)).isZero();
    }

    @Test
    void aSteadyErrorIsIntegratedOnceInsideTheLimits() {
        double[] memory = {500};
        double output = Regulation.proportionalIntegral(tuning, 0.5, 2, 0, 1, memory);
        assertThat(memory[0]).isEqualTo(501);
        assertThat(output).isCloseTo(0.12 * (0.5 + 501 / 150.0), within(1e-12));
    }

    @Test
    void noPulsesNoRipple() {
        assertThat(Regulation.ripple(60, 200, 10, 0)).isZero();
        assertThat(Regulation.ripple(60, 200, 10, 1)).isZero();
    }
}
