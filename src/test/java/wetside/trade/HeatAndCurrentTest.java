package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.onMains;
import static wetside.trade.Bench.onTank;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.machine.Machine;

/**
 * What heat, controls and current must show by themselves. Common practice, no source. Nothing in the twin names these
 * situations: they come from parts and how they are joined.
 */
class HeatAndCurrentTest {
    private static final double LONG = 1800;

    @ParameterizedTest
    @ValueSource(strings = {"brew", "steam"})
    void theRelayLampIsSteadyWhileHeatingUpAndFlashesWhileHolding(String boiler) {
        Bench b = onTank().on().after(100);
        assertThat(b.word(boiler + "-relay.lamp")).isEqualTo("steady");
        b.after(LONG);
        assertThat(b.word(boiler + "-relay.lamp")).isEqualTo("flashing");
        assertThat(b.read(boiler + "-controller.display")).isCloseTo(wanted(b, boiler), within(0.5));
    }

    private static double wanted(Bench b, String boiler) {
        return b.slot(boiler + "-controller.set point");
    }

    @ParameterizedTest
    @CsvSource({"brew, line", "brew, neutral", "steam, line", "steam, neutral"})
    void aTrippedLimitMeansNoHeatNoMessageAndALampThatKeepsCommanding(String boiler, String pole) {
        Bench b = onTank(broken(boiler + "-limit-" + pole, "tripped", 0.5)).on().after(600);
        assertThat(b.celsius(boiler + "-controller.display")).isLessThan(40);
        assertThat(b.word(boiler + "-controller.message")).isEqualTo("none");
        assertThat(b.word("board.message")).isEqualTo("ready");
        assertThat(b.word(boiler + "-relay.lamp")).isEqualTo("steady");
    }

    @ParameterizedTest
    @CsvSource({
        "brew, open, sensor open",
        "brew, shorted, sensor shorted",
        "steam, open, sensor open",
        "steam, shorted, sensor shorted"
    })
    void aSensorOpenOrShortedMeansAMessageAndNoHeat(String boiler, String fault, String message) {
        Bench b = onTank(broken(boiler + "-sensor", fault, 0.5)).on().after(600);
        assertThat(b.word(boiler + "-controller.message")).isEqualTo(message);
        assertThat(b.word(boiler + "-relay.lamp")).isEqualTo("dark");
        assertThat(b.slot(boiler + "-boiler.temperature") - 273.15).isLessThan(40);
    }

    @Test
    void aBrewRelayStuckOnOvershootsUntilALimitTrips() {
        Bench b = onTank(broken("brew-relay", "stuck on", 0.5)).on().after(420);
        assertThat(b.celsius("brew-controller.display")).isGreaterThan(110);
        assertThat(b.word("brew-relay.lamp")).isEqualTo("dark");
        b.after(LONG);
        assertThat(b.slot("brew-limit-line.closed") + b.slot("brew-limit-neutral.closed"))
                .isLessThan(2);
        assertThat(b.celsius("brew-controller.display")).isLessThan(110);
    }

    @Test
    void aSteamRelayStuckOnEndsOnTheSafetyValve() {
        Bench b = onTank(broken("steam-relay", "stuck on", 0.5)).on().after(LONG);
        assertThat(b.bar("steam-gauge.needle")).isBetween(2.3, 2.7);
        assertThat(b.slot("safety-valve.flow")).isGreaterThan(1e-4);
        assertThat(b.word("steam-relay.lamp")).isEqualTo("dark");
    }

    @Test
    void warmUpTimeFollowsTheSquareOfTheVoltage() {
        assertThat(warmUp(set("socket", "voltage", 207)) / warmUp()).isBetween(1.2, 1.3);
    }

    @Test
    void oneElementLegOpenDoublesTheWarmUp() {
        assertThat(warmUp(broken("brew-element", "one leg open", 0.5)) / warmUp())
                .isBetween(1.95, 2.5);
    }

    /** From switching on to a brew boiler at 85 °C [s]. */
    @SafeVarargs
    private static double warmUp(UnaryOperator<Machine>... changes) {
        Bench b = onTank(changes).on();
        while (b.celsius("brew-controller.display") < 85 && b.run().time() < 3600) {
            b.after(2);
        }
        return b.run().time();
    }

