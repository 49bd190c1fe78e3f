package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.Plans;
import wetside.blueprint.Slots;

class CircuitTest {
    private static final double OPEN = 1e12;
    private static final int N = 0;
    private static final int L = 1;
    private static final int EARTH = 2;

    private final Slots slots = new Slots();
    private final CurrentPlan plan = Plans.current(slots);
    private int terminals = 3;
    private Circuit circuit;
    private double[] x;

    private int terminal() {
        return terminals++;
    }

    private int resistor(int from, int to, double ohms) {
        return plan.add(new CurrentPlan.Resistor("r" + plan.elements().size(), from, to, ohms));
    }

    private int contact(String name, int from, int to) {
        int slot = slots.state(name, 0);
        plan.add(new CurrentPlan.Contact(name, from, to, slot, 0.01, OPEN));
        return slot;
    }

    private int pulsed(int duty, int from, int to) {
        return plan.add(new CurrentPlan.Pulsed("p" + plan.elements().size(), from, to, duty, 0.03, OPEN));
    }

    private int varying(String name, int from, int to) {
        int slot = slots.smooth(name, 1e4);
        plan.add(new CurrentPlan.Varying(name, from, to, slot));
        return slot;
    }

    private int mains(double ohms) {
        int slot = slots.smooth("mains", 230);
        plan.add(new CurrentPlan.Source("mains", N, L, slot, ohms));
        resistor(N, EARTH, 0.1);
        return slot;
    }

    private void start() {
        circuit = Circuit.of(plan, terminals);
        x = slots.firstValues();
    }

    private double read(int slot) {
        circuit.solve(x);
        return x[slot];
    }

    private static Offset<Double> relative(double expected, double share) {
        return within(Math.abs(expected) * share);
    }

    @Test
    void anElementBehindASwitch() {
        mains(0.5);
        int a = terminal();
        int closed = contact("switch", L, a);
        int element = resistor(a, N, 40);
        int power = plan.power(element);
        int amps = plan.amps(element);
        int volts = plan.voltage("element", N, a);
        int lamp = plan.share("lamp", N, a, 150);
        int source = plan.power(0);
        start();

        circuit.solve(x);
        assertThat(x[power]).isLessThan(1e-15);
        assertThat(x[lamp]).isZero();

        x[closed] = 1;
        circuit.solve(x);
        double i = 230 / 40.51;
        assertThat(x[amps]).isCloseTo(i, relative(i, 1e-9));
        assertThat(x[power]).isCloseTo(i * i * 40, relative(i * i * 40, 1e-9));
        assertThat(x[volts]).isCloseTo(i * 40, relative(i * 40, 1e-9));
        assertThat(x[lamp]).isEqualTo(1);
        assertThat(x[source]).isCloseTo(i * (230 - 0.5 * i), relative(i * 230, 1e-9));
    }

    @Test
    void everyCombinationOfPulsesCountsByItsShare() {
        mains(2);
        int a = terminal();
        int b = terminal();
        int duty1 = slots.smooth("duty 1", 0.3);
        int duty2 = slots.smooth("duty 2", 0.6);
        pulsed(duty1, L, a);
        pulsed(duty2, L, b);
        int power = plan.power(resistor(a, N, 40));
        resistor(b, N, 30);
        int lamp = plan.share("lamp", N, a, 215);
        start();

        double alone = Math.pow(230 / 42.03, 2) * 40;
        double both = 1 / (1 / 40.03 + 1 / 30.03);
        double together = Math.pow(230 * both / (both + 2) / 40.03, 2) * 40;
        double mean = 0.3 * (0.4 * alone + 0.6 * together);
        assertThat(read(power)).isCloseTo(mean, relative(mean, 1e-9));
        assertThat(x[lamp]).as("215 V are there only while the other is off").isCloseTo(0.3 * 0.4, within(1e-15));
        x[duty2] = 0;
        assertThat(read(power)).isCloseTo(0.3 * alone, relative(alone, 1e-9));
        x[duty2] = 1;
        assertThat(read(power)).isCloseTo(0.3 * together, relative(together, 1e-9));
        x[duty1] = 0;
        assertThat(read(power)).isLessThan(1e-12);
    }

