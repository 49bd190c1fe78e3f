package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.inference.Calls;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** What is spared must read as if it had been run. */
class FootprintTest {
    private static final List<String> CAUSES = List.of(
            "power-lamp: dead",
            "jet: blocked by scale",
            "brew-limit-line: welded",
            "motor: capacitor weak",
            "breaker: leaks when seated");

    private final Casework all = Installed.of(
                    MachineFile.bundled("twin-boiler-lever", Kinds.declarations())
                            .newest(),
                    Installation.UNKNOWN)
            .casework(Procedures.bundled());
    private final Casework casework = all.about(CAUSES);

    @Test
    void furtherDrawsReadAsIfEverythingHadBeenRun() {
        List<String> differing = new ArrayList<>();
        int readings = 0;
        Library spared = new LibraryBuild(casework, 2, true).upTo(24, casework.empty(), l -> {});
        for (int c = 0; c < casework.candidates().size(); c++) {
            for (int k = 16; k < 24; k++) {
                float[] run = casework.row(
                        casework.draws().machine(k), casework.candidates().get(c), k);
                for (int q = 0; q < run.length; q++) {
                    float kept = spared.signatures().value(c, k, q);
                    if (Float.isNaN(kept) && Float.isNaN(run[q])) {
                        continue;
                    }
                    readings++;
                    if (!(Math.abs(kept - run[q]) <= mayDiffer(q, run[q]))) {
                        differing.add(casework.candidates().get(c).cause().id() + ", draw " + k + ", "
                                + casework.askings().get(q).question().id() + ": " + kept + " for " + run[q]);
                    }
                }
            }
        }
        // a refill in the middle of a shot, say, that no earlier draw happened to have
        assertThat(differing).hasSizeLessThanOrEqualTo(readings / 200);
    }

    /** A fifth of what the instrument can tell; words not at all. */
    private float mayDiffer(int question, float reading) {
        return casework.askings().get(question).question().answering() instanceof Answering.Number n
                ? (float) (0.2 * Math.sqrt(n.variance(reading)))
                : 0;
    }

    @Test
    void aCauseThatIsNotFeltInUseIsOnlySoughtWhereItIs() {
        Library library = new LibraryBuild(casework).upTo(8, casework.empty(), l -> {});
        int jet = library.cause("jet: blocked by scale");
        assertThat(Footprint.readings(casework, library, jet))
                .contains("flow in 10 s", "brew warm-up time")
                .doesNotContain("hot water in 15 s");
    }

    @Test
    void whatNothingHereWouldShowIsNotBelieved() {
        Casework onTheTank = all.about(List.of("mains: pressure too low", "jet: blocked by scale"));
        Library library = new LibraryBuild(onTheTank).upTo(8, onTheTank.empty(), l -> {});
        Library heard = Footprint.called(library, true, new Calls(library));
        assertThat(heard.causes().get(heard.cause("mains: pressure too low")).weight())
                .isZero();
        assertThat(heard.causes().get(heard.cause("jet: blocked by scale")).weight())
                .isPositive();
        assertThat(heard.causes().get(heard.cause(Candidates.HEALTHY)).weight()).isPositive();
    }
}