    @Test
    void aWeakOrMissingCapacitorDelaysThePressureButNotItsEndValue() {
        double whole = pressureAfter(3);
        double weak = pressureAfter(1.2, broken("motor", "capacitor weak", 1));
        double dead = pressureAfter(3, broken("motor", "capacitor dead", 0));
        assertThat(weak).isLessThan(0.5 * whole);
        assertThat(dead).isLessThan(0.5 * whole);
        assertThat(pressureAfter(60, broken("motor", "capacitor dead", 0))).isCloseTo(whole, within(0.3));
    }

    /** Pump gauge some seconds after the lever is lifted on a blind disc [bar]. */
    @SafeVarargs
    private static double pressureAfter(double seconds, UnaryOperator<Machine>... changes) {
        return onTank(changes)
                .on()
                .after(5)
                .turn("group.holds", "blind disc")
                .turn("lever.position", "brew")
                .after(seconds)
                .bar("pump-gauge.needle");
    }

    @Test
    void withAFullyScaledProbeFillingGoesOnUntilItGivesUpAndTheSafetyValveBlowsWater() {
        Bench b = onMains(broken("probe", "scaled", 1)).on();
        double highest = 0;
        double blown = 0;
        for (int second = 0; second < 120; second++) {
            b.after(1);
            highest = Math.max(highest, b.slot("steam-boiler.level"));
            blown = Math.max(blown, b.slot("safety-valve.flow"));
        }
        assertThat(highest).isGreaterThan(0.97);
        assertThat(blown).isGreaterThan(5e-3);
        assertThat(b.word("board.message")).isEqualTo("steam boiler fill gave up");
        assertThat(b.word("motor.sound")).isEqualTo("silent");
    }

    @Test
    void aThinScaleOnTheProbeOnlyStopsTheFillLater() {
        double clean = levelAfterFill();
        double scaled = levelAfterFill(broken("probe", "scaled", 0.2));
        assertThat(scaled).isGreaterThan(clean + 0.02).isLessThan(0.95);
    }

    @SafeVarargs
    private static double levelAfterFill(UnaryOperator<Machine>... changes) {
        UnaryOperator<Machine> low = set("steam-boiler", "filled at start", 0.3);
        Bench b = onMains(low, m -> {
                    Machine changed = m;
                    for (UnaryOperator<Machine> change : changes) {
                        changed = change.apply(changed);
                    }
                    return changed;
                })
                .on()
                .after(120);
        assertThat(b.word("board.message")).isEqualTo("ready");
        return b.slot("steam-boiler.level");
    }

    @Test
    void onVeryPureWaterTheFillNeverStopsByItself() {
        Bench b = onMains(set("mains", "conductivity", 1e-4), set("tank", "conductivity", 1e-4))
                .on()
                .after(300);
        assertThat(b.word("board.message")).isEqualTo("steam boiler fill gave up");
        assertThat(b.slot("steam-boiler.level")).isGreaterThan(0.97);
    }

    @Test
    void anElementThatLeaksWhenHotTripsTheHouseSomeMinutesAfterSwitchingOn() {
        Bench b = onTank(broken("steam-element", "leaks to earth when hot", 0.6))
                .on()
                .after(60);
        assertThat(b.word("house-breaker.lever")).isEqualTo("on");
        b.after(600);
        assertThat(b.word("house-breaker.lever")).isEqualTo("off");
        assertThat(b.word("power-lamp.light")).isEqualTo("dark");
    }

    @Test
    void aLooseSensorReadsLowAndTheBoilerOvershootsIntoItsLimit() {
        Bench b = onTank(broken("brew-sensor", "not seated", 0.5)).on().after(400);
        assertThat(b.slot("brew-boiler.temperature") - 273.15 - b.celsius("brew-controller.display"))
                .isGreaterThan(20);
        assertThat(b.after(LONG).slot("brew-limit-line.closed")).isZero();
    }

    @Test
    void theWrongSensorTableHoldsTheWrongTemperature() {
        Bench b = onTank(broken("brew-controller", "set for another sensor", 0))
                .on()
                .after(LONG);
        assertThat(b.read("brew-controller.display")).isCloseTo(wanted(b, "brew"), within(1.0));
        assertThat(b.slot("brew-boiler.temperature") - 273.15).isLessThan(60);
    }
}
