package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Balance;

/** What a spring lever over one boiler filled by hand must show by itself. Common practice, no source. */
class SpringLeverTest {
    private static final double WARM = 30 * 60;

    @SafeVarargs
    private static Bench warm(UnaryOperator<Machine>... changes) {
        return Bench.of("spring-lever", changes).on().after(WARM);
    }

    private static Bench pulled(Bench b, String holds) {
        return b.turn("group.holds", holds).turn("group.lever", "down").after(6);
    }

    /** One pull and the shot after it; returns what came into the cup [kg]. */
    private static double shot(Bench b) {
        double before = b.read("cup.caught");
        pulled(b, "puck").turn("group.lever", "up").after(60);
        return b.read("cup.caught") - before;
    }

    private static double boiler(Bench b) {
        return b.slot("boiler.temperature") - 273.15;
    }

    @Test
    void presoaksAtBoilerPressureThenPressureFallsWithTheSpring() {
        Bench b = pulled(warm(), "puck");
        assertThat(b.bar("group.pressure")).isCloseTo(b.slot("boiler.pressure") / 1e5 - 1.0, within(0.1));
        b.turn("group.lever", "up").after(1);
        double first = b.bar("group.pressure");
        assertThat(first).isBetween(8.5, 10.2);
        double last = first;
        int falls = 0;
        for (int k = 0; k < 5; k++) {
            b.after(4);
            falls += b.bar("group.pressure") < last ? 1 : 0;
            last = b.bar("group.pressure");
        }
        assertThat(falls).isEqualTo(5);
        assertThat(last).isBetween(4.5, 7.0);
        assertThat(b.after(40).bar("group.pressure")).isLessThan(0.1);
    }

    @Test
    void theChamberLimitsTheShotAndASecondPullGivesMore() {
        Bench b = warm();
        double one = shot(b);
        assertThat(one).isBetween(0.045, 0.065);
        assertThat(shot(b)).isCloseTo(one, within(0.005));
    }

    @Test
    void aShotTakesAboutHalfAMinuteAndComesCoolerThanTheBoiler() {
        Bench b = warm();
        pulled(b, "puck").turn("group.lever", "up").after(10);
        assertThat(b.celsius("cup.temperature")).isBetween(86.0, 96.0);
        double seconds = 10;
        while (b.read("cup.flow") > 5e-4 && seconds < 90) {
            b.after(1);
            seconds++;
        }
        assertThat(seconds).isBetween(22.0, 45.0);
    }

    @Test
    void withNothingInTheGroupTheLeverFliesUp() {
        Bench b = pulled(warm(), "nothing");
        assertThat(b.turn("group.lever", "up").after(1).word("group.lever returns"))
                .isEqualTo("flies up");
        Bench coffee = pulled(warm(), "puck");
        assertThat(coffee.turn("group.lever", "up").after(1).word("group.lever returns"))
                .isEqualTo("slowly");
    }

    @Test
    void theGroupIsTooHotAfterAnHourIdleAndAColdOneTooCold() {
        Bench b = Bench.of("spring-lever").on().after(15 * 60);
        assertThat(b.celsius("group.temperature")).isLessThan(75);
        b.after(60 * 60);
        assertThat(b.celsius("group.temperature")).isGreaterThan(90);
        pulled(b, "puck").turn("group.lever", "up").after(8);
        assertThat(b.celsius("cup.temperature")).isGreaterThan(96);
    }

    @Test
    void trappedAirGivesAFalsePressureUntilTheBoilerIsVented() {
        Bench b = Bench.of("spring-lever", "A").on().after(WARM);
        assertThat(b.bar("gauge.needle")).isGreaterThan(0.95);
        assertThat(boiler(b)).isLessThan(100);
        b.turn("steam-tap.opened", "0.5")
                .after(15)
                .turn("steam-tap.opened", "0")
                .after(10 * 60);
        assertThat(b.bar("gauge.needle")).isGreaterThan(0.95);
        assertThat(boiler(b)).isGreaterThan(115);
        assertThat(boiler(warm())).as("with a vacuum breaker").isGreaterThan(118);
    }

    @ParameterizedTest
    @ValueSource(strings = {"230 V", "120 V"})
    void runningLowTripsTheLimit(String supply) {
        Machine machine = MachineFile.bundled("spring-lever", Kinds.declarations()).machines().stream()
                .filter(m -> m.identity().making().toString().contains(supply))
                .reduce((a, b) -> b)
                .orElseThrow();
        Bench full = Bench.on(machine).on().after(2 * 3600);
        assertThat(full.slot("limit.closed")).isEqualTo(1);
        Bench low = Bench.on(set("boiler", "filled at start", 0.09).apply(machine))
                .on()
                .after(2 * 3600);
        assertThat(low.slot("limit.closed")).isZero();
        assertThat(low.word("glass.shows")).isEqualTo("empty");
    }