    @Test
    void contactsPulsedFromOneSlotPulseTogether() {
        mains(0.5);
        int a = terminal();
        int b = terminal();
        int duty = slots.smooth("duty", 0.5);
        pulsed(duty, L, a);
        pulsed(duty, N, b);
        int power = plan.power(resistor(a, b, 40));
        start();
        double on = Math.pow(230 / 40.56, 2) * 40;
        assertThat(read(power)).isCloseTo(on / 2, relative(on, 1e-9));
    }

    /** A controller's pulsed 12 V output, through wires, on the input of a relay that switches the element. */
    @Test
    void aRelayDrivenByPulsesPassesThemOn() {
        mains(0.5);
        int minus = terminal();
        int plus = terminal();
        int input = terminal();
        int a = terminal();
        plan.add(new CurrentPlan.Supply("board", minus, plus, L, N, 150, 12, 0.5));
        int duty = slots.smooth("duty", 0.25);
        pulsed(duty, plus, input);
        int wire = resistor(input, minus, 1200);
        plan.add(new CurrentPlan.Driven("relay", L, a, input, minus, 4, 0.03, OPEN));
        int power = plan.power(resistor(a, N, 40));
        int lamp = plan.share("lamp", minus, input, 4);
        int current = plan.amps(wire);
        start();
        double on = Math.pow(230 / 40.53, 2) * 40;
        assertThat(read(power)).isCloseTo(on / 4, relative(on, 1e-9));
        assertThat(x[lamp]).isCloseTo(0.25, within(1e-15));
        assertThat(x[current]).isCloseTo(0.25 * 12 / 1200.53, within(1e-10));
        x[slots.find("mains")] = 140;
        assertThat(read(power)).as("the board is dead below 150 V").isLessThan(1e-12);
        assertThat(circuit.restless()).isEmpty();
    }

    @Test
    void aRelayHoldsItselfUntilItsCurrentIsCut() {
        mains(0.5);
        int coil = terminal();
        int start = contact("start", L, coil);
        int stop = contact("stop", coil, terminal());
        int behind = terminals - 1;
        resistor(behind, N, 5000);
        plan.add(new CurrentPlan.Driven("relay", L, coil, behind, N, 150, 0.01, OPEN));
        int live = plan.share("coil", N, behind, 150);
        start();
        x[stop] = 1;
        assertThat(read(live)).isZero();
        x[start] = 1;
        assertThat(read(live)).isEqualTo(1);
        x[start] = 0;
        assertThat(read(live)).isEqualTo(1);
        long memory = circuit.held();
        x[stop] = 0;
        assertThat(read(live)).isZero();
        x[stop] = 1;
        assertThat(read(live)).isZero();
        circuit.hold(memory);
        assertThat(read(live)).as("put back").isEqualTo(1);
    }

    @Test
    void aRelayThatBreaksItsOwnCurrentIsLeftOffAndNamed() {
        mains(0.5);
        int coil = terminal();
        resistor(coil, N, 5000);
        plan.add(new CurrentPlan.Driven("buzzer", L, coil, coil, N, 150, OPEN, 0.01));
        int other = terminal();
        plan.add(new CurrentPlan.Driven("follower", L, other, coil, N, 150, 0.01, OPEN));
        resistor(other, N, 100);
        start();
        circuit.solve(x);
        assertThat(circuit.restless()).contains("buzzer");
    }

    @Test
    void aSensorIsSeenWithItsWiresAndCostsNoNewState() {
        int a = terminal();
        int b = terminal();
        int inside = terminal();
        int sensor = varying("sensor", inside, b);
        resistor(a, inside, 2);
        int seen = plan.seen("input", a, b);
        mains(0.5);
        start();
        for (double ohms = 0.1; ohms < 1e9; ohms *= 3) {
            x[sensor] = ohms;
            assertThat(read(seen)).isCloseTo(ohms + 2, relative(ohms + 2, 1e-9));
        }
        assertThat(circuit.statesSolved()).isEqualTo(1);
        x[sensor] = Double.POSITIVE_INFINITY;
        assertThat(read(seen)).isInfinite();
    }

