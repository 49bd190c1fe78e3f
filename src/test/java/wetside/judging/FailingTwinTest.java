package wetside.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryBuild;
import wetside.casework.Mistaken;
import wetside.diagnosis.Library;
import wetside.diagnosis.Who;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** A mistake of ours in one fault: the twin refuses to run machines that have it, in jobs and in pairs. */
class FailingTwinTest {
    private static final String BURNT = "switch: neutral contact burnt open";
    private static final int JOBS = 5;
    /** So many that some of them try a pair with that fault. */
    private static final int MORE = 12;

    private static final List<Policy> POLICIES = List.of(Policy.LIKELIEST, Policy.CHEAPEST);

    private static Casework sound;
    private static Library library;

    @BeforeAll
    static void library() {
        sound = Installed.of(
                        MachineFile.read(Path.of("src/test/resources/wetside/cli/stand.yaml"), Kinds.declarations())
                                .newest(),
                        Installation.UNKNOWN)
                .casework(Procedures.bundled());
        library = new LibraryBuild(sound).upTo(8, sound.empty(), early -> {});
    }

    private static Verdict played(Casework casework, World world, int jobs) {
        return new Evaluation(casework, library, Procedures.bundled(), Who.TECHNICIAN, world, POLICIES, 4)
                .play(jobs, () -> false);
    }

    private static boolean has(NotPlayed n) {
        return n.truth().contains(library.cause(BURNT));
    }

    @Test
    void itsJobsAreNamedAndTheOthersPlayAsEver() {
        Verdict whole = played(sound, World.USUAL.healthy(0), JOBS);
        Verdict some = played(Mistaken.of(sound, BURNT), World.USUAL.healthy(0), JOBS);
        assertThat(whole.notPlayed()).isEmpty();
        assertThat(some.notPlayed())
                .isNotEmpty()
                .allSatisfy(n ->
                        assertThat(n.reason()).startsWith("the twin failed: ").contains(BURNT, "NaN"));
        assertThat(some.notPlayed()).anySatisfy(n -> {
            assertThat(has(n)).isTrue();
            assertThat(n.by()).isEmpty();
            assertThat(n.reason()).contains(", severity 0.");
        });
        Set<Integer> missing = some.notPlayed().stream().map(NotPlayed::number).collect(Collectors.toSet());
        assertThat(some.played())
                .isEqualTo(whole.played().stream()
                        .filter(p -> !missing.contains(p.job().number()))
                        .toList());
    }

    @Test
    void aPairThatFailsLeavesTheJobOutForEveryPolicy() {
        Verdict some = played(Mistaken.of(sound, BURNT), World.USUAL.healthy(0).pairs(1), MORE);
        assertThat(some.notPlayed()).filteredOn(n -> !has(n)).isNotEmpty().allSatisfy(n -> {
            assertThat(n.by()).isNotEmpty();
            assertThat(n.reason()).contains("pair ", BURNT, ", draw ");
        });
        assertThat(some.played().size() + some.notPlayed().size()).isEqualTo(MORE);
        assertThat(some.played()).allSatisfy(p -> assertThat(p.outcomes()).containsOnlyKeys(POLICIES));
    }
}
