package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.HashSet;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wetside.machine.Machine;
import wetside.plant.Balance;

/** What a heat exchanger with a vibratory pump must show by itself. Common practice, no source. */
class ExchangerTest {
    private static final double WARM = 40 * 60;
    private static final double STALL = 16e5;

    @SafeVarargs
    private static Bench bench(UnaryOperator<Machine>... changes) {
        return Bench.of("exchanger-lever", "A", changes);
    }

    @SafeVarargs
    private static Bench warm(UnaryOperator<Machine>... changes) {
        return bench(changes).on().after(WARM);
    }

    @Test
    void theFirstFlushBoilsOffThenFallsIntoTheWorkingRangeWithinSomeHundredGrams() {
        Bench b = warm().turn("group.holds", "nothing")
                .turn("lever.position", "brew")
                .after(3);
        assertThat(b.slot("exchanger.temperature") - 273.15).isGreaterThan(103);
        assertThat(b.word("cup.comes")).isEqualTo("spits steam");
        assertThat(b.celsius("cup.temperature")).as("boiling at the cup").isBetween(98.0, 100.1);
        double start = b.read("cup.caught");
        while (b.celsius("cup.temperature") > 95 && b.read("cup.caught") - start < 1) {
            b.after(1);
        }
        assertThat(b.read("cup.caught") - start).isBetween(0.06, 0.35);
        assertThat(b.word("cup.comes")).isEqualTo("quietly");
    }

    @Test
    void itComesBackWhileItRestsAndIsTooHotAgainAfterAWhile() {
        Bench b = warm().turn("lever.position", "brew").after(40).turn("lever.position", "closed");
        double flushed = b.slot("exchanger.temperature");
        assertThat(b.after(30).slot("exchanger.temperature")).isGreaterThan(flushed + 3);
        b.after(15 * 60).turn("lever.position", "brew").after(3);
        assertThat(b.word("cup.comes")).isEqualTo("spits steam");
    }

    @Test
    void afterAFlushAShotRunsWhereCoffeeTastes() {
        Bench b = warm().turn("lever.position", "brew").after(30).turn("lever.position", "closed");
        b.after(20).turn("group.holds", "puck").turn("lever.position", "brew").after(25);
        assertThat(b.celsius("cup.temperature")).isBetween(88.0, 97.0);
        assertThat(b.read("cup.flow")).isBetween(1.5e-3, 3e-3);
    }

    @Test
    void theGroupIsTheHotterTheHigherTheSteam() {
        double[] group = new double[3];
        for (int k = 0; k < 3; k++) {
            Bench b = warm(set("pressure-switch", "set pressure", (0.8 + 0.4 * k) * 1e5));
            assertThat(b.bar("steam-gauge.needle")).isCloseTo(0.72 + 0.4 * k, within(0.11));
            group[k] = b.celsius("group.temperature");
        }
        assertThat(group[1]).isBetween(group[0] + 1.5, group[0] + 9);
        assertThat(group[2]).isBetween(group[1] + 1.5, group[1] + 9);
    }

    @Test
    void aBlockedThermosiphonLeavesTheGroupColdAndTheWaterHot() {
        Bench sound = warm();
        Bench blocked = warm(broken("upper-pipe", "air-locked", 1));
        assertThat(sound.celsius("group.temperature")).isGreaterThan(85);
        assertThat(blocked.celsius("group.temperature")).isLessThan(50);
        assertThat(blocked.bar("steam-gauge.needle")).isCloseTo(sound.bar("steam-gauge.needle"), within(0.2));
        blocked.turn("lever.position", "brew").after(2);
        assertThat(blocked.slot("exchanger.temperature") - 273.15).isGreaterThan(110);
    }

    @Test
    void theVibratoryPumpGivesTheLessTheMorePressureStandsAgainstIt() {
        double[] bores = {0.45e-3, 0.6e-3, 0.8e-3, 1.5e-3};
        double before = Double.POSITIVE_INFINITY;
        double flow = 0;
        for (double bore : bores) {
            Bench b = warm(set("jet", "bore", bore)).flush();
            double pressure = b.bar("pump-gauge.needle");
            assertThat(pressure).as("jet %s", bore).isLessThan(before - 0.2);
            assertThat(b.read("cup.flow")).isGreaterThan(flow);
            before = pressure;
            flow = b.read("cup.flow");
        }
    }

    /** Of pumps of this sort, as data sheets give them: about so many ml a minute against so many bar (from memory). */
    @Test
    void itsCurveIsThatOfItsSort() {
        double[] bar = {0, 3, 6, 9, 12, 16};
        double[] gramsPerSecond = {10.8, 8.3, 6.7, 4.6, 2.0, 0};
        for (double bore : new double[] {0.25e-3, 0.35e-3, 0.45e-3, 0.6e-3, 0.8e-3, 1.2e-3}) {
            Bench b = bench(set("jet", "bore", bore), set("over-pressure", "set pressure", 25e5))
                    .on()
                    .after(90)
                    .flush()
                    .after(10);
            double p = b.bar("pump-gauge.needle");
            int k = 0;
            while (k < bar.length - 2 && bar[k + 1] < p) {
                k++;
            }
            double share = (p - bar[k]) / (bar[k + 1] - bar[k]);
            double usual = gramsPerSecond[k] + share * (gramsPerSecond[k + 1] - gramsPerSecond[k]);
            assertThat(b.read("cup.flow") * 1e3).as("at %s bar", p).isCloseTo(usual, within(0.9));
        }
    }

