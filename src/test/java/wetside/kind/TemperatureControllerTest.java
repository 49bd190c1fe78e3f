package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A controller with its sensor, wiring and relay; the duty is set by hand. */
class TemperatureControllerTest {
    private static Workbench bench() {
        return Workbench.powered()
                .part("supply", new DcSupply())
                .part("controller", new TemperatureController())
                .part("lead", new SignalLead())
                .part("sensor", new NtcSensor())
                .part("relay", new SolidStateRelay())
                .wire("switch.line out", "supply.line")
                .wire("switch.neutral out", "supply.neutral")
                .wire("supply.plus", "controller.plus", "controller.feed")
                .wire("supply.minus", "controller.minus", "relay.minus")
                .wire("controller.output", "relay.plus")
                .wire("controller.sensor 1", "lead.1")
                .wire("lead.2", "sensor.1")
                .wire("sensor.2", "controller.sensor 2")
                .wire("relay.load 1", "switch.line out");
    }

    private static Trial on(Workbench bench) {
        return bench.tried().move("switch.switch", "on");
    }

    @Test
    void showsWhatTheSensorFeels() {
        Trial t = on(bench()).heat(366.15);
        assertThat(t.reading("controller.display")).isCloseTo(366.15, within(0.05));
        assertThat(t.word("controller.message")).isEqualTo("none");
    }

    @Test
    void isDarkWithoutSupply() {
        assertThat(bench().tried().word("controller.message")).isEqualTo("dark");
        assertThat(on(bench().broken("supply", "weak", 1)).word("controller.message"))
                .isEqualTo("dark");
        assertThat(on(bench().broken("controller", "dead", 0)).word("controller.message"))
                .isEqualTo("dark");
    }

    @Test
    void namesAnOpenAndAShortedSensor() {
        assertThat(on(bench().broken("sensor", "open", 0)).word("controller.message"))
                .isEqualTo("sensor open");
        assertThat(on(bench().broken("lead", "off", 0)).word("controller.message"))
                .isEqualTo("sensor open");
        assertThat(on(bench().broken("sensor", "shorted", 0)).word("controller.message"))
                .isEqualTo("sensor shorted");
        assertThat(on(bench().broken("sensor", "shorted", 0)).reading("controller.display"))
                .isNaN();
    }

    @Test
    void badConnectorsAndDampnessFalsifyWhatItShows() {
        double corroded = on(bench().broken("lead", "connector corroded", 0.2))
                .heat(366.15)
                .reading("controller.display");
        double damp = on(bench().broken("sensor", "damp, reads hot", 0.2))
                .heat(366.15)
                .reading("controller.display");
        assertThat(corroded).isLessThan(364);
        assertThat(damp).isGreaterThan(368);
    }

    @Test
    void anotherTableGivesAnotherTemperature() {
        Trial t = on(bench().broken("controller", "set for another sensor", 0)).heat(293.15);
        assertThat(t.word("controller.message")).isEqualTo("none");
        assertThat(t.reading("controller.display")).isGreaterThan(320);
        Trial pt =
                on(bench().set("controller", TemperatureController.SENSOR, 2)).heat(293.15);
        assertThat(pt.word("controller.message")).isEqualTo("sensor open");
    }

    @Test
    void theRelayLampFollowsTheOutput() {
        Trial t = on(bench());
        assertThat(t.set("controller.duty", 0).word("relay.lamp")).isEqualTo("dark");
        assertThat(t.set("controller.duty", 0.2).word("relay.lamp")).isEqualTo("flashing");
        assertThat(t.set("controller.duty", 1).word("relay.lamp")).isEqualTo("steady");
        assertThat(t.word("controller.lamp")).isEqualTo("steady");
    }

    @Test
    void outputsFailBothWays() {
        Trial dead = on(bench().broken("controller", "output dead", 0)).set("controller.duty", 1);
        assertThat(dead.word("controller.lamp")).isEqualTo("steady");
        assertThat(dead.word("relay.lamp")).isEqualTo("dark");
        Trial stuck = on(bench().broken("controller", "output stuck on", 0)).set("controller.duty", 0);
        assertThat(stuck.word("relay.lamp")).isEqualTo("steady");
    }

    @Test
    void aPlatinumSensorIsHeardByItsOwnTable() {
        Workbench bench = Workbench.powered()
                .part("supply", new DcSupply())
                .part("controller", new TemperatureController())
                .set("controller", TemperatureController.SENSOR, 2)
                .part("sensor", RisingSensor.platinum())
                .wire("switch.line out", "supply.line")
                .wire("switch.neutral out", "supply.neutral")
                .wire("supply.plus", "controller.plus")
                .wire("supply.minus", "controller.minus")
                .wire("controller.sensor 1", "sensor.1")
                .wire("sensor.2", "controller.sensor 2");
        assertThat(on(bench).heat(393.15).reading("controller.display")).isCloseTo(393.15, within(0.1));
        assertThat(on(bench.broken("sensor", "shorted", 1)).word("controller.message"))
                .isEqualTo("sensor shorted");
    }

    @Test
    void aSensorIsReadWithAnOhmMeter() {
        Trial t = bench().tried().move("cord.plug", "out").heat(298.15);
        assertThat(t.ohms("sensor.1", "sensor.2")).isCloseTo(10e3, within(100.0));
    }
}
