package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.onMains;
import static wetside.trade.Bench.onTank;
import static wetside.trade.Bench.set;

import org.junit.jupiter.api.Test;

/**
 * What the water side must show by itself, cold. Common practice, no source. Nothing in the twin names these situations:
 * they come from parts and how they are joined.
 */
class WaterSideTest {
    private static final String GAUGE = "pump-gauge.needle";

    @Test
    void pumpOffTheGaugeReadsTheLine() {
        assertThat(onMains().after(30).bar(GAUGE)).isCloseTo(2, within(0.2));
        assertThat(onTank().after(30).bar(GAUGE)).isCloseTo(0, within(0.1));
    }

    @Test
    void theLineAddsHalfABarToTheBlindDisc() {
        double tank = onTank().on().blind().bar(GAUGE);
        double mains = onMains().on().blind().bar(GAUGE);
        assertThat(tank).isCloseTo(8.5, within(0.2));
        assertThat(mains).isCloseTo(9, within(0.2));
    }

    @Test
    void anOverPressureValveBelowThePumpRunsAndCapsTheGauge() {
        Bench low = onTank(set("over-pressure", "set pressure", 6.5e5)).on().blind();
        assertThat(low.bar(GAUGE)).isBetween(6.3, 7.9);
        assertThat(low.word("drain-tube.water")).isEqualTo("runs");
        Bench right = onTank(set("brew-boiler", "filled at start", 0.95)).on().blind();
        assertThat(right.word("drain-tube.water")).isEqualTo("dry");
    }

    @Test
    void onMainsTheBrewBoilerFillsUntilItsAirIsCompressed() {
        Bench b = onMains(set("brew-boiler", "filled at start", 0)).after(300);
        assertThat(b.slot("brew-boiler.level")).isBetween(0.58, 0.70);
    }

    @Test
    void liftingTheLeverLetsTheAirOutAndFillsItWhole() {
        Bench b = onMains(set("brew-boiler", "filled at start", 0)).after(300).flush();
        b.after(240);
        assertThat(b.slot("brew-boiler.level")).isGreaterThan(0.97);
    }

    @Test
    void aBrokenFittingRunsForEverOnMainsAndStopsWithThePumpOnTheTank() {
        Bench mains = onMains(broken("brew-boiler", "fitting broken", 0.6)).after(600);
        assertThat(mains.word("room.water under the machine")).isEqualTo("runs");
        Bench tank = onTank(broken("brew-boiler", "fitting broken", 0.6))
                .on()
                .turn("group.holds", "blind disc")
                .turn("lever.position", "brew")
                .after(5);
        assertThat(tank.word("room.water under the machine")).isEqualTo("runs");
        tank.turn("lever.position", "closed").off().after(120);
        assertThat(tank.word("room.water under the machine")).isEqualTo("dry");
    }

    @Test
    void thePumpGaugeCreepsUpOnlyWhenTheCheckValveLeaksBack() {
        assertThat(restingGaugeWhileHeating(onTank())).isLessThan(0.1);
        assertThat(restingGaugeWhileHeating(onTank(broken("brew-check", "held open by grit or scale", 0.5))))
                .isGreaterThan(3);
    }

    private static double restingGaugeWhileHeating(Bench b) {
        return b.on().after(200).bar(GAUGE);
    }

    @Test
    void aCloggedStrainerOnlyShowsWhenWaterFlows() {
        Bench b = onTank(broken("strainer", "clogged", 0.6)).on().blind();
        assertThat(b.bar(GAUGE)).isCloseTo(8.5, within(0.3));
        b.turn("lever.position", "closed").flush();
        assertThat(b.bar(GAUGE)).isLessThan(4);
        assertThat(b.word("pump.sound")).isEqualTo("rattles");
    }

    @Test
    void aWeakBypassShowsBothWays() {
        Bench b = onTank(broken("pump", "bypass spring weak", 0.6)).on().blind();
        assertThat(b.bar(GAUGE)).isLessThan(6);
        b.turn("lever.position", "closed").flush();
        assertThat(b.bar(GAUGE)).isLessThan(6);
    }

    @Test
    void aBlockedJetLeavesTheGaugeAndStarvesTheCup() {
        double clean = onTank().on().flush().growth("cup.caught", 10);
        Bench b = onTank(broken("jet", "blocked by scale", 0.5)).on().flush();
        assertThat(b.bar(GAUGE)).isCloseTo(8.5, within(0.3));
        assertThat(clean).isBetween(0.05, 0.1);
        assertThat(b.growth("cup.caught", 10)).isLessThan(0.3 * clean);
    }

    @Test
    void aFloatUpsideDownMakesAFullTankEmpty() {
        assertThat(onTank().on().word("board.message")).isNotEqualTo("tank");
        Bench b = onTank(broken("tank", "float magnet upside down", 1)).on();
        assertThat(b.read("tank.level")).isGreaterThan(2);
        assertThat(b.read("board.message")).isNotEqualTo(onTank().on().read("board.message"));
    }

    @Test
    void wornSealsDripWhereTheyMust() {
        Bench brew = onMains(broken("group", "brew valve seal worn", 0.5)).after(30);
        assertThat(brew.word("cup.water")).isIn("drips", "runs thinly");
        Bench drain = onMains(broken("group", "drain valve seal worn", 0.5)).after(30);
        assertThat(drain.word("group-drain.water")).isEqualTo("dry");
        drain.on().blind();
        assertThat(drain.word("group-drain.water")).isEqualTo("runs thinly");
    }
}