    @Test
    void sensorsThatLeakIntoEachOtherAreSeenAsAnOhmMeterSeesThem() {
        int[] input = new int[3];
        int[] ret = new int[3];
        int[] sensor = new int[3];
        int[] seen = new int[3];
        for (int i = 0; i < 3; i++) {
            input[i] = terminal();
            ret[i] = terminal();
            sensor[i] = varying("sensor " + i, input[i], ret[i]);
            resistor(input[i], EARTH, i == 2 ? 1e12 : 20e3);
            resistor(ret[i], EARTH, i == 2 ? 1e12 : 3e3);
            seen[i] = plan.seen("input " + i, input[i], ret[i]);
        }
        mains(0.5);
        int leak = terminal();
        resistor(leak, EARTH, 1e3);
        int bridge = varying("bridge", input[0], input[1]);
        start();
        Random random = new Random(3);
        for (int n = 0; n < 200; n++) {
            for (int slot : sensor) {
                x[slot] = Math.pow(10, 1 + 5 * random.nextDouble());
            }
            x[bridge] = Math.pow(10, 1 + 8 * random.nextDouble());
            circuit.solve(x);
            for (int i = 0; i < 3; i++) {
                double meter = circuit.resistance(x, input[i], ret[i]);
                assertThat(x[seen[i]]).isCloseTo(meter, relative(meter, 1e-7));
            }
        }
        assertThat(circuit.statesSolved()).isEqualTo(1);
    }

    @Test
    void aVaryingElementInTheMainsIsAsGoodAsAFixedOne() {
        mains(0.5);
        int a = terminal();
        int hot = varying("element", L, a);
        int power = plan.power(plan.elements().size() - 1);
        int second = plan.power(resistor(a, N, 5));
        int volts = plan.voltage("middle", N, a);
        int half = plan.share("half", N, a, 100);
        start();
        for (double ohms = 0.01; ohms < 1e7; ohms *= 2) {
            x[hot] = ohms;
            circuit.solve(x);
            double i = 230 / (5.5 + ohms);
            assertThat(x[power]).isCloseTo(i * i * ohms, relative(i * i * ohms, 1e-9));
            assertThat(x[second]).isCloseTo(i * i * 5, relative(i * i * 5, 1e-9));
            assertThat(x[volts]).isCloseTo(i * 5, relative(i * 5, 1e-9));
            assertThat(x[half]).isEqualTo(i * 5 >= 100 ? 1 : 0);
            Circuit.Balance balance = circuit.balance();
            assertThat(balance.charge()).isLessThan(1e-9 * i);
            assertThat(balance.delivered()).isCloseTo(balance.dissipated(), relative(balance.dissipated(), 1e-9));
        }
        assertThat(circuit.statesSolved()).isEqualTo(1);
    }

    /** An electrode in water pulls a relay in while the water conducts well enough. */
    @Test
    void aVaryingResistanceMovesARelay() {
        mains(0.5);
        int minus = terminal();
        int plus = terminal();
        int electrode = terminal();
        plan.add(new CurrentPlan.Supply("board", minus, plus, L, N, 150, 12, 1));
        resistor(minus, EARTH, 1);
        resistor(electrode, minus, 10e3);
        int water = varying("water", plus, electrode);
        int a = terminal();
        plan.add(new CurrentPlan.Driven("relay", L, a, electrode, minus, 6, 0.01, OPEN));
        int power = plan.power(resistor(a, N, 100));
        start();
        for (double ohms : new double[] {5e3, 20e3, 1e6, 9e3, 11e3, 2e3}) {
            x[water] = ohms;
            assertThat(read(power) > 100).as("%f Ω", ohms).isEqualTo(ohms < 10e3);
        }
        assertThat(circuit.statesSolved()).as("board dead, relay off, relay on").isEqualTo(3);
    }

