package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wetside.machine.Installation.Fact;
import wetside.machine.Installation.Feed;
import wetside.machine.Installation.Known;
import wetside.units.NotAQuantity;

class InstallationTest {
    private final Machine kettle = MachineFile.read("kettle.yaml", MachineFileTest.kettle(), SmallKinds.ALL)
            .newest();

    @Test
    void whatIsKnownMovesTheSupplyAndNarrowsIt() {
        Machine placed = read("""
                fed from: mains
                supply pressure: 3.5 bar
                voltage: 221 V ± 1 V
                altitude: 1600 m
                """).around(kettle);
        Component mains = placed.component("mains");
        assertThat(mains.value(0)).isEqualTo(3.5e5);
        assertThat(mains.spread(0)).isEqualTo(Spread.absolute(0.2e5));
        assertThat(mains.value(1)).as("unknown stays usual").isEqualTo(288.15);
        assertThat(mains.spread(1)).as("and wide").isEqualTo(Spread.absolute(8));
        assertThat(placed.component("socket").spread(0)).isEqualTo(Spread.absolute(1));
        assertThat(placed.component("air").value(0)).isEqualTo(1600);
    }

    @Test
    void nothingKnownChangesNothing() {
        assertThat(Installation.UNKNOWN.around(kettle)).isSameAs(kettle);
        assertThat(read("fed from: unknown\nvoltage: unknown")).isEqualTo(Installation.UNKNOWN);
    }

    @Test
    void howItIsFedIsForTheOperator() {
        Installation tank = read("fed from: tank");
        assertThat(tank.fedFrom()).contains(Feed.TANK);
        assertThat(tank.around(kettle)).isSameAs(kettle);
        assertThat(Installation.UNKNOWN.with(Feed.MAINS).fedFrom()).contains(Feed.MAINS);
    }

    @Test
    void factsTheMachineHasNoPlaceForAreNamed() {
        Installation place = read("water conductivity: 15 µS/cm\nvoltage: 230 V");
        assertThat(place.facts().get(Fact.CONDUCTIVITY).si()).isEqualTo(15e-4, within(1e-12));
        assertThat(place.idleOn(kettle)).containsExactly(Fact.CONDUCTIVITY);
    }

    @Test
    void anOptionSaysTheSameAsAFile() {
        assertThat(Fact.AMBIENT.parse("30 °C")).isEqualTo(new Known(303.15, Spread.absolute(2)));
        assertThat(Installation.UNKNOWN.with(Fact.AMBIENT, Fact.AMBIENT.parse("30 °C")))
                .isEqualTo(read("ambient: 30 °C"));
        assertThatThrownBy(() -> Fact.AMBIENT.parse("30 bar"))
                .isInstanceOf(NotAQuantity.class)
                .hasMessage("\"30 bar\" is a pressure; a temperature is wanted here (°C, K or °F)");
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        Node node = Node.read("case.yaml", """
                fed from: river
                supply pressure: 90 bar
                ambient: 20
                voltag: 230 V
                """);
        Installation.read(node);
        assertThat(node.problems().all().stream().map(Problem::line))
                .containsExactly(
                        "case.yaml:1:11: fed from: \"river\" is none of tank and mains.",
                        "case.yaml:2:18: supply pressure: \"90 bar\" makes no sense: supply pressure lies between 0.00 bar"
                                + " and 10.0 bar.",
                        "case.yaml:3:10: ambient: \"20\" has no unit; a temperature is written in °C, K or °F. Maybe \"20"
                                + " °C\".",
                        "case.yaml:4:1: voltag: \"voltag\" is not known here; known are supply pressure, supply"
                                + " temperature, water conductivity, voltage, altitude, ambient and fed from. Maybe"
                                + " \"voltage\".");
    }

    private static Installation read(String text) {
        Node node = Node.read("case.yaml", text);
        Installation installation = Installation.read(node);
        node.check();
        return installation;
    }
}
