package wetside.bench;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import wetside.casework.Installed;
import wetside.machine.Installation;
import wetside.machine.Installation.Fact;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.shop.RegisteredMachine;
import wetside.units.Display;
import wetside.units.NotAQuantity;

/**
 * A machine that nobody has brought and where it stands, as the fields of an address say it: revision, what it was built
 * for, what it is fed from, and whatever is known of the place.
 */
final class FaultPlace {
    private static final String REVISION = "revision";
    private static final String SUPPLY = "supply";
    private static final String FED_FROM = "fed-from";
    /** What a machine on the register can keep of its place. */
    private static final List<Fact> FACTS =
            List.of(Fact.VOLTAGE, Fact.SUPPLY_PRESSURE, Fact.CONDUCTIVITY, Fact.ALTITUDE, Fact.AMBIENT);

    private static final Map<Fact, String> LIKE = Map.of(
            Fact.VOLTAGE, "230 V",
            Fact.SUPPLY_PRESSURE, "3 bar",
            Fact.CONDUCTIVITY, "350 µS/cm",
            Fact.ALTITUDE, "500 m",
            Fact.AMBIENT, "22 °C");

    private final MachineFile file;
    private final String name;
    private final String revision;
    private final String supply;
    private final String feed;
    private final Map<Fact, String> said = new EnumMap<>(Fact.class);
    private final Map<Fact, Double> known = new EnumMap<>(Fact.class);

    private FaultPlace(Context context) {
        name = FaultCases.given(context, "machine");
        file = MachineFile.names().contains(name) ? MachineFiles.find(name) : unknown(name);
        String making = FaultCases.given(context, REVISION);
        revision = making.isEmpty() ? file.newestRevision() : oneOf("Revision", making, file.revisionNames());
        FACTS.forEach(f -> know(f, FaultCases.given(context, field(f))));
        String builtFor = FaultCases.given(context, SUPPLY);
        supply = builtFor.isEmpty() ? fitting() : oneOf("Built for", builtFor, file.supplyNames());
        feed = FaultCases.given(context, FED_FROM).equals("mains") ? "mains" : "tank";
        List<Fact> idle = installed().installation().idleOn(installed().machine());
        if (!idle.isEmpty()) {
            throw new BadForm(Wording.capital(idle.get(0).words()) + ": nothing of this machine depends on that");
        }
    }

    static FaultPlace of(Context context) {
        return new FaultPlace(context);
    }

    private static MachineFile unknown(String name) {
        throw new BadForm("Machine: there is no '" + name + "'; there are " + String.join(", ", MachineFile.names()));
    }

    private static String oneOf(String what, String said, List<String> names) {
        if (names.contains(said)) {
            return said;
        }
        throw new BadForm(what + ": this machine has " + String.join(", ", names) + ", not '" + said + "'");
    }

    private String fitting() {
        Double volts = known.get(Fact.VOLTAGE);
        return file.supplyAt(volts == null ? OptionalDouble.empty() : OptionalDouble.of(volts));
    }

    private static String field(Fact fact) {
        return fact.words().replace(' ', '-');
    }

    private void know(Fact fact, String typed) {
        if (typed.isEmpty()) {
            return;
        }
        boolean bare = typed.matches("[+-]?\\d+([.,]\\d+)?");
        String text = bare
                ? typed.replace(',', '.') + " "
                        + Display.METRIC.unit(fact.dimension()).symbol()
                : typed;
        try {
            known.put(fact, fact.parse(text).si());
            said.put(fact, text);
        } catch (NotAQuantity e) {
            throw new BadForm(Wording.capital(fact.words()) + ": " + e.getMessage()
                    + e.suggestion().map(s -> ". Maybe \"" + s + "\"").orElse(""));
        }
    }

    /** As it would be registered. */
    RegisteredMachine machine() {
        return new RegisteredMachine(
                0,
                "",
                name,
                revision,
                supply,
                0,
                feed,
                known.get(Fact.SUPPLY_PRESSURE),
                known.get(Fact.CONDUCTIVITY),
                known.get(Fact.VOLTAGE),
                known.get(Fact.ALTITUDE),
                known.get(Fact.AMBIENT),
                "",
                "",
                0);
    }

    private Installed installed() {
        return Models.installed(machine());
    }

    /** What every link of the page carries on. */
    List<FaultCase.Field> carried() {
        List<FaultCase.Field> fields = new ArrayList<>(List.of(
                new FaultCase.Field("machine", name),
                new FaultCase.Field(REVISION, revision),
                new FaultCase.Field(SUPPLY, supply),
                new FaultCase.Field(FED_FROM, feed)));
        said.forEach((fact, text) -> fields.add(new FaultCase.Field(field(fact), text)));
        return fields;
    }

    Plate plate(Display units) {
        Installed installed = installed();
        List<Plate.Cell> cells = new ArrayList<>();
        cells.add(new Plate.Cell("Job", "none"));
        cells.add(new Plate.Cell(
                "Machine",
                installed.machine().identity().title() + ", "
                        + installed.machine().identity().making()));
        cells.add(new Plate.Cell("Fed from", installed.source()));
        known.forEach((fact, si) ->
                cells.add(new Plate.Cell(Wording.capital(fact.words()), units.print(si, fact.dimension()))));
        return new Plate(cells);
    }

    /** The same as fields to fill in; what says nothing of this machine is not asked. */
    FaultView.Place form() {
        List<FaultView.PlaceField> fields = new ArrayList<>();
        choice(fields, REVISION, "Revision", revision, file.revisionNames());
        choice(fields, SUPPLY, "Built for", supply, file.supplyNames());
        boolean either = !Models.installed(machine()).source().equals("hand")
                && installed().machine().inRole("tank").isPresent()
                && installed().machine().inRole("mains cock").isPresent();
        choice(fields, FED_FROM, "Fed from", feed, either ? List.of("tank", "mains") : List.of());
        for (Fact fact : FACTS) {
            Installation only = Installation.UNKNOWN.with(fact, fact.parse(LIKE.get(fact)));
            if (only.idleOn(installed().machine()).isEmpty()) {
                fields.add(new FaultView.PlaceField(
                        field(fact),
                        Wording.capital(fact.words()),
                        said.getOrDefault(fact, ""),
                        LIKE.get(fact),
                        List.of()));
            }
        }
        return new FaultView.Place(name, fields);
    }

    private static void choice(
            List<FaultView.PlaceField> fields, String field, String words, String value, List<String> options) {
        if (options.size() > 1) {
            fields.add(new FaultView.PlaceField(field, words, value, "", options));
        }
    }
}
