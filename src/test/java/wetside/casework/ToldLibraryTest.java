package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** What is told from few simulated draws, against the same draws simulated. */
class ToldLibraryTest {
    private static final int DRAWS = 40;
    private static final List<String> CAUSES = List.of(
            "jet: blocked by scale",
            "motor: capacitor weak",
            "steam-sensor: not seated",
            "over-pressure: set low",
            "tank: very pure water");

    private static final Casework CASEWORK = Installed.of(
                    MachineFile.bundled("twin-boiler-lever", Kinds.declarations())
                            .newest(),
                    Installation.UNKNOWN)
            .casework(Procedures.bundled())
            .about(CAUSES);

    private static final List<Library> ON_THE_WAY = new ArrayList<>();
    private static Library told;
    private static Library simulated;

    @TempDir
    private Path folder;

    @BeforeAll
    static void both() {
        told = new LibraryBuild(CASEWORK).upTo(DRAWS, CASEWORK.empty(), ON_THE_WAY::add);
        simulated = new LibraryBuild(CASEWORK, 2, true).upTo(DRAWS, CASEWORK.empty(), l -> {});
    }

    @Test
    void theMachineWithNothingWrongIsSimulatedInEveryDraw() {
        assertThat(told.signatures().rows(0)).isEqualTo(simulated.signatures().rows(0));
        assertThat(told.signatures().simulated(0)).isEqualTo(DRAWS);
    }

    @Test
    void itIsKnownHowManyDrawsWereSimulated() {
        Standing standing = Standing.of(told);
        assertThat(standing.draws()).isEqualTo(DRAWS);
        assertThat(standing.fewest()).isEqualTo(CauseRows.LEAST);
        assertThat(standing.most()).isLessThan(DRAWS);
        assertThat(standing.words()).startsWith("40 machines for each cause, 5").contains("the others told from those");
        assertThat(Standing.of(simulated).words()).isEqualTo("40 simulated machines for each cause");
    }

    /** Of every block of eight the first few simulated span its severities; which they are is another matter. */
    @Test
    void simulatedDrawsAreTheSame() {
        for (int c = 1; c < told.causes().size(); c++) {
            int same = 0;
            for (int k = 0; k < DRAWS; k++) {
                same += isSame(c, k) ? 1 : 0;
            }
            assertThat(same)
                    .as(told.causes().get(c).id())
                    .isGreaterThanOrEqualTo(told.signatures().simulated(c));
        }
    }

    /** All but one in a hundred readings of a draw. */
    private static boolean isSame(int cause, int draw) {
        int questions = told.questions().size();
        long differing = IntStream.range(0, questions)
                .filter(q -> !isSame(
                        q,
                        told.signatures().value(cause, draw, q),
                        simulated.signatures().value(cause, draw, q)))
                .count();
        return differing <= questions / 100;
    }

    /** A fifth of what the instrument can tell; words not at all. */
    private static boolean isSame(int q, float a, float b) {
        double tolerance =
                told.questions().get(q).answering() instanceof Answering.Number n ? 0.2 * Math.sqrt(n.variance(b)) : 0;
        return Float.compare(a, b) == 0 || Math.abs(a - b) <= tolerance;
    }

    @Test
    void toldReadingsAreDistributedAsSimulatedOnes() {
        int badly = 0;
        int felt = 0;
        for (int c = 1; c < told.causes().size(); c++) {
            for (int q = 0; q < told.questions().size(); q++) {
                if (told.questions().get(q).answering() instanceof Answering.Number number && isFelt(c, q)) {
                    felt++;
                    badly += distance(c, q, number) > 0.5 ? 1 : 0;
                }
            }
        }
        assertThat(felt).isGreaterThan(60);
        assertThat(badly).isLessThan(felt / 8);
    }

    private static boolean isFelt(int cause, int q) {
        Signatures s = simulated.signatures();
        return IntStream.range(0, DRAWS)
                .anyMatch(k -> Footprint.differs(simulated.questions().get(q), s.value(0, k, q), s.value(cause, k, q)));
    }

