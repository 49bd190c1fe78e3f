package wetside.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import wetside.analysis.WaterSheet;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.units.NotAQuantity;

/** Of which revision a machine is, and where it stands. */
final class MachineChoice {
    @Option(names = "--revision", paramLabel = "NAME", description = "revision of the machine; the newest if not said")
    private String revision;

    @Option(names = "--built", paramLabel = "YYYY-MM", description = "month it was built, instead of a revision")
    private String built;

    @Option(
            names = "--built-for",
            paramLabel = "SUPPLY",
            description = "supply it was built for, e.g. \"120 V\"; what fits --voltage if not said")
    private String builtFor;

    @Option(
            names = "--fed-from",
            paramLabel = "tank|mains",
            description = "where it draws water from; tank if not said")
    private String fedFrom;

    @Option(names = "--supply-pressure", paramLabel = "P", description = "mains pressure, e.g. \"2 bar\"")
    private String pressure;

    @Option(names = "--supply-temperature", paramLabel = "T", description = "of the water supplied, e.g. \"15 °C\"")
    private String waterTemperature;

    @Option(names = "--water-conductivity", paramLabel = "K", description = "e.g. \"350 µS/cm\"")
    private String conductivity;

    @Option(
            names = "--water",
            paramLabel = "SHEET",
            description = "water sheet of its water, instead of a conductivity")
    private String water;

    @Option(names = "--voltage", paramLabel = "U", description = "at the socket, e.g. \"230 V\"")
    private String voltage;

    @Option(names = "--altitude", paramLabel = "H", description = "e.g. \"500 m\"")
    private String altitude;

    @Option(names = "--ambient", paramLabel = "T", description = "air temperature, e.g. \"22 °C\"")
    private String ambient;

    /** The machine called {@code name}, of the revision and in the place said. */
    Installed installed(String name) {
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        Installation place = installation();
        Machine machine = file.machine(revision(file), supply(file, place));
        List<String> idle =
                place.idleOn(machine).stream().map(MachineChoice::option).toList();
        if (!idle.isEmpty()) {
            throw new BadArgument(
                    Wording.inWords(idle) + ": nothing of " + machine.identity().title() + " depends on that");
        }
        return Installed.of(machine, place);
    }

    /** Options that were given, for commands that cannot take them. */
    List<String> given() {
        List<String> given = new ArrayList<>();
        if (revision != null) {
            given.add("--revision");
        }
        if (built != null) {
            given.add("--built");
        }
        if (builtFor != null) {
            given.add("--built-for");
        }
        if (fedFrom != null) {
            given.add("--fed-from");
        }
        if (water != null) {
            given.add("--water");
        }
        facts().forEach((fact, said) -> {
            if (said != null) {
                given.add(option(fact));
            }
        });
        return given;
    }

    private String revision(MachineFile file) {
        if (revision != null && built != null) {
            throw new BadArgument("say --revision or --built, not both");
        }
        if (revision != null) {
            if (!file.revisionNames().contains(revision)) {
                throw new BadArgument(
                        "--revision: no revision '" + revision + "'; " + Wording.thereAre(file.revisionNames()));
            }
            return revision;
        }
        return built == null ? file.newestRevision() : builtIn(file, built);
    }

    private String supply(MachineFile file, Installation place) {
        if (builtFor == null) {
            return file.supplyAt(place.voltage());
        }
        if (!file.supplyNames().contains(builtFor)) {
            throw new BadArgument("--built-for: no supply '" + builtFor + "'; " + Wording.thereAre(file.supplyNames()));
        }
        return builtFor;
    }

    private static String builtIn(MachineFile file, String built) {
        try {
            return file.byBuildDate(YearMonth.parse(built))
                    .orElseThrow(
                            () -> new BadArgument("--built " + built + " is before the first revision, which is from "
                                    + file.revisions().get(0).from()));
        } catch (DateTimeParseException e) {
            throw new BadArgument("--built: '" + built + "' is no month; a month is written like 2021-06");
        }
    }

    private Installation installation() {
        Installation place = Installation.UNKNOWN;
        if (fedFrom != null) {
            place = switch (fedFrom) {
                case "tank" -> place.with(Installation.Feed.TANK);
                case "mains" -> place.with(Installation.Feed.MAINS);
                default -> throw new BadArgument("--fed-from is tank or mains, not '" + fedFrom + "'");
            };
        }
        for (Map.Entry<Installation.Fact, String> fact : facts().entrySet()) {
            if (fact.getValue() != null) {
                place = place.with(fact.getKey(), known(fact.getKey(), fact.getValue()));
            }
        }
        if (water == null) {
            return place;
        }
        if (conductivity != null) {
            throw new BadArgument("say --water or --water-conductivity, not both");
        }
        return place.with(
                Installation.Fact.CONDUCTIVITY, WaterSheet.read(Path.of(water)).known());
    }

    private Map<Installation.Fact, String> facts() {
        Map<Installation.Fact, String> facts = new EnumMap<>(Installation.Fact.class);
        facts.put(Installation.Fact.SUPPLY_PRESSURE, pressure);
        facts.put(Installation.Fact.SUPPLY_TEMPERATURE, waterTemperature);
        facts.put(Installation.Fact.CONDUCTIVITY, conductivity);
        facts.put(Installation.Fact.VOLTAGE, voltage);
        facts.put(Installation.Fact.ALTITUDE, altitude);
        facts.put(Installation.Fact.AMBIENT, ambient);
        return facts;
    }

    private static Installation.Known known(Installation.Fact fact, String text) {
        try {
            return fact.parse(text);
        } catch (NotAQuantity e) {
            throw new BadArgument(option(fact) + ": " + e.getMessage()
                    + e.suggestion().map(s -> ". Maybe \"" + s + "\".").orElse(""));
        }
    }

    private static String option(Installation.Fact fact) {
        return "--" + fact.words().replace(' ', '-');
    }
}
