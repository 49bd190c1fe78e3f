package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** What people know of two groups on one boiler, dosed by counting pulses. Common practice, no source. */
class ExchangerTwoTest {
    private static final double CUP = 1e3;

    @Test
    void aDoseEndsByItsPulsesWhateverTheGrind() {
        double[] weight = new double[3];
        double[] seconds = new double[3];
        double[] flow = {1.5e-3, 2.2e-3, 4e-3};
        for (int k = 0; k < 3; k++) {
            Bench b = warm(set("group-left", "puck flow", flow[k])).turn("group-left.holds", "puck");
            seconds[k] = dose(b, "left", "one dose");
            weight[k] = CUP * b.read("cup-left.caught");
        }
        assertThat(seconds[0]).isGreaterThan(2 * seconds[2]);
        assertThat(weight[0]).isCloseTo(weight[1], within(3.0));
        assertThat(weight[2]).isCloseTo(weight[1], within(3.0));
        assertThat(weight[1]).isBetween(35.0, 55.0);
    }

    @Test
    void withoutPulsesItPoursUntilTheTimeIsUpAndTheLampFlashes() {
        Bench b = warm(broken("flow-meter-left", "sensor dead", 1));
        press(b, "left", "one dose").after(9);
        assertThat(b.word("pad-left.lamp")).isEqualTo("flashing");
        b.after(45);
        assertThat(b.word("motor.sound")).isEqualTo("runs");
        b.after(10);
        assertThat(b.word("motor.sound")).isEqualTo("silent");
        assertThat(CUP * b.read("cup-left.caught")).isGreaterThan(400);
        assertThat(b.word("pad-left.lamp")).isEqualTo("steady");
    }

    @Test
    void aPulledPulseWireOrADeadInputLooksTheSame() {
        for (UnaryOperator<Machine> change :
                List.of(broken("flow-meter-lead-left", "off", 1), broken("unit-left", "pulse input dead", 1))) {
            Bench b = warm(change);
            assertThat(dose(b, "left", "one dose")).isCloseTo(60, within(2.0));
            assertThat(dose(b, "right", "one dose")).as("the other group").isLessThan(12);
        }
    }

    @Test
    void aDraggingImpellerPoursTooMuchAndTheLampStays() {
        Bench whole = warm();
        dose(whole, "left", "one dose");
        Bench b = warm(broken("flow-meter-left", "impeller drags", 0.8));
        press(b, "left", "one dose").after(9);
        assertThat(b.word("pad-left.lamp")).isEqualTo("steady");
        b.after(30);
        assertThat(b.read("cup-left.caught"))
                .isBetween(1.7 * whole.read("cup-left.caught"), 2.6 * whole.read("cup-left.caught"));
    }

    @Test
    void aBlockedJetInTheFlowMeterSlowsOneGroupAndTheDoseStays() {
        Bench whole = warm();
        double usual = dose(whole, "left", "one dose");
        Bench b = warm(broken("flow-meter-left", "jet blocked", 0.6));
        assertThat(dose(b, "left", "one dose")).isGreaterThan(2 * usual);
        assertThat(b.read("cup-left.caught")).isCloseTo(whole.read("cup-left.caught"), within(3e-3));
        assertThat(dose(b, "right", "one dose")).isCloseTo(usual, within(0.5));
        assertThat(press(b.turn("group-left.holds", "blind disc"), "left", "continuous")
                        .after(10)
                        .bar("pump-gauge.needle"))
                .as("the gauge does not know")
                .isBetween(9.0, 10.2);
    }

    @Test
    void twoGroupsShareThePumpAndAWornOneShowsIt() {
        double[] whole = sharing();
        double[] worn = sharing(broken("pump", "worn vanes", 1));
        assertThat(whole[0]).as("a sound pump hardly notices [bar]").isBetween(0.05, 0.4);
        assertThat(whole[1]).as("share of its flow the first group loses").isBetween(0.003, 0.03);
        assertThat(worn[0]).isGreaterThan(2 * whole[0]);
        assertThat(worn[1]).isGreaterThan(2 * whole[1]);
    }

    @Test
    void fillingWhileBrewingTakesTheWaterFromTheGroup() {
        Bench b = press(warm().turn("group-left.holds", "puck"), "left", "continuous")
                .after(10);
        double flow = b.read("cup-left.flow");
        double steam = b.bar("steam-gauge.needle");
        b.turn("fill-tap.opened", "100 %").after(4);
        assertThat(b.bar("pump-gauge.needle")).isLessThan(4);
        assertThat(b.read("cup-left.flow")).isLessThan(0.6 * flow);
        b.turn("fill-tap.opened", "0 %").after(6);
        assertThat(b.read("cup-left.flow")).isCloseTo(flow, within(0.1 * flow));
        assertThat(b.bar("steam-gauge.needle")).as("cold water costs steam").isLessThan(steam - 0.05);
    }

