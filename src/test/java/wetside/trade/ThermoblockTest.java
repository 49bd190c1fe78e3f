package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.machine.Machine;

/** What a machine without a boiler must show by itself. Common practice, no source. */
class ThermoblockTest {
    private static final double TEN_MINUTES = 600;
    private static final UnaryOperator<Machine> SCALED = broken("block", "channel scaled up", 0.85);

    @SafeVarargs
    private static Bench machine(String revision, UnaryOperator<Machine>... changes) {
        return Bench.of("thermoblock", revision, changes);
    }

    private static Bench brew(Bench b, String holds) {
        return b.turn("group.holds", holds).turn("brew-switch.switch", "on");
    }

    private static Bench stop(Bench b) {
        return b.turn("brew-switch.switch", "off");
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void isReadyWithinAMinuteOrTwo(String revision) {
        Bench b = machine(revision).on();
        assertThat(b.until("block.temperature", 273.15 + 92, 600)).isBetween(20.0, 120.0);
        brew(b.after(60), "puck").after(28);
        double first = b.celsius("cup.temperature");
        assertThat(first).as("the group is still cold").isBetween(62.0, 82.0);
        assertThat(b.read("cup.caught")).isBetween(0.028, 0.060);
        brew(stop(b).after(2 * TEN_MINUTES), "puck").after(28);
        assertThat(b.celsius("cup.temperature")).isBetween(84.0, 95.0).isGreaterThan(first + 5);
    }

    @Test
    void outletTemperatureFallsWithFlow() {
        double before = 200;
        double fast = 0;
        for (double bore : new double[] {0.25e-3, 0.5e-3, 0.8e-3, 1.6e-3}) {
            Bench b = machine("B", set("block", "channel bore", bore)).on().after(TEN_MINUTES);
            brew(b, "nothing").after(8);
            assertThat(b.read("cup.flow")).isGreaterThan(fast);
            double outlet = b.slot("block channel.temperature") - 273.15;
            assertThat(outlet).isLessThan(before - 1);
            fast = b.read("cup.flow");
            before = outlet;
        }
        assertThat(fast * 1e3).as("g/s").isBetween(5.0, 10.0);
        assertThat(before).as("°C at full flow").isBetween(60.0, 82.0);
    }

    @Test
    void scaledUpItGivesAThinHotTrickle() {
        Bench whole = brew(machine("B").on().after(TEN_MINUTES), "nothing").after(8);
        Bench scaled =
                brew(machine("B", SCALED).on().after(TEN_MINUTES), "nothing").after(8);
        assertThat(scaled.read("cup.flow")).isLessThan(0.3 * whole.read("cup.flow"));
        assertThat(scaled.celsius("cup.temperature")).isGreaterThan(whole.celsius("cup.temperature") + 5);
        assertThat(scaled.word("relief-spout.water"))
                .as("the rest goes over the over-pressure valve")
                .isNotEqualTo("dry");
        assertThat(whole.word("relief-spout.water")).isEqualTo("dry");
    }

    @Test
    void steamComesInPulsesOfThePumpAndLasts() {
        Bench b = machine("B")
                .on()
                .after(TEN_MINUTES)
                .turn("steam-switch.switch", "on")
                .after(120);
        assertThat(b.celsius("block.temperature")).isCloseTo(144, within(5.0));
        double tank = b.read("tank.level");
        b.turn("steam-tap.opened", "100 %");
        int pulses = 0;
        boolean was = false;
        double steamed = 0;
        for (int i = 0; i < 600; i++) {
            boolean runs = !b.after(0.1).word("pump.sound").equals("silent");
            pulses += runs && !was ? 1 : 0;
            was = runs;
            steamed += b.slot("steam-wand.steam") * 0.1;
        }
        assertThat(pulses).isBetween(8, 25);
        assertThat(steamed * 1e3).as("grams of steam in a minute").isBetween(6.0, 40.0);
        assertThat(tank - b.read("tank.level")).as("drawn from the tank").isGreaterThan(steamed * 0.5);
        b.turn("steam-tap.opened", "0 %").after(10);
        assertThat(b.word("pump.sound")).isEqualTo("silent");
    }

    @Test
    void withADeadTimerSteamEndsAfterAMoment() {
        Bench b = machine("B", broken("timer", "dead", 1)).on().after(TEN_MINUTES);
        b.turn("steam-switch.switch", "on")
                .after(120)
                .turn("steam-tap.opened", "100 %")
                .after(2);
        assertThat(b.word("steam-wand.steam")).isIn("plume", "jet");
        assertThat(b.after(90).word("steam-wand.steam")).isIn("none", "wisp");
    }

    @Test
    void withATimerStuckOnWaterComesFromTheWand() {
        Bench b = machine("B", broken("timer", "output stuck on", 1)).on().after(TEN_MINUTES);
        b.turn("steam-switch.switch", "on")
                .after(120)
                .turn("steam-tap.opened", "100 %")
                .after(20);
        assertThat(b.read("steam-wand.flow")).isGreaterThan(3e-3);
    }

    @Test
    void theSpringCheckKeepsSteamFromTheGroupButNotPressureFromTheCoffee() {
        Bench steaming = machine("B")
                .on()
                .after(TEN_MINUTES)
                .turn("steam-switch.switch", "on")
                .after(120);
        assertThat(steaming.word("cup.water")).isNotEqualTo("runs");
        Bench b = brew(machine("B").on().after(TEN_MINUTES), "puck").after(25);
        double inTheCup = stop(b).growth("cup.caught", 15);
        assertThat(inTheCup * 1e3)
                .as("no valve lets it off: it runs on into the cup")
                .isBetween(3.0, 15.0);
    }

    @Test
    void afterSteamingTheFirstWaterSpits() {
        Bench b = machine("B")
                .on()
                .after(TEN_MINUTES)
                .turn("steam-switch.switch", "on")
                .after(120);
        b.turn("steam-switch.switch", "off");
        double wettest = 0;
        brew(b, "nothing");
        for (int i = 0; i < 20; i++) {
            wettest = Math.max(wettest, b.after(0.1).read("cup.steam"));
        }
        assertThat(wettest).as("plume or jet").isGreaterThanOrEqualTo(2);
        assertThat(b.after(15).celsius("cup.temperature")).isLessThan(90);
    }

    @Test
    void aBlownThermalFuseIsDeadHeatWhileThePumpRuns() {
        Bench b = machine("A", broken("thermal-fuse", "blown", 1)).on().after(TEN_MINUTES);
        assertThat(b.celsius("block.temperature")).isLessThan(30);
        assertThat(b.word("heat-lamp.light")).isEqualTo("dark");
        brew(b, "nothing").after(8);
        assertThat(b.word("pump.sound")).isEqualTo("buzzes evenly");
        assertThat(b.read("cup.flow")).isGreaterThan(4e-3);
        assertThat(b.celsius("cup.temperature")).isLessThan(30);
    }

    @Test
    void bothThermostatsWeldedBlowTheFuse() {
        Bench b = machine("A", broken("brew-thermostat", "welded", 1), broken("steam-thermostat", "welded", 1))
                .on();
        b.after(900);
        assertThat(b.slot("thermal-fuse.whole")).isZero();
    }
}
