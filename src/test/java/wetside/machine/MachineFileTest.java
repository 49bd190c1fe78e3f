package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wetside.machine.Machine.End;

class MachineFileTest {
    private final MachineFile file = MachineFile.read("some/kettle.yaml", kettle(), SmallKinds.ALL);

    static String kettle() {
        try (InputStream in = MachineFileTest.class.getResourceAsStream("kettle.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aMachineHasItsNamePanelsAndRevisions() {
        assertThat(file.newest().identity())
                .isEqualTo(new Machine.Identity(
                        "kettle",
                        "Fellmoor Kettle",
                        "B",
                        "",
                        List.of(
                                new Machine.Panel("top", "top grid", 1, "hot above the boiler", List.of(Side.TOP)),
                                new Machine.Panel("rear", "rear", 4, "", List.of(Side.REAR)))));
        assertThat(file.revisionNames()).containsExactly("A", "B");
        assertThat(file.size().orElseThrow().height()).isEqualTo(0.35, within(1e-12));
        assertThat(file.source()).isEqualTo(kettle());
    }

    private static MachineFile soldFor(String high, String low, String text) {
        String supplies =
                "built for:\n  - {name: " + high + ", voltage: 230 V}\n  - {name: " + low + ", voltage: 120 V}\n";
        return MachineFile.read("kettle.yaml", text.replace("revisions:\n", supplies + "revisions:\n"), SmallKinds.ALL);
    }

    @Test
    void oneFileServesTwoSupplies() {
        MachineFile both = soldFor(
                "230 V",
                "120 V",
                kettle().replace("kind: mains cock", "kind: mains cock\n    built for 120 V: {part: FM-9}"));
        assertThat(both.supplyNames()).containsExactly("230 V", "120 V");
        assertThat(both.machine("A", "120 V").component("cock").place().part()).isEqualTo("FM-9");
        assertThat(both.machine("A", "230 V").component("cock").place().part())
                .isEqualTo(file.machine("A").component("cock").place().part());
        assertThat(both.newest().identity().making()).isEqualTo("revision B for 230 V");
        assertThat(both.machines()).hasSize(4);
    }

    @Test
    void aVoltageFindsTheSupplyItWasBuiltFor() {
        MachineFile both = soldFor("Europe", "America", kettle());
        assertThat(both.supplyAt(OptionalDouble.of(108))).isEqualTo("America");
        assertThat(both.supplyAt(OptionalDouble.of(245))).isEqualTo("Europe");
        assertThat(both.supplyAt(OptionalDouble.empty())).isEqualTo("Europe");
        assertThat(file.supplyAt(OptionalDouble.of(108))).isEmpty();
    }

    @Test
    void aBuildDateFindsItsRevision() {
        assertThat(file.byBuildDate(YearMonth.of(2016, 2))).isEmpty();
        assertThat(file.byBuildDate(YearMonth.of(2016, 3))).contains("A");
        assertThat(file.byBuildDate(YearMonth.of(2021, 5))).contains("A");
        assertThat(file.byBuildDate(YearMonth.of(2021, 6))).contains("B");
        assertThatThrownBy(() -> file.machine("C")).hasMessage("no revision 'C'; there are [A, B]");
    }

    @Test
    void aComponentHasItsPlace() {
        assertThat(file.machine("A").component("cock").place())
                .isEqualTo(new Component.Place(
                        "blue cock",
                        List.of(0.04, 0.01, 0.06),
                        List.of(),
                        List.of("rear", "top"),
                        "blue lever beside the hose",
                        "FM-1001",
                        List.of("mains cock", "first thing to shut"),
                        ""));
        assertThat(file.newest().inRole("water mains").map(Component::id)).contains("mains");
    }

    @Test
    void valuesAndTolerancesAreRead() {
        Component boiler = file.newest().component("boiler");
        assertThat(boiler.values()).containsExactly(new double[] {0.7e-3, 1, 366.15, 0.4}, within(1e-9));
        assertThat(boiler.spread(0)).as("the kind's").isEqualTo(Spread.relative(0.03));
        assertThat(boiler.spread(1)).isEqualTo(Spread.relative(0.1));
        assertThat(boiler.spread(2)).isEqualTo(Spread.absolute(2));
        assertThat(boiler.spread(3)).isEqualTo(Spread.absolute(0.05));
    }

    @Test
    void aRevisionChangesOnlyWhatItNames() {
        Component a = file.machine("A").component("cock");
        Component b = file.machine("B").component("cock");
        assertThat(a.value(0)).isEqualTo(6e-3, within(1e-12));
        assertThat(b.value(0)).isEqualTo(7e-3, within(1e-12));
        assertThat(b.spread(0)).isEqualTo(a.spread(0)).isEqualTo(Spread.relative(0.02));
        assertThat(b.place().part()).isEqualTo("FM-1001/2");
        assertThat(b.place().mark()).isEqualTo("black lever");
        assertThat(b.place().behind()).isEqualTo(a.place().behind());
    }

    @Test
    void linesFollowThePartsThatAreThere() {
        Machine a = file.machine("A");
        Machine b = file.machine("B");
        assertThat(a.has("tee")).isFalse();
        assertThat(b.has("tee")).isTrue();
        assertThat(ends(a)).containsExactly("mains.out cock.in", "cock.out boiler.in", "boiler.out valve.in");
        assertThat(ends(b))
                .containsExactly("mains.out cock.in", "cock.out boiler.in", "boiler.out tee.a", "tee.b valve.in");
    }

    @Test
    void aLineHasItsMeasuresAndAFittingHasNone() {
        Machine a = file.machine("A");
        assertThat(a.joins().lines().get(0).bore()).isNaN();
        assertThat(a.joins().lines().get(1))
                .isEqualTo(new Machine.Line(new End("cock", "out"), new End("boiler", "in"), 6e-3, 0.4, 0.1, "copper"));
    }

    @Test
    void wiresAndContactsAreRead() {
        Machine.Joins joins = file.newest().joins();
        assertThat(joins.wires()).hasSize(2);
        assertThat(joins.wires().get(0).conductance()).isNaN();
        assertThat(joins.contacts())
                .containsExactly(new Machine.Join(new End("element", "sheath"), new End("boiler", "shell"), 12));
        assertThat(joins.linkages()).isEmpty();
    }

    private static List<String> ends(Machine machine) {
        return machine.joins().lines().stream()
                .map(l -> l.from() + " " + l.to())
                .toList();
    }
}
