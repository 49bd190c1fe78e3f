package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Toy;

/** Parts further out than their tolerances say. */
class ScatterTest {
    private static final float[][] WHOLE = {{8.5f, 84, 0}, {9, 90, 0}, {9.5f, 96, 0}, {9, 90, 0}};

    /** A leak takes 0 to 20 of the flow and leaves the gauge alone; a dead pump reads nothing at all. */
    private final Library library = Toy.library(
            List.of(Toy.cause("healthy", 1), Toy.cause("leak", 1), Toy.cause("dead", 1)),
            List.of(Toy.number("gauge", 0.1), Toy.number("flow", 1), Toy.yesNo("noisy", 0.1)),
            WHOLE,
            new float[][] {{8.5f, 84, 0}, {9, 83, 0}, {9.5f, 82, 1}, {9, 70, 0}},
            new float[][] {{0, 0, 1}, {0, 0, 1}, {0, 0, 1}, {0, 0, 1}});

    private final Scatter scatter = new Scatter(library, 1.5);

    @Test
    void wholeMachinesLieFurtherFromTheirMean() {
        float[] wide = scatter.of(library.signatures().rows(0));
        assertThat(wide).containsExactly(new float[] {8.25f, 81, 0, 9, 90, 0, 9.75f, 99, 0, 9, 90, 0}, within(1e-4f));
    }

    @Test
    void aCauseMovesWithTheWholeMachineOfItsDrawAndItsSeverityDoesNotSpread() {
        float[] wide = scatter.of(library.signatures().rows(1));
        assertThat(wide).containsExactly(new float[] {8.25f, 81, 0, 9, 83, 0, 9.75f, 85, 1, 9, 70, 0}, within(1e-4f));
    }

    @Test
    void whatACausePinsDownStays() {
        float[] dead = library.signatures().rows(2);
        assertThat(scatter.of(dead)).containsExactly(dead);
    }

    @Test
    void tolerancesAsPromisedChangeNothing() {
        float[] rows = library.signatures().rows(1);
        assertThat(new Scatter(library, 1).of(rows)).isSameAs(rows);
    }

    /** Two readings that one part moves together, both a little outside: a machine at the end of its tolerance, no fault. */
    @Test
    void aMachineJustOutsideItsTolerancesIsNotBroken() {
        Library bank = Toy.pumpBank(64, 1);
        Observations odd = Observations.of(Observation.number("gauge", 10.6), Observation.number("flow", 3.45));
        Assumptions usual = Assumptions.USUAL;
        Assumptions promised = new Assumptions(
                usual.somethingElse(),
                usual.mostOdds(),
                usual.sameMind(),
                usual.slip(),
                usual.smoothing(),
                usual.separation(),
                1,
                usual.fewest());
        assertThat(Inference.of(bank).posterior(odd).share("healthy"))
                .isGreaterThan(Inference.of(bank, promised).posterior(odd).share("healthy"));
    }
}
