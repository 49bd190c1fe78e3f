package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.olderOnTank;
import static wetside.trade.Bench.onTank;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wetside.machine.Machine;

/** What the hot side must show by itself. Common practice, no source. */
class HotSideTest {
    private static final double WARM = 40 * 60;
    private static final UnaryOperator<Machine> LEAKING_BREAKER = broken("breaker", "leaks when seated", 0.5);

    @Test
    void boilersTakeMinutesAndTheGroupHalfAnHour() {
        Bench b = onTank().on();
        assertThat(b.until("brew-boiler.shell temperature", 273.15 + 92, 3600)).isBetween(200.0, 450.0);
        assertThat(b.until("steam-gauge.needle", 1.1e5, 3600)).isBetween(60.0, 300.0);
        double group = b.until("group.temperature", 273.15 + 75, 3600) + b.run().time();
        assertThat(group / 60).isBetween(20.0, 60.0);
        b.after(1800).turn("group.holds", "puck").turn("lever.position", "brew").after(25);
        assertThat(b.celsius("cup.temperature")).isBetween(87.5, 92.5);
        assertThat(b.read("cup.flow")).isBetween(1.5e-3, 3e-3);
    }

    @Test
    void waterGrowsOutOfTheDrainTubeWhileHeatingFromCold() {
        Bench b = onTank().on().after(WARM);
        assertThat(b.read("drain-tube.caught")).isBetween(0.010, 0.040);
        assertThat(b.growth("drain-tube.caught", 600)).isLessThan(1e-4);
    }

    @Test
    void theVacuumBreakerSteamsALittleThenSeats() {
        Bench b = onTank().on();
        double steamed = 0;
        for (int i = 0; i < 60; i++) {
            steamed = Math.max(steamed, b.after(10).read("drain-tube.steam"));
        }
        assertThat(steamed).as("a plume on the way").isGreaterThanOrEqualTo(2);
        assertThat(b.after(WARM).word("drain-tube.steam")).isEqualTo("none");
    }

    @Test
    void aLeakingVacuumBreakerPlumesAndCostsHeat() {
        Bench sound = onTank().on().after(WARM);
        Bench leaks = onTank(LEAKING_BREAKER).on().after(WARM);
        assertThat(leaks.word("drain-tube.steam")).isEqualTo("plume");
        assertThat(meanDuty(leaks)).isGreaterThan(1.3 * meanDuty(sound));
        assertThat(recovery(leaks)).isGreaterThan(recovery(sound));
    }

    private static double meanDuty(Bench b) {
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            sum += b.after(3).slot("steam-controller.duty");
        }
        return sum / 200;
    }

    /** Time to 1.25 bar after half a minute of steam. */
    private static double recovery(Bench b) {
        b.turn("steam-tap.opened", "100 %").after(30).turn("steam-tap.opened", "0 %");
        return b.until("steam-gauge.needle", 1.25e5, 600);
    }

    @Test
    void aBreakerStuckShutShowsPressureTooEarlyAndSucksOnCooling() {
        Bench b = onTank(broken("breaker", "stuck shut", 1)).on();
        b.until("steam-gauge.needle", 0.5e5, 900);
        assertThat(b.celsius("steam-boiler.shell temperature")).isLessThan(95);
        b.after(WARM).turn("steam-tap.opened", "100 %").after(60).turn("steam-tap.opened", "0 %");
        b.off().after(3 * 3600);
        assertThat(b.slot("steam-boiler.pressure") - b.slot("surroundings.air pressure"))
                .isLessThan(-0.3e5);
        Bench sound = onTank().on().after(WARM).off().after(3 * 3600);
        assertThat(sound.slot("steam-boiler.pressure") - sound.slot("surroundings.air pressure"))
                .isCloseTo(0, within(0.05e5));
    }

    @Test
    void withoutCirculationTheBoilerIsRightAndTheGroupCold() {
        Bench sound = onTank().on().after(WARM);
        assertThat(sound.celsius("group.upper pipe")).isGreaterThan(sound.celsius("group.lower pipe") + 2);
        for (UnaryOperator<Machine> fault : java.util.List.of(
                broken("upper-pipe", "air-locked", 1), broken("lower-pipe", "narrowed by scale", 0.9))) {
            Bench b = onTank(fault).on().after(WARM);
            assertThat(b.celsius("brew-boiler.shell temperature"))
                    .isCloseTo(sound.celsius("brew-boiler.shell temperature"), within(1.5));
            assertThat(b.celsius("group.temperature")).isLessThan(50);
        }
    }

    @Test
    void drawingWaterBleedsAnAirLock() {
        Bench b = onTank(broken("upper-pipe", "air-locked", 1)).on().after(900);
        assertThat(b.celsius("group.temperature")).isLessThan(30);
        b.turn("lever.position", "brew")
                .after(60)
                .turn("lever.position", "closed")
                .after(WARM);
        assertThat(b.celsius("group.temperature")).isGreaterThan(70);
    }

    @Test
    void nearTwoBarTheOlderSafetyValveWeepsAndTheNewerDoesNot() {
        UnaryOperator<Machine> high = set("steam-controller", "set point", 273.15 + 133);
        assertThat(olderOnTank(high).on().after(WARM).word("safety-vent.steam")).isNotEqualTo("none");
        assertThat(onTank(high).on().after(WARM).word("safety-vent.steam")).isEqualTo("none");
    }

    @Test
    void aRelayStuckOnEndsAtTheSafetyValve() {
        Bench b = olderOnTank(broken("steam-relay", "stuck on", 1)).on();
        double highest = 0;
        double blown = 0;
        for (int i = 0; i < 600; i++) {
            b.after(5);
            highest = Math.max(highest, b.bar("steam-gauge.needle"));
            blown = Math.max(blown, b.read("safety-vent.steam"));
        }
        assertThat(highest).isBetween(1.95, 2.3);
        assertThat(blown).isGreaterThanOrEqualTo(2);
    }

    @Test
    void hotWaterComesAndTheFillMakesTheBrewPressureKick() {
        Bench b = onTank().on().after(WARM);
        double before = b.slot("brew-boiler.pressure");
        double taken = b.turn("water-tap.opened", "100 %").growth("water-spout.caught", 10);
        assertThat(taken).isBetween(0.1, 0.25);
        assertThat(b.word("board.message")).isEqualTo("filling steam boiler");
        assertThat(b.slot("brew-boiler.pressure")).isLessThan(before - 2e5);
        b.turn("water-tap.opened", "0 %").after(120);
        assertThat(b.slot("steam-boiler.level")).isCloseTo(0.65, within(0.05));
    }

    @Test
    void atHeightTheSameTemperatureGivesMoreGaugePressure() {
        double low = onTank().on().after(WARM).bar("steam-gauge.needle");
        double high = onTank(set("room", "altitude", 2000)).on().after(WARM).bar("steam-gauge.needle");
        assertThat(high - low).isCloseTo(0.21, within(0.06));
    }
}
