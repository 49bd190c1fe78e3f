package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** What one small boiler for coffee and steam must show by itself. Common practice, no source. */
class SingleBoilerTest {
    private static final double WARM = 40 * 60;
    private static final double READY_FOR_STEAM = 4 * 60;
    private static final double TOO_HOT_FOR_COFFEE = 273.15 + 96;

    @SafeVarargs
    private static Bench machine(String revision, UnaryOperator<Machine>... changes) {
        return Bench.of("single-boiler", revision, changes);
    }

    private static Bench brew(Bench b, String holds) {
        return b.turn("group.holds", holds).turn("brew-switch.switch", "on");
    }

    private static Bench stop(Bench b) {
        return b.turn("brew-switch.switch", "off");
    }

    private static Bench steamOn(Bench b) {
        return b.turn("steam-switch.switch", "on");
    }

    private static double boiler(Bench b) {
        return b.slot("boiler.temperature") - 273.15;
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void isHotInMinutesItsGroupABitLater(String revision) {
        Bench b = machine(revision).on();
        assertThat(b.until("boiler.shell temperature", 273.15 + 90, 3600) / 60).isBetween(1.5, 6.0);
        assertThat(b.until("group.temperature", 273.15 + 75, 3600) / 60).isBetween(4.0, 20.0);
        brew(b.after(WARM), "puck").after(28);
        assertThat(b.celsius("cup.temperature")).isBetween(86.0, 96.0);
        assertThat(b.read("cup.caught")).isBetween(0.030, 0.060);
        assertThat(b.bar("pump-gauge.needle")).isBetween(8.5, 10.5);
    }

    /** A snap disc swings, a controller holds. */
    @Test
    void aThermostatSurfsAControllerDoesNot() {
        assertThat(swing(machine("A").on().after(WARM))).isBetween(6.0, 18.0);
        assertThat(swing(machine("B").on().after(WARM))).isLessThan(1.5);
    }

    private static double swing(Bench b) {
        double low = boiler(b);
        double high = low;
        for (int i = 0; i < 60; i++) {
            double now = boiler(b.after(10));
            low = Math.min(low, now);
            high = Math.max(high, now);
        }
        return high - low;
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void afterSteamingTheFirstWaterBoilsAtTheGroupUntilAPurge(String revision) {
        Bench b = steamOn(machine(revision).on().after(WARM)).after(READY_FOR_STEAM);
        assertThat(boiler(b)).isBetween(118.0, 140.0);
        b.turn("steam-switch.switch", "off").after(2);
        brew(b, "nothing").after(1);
        assertThat(b.word("cup.steam")).as("boils off").isIn("plume", "jet");
        assertThat(b.celsius("cup.temperature")).isGreaterThan(98);
        double purged = purge(b);
        assertThat(purged * 1e3).as("grams until the working range").isBetween(60.0, 300.0);
        assertThat(b.word("cup.steam")).isEqualTo("none");
    }

    /** Lets water run until it is no longer too hot for coffee; what has run [kg]. */
    private static double purge(Bench b) {
        double before = b.read("cup.caught");
        for (int i = 0; i < 120 && b.read("cup.temperature") > TOO_HOT_FOR_COFFEE; i++) {
            b.after(0.5);
        }
        return b.read("cup.caught") - before;
    }

    @Test
    void withoutAPurgeTheShotIsBurnt() {
        Bench burnt = machine("B").on().after(WARM);
        steamOn(burnt).after(READY_FOR_STEAM).turn("steam-switch.switch", "off").after(5);
        brew(burnt, "puck").after(10);
        Bench right = brew(machine("B").on().after(WARM), "puck").after(10);
        assertThat(burnt.celsius("cup.temperature")).isGreaterThan(98);
        assertThat(right.celsius("cup.temperature")).isLessThan(95);
    }

    @Test
    void theThreeWayValveLetsThePressureOffTheCoffee() {
        Bench b = brew(machine("B").on().after(WARM), "puck").after(30);
        assertThat(b.word("group-drain.water")).isEqualTo("dry");
        double drained = stop(b).growth("group-drain.caught", 3);
        assertThat(drained * 1e3).as("grams to the tray").isBetween(3.0, 15.0);
        double after = b.read("cup.caught");
        assertThat(b.after(20).read("cup.caught") - after)
                .as("the cup gets no more")
                .isLessThan(1e-3);
    }

    @Test
    void withItsExhaustBlockedThePressureGoesOnThroughTheCoffee() {
        Bench b = brew(
                        machine("B", broken("brew-valve", "exhaust blocked", 1))
                                .on()
                                .after(WARM),
                        "puck")
                .after(30);
        double before = b.read("cup.caught");
        assertThat(stop(b).growth("group-drain.caught", 3)).isLessThan(1e-4);
        assertThat(b.read("cup.caught") - before).as("runs on into the cup").isGreaterThan(2e-3);
    }

    @Test
    void leftOnSteamWithTheTapOpenItLosesItsWater() {
        Bench b = steamOn(machine("B").on().after(WARM)).after(READY_FOR_STEAM);
        double full = b.slot("boiler.level");
        b.turn("steam-tap.opened", "100 %").after(60);
        double left = b.slot("boiler.level");
        assertThat(full - left).as("share of the boiler").isBetween(0.05, 0.4);
        b.after(600);
        assertThat(b.slot("boiler.level")).as("nothing refills it").isLessThan(0.2);
        b.turn("steam-tap.opened", "0 %").turn("steam-switch.switch", "off");
        brew(b, "nothing").after(3);
        assertThat(b.read("cup.flow")).as("the pump fills the boiler first").isLessThan(2e-3);
        assertThat(b.after(60).read("cup.flow")).isGreaterThan(4e-3);
    }

    @Test
    void aWeldedThermostatEndsInABlownThermalFuseAndDeadHeat() {
        Bench b = machine("A", broken("steam-thermostat", "welded", 1)).on().after(60);
        steamOn(b);
        double hottest = 0;
        for (int i = 0; i < 60; i++) {
            hottest = Math.max(hottest, b.after(30).celsius("boiler.shell temperature"));
        }
        assertThat(hottest).isBetween(175.0, 235.0);
        assertThat(b.slot("thermal-fuse.whole")).isZero();
        b.after(3600);
        assertThat(b.word("heat-lamp.light")).isEqualTo("dark");
        assertThat(b.celsius("boiler.shell temperature")).isLessThan(80);
        brew(b, "nothing").after(20);
        assertThat(b.word("pump.sound")).as("dead heat, live pump").isEqualTo("buzzes evenly");
        assertThat(b.word("power-lamp.light")).isEqualTo("lit");
    }

    @Test
    void aWeldedBrewThermostatStopsAtTheSteamThermostat() {
        Bench b = machine("A", broken("brew-thermostat", "welded", 1)).on().after(WARM);
        assertThat(boiler(b)).isBetween(115.0, 145.0);
        assertThat(b.slot("thermal-fuse.whole")).isOne();
    }

    @Test
    void theOverPressureValveSendsTheSurplusBackToTheTank() {
        Bench b = machine("B").on().after(WARM);
        double before = b.read("tank.level");
        brew(b, "blind disc").after(15);
        assertThat(b.word("tank.return")).isEqualTo("runs");
        assertThat(b.bar("pump-gauge.needle")).isBetween(9.0, 10.5);
        double lost = before - b.read("tank.level");
        assertThat(lost).as("what the group took up").isBetween(0.0, 0.03);
        Bench stuck = brew(
                        machine("B", broken("over-pressure", "stuck shut", 1))
                                .on()
                                .after(WARM),
                        "blind disc")
                .after(15);
        assertThat(stuck.bar("pump-gauge.needle")).isGreaterThan(14);
    }

    @Test
    void builtFor120VoltsItDoesTheSame() {
        Machine m = MachineFile.bundled("single-boiler", Kinds.declarations()).machines().stream()
                .filter(x -> x.identity().making().equals("revision B for 120 V"))
                .findFirst()
                .orElseThrow();
        Bench b = Bench.on(m).on().after(WARM);
        assertThat(boiler(b)).isBetween(94.0, 99.0);
        brew(b, "puck").after(28);
        assertThat(b.bar("pump-gauge.needle")).isBetween(8.5, 10.5);
        assertThat(b.word("brew-valve.sound")).isEqualTo("hums");
        assertThat(stop(b).growth("group-drain.caught", 3)).isGreaterThan(3e-3);
    }

    @Test
    void theFeedRefillsWhatBrewingTakesWithoutAProbe() {
        Bench b = machine("B", set("boiler", "filled at start", 0.6)).on().after(WARM);
        brew(b, "nothing").after(25);
        assertThat(b.slot("boiler.level")).isGreaterThan(0.95);
    }
}
