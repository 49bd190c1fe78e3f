package wetside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import wetside.casework.Answers;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryBuild;
import wetside.casework.Mistaken;
import wetside.casework.Session;
import wetside.diagnosis.Library;
import wetside.diagnosis.Who;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** A mistake of ours in a fault that only pairs run: what single causes say stands. */
class PairTrialTest {
    @Test
    void aPairTheTwinRefusesEndsNothing() throws Answers.NotAnAnswer {
        Casework sound = Installed.of(
                        MachineFile.read(Path.of(Shell.STAND), Kinds.declarations())
                                .newest(),
                        Installation.UNKNOWN)
                .casework(Procedures.bundled());
        Library library = new LibraryBuild(sound).upTo(8, sound.empty(), early -> {});
        Session session = new Session(Mistaken.of(sound, "lamp: dead"), library, Who.TECHNICIAN);
        tell(session, "power lamp", "dark");
        tell(session, "power drawn while heating", "0 W");
        tell(session, "voltage at the plug while heating", "230 V");
        tell(session, "pump gauge at rest, cold", "0.9 bar");
        tell(session, "pump gauge at rest, hot", "0.9 bar");
        assertThat(session.pairsWorth())
                .anySatisfy(p -> assertThat(p.cause().id()).contains("lamp: dead"));
        String before = session.posterior().best().id();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PairTrial.on(
                session,
                new Console(new PrintStream(err), new PrintStream(err), InputStream.nullInputStream(), false, false));
        assertThat(err.toString(UTF_8)).contains("Pairs of causes were not tried: the twin failed", "lamp: dead");
        assertThat(session.posterior().best().id()).isEqualTo(before);
    }

    private static void tell(Session session, String reading, String answer) throws Answers.NotAnAnswer {
        session.learn(Answers.parse(session.casework().asking(reading).orElseThrow(), answer));
    }
}