    @Test
    void anOhmMeterFindsTheElementThroughClosedContactsOnly() {
        mains(0.5);
        int a = terminal();
        int b = terminal();
        int closed = contact("limit", L, a);
        resistor(a, b, 40);
        resistor(b, N, 0.1);
        resistor(a, EARTH, 30e6);
        resistor(b, EARTH, 60e6);
        start();
        assertThat(circuit.resistance(x, L, N)).isGreaterThan(0.9e12);
        x[closed] = 1;
        assertThat(circuit.resistance(x, L, N)).isCloseTo(40.11, within(1e-4));
        assertThat(circuit.resistance(x, a, a)).isZero();
        assertThat(circuit.resistance(x, a, terminal())).isInfinite();
    }

    @Test
    void insulationIsReadFromLineAndNeutralTogether() {
        int a = terminal();
        int b = terminal();
        int chassis = terminal();
        int plugEarth = terminal();
        int closed = contact("switch", a, b);
        resistor(b, N, 40);
        resistor(b, chassis, 2e6);
        resistor(chassis, plugEarth, 0.1);
        start();
        assertThat(circuit.resistance(x, new int[] {a, N}, plugEarth)).isCloseTo(2000040.1, within(0.1));
        x[closed] = 1;
        double both = 40 * 0.01 / 40.01;
        assertThat(circuit.resistance(x, new int[] {a, N}, plugEarth)).isCloseTo(2e6 + 0.1 + both, within(1e-6));
        assertThat(circuit.resistance(x, chassis, plugEarth)).isCloseTo(0.1, within(1e-15));
        assertThat(circuit.resistance(x, new int[] {a, plugEarth}, plugEarth)).isZero();
    }

    @Test
    void solvingAgainGivesTheSameAndBalances() {
        Random random = new Random(4);
        mains(0.4);
        int[] duty = new int[3];
        for (int i = 0; i < 3; i++) {
            duty[i] = slots.smooth("duty " + i, 0);
            int a = terminal();
            int b = terminal();
            pulsed(duty[i], L, a);
            resistor(a, b, 20 + 10 * i);
            resistor(b, N, 20);
            plan.power(resistor(b, EARTH, 1e6 / (i + 1)));
        }
        start();
        for (int n = 0; n < 50; n++) {
            for (int slot : duty) {
                x[slot] = 1.4 * random.nextDouble() - 0.2;
            }
            circuit.solve(x);
            Circuit.Balance balance = circuit.balance();
            assertThat(circuit.chargeResidual()).isLessThan(1e-13);
            assertThat(balance.delivered())
                    .isCloseTo(balance.dissipated(), within(1e-9 * balance.dissipated() + 1e-12));
            double[] before = x.clone();
            circuit.solve(x);
            assertThat(x).isEqualTo(before);
        }
        assertThat(circuit.statesSolved()).isLessThanOrEqualTo(8);
    }

    /** Between the voltage at which it pulls in by itself and the one at which it can still hold itself. */
    @Test
    void theSameSlotsAndMemoryGiveTheSameWhateverWasSolvedBefore() {
        mains(0.5);
        int a = terminal();
        int series = varying("series", L, a);
        resistor(a, N, 100);
        plan.add(new CurrentPlan.Driven("relay", L, a, a, N, 115, 1, OPEN));
        int live = plan.share("relay", N, a, 115);
        start();
        x[series] = 50;
        assertThat(read(live)).isEqualTo(1);
        x[series] = 500;
        assertThat(read(live)).as("holds itself").isEqualTo(1);
        circuit.hold(0);
        assertThat(read(live)).as("from cold").isZero();
        x[series] = 50;
        circuit.hold(0);
        circuit.solve(x);
        x[series] = 500;
        circuit.hold(0);
        assertThat(read(live)).as("from cold once more").isZero();
    }

    @Test
    void nonsenseIsNamed() {
        resistor(N, L, -3);
        assertThatThrownBy(this::start).hasMessageContaining("r0").hasMessageContaining("-3");
    }
}
