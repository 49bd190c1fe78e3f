package wetside.cli;

import java.time.LocalDate;
import wetside.casework.Installed;
import wetside.machine.Machine;
import wetside.page.Sheet;

/** The plate that every sheet of a machine carries. */
final class Plates {
    private Plates() {}

    /** Dated today, as ISO writes it, which nobody reads the wrong way round. */
    static Sheet.Plate of(Installed installed) {
        Machine.Identity identity = installed.machine().identity();
        return Sheet.Plate.of(
                "Machine",
                identity.title() + ", " + identity.making(),
                "Fed from",
                installed.source(),
                "Date",
                LocalDate.now().toString());
    }
}
