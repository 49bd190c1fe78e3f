package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.PairSearch;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** Two causes on the single boiler: a screen that is clogged, and a controller set too hot that nobody complained of. */
class PairsTest {
    private static final String CLOGGED = "group: screen clogged";
    private static final String HOT = "controller: set point too high";
    private static final List<String> CAUSES =
            List.of(CLOGGED, HOT, "pump: weak", "over-pressure: set low", "over-pressure: set high");

    private static final Casework CASEWORK = Installed.of(
                    MachineFile.bundled("single-boiler", Kinds.declarations()).newest(), Installation.UNKNOWN)
            .casework(Procedures.bundled())
            .about(CAUSES);

    private static Library library;

    @BeforeAll
    static void build() {
        library = new LibraryBuild(CASEWORK).upTo(8, CASEWORK.empty(), l -> {});
    }

    private static double usual(String cause, String reading) {
        return library.signatures().value(library.cause(cause), 3, library.question(reading));
    }

    private static Session afterTheScreen() {
        Session session = new Session(CASEWORK, library, Who.TECHNICIAN);
        String flowing = "pump gauge while water flows";
        session.learn(Observation.number(flowing, usual(CLOGGED, flowing)));
        String repair = library.causes().get(library.cause(CLOGGED)).repair().id();
        session.learn(Observation.stillBad(repair));
        return session;
    }

    private static void tryPairs(Session session) {
        session.tryPairs(session.triedPairs(() -> false, round -> {}));
    }

    @Test
    void whatWasMendedAndWhatIsLeftAreBelievedTogether() {
        Session session = afterTheScreen();
        session.learn(Observation.number(
                "pump gauge while water flows", usual(Candidates.HEALTHY, "pump gauge while water flows")));
        session.learn(Observation.number("brew display, hot", usual(HOT, "brew display, hot")));
        tryPairs(session);
        assertThat(session.posterior().best().id()).isEqualTo(Cause.pair(CLOGGED, HOT));
        assertThat(session.observations().size()).isEqualTo(4);
    }

    @Test
    void readingsOfBeforeAreOfferedAgain() {
        Session session = afterTheScreen();
        tryPairs(session);
        assertThat(session.posterior().observations().about("pump gauge while water flows"))
                .isEmpty();
        assertThat(session.posterior().library().questions())
                .anyMatch(q -> q.id().equals("before repair 1: pump gauge while water flows"));
    }

    @Test
    void whatWasRunForAnotherCaseLeavesNoTrace() {
        Session fresh = afterTheScreen();
        tryPairs(fresh);
        Session used = new Session(CASEWORK, library, Who.TECHNICIAN);
        used.learn(Observation.number("blind-disc pressure", usual("over-pressure: set high", "blind-disc pressure")));
        List<PairSearch.Pair> others = used.triedPairs(() -> false, round -> {});
        used.tryPairs(others);
        Session after = used.knowing(fresh.observations());
        tryPairs(after);
        assertThat(after.posterior().shares()).containsExactly(fresh.posterior().shares());
    }

    /** A library that has just begun may have fewer draws than a pair is run in. */
    @Test
    void fewDrawsWillDo() {
        Library few = new LibraryBuild(CASEWORK).upTo(2, CASEWORK.empty(), l -> {});
        Session session = new Session(CASEWORK, few, Who.TECHNICIAN);
        String flowing = "pump gauge while water flows";
        session.learn(Observation.number(flowing, usual(CLOGGED, flowing)));
        session.learn(Observation.stillBad(
                library.causes().get(library.cause(CLOGGED)).repair().id()));
        session.learn(Observation.number(flowing, usual(Candidates.HEALTHY, flowing)));
        tryPairs(session);
        assertThat(session.pairsTried()).isPositive();
        session.sharpen(library);
        tryPairs(session);
        assertThat(session.pairsTried()).isPositive();
    }
}
