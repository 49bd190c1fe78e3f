package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Plausibility;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** Three causes at once, which nobody thinks of here: no one or two of them may be named as found, and what they leave is odd. */
class TriplesTest {
    private static final String HOT = "controller: set point too high";
    private static final List<String> ELECTRIC = List.of("power lamp", "brew set point", "brew display, hot");

    private static final Casework CASEWORK = Installed.of(
                    MachineFile.bundled("single-boiler", Kinds.declarations()).newest(), Installation.UNKNOWN)
            .casework(Procedures.bundled());

    private static Library library;

    @BeforeAll
    static void build() {
        library = new LibraryBuild(CASEWORK).upTo(8, CASEWORK.empty(), l -> {});
    }

    /** What is believed once a machine with all these causes has been read, its electrics first. */
    private static Session read(List<String> causes, String... questions) {
        Machine machine = CASEWORK.machine();
        for (String cause : causes) {
            machine = CASEWORK.candidates().get(library.cause(cause)).in(machine, 0.8);
        }
        float[] row = CASEWORK.row(machine, CASEWORK.candidates().get(0), 3);
        Session session = new Session(CASEWORK, library, Who.TECHNICIAN);
        ELECTRIC.forEach(id -> session.learn(answer(id, row)));
        List.of(questions).forEach(id -> session.learn(answer(id, row)));
        session.tryPairs(session.triedPairs(() -> false, round -> {}));
        return session;
    }

    private static Observation answer(String id, float[] row) {
        int q = library.question(id);
        return library.questions().get(q).answering() instanceof Answering.Number
                ? Observation.number(id, row[q])
                : Observation.choice(id, (int) row[q]);
    }

    private static List<String> odd(Session session) {
        return session.plausibility().odd().stream()
                .map(Plausibility.Oddity::observation)
                .map(Observation::about)
                .toList();
    }

    @Test
    void wherePartsWorkOnEachOtherNothingExplainsIt() {
        Session session = read(
                List.of(HOT, "group: screen clogged", "steam-tap: seat worn"),
                "flow in 10 s",
                "pump gauge while water flows",
                "water in 30 s after steam",
                "pump gauge after brewing",
                "pump gauge at rest, hot",
                "pressure rises");
        assertThat(session.isExplained()).isFalse();
        assertThat(session.isFound()).isFalse();
        assertThat(odd(session)).isNotEmpty();
    }

    @Test
    void whereThreeActOnTheSameReadingsSomethingElseLeads() {
        List<String> three = List.of(HOT, "pump: weak", "socket: low voltage");
        Session session = read(
                three,
                "voltage at the plug while heating",
                "voltage at the plug, switched off",
                "power drawn while heating",
                "water in 30 s after steam",
                "water from the wand in 10 s",
                "pressure rises");
        List<String> named = List.of(Cause.each(session.posterior().best().id()));
        assertThat(named).hasSize(2).containsAnyElementsOf(three);
        assertThat(session.isFound()).isFalse();
        assertThat(session.isExplained()).as("something else leads").isFalse();
    }

    @Test
    void aThirdThatShowsInOneWordIsTakenForAMistakenOneAndNamed() {
        Session session = read(
                List.of("group: coffee ground too fine", "pump-gauge: reads low", "group: rim gasket worn"),
                "shot weight",
                "leak round the rim",
                "pump gauge at rest, hot",
                "pump gauge while water flows",
                "blind-disc pressure");
        assertThat(session.isFound()).isFalse();
        assertThat(odd(session)).contains("leak round the rim");
    }
}
