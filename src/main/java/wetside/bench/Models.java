package wetside.bench;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.Installation;
import wetside.machine.Installation.Fact;
import wetside.machine.Installation.Feed;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.run.NoSuchThing;
import wetside.shop.RegisteredMachine;
import wetside.units.Display;

/**
 * What is computed of the machines on the register, kept while it is asked for. What a machine should read takes the twin a
 * second or two: it runs behind, and a page that cannot wait for it shows the readings without.
 */
final class Models {
    /** Machines kept ready: every making of every file, and the places under the workshop's hands. */
    private static final int KEPT = 64;

    private final Procedures procedures = Procedures.bundled();
    private final Kept<RegisteredMachine, Casework> makings = new Kept<>(KEPT);
    private final Expectations expectations = new Expectations(procedures);

    /**
     * The machine's causes and questions, wherever it stands.
     *
     * @throws wetside.machine.BadFile when its file is gone or broken
     */
    Casework casework(RegisteredMachine m) {
        RegisteredMachine making = new RegisteredMachine(
                0, "", m.file(), m.revision(), m.supply(), 0, m.fedFrom(), null, null, null, null, null, "", "", 0);
        return makings.of(making, () -> installed(making).casework(procedures));
    }

    /** What machines without fault read, as far as it is known. */
    Expectations expectations() {
        return expectations;
    }

    /** What a sound machine of these reads, by procedure; empty when that takes longer than one can wait. */
    Map<String, Expected> expected(RegisteredMachine m, Duration patience) {
        Map<String, Expected> all = new LinkedHashMap<>();
        expectations
                .of(Libraries.Place.of(m).key(), () -> installed(m))
                .expected(patience)
                .forEach(e -> all.put(e.asking().question().id(), e));
        return all;
    }

    /** "Fellmoor Twin Lever, revision B"; the file's name where the file is gone. */
    String title(RegisteredMachine m) {
        try {
            Machine.Identity identity = casework(m).machine().identity();
            return identity.title() + ", " + identity.making();
        } catch (BadFile | NoSuchThing | IllegalArgumentException e) {
            return m.file() + ", revision " + m.revision();
        }
    }

    static Installed installed(RegisteredMachine m) {
        MachineFile file = MachineFile.find(m.file(), Kinds.declarations());
        Installation place = Installation.UNKNOWN.with("mains".equals(m.fedFrom()) ? Feed.MAINS : Feed.TANK);
        place = with(place, Fact.SUPPLY_PRESSURE, m.supplyPressure());
        place = with(place, Fact.CONDUCTIVITY, m.waterConductivity());
        place = with(place, Fact.VOLTAGE, m.voltage());
        place = with(place, Fact.ALTITUDE, m.altitude());
        place = with(place, Fact.AMBIENT, m.ambient());
        String supply = m.supply().isEmpty() ? file.supplyAt(place.voltage()) : m.supply();
        return Installed.of(file.machine(m.revision(), supply), place);
    }

    private static Installation with(Installation place, Fact fact, Double si) {
        return si == null ? place : place.with(fact, fact.parse(Display.METRIC.print(si, fact.dimension())));
    }
}
