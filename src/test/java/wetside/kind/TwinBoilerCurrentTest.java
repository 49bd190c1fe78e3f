package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** The wiring of the first machine as its file has it; temperatures, level and duties are set by hand. */
class TwinBoilerCurrentTest {
    private static final MachineFile FILE = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());

    private static Machine whole() {
        return FILE.newest();
    }

    private static Machine broken(String id, String fault) {
        Component c = whole().component(id);
        Fault named = Kinds.of(c).faults().stream()
                .filter(f -> f.name().equals(fault))
                .findFirst()
                .orElseThrow();
        return whole().with(named.on(c, 0.5));
    }

    /** Switched on with enough water everywhere, both controllers calling for all they have. */
    private static Trial on(Machine machine) {
        return Trial.of(machine)
                .set("steam-boiler.conductivity", 0.04)
                .set("steam-boiler.temperature", 293.15)
                .set("steam-boiler.level", 0.64)
                .move("power-switch.switch", "on")
                .run(5)
                .set("brew-controller.duty", 1)
                .set("steam-controller.duty", 1);
    }

    private static double brew(Trial t) {
        return t.get("brew-element first half.power") * 2 + t.get("brew-element other legs.power");
    }

    private static double steam(Trial t) {
        return t.get("steam-element first half.power") * 2 + t.get("steam-element other legs.power");
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void everyRevisionCanBeWrittenDown(String revision) {
        assertThat(Trial.of(FILE.machine(revision)).blueprint().readings()).isNotEmpty();
    }

    @Test
    void heatsBothBoilersAndStaysReady() {
        Trial t = on(whole());
        assertThat(brew(t)).isBetween(1080.0, 1200.0);
        assertThat(steam(t)).isBetween(1440.0, 1600.0);
        assertThat(t.word("board.message")).isEqualTo("ready");
        assertThat(t.word("power-lamp.light")).isEqualTo("lit");
        assertThat(t.word("house-breaker.lever")).isEqualTo("on");
        assertThat(t.word("motor.sound")).isEqualTo("silent");
        assertThat(t.run(600).word("house-breaker.lever")).isEqualTo("on");
    }

    @ParameterizedTest
    @CsvSource({"brew-limit-line", "brew-limit-neutral"})
    void aTrippedBrewLimitTakesTheBrewHeatOnly(String limit) {
        Trial t = on(broken(limit, "tripped"));
        assertThat(brew(t)).isLessThan(1);
        assertThat(steam(t)).isGreaterThan(1400);
        assertThat(t.word("brew-relay.lamp")).isEqualTo("steady");
        assertThat(t.word("brew-controller.message")).isEqualTo("none");
    }

    @ParameterizedTest
    @CsvSource({"steam-limit-line", "steam-limit-neutral"})
    void aTrippedSteamLimitTakesTheSteamHeatOnly(String limit) {
        Trial t = on(broken(limit, "tripped"));
        assertThat(steam(t)).isLessThan(1);
        assertThat(brew(t)).isGreaterThan(1000);
        assertThat(t.word("steam-relay.lamp")).isEqualTo("steady");
        assertThat(t.word("board.message")).isEqualTo("ready");
    }

    @Test
    void theLeverStartsThePumpAndTheFillOpensTheSolenoid() {
        Trial t = on(whole()).move("lever.position", "brew").run(3);
        assertThat(t.word("motor.sound")).isEqualTo("runs");
        assertThat(t.word("fill-valve.sound")).isEqualTo("silent");
        t.move("lever.position", "closed")
                .run(3)
                .set("steam-boiler.level", 0.55)
                .run(5);
        assertThat(t.word("motor.sound")).isEqualTo("runs");
        assertThat(t.word("fill-valve.sound")).isEqualTo("hums");
    }

    @Test
    void aFloatWithItsMagnetTheWrongWayRoundReadsAsAnEmptyTank() {
        Trial t = on(broken("tank", "float magnet upside down"));
        assertThat(t.reading("tank.level")).isGreaterThan(2);
        assertThat(t.word("board.message")).isEqualTo("tank empty");
        assertThat(brew(t) + steam(t)).isLessThan(1);
        assertThat(t.word("brew-relay.lamp")).isEqualTo("dark");
    }

    @Test
    void aCutEarthWireIsFoundFromTheMachinesEndOfTheCord() {
        assertThat(Trial.of(whole()).move("cord.plug", "out").ohms("cord.earth", "probe.body"))
                .isLessThan(0.3);
        assertThat(Trial.of(broken("earth-lead", "off its stud"))
                        .move("cord.plug", "out")
                        .ohms("cord.earth", "probe.body"))
                .isGreaterThan(1e6);
    }

    @Test
    void elementsAreMeasuredBetweenTheirTerminals() {
        Trial t = Trial.of(whole()).move("cord.plug", "out");
        assertThat(t.ohms("brew-element.1", "brew-element.2")).isCloseTo(44.08, within(0.2));
        assertThat(t.ohms("steam-element.1", "steam-element.2")).isCloseTo(33.06, within(0.2));
        Trial half = Trial.of(broken("brew-element", "one leg open")).move("cord.plug", "out");
        assertThat(half.ohms("brew-element.1", "brew-element.2")).isCloseTo(88.17, within(0.3));
    }
}
