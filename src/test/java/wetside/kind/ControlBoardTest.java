package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Port;

/** The board with probe, float, brew switch, motor and a lamp in place of the fill solenoid. */
class ControlBoardTest {
    private static final double TAP_WATER = 0.05;

    private Workbench bench;

    /** Stands in for a steam boiler: something a probe can be screwed into. */
    private static final class Pot implements Kind {
        private static final Declaration DECLARATION =
                new Declaration("pot", List.of(Port.fluid("probe", "at the top")), List.of());

        @Override
        public Declaration declaration() {
            return DECLARATION;
        }

        @Override
        public List<Fault> faults() {
            return List.of();
        }

        @Override
        public void build(Component c, Blueprint b) {
            int vessel = b.fluid().vessel(c.id(), 1.5e-3, 1e9, 0.3, b.innerHeatNode());
            b.fluid().takeOff(b.node(c, "probe"), vessel, 0.99);
        }
    }

    @BeforeEach
    void putTogether() {
        bench = Workbench.powered()
                .part("pot", new Pot())
                .part("probe", new LevelProbe())
                .line("probe.boiler", "pot.probe")
                .part("supply", new DcSupply())
                .part("board", new ControlBoard())
                .part("float", new ReedSensor())
                .part("brew", new Microswitch())
                .part("motor", new Motor())
                .part("valve", new Lamp())
                .part("brew-heat", new Lamp())
                .part("steam-heat", new Lamp())
                .set("brew-heat", Lamp.VOLTAGE, 12)
                .set("steam-heat", Lamp.VOLTAGE, 12)
                .wire("switch.line out", "supply.line", "board.line")
                .wire("switch.neutral out", "supply.neutral", "motor.neutral", "valve.2")
                .wire("supply.plus", "board.plus")
                .wire("supply.minus", "board.minus", "brew-heat.2", "steam-heat.2")
                .wire("board.probe", "probe.rod")
                .wire("board.probe return", "probe.body", "cord.earth", "motor.earth")
                .wire("board.tank", "float.1")
                .wire("board.brew", "brew.1")
                .wire("board.common", "float.2", "brew.2")
                .wire("board.pump", "motor.line")
                .wire("board.fill", "valve.1")
                .wire("board.brew heat", "brew-heat.1")
                .wire("board.steam heat", "steam-heat.1");
    }

    private Trial on() {
        return on(bench, TAP_WATER);
    }

    private static Trial on(Workbench bench, double conductivity) {
        return bench.tried()
                .set("float.magnet.motion", 1)
                .set("pot.temperature", 293.15)
                .set("pot.conductivity", conductivity)
                .set("pot.level", 0.4)
                .move("switch.switch", "on");
    }

    private static void isFilling(Trial t, boolean yes) {
        assertThat(t.word("valve.light")).isEqualTo(yes ? "lit" : "dark");
        assertThat(t.word("motor.sound")).isEqualTo(yes ? "runs" : "silent");
    }

    @Test
    void fillsUntilTheProbeIsWetAndReleasesTheSteamHeatThen() {
        Trial t = on();
        isFilling(t, false);
        isFilling(t.run(4), true);
        assertThat(t.word("board.message")).isEqualTo("filling steam boiler");
        assertThat(t.word("steam-heat.light")).isEqualTo("dark");
        assertThat(t.word("brew-heat.light")).isEqualTo("lit");
        t.set("pot.level", 0.71).run(4);
        isFilling(t, false);
        assertThat(t.word("board.message")).isEqualTo("ready");
        assertThat(t.word("steam-heat.light")).isEqualTo("lit");
    }

    @Test
    void doesNotMindALevelThatSwaysForAMoment() {
        Trial t = on().set("pot.level", 0.71).run(4);
        for (int wave = 0; wave < 5; wave++) {
            t.set("pot.level", 0.6).run(1).set("pot.level", 0.71).run(1);
        }
        isFilling(t, false);
    }

    @Test
    void refillsWithoutTakingTheHeatAway() {
        Trial t = on().set("pot.level", 0.71).run(4).set("pot.level", 0.6).run(4);
        isFilling(t, true);
        assertThat(t.word("steam-heat.light")).isEqualTo("lit");
    }

