package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Readings told from simulated draws, where it is known how they come about. */
class ToldTest {
    private static final int[] DRAWS = IntStream.range(0, 8).toArray();

    private final Random random = new Random(5);
    private final double[] severity =
            IntStream.range(0, 8).mapToDouble(k -> (k + 0.5) / 8).toArray();
    private final double[] whole = IntStream.range(0, 8)
            .mapToDouble(k -> 90 + 4 * random.nextGaussian())
            .toArray();

    private interface Law {
        double at(double s, double h);
    }

    private Told told(Law law) {
        return new Told(
                DRAWS,
                severity,
                whole,
                IntStream.range(0, 8)
                        .mapToDouble(k -> law.at(severity[k], whole[k]))
                        .toArray());
    }

    private void isTold(Law law, double tolerance) {
        Told told = told(law);
        for (double s : new double[] {0.1, 0.33, 0.71, 0.9}) {
            assertThat(told.at(s, 93, 3)).isCloseTo((float) law.at(s, 93), within((float) tolerance));
        }
        assertThat(told.miss()).isLessThan(tolerance);
    }

    @Test
    void whatTakesAwayAShareIsTold() {
        isTold((s, h) -> h * (1 - 0.6 * s), 0.01);
    }

    @Test
    void whatAddsMoreAndMoreIsTold() {
        isTold((s, h) -> h + 3 + 5 * s + 8 * s * s, 0.01);
    }

    @Test
    void whatReadsTheSameOnEveryMachineIsTold() {
        isTold((s, h) -> 12 - 7 * s, 0.01);
    }

    @Test
    void aBendIsFollowedBetweenNeighbours() {
        isTold((s, h) -> h + (s < 0.5 ? 0 : 40 * (s - 0.5)), 2.5);
    }

    @Test
    void whatTheFitLeavesTravelsWithTheDonor() {
        double[] kick = {2, -2, 2, -2, -2, 2, -2, 2};
        double[] reading = IntStream.range(0, 8)
                .mapToDouble(k -> whole[k] - 10 * severity[k] + kick[k])
                .toArray();
        Told told = new Told(DRAWS, severity, whole, reading);
        double spread = told.at(0.4, 90, 2) - told.at(0.4, 90, 3);
        assertThat(spread).isBetween(1.5, 7.0);
        assertThat(told.miss()).isBetween(1.8, 4.0);
    }

    @Test
    void nothingIsToldFarBeyondWhatWasSimulatedNorBelowNothing() {
        Told told = told((s, h) -> Math.max(0, 20 - 40 * s));
        for (int k = 0; k < 8; k++) {
            assertThat(told.at(1, 130, k)).isBetween(0f, 21f);
        }
    }
}
