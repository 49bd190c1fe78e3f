package wetside.kind;

import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongSetting;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/**
 * The electronics of one group: hears its keys, opens its brew valve, asks the {@link ControlBoard} for the pump and counts
 * the pulses of its {@link FlowMeter}; see {@link Dosing}. Several of them may ask one board.
 */
public final class DosingUnit implements Kind {
    static final Parameter ONE = Parameter.setting(
            "one dose", Dimension.NUMBER, 90, 1, 1e5, Spread.EXACT, "pulses it pours for the key \"one dose\"");
    static final Parameter TWO = Parameter.setting(
            "two doses", Dimension.NUMBER, 150, 1, 1e5, Spread.EXACT, "pulses it pours for the key \"two doses\"");
    static final Parameter LONGEST = Parameter.usual(
            "longest pour", Dimension.TIME, 60, 2, 3600, Spread.relative(0.01), "after which it stops a dose anyhow");
    static final Parameter PATIENCE = Parameter.usual(
            "patience",
            Dimension.TIME,
            4,
            0.2,
            60,
            Spread.relative(0.05),
            "without pulses while pouring, until its lamp flashes");
    static final Parameter LEAST = Parameter.condition(
            "works from", Dimension.VOLTAGE, 9, 1, 1000, Spread.relative(0.03), "supply below which it is dead");
    static final Parameter DRAWS = Parameter.usual(
            "supply resistance", Dimension.RESISTANCE, 240, 5, 1e5, Spread.relative(0.1), "as its supply sees it");
    static final Parameter VALVE_ON = Ohms.closed("valve output on", 0.05, "resistance of its relay when closed");
    static final Parameter VALVE_OFF = Ohms.open("valve output off", Ohms.OPEN, "resistance of its relay when open");
    static final Parameter REQUEST_ON = Ohms.closed("request on", 20, "resistance of its pump request when closed");
    static final Parameter KEY_SERIES = Ohms.closed("key input", 5, "resistance in series with the key input");
    static final Parameter PULSE_SERIES = Ohms.closed("pulse input", 100, "resistance in series with the pulse input");

    private static final Declaration DECLARATION = new Declaration(
            "dosing unit",
            List.of(
                    Port.current("plus", "supply"),
                    Port.current("minus", "supply, keys, pulses and lamp"),
                    Port.current("keys", "ribbon of the push-button pad"),
                    Port.current("pulse", "from the flow meter"),
                    Port.current("lamp", "to the lamp of the pad"),
                    Port.current("request", "closed to common while it wants the pump"),
                    Port.current("common", "of the control board's brew input"),
                    Port.current("line", "mains for the brew valve"),
                    Port.current("valve", "to the brew valve")),
            List.of(
                    ONE,
                    TWO,
                    LONGEST,
                    PATIENCE,
                    LEAST,
                    DRAWS,
                    VALVE_ON,
                    VALVE_OFF,
                    REQUEST_ON,
                    KEY_SERIES,
                    PULSE_SERIES));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("dead", 0.6, set(LEAST, 1000)),
            Fault.of("valve output dead", 0.6, set(VALVE_ON, Ohms.OPEN)),
            Fault.of("valve output stuck on", 0.5, set(VALVE_OFF, 0.05)),
            Fault.of("pump request dead", 0.3, set(REQUEST_ON, Ohms.OPEN)),
            Fault.of("key input dead", 0.3, set(KEY_SERIES, Ohms.OPEN)),
            Fault.of("pulse input dead", 0.4, set(PULSE_SERIES, Ohms.OPEN)),
            wrongSetting("doses programmed too small", 3.0, times(ONE, 0.8, 0.3), times(TWO, 0.8, 0.3)),
            wrongSetting("doses programmed too large", 3.0, times(ONE, 1.25, 2.5), times(TWO, 1.25, 2.5)));

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        int plus = b.terminal(c, "plus");
        int minus = b.terminal(c, "minus");
        CurrentPlan current = b.current();
        current.add(new CurrentPlan.Resistor(c.id() + " supply", plus, minus, c.get(DRAWS)));
        int keys = b.innerTerminal();
        int pulse = b.innerTerminal();
        current.add(new CurrentPlan.Resistor(c.id() + " key input", b.terminal(c, "keys"), keys, c.get(KEY_SERIES)));
        current.add(
                new CurrentPlan.Resistor(c.id() + " pulse input", b.terminal(c, "pulse"), pulse, c.get(PULSE_SERIES)));
        Dosing.Inputs in = new Dosing.Inputs(
                current.voltage(c.id() + " supply", minus, plus),
                current.seen(c.id() + " keys", keys, minus),
                current.seen(c.id() + " pulses", pulse, minus));
        Dosing dosing = Dosing.of(c, b, in);
        b.control(dosing);
        Dosing.Outputs out = dosing.outputs();
        contact(c, "valve", "line", "valve", out.pours(), c.get(VALVE_ON), c.get(VALVE_OFF), b);
        contact(c, "request", "request", "common", out.pours(), c.get(REQUEST_ON), Ohms.OPEN, b);
        current.add(new CurrentPlan.Pulsed(c.id() + " lamp", b.terminal(c, "lamp"), minus, out.lamp(), 1, Ohms.OPEN));
    }

    private static void contact(
            Component c, String name, String from, String to, int slot, double on, double off, Blueprint b) {
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " " + name, b.terminal(c, from), b.terminal(c, to), slot, on, off));
    }
}