    @Test
    void steamingOnLetsTheElementRunDry() {
        Bench b = warm().turn("steam-tap.opened", "1");
        double minutes = 0;
        while (b.slot("limit.closed") > 0.5 && minutes < 90) {
            b.after(60);
            minutes++;
        }
        assertThat(minutes).isBetween(20.0, 60.0);
        assertThat(b.slot("boiler.level")).isBetween(0.0, 0.25);
    }

    @Test
    void theGroupCannotDrinkTheElementBare() {
        Bench b = warm();
        for (int k = 0; k < 30; k++) {
            pulled(b, "nothing").turn("group.lever", "up").after(20);
        }
        assertThat(b.slot("boiler.level")).isBetween(0.2, 0.32);
        assertThat(b.slot("limit.closed")).isEqualTo(1);
    }

    @Test
    void aWornLowerSealDripsBetweenShotsAndShortensThem() {
        Bench whole = warm();
        Bench worn = warm(broken("group", "lower piston seal worn", 0.3));
        assertThat(whole.word("cup.water")).isEqualTo("dry");
        worn.turn("group.holds", "nothing").after(60);
        assertThat(worn.word("cup.water")).isNotEqualTo("dry");
        pulled(worn, "puck").turn("group.lever", "up").after(4);
        pulled(whole, "puck").turn("group.lever", "up").after(4);
        double back = worn.slot("group lower seal leak.flow");
        assertThat(back).as("brew water goes back to the boiler").isLessThan(-2e-4);
        assertThat(worn.bar("group.pressure")).isLessThan(whole.bar("group.pressure") - 0.1);
    }

    @Test
    void aLeakingInletDripsTooButItsShotsAreWhole() {
        Bench b = warm(broken("group", "inlet leaks", 0.7));
        b.turn("group.holds", "nothing").after(60);
        assertThat(b.word("cup.water")).isNotEqualTo("dry");
        assertThat(shot(b)).isGreaterThan(0.05);
    }

    @Test
    void aBrokenSpringPressesNothingThrough() {
        Bench b = warm(broken("group", "spring broken", 0.8));
        assertThat(shot(b)).isLessThan(0.02);
        assertThat(b.word("group.pull")).isEqualTo("none");
    }

    @Test
    void aShearedPinLeavesThePistonDown() {
        assertThat(shot(warm(broken("group", "lever pin sheared", 1)))).isLessThan(0.005);
    }

    @Test
    void aCloggedUpperWayShowsAFullGlassOverALowBoiler() {
        Bench b = warm(set("boiler", "filled at start", 0.4), broken("glass", "upper way clogged", 0.9));
        assertThat(b.read("glass.level")).isGreaterThan(0.9);
        assertThat(b.slot("boiler.level")).isLessThan(0.5);
        Bench stuck = warm(broken("glass", "lower way clogged", 1))
                .turn("steam-tap.opened", "1")
                .after(15 * 60);
        assertThat(stuck.read("glass.level")).isGreaterThan(stuck.slot("boiler.level") + 0.05);
    }

    @Test
    void aCapTakenOffHotLetsAJetOutAndOneTakenOffColdTakesWater() {
        Bench hot = warm().turn("cap.cap", "off").after(1);
        assertThat(hot.word("cap.steam")).isEqualTo("jet");
        Bench cold = Bench.of("spring-lever", set("boiler", "filled at start", 0.3));
        assertThat(cold.turn("cap.cap", "off").after(1).word("cap.steam")).isEqualTo("none");
        cold.turn("cap.pouring", "water")
                .after(20)
                .turn("cap.pouring", "nothing")
                .turn("cap.cap", "on")
                .after(5);
        assertThat(cold.slot("boiler.level")).isBetween(0.6, 0.85);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void keepsItsBooks(String revision) {
        Bench b = Bench.of("spring-lever", revision).on().after(WARM);
        shot(b);
        b.turn("steam-tap.opened", "1").after(30).turn("steam-tap.opened", "0").after(600);
        shot(b);
        Balance books = b.off().after(8 * 3600).run().plant().balance();
        assertThat(books.waterResidual()).isCloseTo(0, within(1e-9));
        assertThat(books.airResidual()).isCloseTo(0, within(1e-9));
        assertThat(books.energyResidual()).isCloseTo(0, within(1e-3));
        assertThat(books.chargeResidual()).isCloseTo(0, within(1e-9));
        assertThat(b.run().stepper().unsolved()).isZero();
    }
}
