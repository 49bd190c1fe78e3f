package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.inference.Posterior;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** A library can be stopped, looked at half built, and gone on with. */
class LibraryBuildTest {
    private final Casework casework = Installed.of(
                    MachineFile.find(
                                    LibraryBuildTest.class
                                            .getResource("/wetside/cli/stand.yaml")
                                            .getPath(),
                                    Kinds.declarations())
                            .newest(),
                    Installation.UNKNOWN)
            .casework(Procedures.bundled());

    @Test
    void whatWasRunBeforeAStopIsNotRunAgain() throws InterruptedException {
        Library whole = new LibraryBuild(casework, 1, false).upTo(4, casework.empty(), l -> {});
        LibraryBuild build = new LibraryBuild(casework, 1, false);
        Thread stopper = new Thread(() -> {
            while (build.done() < 40) {
                Thread.onSpinWait();
            }
            build.stop();
        });
        stopper.start();
        Library[] some = new Library[1];
        Library stopped = build.upTo(4, casework.empty(), l -> {}, l -> some[0] = l);
        stopper.join();
        assertThat(Signing.drawn(stopped)).isZero();
        long before = build.done();
        assertThat(before).isBetween(40L, build.total(4) - 1);
        Library half = some[0];
        long run = causesOf(half);
        assertThat(run * 4).as("whole causes only").isEqualTo(before);

        build.goOn();
        Library resumed = build.upTo(4, stopped, l -> {});
        assertThat(build.done()).isEqualTo(build.total(4));
        for (int c = 0; c < whole.causes().size(); c++) {
            assertThat(resumed.signatures().rows(c))
                    .isEqualTo(whole.signatures().rows(c));
        }
    }

    @Test
    void whatIsToldGoesOnAfterAStop() throws InterruptedException {
        Library whole = new LibraryBuild(casework, 1, false).upTo(24, casework.empty(), l -> {});
        LibraryBuild build = new LibraryBuild(casework, 1, false);
        Thread stopper = new Thread(() -> {
            while (build.done() < 24 * 5) {
                Thread.onSpinWait();
            }
            build.stop();
        });
        stopper.start();
        Library stopped = build.upTo(24, casework.empty(), l -> {});
        stopper.join();
        assertThat(Signing.drawn(stopped)).isZero();
        assertThat(build.done()).isBetween(24 * 5L, build.total(24) - 1);
        build.goOn();
        Library resumed = build.upTo(24, stopped, l -> {});
        assertThat(build.done()).isEqualTo(build.total(24));
        for (int c = 0; c < whole.causes().size(); c++) {
            assertThat(resumed.signatures().rows(c))
                    .isEqualTo(whole.signatures().rows(c));
        }
    }

    @Test
    void whatIsToldDoesNotDependOnAFewDrawsThereWereBefore() {
        Library first = new LibraryBuild(casework, 1, false).upTo(4, casework.empty(), l -> {});
        Library told = new LibraryBuild(casework, 1, false).upTo(24, first, l -> {});
        Library afresh = new LibraryBuild(casework, 1, false).upTo(24, casework.empty(), l -> {});
        for (int c = 0; c < first.causes().size(); c++) {
            assertThat(told.signatures().draws(c)).isEqualTo(24);
            assertThat(told.signatures().simulated(c)).isGreaterThanOrEqualTo(CauseRows.LEAST);
            assertThat(told.signatures().rows(c)).isEqualTo(afresh.signatures().rows(c));
        }
    }

    /** What is not run in a first look counts as something else: nothing is believed for want of rivals. */
    @Test
    void aFirstLookIsAboutWhatHappensMostOften() {
        Casework some = casework.reading(List.of("pump gauge at rest, cold"));
        LibraryBuild looking = new LibraryBuild(some, 1, false);
        Begun often = looking.begin(Observations.none()).orElseThrow();
        int all = casework.candidates().size();
        assertThat(often.causes()).isEqualTo(looking.begins() + 1).isLessThan(all * 2 / 3);
        assertThat(looking.done()).isEqualTo(8L * often.causes());
        double least = often.casework().candidates().stream()
                .skip(1)
                .mapToDouble(c -> c.cause().weight())
                .min()
                .orElseThrow();
        assertThat(casework.candidates().stream().filter(c -> c.cause().weight() > least))
                .as("none that is left out happens more often")
                .allMatch(c -> often.casework().candidates().contains(c));
        Posterior nothing = often.inference().posterior(Observations.none());
        assertThat(nothing.share(nothing.somethingElse())).isBetween(0.12, 0.25);
        Library whole = new LibraryBuild(some, 1, false).glance();
        for (int c = 0; c < often.causes(); c++) {
            String cause = often.casework().candidates().get(c).cause().id();
            assertThat(often.inference().library().signatures().rows(c))
                    .isEqualTo(whole.signatures().rows(whole.cause(cause)));
        }
    }

    private static long causesOf(Library library) {
        Signatures s = library.signatures();
        return java.util.stream.IntStream.range(0, s.causes())
                .filter(c -> s.draws(c) > 0)
                .count();
    }

    /** By hand: known causes share 0.98 of what their weights are of all weights; the rest is something else. */
    @Test
    void causesNotRunYetCountAsSomethingElse() {
        Library whole = new LibraryBuild(casework).upTo(4, casework.empty(), l -> {});
        Signatures half = casework.empty().signatures();
        double run = 0;
        double all = 0;
        for (int c = 0; c < whole.causes().size(); c++) {
            all += whole.causes().get(c).weight();
            if (c % 2 == 0) {
                half = half.with(c, whole.signatures().rows(c));
                run += whole.causes().get(c).weight();
            }
        }
        Begun begun = Begun.of(casework, whole.with(half)).orElseThrow();
        Posterior posterior = begun.inference().posterior(Observations.none());
        assertThat(posterior.share(posterior.somethingElse())).isCloseTo(1 - 0.98 * run / all, within(1e-9));
        List<String> ids =
                begun.casework().candidates().stream().map(c -> c.cause().id()).toList();
        assertThat(begun.inference().library().causes().stream().map(c -> c.id()))
                .containsExactlyElementsOf(ids);
        assertThat(Begun.of(casework, casework.empty())).isEmpty();
    }

    /** The same machines, whoever simulated them. */
    @Test
    void whatIsExpectedOfSoundMachinesCanBeTakenFromALibrary() {
        Library library = new LibraryBuild(casework).upTo(8, casework.empty(), l -> {});
        assertThat(Expected.healthy(casework, library)).isEqualTo(Expected.healthy(casework, 8));
    }
}
