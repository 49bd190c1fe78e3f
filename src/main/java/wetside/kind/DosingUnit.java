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
    static final Parameter DRAWS = Electronics.draws(240);
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
                    Electronics.LEAST,
                    DRAWS,
                    VALVE_ON,
                    VALVE_OFF,
                    REQUEST_ON,
                    KEY_SERIES,
                    PULSE_SERIES));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("dead", 0.6, set(Electronics.LEAST, 1000)),
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
        Electronics.supply(c, b, c.get(DRAWS));
        int minus = b.terminal(c, "minus");
        int keys = Electronics.behind(c, b, "keys", c.get(KEY_SERIES));
        int pulse = Electronics.behind(c, b, "pulse", c.get(PULSE_SERIES));
        CurrentPlan current = b.current();
        Dosing.Inputs in = new Dosing.Inputs(
                current.voltage(c.id() + " supply", minus, b.terminal(c, "plus")),
                current.seen(c.id() + " keys", keys, minus),
                current.seen(c.id() + " pulses", pulse, minus));
        Dosing dosing = Dosing.of(c, b, in);
        b.control(dosing);
        Dosing.Outputs out = dosing.outputs();
        Electronics.contact(c, b, "valve", "line", "valve", out.pours(), c.get(VALVE_ON), c.get(VALVE_OFF));
        Electronics.contact(c, b, "request", "request", "common", out.pours(), c.get(REQUEST_ON), Ohms.OPEN);
        current.add(new CurrentPlan.Pulsed(c.id() + " lamp", b.terminal(c, "lamp"), minus, out.lamp(), 1, Ohms.OPEN));
    }
}
