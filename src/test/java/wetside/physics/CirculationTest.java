package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CirculationTest {
    private final double[] into = new double[2];

    @Test
    void theFlowBetweenTwoBodiesBalancesDriveAndFriction() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 3000; i++) {
            double a = Math.exp(random.nextDouble(4, 16));
            double b = Math.exp(random.nextDouble(5, 20));
            double drive = random.nextDouble(0.1, 5);
            double difference = Math.exp(random.nextDouble(-7, 4.5));
            double exchange = Math.exp(random.nextDouble(-3, 5));
            Circulation.between(a, b, drive, difference, exchange, 4200, into);
            double w = into[0];
            double share = -Math.expm1(-exchange / (w * 4200));
            double push = drive * difference * share;
            assertThat(a * w + b * w * w).isCloseTo(push, within(1e-7 * push));
            assertThat(into[1])
                    .isCloseTo(w * 4200 * share, within(1e-9 * into[1]))
                    .isLessThan(exchange * 1.0000001);
        }
    }

    @Test
    void aColderBoilerDrivesNothing() {
        Circulation.between(1e4, 1e7, 2, 0, 10, 4200, into);
        assertThat(into).containsExactly(0, 0);
        Circulation.between(1e4, 1e7, 2, -5, 10, 4200, into);
        assertThat(into).containsExactly(0, 0);
    }

    @Test
    void aHeatedLoopBalancesWithBothTerms() {
        double w = Circulation.heated(2e4, 3e7, 2, 120, 4200);
        assertThat(w * w * (2e4 + 3e7 * w)).isCloseTo(2 * 120 / 4200.0, within(1e-12));
        assertThat(Circulation.heated(2e4, 3e7, 2, 0, 4200)).isZero();
    }
}
