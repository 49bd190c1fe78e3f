package wetside.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    /** Murphy's ten forecasts as commonly told (recalled, recomputed by hand): ECE 0.12. */
    @Test
    void tenForecasts() {
        double[] said = {0.1, 0.1, 0.1, 0.1, 0.5, 0.5, 0.9, 0.9, 0.9, 0.9};
        boolean[] so = {false, false, false, true, true, false, true, true, true, false};
        Calibration c = Calibration.of(said, so);
        assertThat(c.error()).isCloseTo(0.12, within(1e-12));
        assertThat(c.bins()).hasSize(3);
        assertThat(c.bins().get(2).right()).isEqualTo(0.75);
        assertThat(c.bins().get(2).low()).isBetween(0.25, 0.35);
    }

    /** Beta(5,2) confidences, 100 forecasts: 0.135; 1000: 0.043 (enumerated beforehand by another program). */
    @Test
    void limitOfPerfectForecastsShrinksWithTheirNumber() {
        assertThat(limit(100)).isCloseTo(0.135, within(0.015));
        assertThat(limit(1000)).isCloseTo(0.043, within(0.005));
    }

    private static double limit(int n) {
        SplittableRandom random = new SplittableRandom(3);
        double[] said = new double[n];
        for (int i = 0; i < n; i++) {
            double[] u = random.doubles(6).sorted().toArray();
            said[i] = u[4]; // fifth smallest of six: Beta(5, 2)
        }
        return Calibration.of(said, new boolean[n]).limit(7);
    }

    /** Costs that go up and down together are told apart by few jobs; a ratio of one stays one. */
    @Test
    void pairedJobsGiveNarrowIntervals() {
        SplittableRandom random = new SplittableRandom(5);
        double[] theirs = random.doubles(60, 10, 500).toArray();
        double[] ours = Arrays.stream(theirs)
                .map(c -> 0.8 * c + random.nextDouble(-5, 5))
                .toArray();
        Interval ratio = Interval.ratio(ours, theirs, 1);
        assertThat(ratio.value()).isCloseTo(0.8, within(0.01));
        assertThat(ratio.low()).isGreaterThan(0.78);
        assertThat(ratio.high()).isLessThan(0.82);
        assertThat(Interval.ratio(theirs, theirs, 1).high()).isEqualTo(1);
    }
}
