package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import wetside.casework.Installed;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.shop.RegisteredMachine;
import wetside.units.Dimension;
import wetside.units.Display;

/**
 * A machine that pages are about: one on the register where it stands, or a machine file with nothing known of the place.
 *
 * @param address  of its page
 * @param key      the same for machines of which everything computed is the same
 * @param onRegister null for a file
 */
public record Subject(String address, String key, MachineFile file, Installed installed, RegisteredMachine onRegister) {
    /** "Fellmoor Twin Lever, revision B". */
    public String title() {
        return installed.machine().identity().title() + ", "
                + installed.machine().identity().making();
    }

    /** What identifies it to people: the serial, or that it is only a file. */
    public String which() {
        return onRegister == null ? "machine file, no serial" : onRegister.serial();
    }

    Plate plate(Workshop workshop, Display units) {
        List<Plate.Cell> cells = new ArrayList<>();
        cells.add(new Plate.Cell("Machine", title()));
        cells.add(new Plate.Cell("Serial", onRegister == null ? "none: the machine file" : onRegister.serial()));
        cells.add(new Plate.Cell(
                "Fed from",
                installed.feed().word() + fact(Installation.Fact.SUPPLY_PRESSURE, Dimension.PRESSURE, units)));
        installed
                .installation()
                .voltage()
                .ifPresent(v -> cells.add(new Plate.Cell("Supply", units.print(v, Dimension.VOLTAGE))));
        Installation.Known altitude = installed.installation().facts().get(Installation.Fact.ALTITUDE);
        if (altitude != null) {
            cells.add(new Plate.Cell("Altitude", units.print(altitude.si(), Dimension.LENGTH)));
        }
        if (onRegister != null) {
            cells.add(new Plate.Cell(
                    "Owner", workshop.register().owner(onRegister.ownerId()).name()));
        }
        return new Plate(cells);
    }

    private String fact(Installation.Fact fact, Dimension dimension, Display units) {
        Installation.Known known = installed.installation().facts().get(fact);
        boolean fed = installed.feed() == Installation.Feed.MAINS;
        return known == null || !fed ? "" : ", " + units.print(known.si(), dimension);
    }
}