    @Test
    void theOverPressureValveLimitsABlindDiscAndScrewedShutThePumpStalls() {
        Bench limited = warm().blind();
        assertThat(limited.bar("pump-gauge.needle")).isBetween(9.4, 10.5);
        assertThat(limited.word("drain-tube.water")).startsWith("runs");
        Bench shut = warm(set("over-pressure", "set pressure", 25e5), set("pump-gauge", "range", 25e5))
                .blind();
        double stall = STALL / 1e5;
        assertThat(shut.bar("pump-gauge.needle")).isBetween(stall - 1.5, stall + 0.3);
        assertThat(shut.word("drain-tube.water")).isEqualTo("dry");
    }

    @Test
    void lowVoltageLowersItsPressureAndItsFlow() {
        Bench low = warm(set("socket", "voltage", 195));
        low.flush();
        assertThat(low.read("cup.flow")).isLessThan(0.9 * warm().flush().read("cup.flow"));
    }

    @Test
    void runForLongThePumpStopsOfItselfAndComesBackWhenCooler() {
        Bench b = warm().blind();
        double ran = untilSound(b, "silent");
        assertThat(ran / 60).isBetween(3.0, 12.0);
        assertThat(b.word("board.message")).isEqualTo("ready");
        assertThat(untilSound(b, "buzzes evenly") / 60).isBetween(1.0, 10.0);
    }

    /** Time until the pump sounds so, the tank kept full. */
    private static double untilSound(Bench b, String sound) {
        double start = b.run().time();
        while (!b.word("pump.sound").equals(sound) && b.run().time() - start < 1800) {
            b.turn("tank.water", "full").after(10);
        }
        return b.run().time() - start;
    }

    @Test
    void anAirLockedPumpRattlesAndAnOpenGroupPrimesIt() {
        Bench b = bench(broken("pump", "air-locked", 0.4)).on().after(60);
        b.turn("group.holds", "nothing").turn("lever.position", "brew").after(5);
        assertThat(b.word("pump.sound")).isEqualTo("rattles");
        assertThat(b.read("cup.flow")).isLessThan(1.5e-3);
    }

    @Test
    void steamPressureSwingsBetweenTheTwoPressuresOfItsSwitch() {
        Bench b = warm();
        double low = 1e9;
        double high = 0;
        for (int k = 0; k < 200; k++) {
            double p = b.after(3).bar("steam-gauge.needle");
            low = Math.min(low, p);
            high = Math.max(high, p);
        }
        assertThat(high).isBetween(1.27, 1.4);
        assertThat(low).isBetween(1.08, 1.18);
        Bench welded = warm(broken("pressure-switch", "contacts welded", 0));
        Set<String> seen = new HashSet<>();
        for (int k = 0; k < 60; k++) {
            seen.add(welded.after(1).word("safety-vent.steam"));
        }
        assertThat(seen)
                .as("only the safety valve is left, which lifts and shuts again")
                .contains("jet");
    }

    @Test
    void aBlockedCapillaryLetsItSwingWide() {
        Bench b = warm(broken("pressure-switch", "capillary blocked", 0.1));
        double low = 1e9;
        double high = 0;
        for (int k = 0; k < 600; k++) {
            double p = b.after(3).bar("steam-gauge.needle");
            low = Math.min(low, p);
            high = Math.max(high, p);
        }
        assertThat(high - low).isGreaterThan(0.35);
    }

    @Test
    void aPinholeFillsTheBoilerWhileThePumpRuns() {
        Bench sound = warm();
        Bench holed = warm(broken("exchanger", "pinholed into the boiler", 0.7));
        double before = holed.slot("steam-boiler.level");
        holed.blind().after(60);
        sound.blind().after(60);
        assertThat(holed.slot("steam-boiler.level")).isGreaterThan(before + 0.05);
        assertThat(sound.slot("steam-boiler.level")).isLessThan(before + 0.02);
    }

    @Test
    void scaleInTheTubeKeepsBackHeatAndWater() {
        Bench b = warm(broken("exchanger", "scaled", 0.8))
                .turn("lever.position", "brew")
                .after(60);
        Bench sound = warm().turn("lever.position", "brew").after(60);
        assertThat(b.read("cup.flow")).isLessThan(0.9 * sound.read("cup.flow"));
    }

    @Test
    void waterGrowsOutOfTheTubeWhileItHeats() {
        Bench b = warm();
        assertThat(b.read("drain-tube.caught")).isBetween(0.005, 0.04);
    }

    @Test
    void booksCloseInBothRevisions() {
        for (String revision : new String[] {"A", "B"}) {
            Bench b = Bench.of("exchanger-lever", revision).on().after(WARM);
            b.flush()
                    .after(30)
                    .turn("lever.position", "closed")
                    .turn("water-tap.opened", "100 %")
                    .after(15);
            b.turn("water-tap.opened", "0 %").after(120);
            Balance balance = b.run().plant().balance();
            assertThat(Math.abs(balance.waterResidual())).isLessThan(1e-7);
            assertThat(Math.abs(balance.energyResidual())).isLessThan(1e-9 * balance.heatTaken());
            assertThat(Math.abs(balance.chargeResidual())).isLessThan(1e-9);
            assertThat(b.celsius("group.temperature")).isBetween(80.0, 102.0);
        }
    }
}
