package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Toy;

/** The same reading before and after a repair that did not put everything right. */
class AskedAgainTest {
    private static final double WORKS = 0.8;

    private final Library library = Toy.library(
            List.of(Toy.cause("whole", 1), mended("a"), Toy.cause("b", 1), Toy.cause("c", 1)),
            List.of(Toy.number("y1", 0.2), Toy.number("y2", 0.2), Toy.yesNo("hum", 0.05)),
            draws(0, 0, 1),
            draws(5, 0, 0),
            draws(1, 4, 1),
            draws(0, -4, 1));

    /** A repair that holds eight times in ten. */
    private static Cause mended(String id) {
        return new Cause(id, id, 1, "", new Repair("mend " + id, "", Effort.minutes(5), WORKS));
    }

    private static float[][] draws(float y1, float y2, float hum) {
        float[][] rows = new float[10][];
        for (int k = 0; k < rows.length; k++) {
            rows[k] = new float[] {y1 + 0.01f * k, y2 - 0.01f * k, hum};
        }
        return rows;
    }

    private Posterior singles(Observation... entered) {
        return Inference.of(library)
                .posterior(Observations.none())
                .after(Overtaken.observed(library, Observations.of(entered)));
    }

    private static Posterior withPairs(Posterior singles) {
        return withPairs(singles, 0.1);
    }

    private static Posterior withPairs(Posterior singles, double share) {
        List<PairSearch.Pair> pairs = new PairSearch(singles, share).best(5);
        float[][] rows =
                pairs.stream().map(p -> PairRows.of(singles).of(p, null)).toArray(float[][]::new);
        return singles.beside(singles.library()
                .with(pairs.stream().map(PairSearch.Pair::cause).toList(), rows));
    }

    @Test
    void untilTheNextRepairWhatWasMadeReadyServesEveryAnswer() {
        Inference inference = Inference.of(library);
        Observations then = Observations.of(Observation.number("y1", 3), Observation.stillBad("mend a"));
        Inference ready = inference.asked(Overtaken.observed(library, then));
        Observations now = then.with(Observation.number("y1", 1));
        assertThat(inference.asked(Overtaken.observed(library, now))).isSameAs(ready);
        assertThat(inference.asked(Observations.of(Observation.number("y1", 3))))
                .isSameAs(inference);
        Observations other = Observations.of(Observation.choice("hum", 0), Observation.number("y1", 3))
                .with(Observation.stillBad("mend a"));
        assertThat(inference.asked(Overtaken.observed(library, other))).isNotSameAs(ready);
    }

    /** That the same person reads the same again says nothing new, not even when it was a slip both times. */
    @Test
    void theSameAgainSaysNothing() {
        Observation vain = Observation.stillBad("mend a");
        double[] once = singles(Observation.number("y2", 3.1), Observation.number("y1", 3), vain)
                .shares();
        double[] twice = singles(
                        Observation.number("y2", 3.1), Observation.number("y1", 3), vain, Observation.number("y1", 3))
                .shares();
        for (int c = 0; c < once.length; c++) {
            assertThat(twice[c]).isCloseTo(once[c], within(0.01));
        }
    }

    /** A reading gone back to normal proves the repair: what it was meant for was there, and something else is. */
    @Test
    void aReadingThatChangedProvesTheRepair() {
        Observation before = Observation.number("y1", 6);
        Observation vain = Observation.stillBad("mend a");
        Posterior changed = withPairs(singles(before, vain, Observation.number("y2", 4), Observation.number("y1", 1)));
        Posterior same = withPairs(singles(before, vain, Observation.number("y2", 4), Observation.number("y1", 6)));
        assertThat(changed.best().id()).isEqualTo("a + b");
        assertThat(changed.best().share()).isGreaterThan(0.9);
        double odds = changed.logOdds(changed.position("a + b")) - same.logOdds(same.position("a + b"));
        assertThat(odds)
                .as("nats: eight draws in ten of the pair read otherwise now")
                .isGreaterThan(1);
    }

    /** Nobody is sent to read again what nothing can have changed; what would prove a repair is worth reading. */
    @Test
    void askingAgainIsWorthWhatItMayHaveChanged() {
        Observation before = Observation.number("y1", 6);
        Observation vain = Observation.stillBad("mend a");
        Posterior alone = singles(before, vain);
        int y1 = alone.library().question("y1");
        InPlay single = InPlay.of(alone);
        assertThat(single.foresee(y1).bits(single)).isLessThan(0.01);
        Posterior pairs = withPairs(singles(before, vain, Observation.number("y2", 4)), 0.03);
        InPlay together = InPlay.of(pairs);
        assertThat(pairs.share("a + b")).isBetween(0.02, 0.98);
        assertThat(together.foresee(y1).bits(together))
                .isGreaterThan(0.4 * Shares.bits(pairs.share("a + b"), 1 - pairs.share("a + b")));
    }

    /** Of ten draws the repair held in eight; in the others both causes are still there. */
    @Test
    void aRepairHoldsInAsManyDrawsAsItUsuallyDoes() {
        Posterior singles = singles(Observation.number("y1", 6), Observation.stillBad("mend a"));
        PairSearch.Pair pair = new PairSearch(singles, 0.1)
                .best(5).stream()
                        .filter(p -> p.cause().id().equals("a + b"))
                        .findFirst()
                        .orElseThrow();
        float[] rows = PairRows.of(singles).of(pair, null);
        int width = singles.library().questions().size();
        int still = 0;
        for (int k = 0; k < 10; k++) {
            assertThat(rows[k * width + singles.library().question("before repair 1: y1")])
                    .isCloseTo(6, within(0.3f));
            still += rows[k * width + singles.library().question("y1")] > 4 ? 1 : 0;
        }
        assertThat(still).isEqualTo(2);
    }
}
