package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Toy;

/** The twin's own error in readings that share it. The twin may be off by half of a reading; the instrument by 0.3. */
class SharedErrorTest {
    private static final double OFF = 0.5;
    private static final double SD = 0.3;

    private static Question flow(String id, String sharing) {
        return new Question(id, id, new Answering.Number("g/s", SD, 0, OFF), Effort.minutes(1), sharing);
    }

    /** One cause reads 2 everywhere, the other nothing. */
    private static Inference inference(String sharing) {
        Library library = Toy.library(
                List.of(Toy.cause("runs", 1), Toy.cause("dead", 1)),
                List.of(flow("left", "flow"), flow("right", sharing)),
                new float[][] {{2, 2}},
                new float[][] {{0, 0}});
        return Inference.of(library, Assumptions.TEXTBOOK);
    }

    private static double odds(Inference inference, Observation... observations) {
        Posterior posterior = inference.posterior(Observations.of(observations));
        return Math.exp(posterior.logWeight(0) - posterior.logWeight(1));
    }

    /** exp(½ yᵀ R⁻¹ y) with R the sum of what each has alone and what both have. */
    private static double expected(double common) {
        double alone = SD * SD + (1 - common) * OFF * OFF * 4;
        return Math.exp(0.5 * 2 * 4 / (alone + 2 * common * OFF * OFF * 4));
    }

    @Test
    void theSameReadTwiceIsOneProof() {
        Observation left = Observation.number("left", 2);
        assertThat(odds(inference("other"), left, left.by("second look")))
                .as("published: 6.7793")
                .isEqualTo(expected(1), within(1e-6))
                .isEqualTo(6.7793, within(1e-4));
    }

    @Test
    void theSameQuantityElsewhereIsLessThanTwo() {
        Observation left = Observation.number("left", 2);
        Observation right = Observation.number("right", 2);
        assertThat(odds(inference("flow"), left, right)).isEqualTo(expected(0.5), within(1e-6));
        assertThat(odds(inference("other"), left, right))
                .isEqualTo(expected(0), within(1e-6))
                .isGreaterThan(39);
    }

    /** What both readings are off by says nothing of their difference. */
    @Test
    void aDifferenceBetweenTwoPlacesSaysMore() {
        Library library = Toy.library(
                List.of(Toy.cause("alike", 1), Toy.cause("left weak", 1)),
                List.of(flow("left", "flow"), flow("right", "flow")),
                new float[][] {{5, 5}},
                new float[][] {{4, 5}});
        Library apart = Toy.library(
                library.causes(),
                List.of(flow("left", "flow"), flow("right", "other")),
                new float[][] {{5, 5}},
                new float[][] {{4, 5}});
        Observation[] both = {Observation.number("left", 4), Observation.number("right", 5)};
        double together = odds(Inference.of(library, Assumptions.TEXTBOOK), both);
        assertThat(together).isLessThan(odds(Inference.of(apart, Assumptions.TEXTBOOK), both));
    }

    /** A machine that read as far off when it worked: the twin is off, not the machine. */
    @Test
    void whatTheTwinWasOffByWhenAllWasWellItIsOffByNow() {
        Library library = Toy.library(
                List.of(Toy.cause("works", 1), Toy.cause("weak", 1)),
                List.of(new Question(
                        "flow", "flow", new Answering.Number("g/s", 0.02, 0, 0.1), Effort.minutes(1), "flow value")),
                new float[][] {{5}},
                new float[][] {{4.5f}});
        Observations today = Observations.of(Observation.number("flow", 4.5));
        Observations earlier = Observations.of(Observation.number("flow", 4.51));
        assertThat(Inference.of(library, Assumptions.TEXTBOOK).posterior(today).share("weak"))
                .isGreaterThan(0.6);
        assertThat(Inference.of(Earlier.columns(library, earlier), Assumptions.TEXTBOOK)
                        .posterior(Earlier.observed(today, earlier))
                        .share("works"))
                .isGreaterThan(0.99);
    }
}