    @Test
    void anIdleExchangerBoilsAtFirstAndAFlushCoolsIt() {
        Bench b = press(warm(), "left", "continuous").after(4);
        assertThat(b.celsius("cup-left.temperature")).as("boils").isGreaterThan(99);
        b.after(16);
        assertThat(b.celsius("cup-left.temperature")).isBetween(80.0, 95.0);
        assertThat(b.slot("exchanger-right.temperature") - 273.15)
                .as("the other one stays hot")
                .isGreaterThan(112);
        press(b, "left", "continuous").after(600);
        press(b, "left", "continuous").after(4);
        assertThat(b.celsius("cup-left.temperature"))
                .as("after a rest it boils again")
                .isGreaterThan(99);
    }

    @Test
    void bothGroupsAreKeptHotAndAirInOneCirculationChillsOnlyThatOne() {
        Bench whole = warm();
        assertThat(whole.celsius("group-left.temperature")).isBetween(80.0, 95.0);
        assertThat(whole.celsius("group-right.temperature"))
                .isCloseTo(whole.celsius("group-left.temperature"), within(0.5));
        Bench b = warm(broken("upper-pipe-left", "air-locked", 1));
        assertThat(b.celsius("group-left.temperature")).isLessThan(40);
        assertThat(b.celsius("group-right.temperature"))
                .isCloseTo(whole.celsius("group-right.temperature"), within(1.5));
    }

    /** The left pipes are not joined, so only the right one goes round; its heat must reach its own metal. */
    @Test
    void aCirculationThatReachesNoVesselLeavesTheOthersInOrder() {
        Machine whole =
                MachineFile.bundled("exchanger-two-group", Kinds.declarations()).newest();
        Machine.Joins j = whole.joins();
        List<Machine.Line> lines = j.lines().stream()
                .filter(l -> !l.from().component().equals("lower-pipe-left"))
                .filter(l -> !l.from().component().equals("upper-pipe-left"))
                .toList();
        Machine.Joins open = new Machine.Joins(lines, j.wires(), j.contacts(), j.linkages());
        Bench b = Bench.on(new Machine(whole.identity(), whole.components(), open))
                .on()
                .after(2400);
        assertThat(b.celsius("group-left.temperature")).isLessThan(40);
        assertThat(b.celsius("group-right.temperature")).isBetween(80.0, 95.0);
    }

    @Test
    void aDoseIsProgrammedByPouringIt() {
        Bench b = warm();
        press(b, "right", "programme").after(1);
        assertThat(b.word("pad-right.lamp")).isEqualTo("flashing");
        press(b, "right", "two doses").after(14.5);
        press(b, "right", "two doses").after(2);
        double poured = b.read("cup-right.caught");
        assertThat(dose(b, "right", "two doses")).isCloseTo(15, within(0.8));
        assertThat(b.read("cup-right.caught") - poured).isCloseTo(poured, within(0.04 * poured));
        assertThat(dose(b, "left", "two doses"))
                .as("the other group keeps its own")
                .isLessThan(12);
    }

    @Test
    void aKeyThatSticksOrCoffeeUnderThePadStopsOneGroupOnly() {
        for (String fault : new String[] {"one-dose key sticks", "coffee got in", "ribbon broken"}) {
            Bench b = warm(broken("pad-left", fault, 1));
            assertThat(dose(b, "left", "one dose")).as(fault).isZero();
            assertThat(dose(b, "right", "one dose")).as(fault).isBetween(4.0, 12.0);
        }
    }

    @Test
    void aWeldedValveOutputDripsWithLinePressureAndRunsWhenTheOtherGroupBrews() {
        Bench b = warm(broken("unit-left", "valve output stuck on", 1));
        assertThat(b.word("cup-left.water")).isEqualTo("runs");
        double alone = b.read("cup-left.flow");
        press(b, "right", "continuous").after(3);
        assertThat(b.read("cup-left.flow")).isGreaterThan(1.4 * alone);
    }

    @Test
    void theSafetyChainStillHolds() {
        Bench b = Bench.of("exchanger-two-group", broken("heat-contactor", "contacts welded", 1))
                .on()
                .after(3600);
        assertThat(b.bar("steam-gauge.needle")).isBetween(1.7, 2.6);
    }

    /** Fall of the pump gauge [bar], and share of its flow that the left group loses, when the right one is started. */
    @SafeVarargs
    private static double[] sharing(UnaryOperator<Machine>... changes) {
        Bench b = press(warm(changes), "left", "continuous").after(8);
        double before = b.bar("pump-gauge.needle");
        double flow = b.read("cup-left.flow");
        press(b, "right", "continuous").after(4);
        return new double[] {before - b.bar("pump-gauge.needle"), 1 - b.read("cup-left.flow") / flow};
    }

    /** Seconds from the key until the pump stops; zero when it never ran. */
    private static double dose(Bench b, String group, String key) {
        press(b, group, key).after(0.5);
        double seconds = 0.9;
        if (b.word("motor.sound").equals("silent")) {
            return 0;
        }
        while (b.word("motor.sound").equals("runs") && seconds < 90) {
            b.after(0.25);
            seconds += 0.25;
        }
        return seconds;
    }

    private static Bench press(Bench b, String group, String key) {
        return b.turn("pad-" + group + ".key", key).after(0.4).turn("pad-" + group + ".key", "none");
    }

    @SafeVarargs
    private static Bench warm(UnaryOperator<Machine>... changes) {
        return Bench.of("exchanger-two-group", changes).on().after(2400);
    }
}