    /** Mean distance of sorted readings, in what the instrument can tell and how far they spread. */
    private static double distance(int cause, int q, Answering.Number number) {
        double[] a = sorted(told, cause, q);
        double[] b = sorted(simulated, cause, q);
        int n = Math.min(a.length, b.length);
        if (n == 0) {
            return 0;
        }
        double mean = Arrays.stream(b).average().orElseThrow();
        double spread = Math.sqrt(
                Arrays.stream(b).map(x -> (x - mean) * (x - mean)).average().orElseThrow());
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += Math.abs(a[i * a.length / n] - b[i * b.length / n]) / n;
        }
        return sum / Math.hypot(spread, Math.sqrt(number.variance(mean)));
    }

    private static double[] sorted(Library library, int cause, int q) {
        return IntStream.range(0, DRAWS)
                .mapToDouble(k -> library.signatures().value(cause, k, q))
                .filter(v -> !Double.isNaN(v))
                .sorted()
                .toArray();
    }

    /** Whether the board sees very pure water is a matter of tolerances: neither severity nor two scouts show it. */
    @Test
    void whatOnlySomeMachinesFeelIsFoundThoughFirstDrawsDoNot() {
        int pure = told.cause("tank: very pure water");
        int flow = told.question("flow in 10 s");
        assertThat(halved(simulated, pure, flow)).isBetween(0.15, 0.45);
        assertThat(halved(told, pure, flow))
                .isCloseTo(halved(simulated, pure, flow), within(0.2))
                .isPositive();
    }

    /** Share of the draws that read less than half of what they read when nothing is wrong. */
    private static double halved(Library library, int cause, int q) {
        Signatures s = library.signatures();
        return IntStream.range(0, DRAWS)
                        .filter(k -> s.value(cause, k, q) < 0.5 * s.value(0, k, q))
                        .count()
                / (double) DRAWS;
    }

    @Test
    void anEarlyLibraryIsToldFromTwoDraws() {
        assertThat(ON_THE_WAY).hasSize(2);
        Signatures early = ON_THE_WAY.get(0).signatures();
        int jet = told.cause("jet: blocked by scale");
        assertThat(early.draws(jet)).isEqualTo(8);
        assertThat(early.simulated(jet)).isZero();
        int flow = told.question("flow in 10 s");
        for (int k = 0; k < 8; k++) {
            assertThat(early.value(jet, k, flow)).isLessThan(0.9f * early.value(0, k, flow));
        }
    }

    @Test
    void causesInPlayAreSimulatedMoreCloselyAndTheLibraryItselfStays() {
        LibraryStore store = new LibraryStore(folder);
        LibraryKey key = LibraryKey.of(CASEWORK, "test");
        Signing signing = new Signing(CASEWORK, DRAWS, false, store, key, 2, Signing.Watcher.NOBODY);
        Library base = signing.all(l -> {});
        int jet = base.cause("jet: blocked by scale");
        Library closer = signing.closer(base, List.of(jet));
        assertThat(closer.signatures().simulated(jet)).isEqualTo(DRAWS);
        int flow = base.question("flow in 10 s");
        for (int k = 0; k < DRAWS; k++) {
            assertThat(isSame(
                            flow,
                            closer.signatures().value(jet, k, flow),
                            simulated.signatures().value(jet, k, flow)))
                    .isTrue();
        }
        Signing again = new Signing(CASEWORK, DRAWS, false, store, key, 2, Signing.Watcher.NOBODY);
        assertThat(again.isReady()).isTrue();
        Library stored = again.all(l -> {});
        for (int c = 0; c < base.causes().size(); c++) {
            assertThat(stored.signatures().rows(c)).isEqualTo(base.signatures().rows(c));
            assertThat(stored.signatures().simulated(c))
                    .isEqualTo(base.signatures().simulated(c));
        }
        Library known = again.closer(stored, List.of(jet));
        assertThat(known.signatures().rows(jet)).isEqualTo(closer.signatures().rows(jet));
        assertThat(again.done()).isZero();
        assertThat(new Signing(CASEWORK, DRAWS, true, store, key, 2, Signing.Watcher.NOBODY).isReady())
                .isFalse();
    }
}