    @Test
    void givesUpAfterTheLongestFillUntilSwitchedOff() {
        Trial t = on().run(80);
        isFilling(t, true);
        isFilling(t.run(20), false);
        assertThat(t.word("board.message")).isEqualTo("steam boiler fill gave up");
        assertThat(t.word("steam-heat.light")).isEqualTo("dark");
        isFilling(t.run(300), false);
        t.move("switch.switch", "off").run(5).move("switch.switch", "on").run(4);
        isFilling(t, true);
    }

    @Test
    void pureWaterNeverStopsTheFill() {
        Trial t = on(bench, 3e-4).set("pot.level", 0.99).run(50);
        isFilling(t, true);
        assertThat(t.run(60).word("board.message")).isEqualTo("steam boiler fill gave up");
    }

    @Test
    void aScaledProbeStopsLaterOrNotAtAll() {
        bench.broken("probe", "scaled", 0.25);
        Trial t = on().set("pot.level", 0.71).run(4);
        isFilling(t, true);
        isFilling(t.set("pot.level", 0.88).run(4), false);
        bench.broken("probe", "scaled", 1);
        isFilling(on().set("pot.level", 1).run(20), true);
    }

    @Test
    void aBridgedProbeNeverCalls() {
        bench.broken("probe", "bridged by crust or dirt", 0.5);
        Trial t = on().set("pot.level", 0.1).run(20);
        isFilling(t, false);
        assertThat(t.word("board.message")).isEqualTo("ready");
    }

    @Test
    void runsThePumpForTheLever() {
        Trial t = on().set("pot.level", 0.71).run(4).set("brew.cam.motion", 1).run(2);
        assertThat(t.word("motor.sound")).isEqualTo("runs");
        assertThat(t.word("valve.light")).isEqualTo("dark");
        assertThat(t.set("brew.cam.motion", 0).run(2).word("motor.sound")).isEqualTo("silent");
    }

    @Test
    void anEmptyTankStopsEverythingAndSaysSo() {
        Trial t =
                on().set("pot.level", 0.71).run(4).set("float.magnet.motion", 0).set("brew.cam.motion", 1);
        t.run(4);
        assertThat(t.word("board.message")).isEqualTo("tank empty");
        assertThat(t.word("motor.sound")).isEqualTo("silent");
        assertThat(t.word("brew-heat.light")).isEqualTo("dark");
        assertThat(t.word("steam-heat.light")).isEqualTo("dark");
    }

    @Test
    void brokenFloatSensorsSpeakForTheTank() {
        bench.broken("float", "stuck open", 0);
        assertThat(on().run(4).word("board.message")).isEqualTo("tank empty");
        bench.broken("float", "stuck closed", 0);
        assertThat(on().set("float.magnet.motion", 0).run(4).word("board.message"))
                .isNotEqualTo("tank empty");
    }

    @Test
    void outputsAndInputsFailOneByOne() {
        bench.broken("board", "pump output dead", 0);
        Trial t = on().run(4);
        assertThat(t.word("motor.sound")).isEqualTo("silent");
        assertThat(t.word("valve.light")).isEqualTo("lit");
        putTogether();
        bench.broken("board", "pump output stuck on", 0);
        t = on().set("pot.level", 0.71).run(4);
        assertThat(t.word("motor.sound")).isEqualTo("runs");
        putTogether();
        bench.broken("board", "fill output stuck on", 0);
        t = on().set("pot.level", 0.71).run(4);
        assertThat(t.word("valve.light")).isEqualTo("lit");
        putTogether();
        bench.broken("board", "probe input dead", 0);
        isFilling(on().set("pot.level", 0.9).run(10), true);
        putTogether();
        bench.broken("brew", "never closes", 0);
        t = on().set("pot.level", 0.71).run(4).set("brew.cam.motion", 1).run(2);
        assertThat(t.word("motor.sound")).isEqualTo("silent");
        putTogether();
        bench.broken("brew", "stuck closed", 0);
        assertThat(on().set("pot.level", 0.71).run(4).word("motor.sound")).isEqualTo("runs");
    }

    @Test
    void withoutSupplyItIsDarkAndStill() {
        bench.broken("supply", "dead", 0);
        Trial t = on().set("brew.cam.motion", 1).run(10);
        assertThat(t.word("board.message")).isEqualTo("dark");
        isFilling(t, false);
    }
}
