package wetside.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;

/** Pumps from 8 to 10 bar as they come; a tired one gives 0.8 bar less than it did. */
class EarlierTest {
    private static final int DRAWS = 32;

    private static Library pumps() {
        float[][] whole = new float[DRAWS][];
        float[][] tired = new float[DRAWS][];
        for (int k = 0; k < DRAWS; k++) {
            float pressure = 8 + 2 * (k * 7 % DRAWS) / (DRAWS - 1f);
            whole[k] = new float[] {pressure, 0};
            tired[k] = new float[] {pressure - 0.8f, 0};
        }
        return Toy.library(
                List.of(Toy.cause("whole", 1), Toy.cause("tired", 1)),
                List.of(Toy.number("gauge", 0.1), Toy.yesNo("noisy", 0.1)),
                whole,
                tired);
    }

    private static Posterior believed(Observations today, Observations earlier) {
        return Inference.of(Earlier.columns(pumps(), earlier)).posterior(Earlier.observed(today, earlier));
    }

    private static Observations gauge(double bar) {
        return Observations.of(Observation.number("gauge", bar));
    }

    @Test
    void theSameReadingMeansAnotherThingOnAnotherMachine() {
        assertThat(believed(gauge(8.7), Observations.none()).share("tired")).isBetween(0.3, 0.7);
        assertThat(believed(gauge(8.7), gauge(9.5)).share("tired")).isGreaterThan(0.9);
        assertThat(believed(gauge(8.7), gauge(8.7)).share("tired")).isLessThan(0.1);
    }

    @Test
    void anEarlierReadingNarrowsWhatIsExpectedAndSaysNothingOfTheCause() {
        Posterior nothing = believed(Observations.none(), Observations.none());
        Posterior known = believed(Observations.none(), gauge(9.5));
        assertThat(known.share("tired")).isEqualTo(nothing.share("tired"), within(0.02));
        assertThat(known.expected(0, 0).mean()).isEqualTo(9.5, within(0.1));
        assertThat(known.expected(1, 0).mean()).isEqualTo(8.7, within(0.1));
        assertThat(known.expected(0, 0).sd())
                .isLessThan(0.75 * nothing.expected(0, 0).sd());
    }

    @Test
    void wordsOfEarlierTellNothing() {
        Observations words = Observations.of(Observation.choice("noisy", 1));
        assertThat(Earlier.columns(pumps(), words).questions()).hasSize(2);
    }
}
