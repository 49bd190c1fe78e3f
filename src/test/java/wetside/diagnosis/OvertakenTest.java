package wetside.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a repair has overtaken, on a made-up machine: mending a is felt in y1 only. */
class OvertakenTest {
    private final Library library = Toy.library(
            List.of(Toy.cause("whole", 1), Toy.cause("a", 1), Toy.cause("b", 1)),
            List.of(Toy.number("y1", 0.2), Toy.number("y2", 0.2)),
            new float[][] {{0, 0}},
            new float[][] {{5, 0}},
            new float[][] {{2, 4}});

    @Test
    void onlyWhatTheRepairMayHaveChangedIsOpenAgain() {
        Observations observed = Overtaken.observed(
                library,
                Observations.of(
                        Observation.number("y1", 5), Observation.number("y2", 0), Observation.stillBad("mend a")));
        assertThat(observed.about("y1")).isEmpty();
        assertThat(observed.about("before repair 1: y1")).isPresent();
        assertThat(observed.about("y2")).isPresent();
        Library wide = Overtaken.columns(library, observed);
        assertThat(wide.questions()).extracting(Question::id).containsExactly("y1", "y2", "before repair 1: y1");
        assertThat(wide.signatures().value(1, 0, 2)).isEqualTo(5);
        assertThat(wide.signatures().value(2, 0, 2)).isEqualTo(2);
    }

    @Test
    void everyRepairOvertakesWhatWasAskedSinceTheOneBefore() {
        Observations entered = Observations.of(Observation.number("y1", 5), Observation.stillBad("mend a"))
                .learning(Observation.number("y1", 2))
                .learning(Observation.stillBad("mend a"))
                .learning(Observation.number("y1", 2.1));
        Observations observed = Overtaken.observed(library, entered);
        assertThat(observed.stream().map(Observation::about))
                .containsExactly("before repair 1: y1", "mend a", "before repair 2: y1", "mend a", "y1");
        assertThat(Overtaken.before(observed, "y1").orElseThrow().about()).isEqualTo("before repair 2: y1");
        assertThat(Overtaken.before(observed, "before repair 2: y1")
                        .orElseThrow()
                        .value())
                .isEqualTo(5);
        assertThat(Overtaken.before(observed, "before repair 1: y1")).isEmpty();
        assertThat(Overtaken.observed(library, observed)).isEqualTo(observed);
    }

    /** With no repair between them, or one that cannot have changed it, the newer answer stands for both. */
    @Test
    void anAnswerGivenAnewTakesThePlaceOfTheOld() {
        Observations once = Observations.of(Observation.number("y2", 1)).learning(Observation.number("y2", 0));
        assertThat(once.entered()).containsExactly(Observation.number("y2", 0));
        Observations past = once.learning(Observation.stillBad("mend a")).learning(Observation.number("y2", 0.1));
        assertThat(past.size()).isEqualTo(3);
        assertThat(Overtaken.observed(library, past).entered())
                .containsExactly(Observation.stillBad("mend a"), Observation.number("y2", 0.1));
    }
}
