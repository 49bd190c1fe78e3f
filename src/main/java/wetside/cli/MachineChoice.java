package wetside.cli;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.units.NotAQuantity;

/** Which machine, of which revision, standing where. */
final class MachineChoice {
    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    String machine;

    @Option(names = "--revision", paramLabel = "NAME", description = "revision of the machine; the newest if not said")
    String revision;

    @Option(names = "--built", paramLabel = "YYYY-MM", description = "month it was built, instead of a revision")
    String built;

    @Option(
            names = "--fed-from",
            paramLabel = "tank|mains",
            description = "where it draws water from; tank if not said")
    String fedFrom;

    @Option(names = "--supply-pressure", paramLabel = "P", description = "mains pressure, e.g. \"2 bar\"")
    String pressure;

    @Option(names = "--supply-temperature", paramLabel = "T", description = "of the water supplied, e.g. \"15 °C\"")
    String waterTemperature;

    @Option(names = "--water-conductivity", paramLabel = "K", description = "e.g. \"350 µS/cm\"")
    String conductivity;

    @Option(names = "--voltage", paramLabel = "U", description = "at the socket, e.g. \"230 V\"")
    String voltage;

    @Option(names = "--altitude", paramLabel = "H", description = "e.g. \"500 m\"")
    String altitude;

    @Option(names = "--ambient", paramLabel = "T", description = "air temperature, e.g. \"22 °C\"")
    String ambient;

    MachineFile file() {
        return MachineFile.find(machine, Kinds.declarations());
    }

    Installed installed() {
        return Installed.of(revision(file()), installation());
    }

    private Machine revision(MachineFile file) {
        return of(file, revision, built);
    }

    static Machine of(MachineFile file, String revision, String built) {
        List<String> names =
                file.revisions().stream().map(MachineFile.Revision::name).toList();
        if (revision != null) {
            if (!names.contains(revision)) {
                throw new BadArgument("no revision '" + revision + "'; " + Wording.thereAre(names));
            }
            return file.machine(revision);
        }
        if (built == null) {
            return file.newest();
        }
        try {
            return file.byBuildDate(YearMonth.parse(built))
                    .orElseThrow(
                            () -> new BadArgument("--built " + built + " is before the first revision, which is from "
                                    + file.revisions().get(0).from()));
        } catch (DateTimeParseException e) {
            throw new BadArgument("--built '" + built + "' is not a month; write it as 2021-06");
        }
    }

    Installation installation() {
        Installation i = Installation.UNKNOWN;
        if (fedFrom != null) {
            i = switch (fedFrom) {
                case "tank" -> i.with(Installation.Feed.TANK);
                case "mains" -> i.with(Installation.Feed.MAINS);
                default -> throw new BadArgument("--fed-from is tank or mains, not '" + fedFrom + "'");
            };
        }
        i = known(i, Installation.Fact.SUPPLY_PRESSURE, pressure);
        i = known(i, Installation.Fact.SUPPLY_TEMPERATURE, waterTemperature);
        i = known(i, Installation.Fact.CONDUCTIVITY, conductivity);
        i = known(i, Installation.Fact.VOLTAGE, voltage);
        i = known(i, Installation.Fact.ALTITUDE, altitude);
        return known(i, Installation.Fact.AMBIENT, ambient);
    }

    private static Installation known(Installation i, Installation.Fact fact, String text) {
        if (text == null) {
            return i;
        }
        try {
            return i.with(fact, fact.parse(text));
        } catch (NotAQuantity e) {
            throw new BadArgument("--" + fact.words().replace(' ', '-') + ": " + e.getMessage()
                    + e.suggestion().map(s -> ". Maybe \"" + s + "\".").orElse(""));
        }
    }
}
