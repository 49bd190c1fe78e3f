package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Socket, limits in line and neutral, relay and element, as in one heating circuit of a machine. */
class HeatingCircuitTest {
    private static Workbench circuit() {
        return Workbench.powered()
                .part("limit-line", new ThermalLimit())
                .set("limit-line", ThermalLimit.TRIPS, 403.15)
                .part("relay", new SolidStateRelay())
                .part("element", new HeatingElement())
                .set("element", HeatingElement.POWER, 1400)
                .part("limit-neutral", new ThermalLimit())
                .set("limit-neutral", ThermalLimit.TRIPS, 403.15)
                .part("supply", new DcSupply())
                .part("command", new Microswitch())
                .wire("switch.line out", "limit-line.1", "supply.line")
                .wire("limit-line.2", "relay.load 1")
                .wire("relay.load 2", "element.1")
                .wire("element.2", "limit-neutral.1")
                .wire("limit-neutral.2", "switch.neutral out", "supply.neutral")
                .wire("element.earth", "cord.earth")
                .wire("supply.plus", "command.1")
                .wire("command.2", "relay.plus")
                .wire("relay.minus", "supply.minus");
    }

    /** Switched on and called upon to heat. */
    private static Trial heating(Workbench bench) {
        return bench.tried().move("switch.switch", "on").set("command.cam.motion", 1);
    }

    private static final double POWER = heating(circuit()).heating();

    @Test
    void heatsWhenTheRelayIsCommanded() {
        Trial t = circuit().tried().move("switch.switch", "on");
        assertThat(t.heating()).isLessThan(0.1);
        assertThat(t.word("relay.lamp")).isEqualTo("dark");
        t.set("command.cam.motion", 1);
        // house and wires cost some per cent of 1400 W at 230 V
        assertThat(t.heating()).isBetween(1310.0, 1400.0);
        assertThat(t.word("relay.lamp")).isEqualTo("steady");
    }

    @Test
    void powerFollowsTheSquareOfTheVoltage() {
        double low = heating(circuit().set("socket", Socket.VOLTAGE, 207)).heating();
        assertThat(low / POWER).isCloseTo(0.81, within(1e-3));
    }

    @Test
    void oneOfTwoLegsOpenHalvesThePower() {
        double whole = heating(circuit().set("element", HeatingElement.LEGS, 2)).heating();
        double half = heating(circuit().set("element", HeatingElement.LEGS, 2).broken("element", "one leg open", 0))
                .heating();
        assertThat(whole).isCloseTo(POWER, within(1.0));
        assertThat(half / whole).isCloseTo(0.5, within(0.02));
    }

    @Test
    void ohmsAreTheSquareOfTheVoltageOverThePower() {
        Trial t = circuit().tried().move("cord.plug", "out");
        assertThat(t.ohms("element.1", "element.2")).isCloseTo(230 * 230 / 1400.0, within(0.1));
        Trial open = circuit().broken("element", "open", 0).tried().move("cord.plug", "out");
        // what is left is the way round through the relay's snubber and the supply
        assertThat(open.ohms("element.1", "element.2")).isGreaterThan(50e3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"limit-line", "limit-neutral"})
    void aTrippedLimitStopsTheHeatWhileTheRelayGoesOnCommanding(String limit) {
        Trial t = heating(circuit().broken(limit, "tripped", 0));
        assertThat(t.heating()).isLessThan(0.5);
        assertThat(t.word("relay.lamp")).isEqualTo("steady");
        t.move(limit + ".button", "pressed");
        assertThat(t.word(limit + ".button feel")).isEqualTo("clicks");
        assertThat(t.heating()).isCloseTo(POWER, within(0.1));
    }

    @Test
    void aLimitTripsStaysOpenAndResetsOnlyWhenCool() {
        Trial t = heating(circuit()).heat(402);
        assertThat(t.heating()).isCloseTo(POWER, within(0.1));
        t.heat(404.15);
        assertThat(t.heating()).isLessThan(0.5);
        t.move("limit-line.button", "pressed").move("limit-neutral.button", "pressed");
        assertThat(t.heating()).as("pressed while hot").isLessThan(0.5);
        t.heat(360);
        assertThat(t.heating()).as("cooled by itself").isLessThan(0.5);
        t.move("limit-line.button", "pressed").move("limit-neutral.button", "pressed");
        assertThat(t.heating()).as("reset cool").isCloseTo(POWER, within(0.1));
        t.move("limit-line.button", "pressed");
        assertThat(t.word("limit-line.button feel")).isEqualTo("no click");
    }

    @Test
    void aTiredLimitTripsBelowItsRating() {
        Trial t = heating(circuit().broken("limit-line", "trips too early", 0.5));
        assertThat(t.heat(350).heating()).isCloseTo(POWER, within(0.1));
        assertThat(t.heat(356).heating()).isLessThan(0.5);
    }

    @Test
    void aRelayStuckOnHeatsWithoutCommand() {
        Trial t = circuit().broken("relay", "stuck on", 0).tried().move("switch.switch", "on");
        assertThat(t.heating()).isCloseTo(POWER, within(5.0));
        assertThat(t.word("relay.lamp")).isEqualTo("dark");
    }

    @Test
    void aDeadRelayShowsItsLampButPassesNothing() {
        Trial t = heating(circuit().broken("relay", "never closes", 0));
        assertThat(t.heating()).isLessThan(0.1);
        assertThat(t.word("relay.lamp")).isEqualTo("steady");
    }

    @Test
    void aRelayOfHighResistanceCostsPower() {
        assertThat(heating(circuit().broken("relay", "high resistance when on", 0.5))
                        .heating())
                .isBetween(0.4 * POWER, 0.85 * POWER);
    }

    @Test
    void aDeadSupplyCommandsNothing() {
        Trial t = heating(circuit().broken("supply", "dead", 0));
        assertThat(t.word("relay.lamp")).isEqualTo("dark");
        assertThat(t.heating()).isLessThan(0.1);
    }

    @Test
    void anElementLeaksToEarthOnlyWhenHot() {
        Trial t = circuit()
                .broken("element", "leaks to earth when hot", 0.5)
                .tried()
                .move("cord.plug", "out");
        assertThat(t.ohms("element.1", "element.earth")).isGreaterThan(1e6);
        t.heat(393.15);
        assertThat(t.ohms("element.1", "element.earth")).isBetween(2e3, 20e3);
    }

    @Test
    void aContactOfSomeOhmsGoesBrownAndASoundOneDoesNot() {
        Trial sound = heating(circuit()).run(1);
        assertThat(sound.word("limit-line.look")).isEqualTo("clean");
        assertThat(sound.word("switch.look")).isEqualTo("clean");
        Trial charred =
                heating(circuit().broken("limit-line", "contact charred", 0.3)).run(1);
        assertThat(charred.word("limit-line.look")).isEqualTo("browned");
        assertThat(charred.heating()).isLessThan(0.95 * POWER);
        Trial idle = circuit()
                .broken("limit-line", "contact charred", 0.3)
                .tried()
                .move("switch.switch", "on")
                .run(1);
        assertThat(idle.word("limit-line.look")).as("has carried nothing yet").isEqualTo("clean");
    }
}
