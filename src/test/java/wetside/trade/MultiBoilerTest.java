package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** What two groups with a brew boiler each must show by themselves. Common practice, no source. */
class MultiBoilerTest {
    private static final double WARM = 40 * 60;

    @SafeVarargs
    private static Bench machine(UnaryOperator<Machine>... changes) {
        return Bench.of("multi-boiler-two-group", changes);
    }

    /** Presses the key that starts and stops, and lets go of it. */
    private static Bench key(Bench b, String side) {
        return b.turn("pad-" + side + ".key", "continuous").after(0.5).turn("pad-" + side + ".key", "none");
    }

    private static Bench holds(Bench b, String what) {
        return b.turn("group-left.holds", what).turn("group-right.holds", what);
    }

    private static double boiler(Bench b, String side) {
        return b.slot("brew-boiler-" + side + ".temperature") - 273.15;
    }

    private static double head(Bench b, String side) {
        return b.celsius("group-" + side + ".head temperature");
    }

    private static double flow(Bench b, String side) {
        return b.read("cup-" + side + ".flow");
    }

    @Test
    void eachGroupHoldsATemperatureOfItsOwn() {
        Bench b = machine(
                        set("brew-controller-left", "set point", 273.15 + 90),
                        set("brew-controller-right", "set point", 273.15 + 95))
                .on()
                .after(WARM);
        assertThat(b.celsius("brew-controller-left.display")).isCloseTo(90, within(0.5));
        assertThat(b.celsius("brew-controller-right.display")).isCloseTo(95, within(0.5));
        assertThat(head(b, "left")).isCloseTo(89, within(1.2));
        assertThat(head(b, "right") - head(b, "left")).isCloseTo(5, within(0.6));
        holds(b, "puck");
        key(key(b, "left"), "right").after(25);
        assertThat(b.celsius("cup-right.temperature") - b.celsius("cup-left.temperature"))
                .isCloseTo(4.5, within(1.2));
    }

    @Test
    void aShotOnOneGroupDoesNotCoolTheOther() {
        Bench b = machine().on().after(WARM);
        double before = boiler(b, "right");
        key(holds(b, "puck"), "left").after(30);
        double alone = boiler(b, "left");
        assertThat(alone).isLessThan(before - 0.3);
        assertThat(boiler(b, "right")).isCloseTo(before, within(0.1));
    }

    @Test
    void twoGroupsThatPullShareThePumpAndFillingTakesFromBoth() {
        Bench b = holds(machine().on().after(WARM), "nothing");
        key(b, "left").after(4);
        double alone = flow(b, "left");
        double gauge = b.bar("pump-gauge.needle");
        assertThat(alone).isBetween(7e-3, 11e-3);
        assertThat(flow(b, "right")).isZero();
        key(b, "right").after(4);
        double both = flow(b, "left");
        assertThat(both).isLessThan(alone).isGreaterThan(0.85 * alone);
        assertThat(flow(b, "right")).isCloseTo(both, within(0.02 * both));
        assertThat(b.bar("pump-gauge.needle")).isLessThan(gauge - 0.05);
        b.turn("water-tap.opened", "100 %");
        double least = gauge;
        for (int i = 0; i < 60; i++) {
            least = Math.min(least, b.after(1).bar("pump-gauge.needle"));
        }
        assertThat(least).as("pump gauge while the steam boiler fills too").isLessThan(gauge - 1);
    }

    @ParameterizedTest
    @CsvSource({
        "brew-element-left, open",
        "brew-limit-line-left, tripped",
        "brew-sensor-left, open",
        "brew-controller-left, dead",
        "brew-relay-left, never closes"
    })
    void aBrewBoilerThatDoesNotHeatLeavesTheOtherGroupWorking(String part, String fault) {
        Bench b = machine(broken(part, fault, 1)).on().after(WARM);
        assertThat(boiler(b, "left")).isLessThan(50);
        assertThat(b.celsius("brew-controller-right.display")).isCloseTo(93, within(0.5));
        assertThat(b.bar("steam-gauge.needle")).isBetween(1.1, 1.4);
        key(holds(b, "puck"), "right").after(25);
        assertThat(b.celsius("cup-right.temperature")).isBetween(90.0, 93.5);
        assertThat(flow(b, "right")).isBetween(1.5e-3, 3e-3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"230 V", "208 V"})
    void theWholeMachineStaysWithinItsSupply(String supply) {
        MachineFile file = MachineFile.bundled("multi-boiler-two-group", Kinds.declarations());
        double rating = supply.equals("230 V") ? 32 : 30;
        double volts = 1.06 * Double.parseDouble(supply.substring(0, 3));
        Bench b = Bench.on(set("socket", "voltage", volts).apply(file.machine("B", supply)))
                .on()
                .after(30);
        key(holds(b, "nothing"), "left").after(2);
        double amps = b.read("cord.power drawn") / volts;
        assertThat(amps).as("all elements and the pump").isBetween(0.7 * rating, 0.97 * rating);
        key(b, "left").after(WARM);
        assertThat(b.word("house-breaker.lever")).isEqualTo("on");
        assertThat(b.bar("steam-gauge.needle")).isBetween(1.1, 1.4);
    }

    @Test
    void fiveKilowattsOnADomesticCircuitTripTheBreaker() {
        Bench b = machine(set("house-breaker", "rating", 16)).on().after(WARM);
        assertThat(b.word("house-breaker.lever")).isEqualTo("off");
    }
}
