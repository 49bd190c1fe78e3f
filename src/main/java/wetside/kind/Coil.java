package wetside.kind;

import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** The coil of a solenoid valve: what it draws, and from which voltage it lifts its armature. */
final class Coil {
    static final Port ONE_END = Port.current("a", "coil");
    static final Port OTHER_END = Port.current("b", "coil, other end");

    static final Parameter RESISTANCE = Parameter.usual(
            "coil resistance", Dimension.RESISTANCE, 3500, 1, 1e9, Spread.relative(0.1), "between its terminals");
    static final Parameter PULL_IN = Parameter.usual(
            "pull-in voltage", Dimension.VOLTAGE, 160, 3, 1000, Spread.relative(0.1), "least that opens it");

    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance in series with the coil's winding");

    static final Fault BURNT = Fault.of("coil open", 0.8, set(BREAK, Ohms.OPEN));
    static final Fault SHORTED =
            Fault.of("coil turns shorted", 0.3, times(RESISTANCE, 0.5, 0.05), set(PULL_IN, 270, 900));

    private Coil() {}

    /** Slot that is 1 while the coil lifts, 0 while it does not. */
    static int build(Component c, Blueprint b) {
        int a = b.terminal(c, "a");
        int other = b.terminal(c, "b");
        int winding = b.innerTerminal();
        b.current().add(new CurrentPlan.Resistor(c.id() + " break", a, winding, c.get(BREAK)));
        int coil = b.current().add(new CurrentPlan.Resistor(c.id() + " coil", winding, other, c.get(RESISTANCE)));
        int lifts = b.current().share(c.id(), winding, other, c.get(PULL_IN));
        int amps = b.current().amps(coil);
        b.choice(c, "sound", List.of("silent", "hums"), x -> Math.abs(x[amps]) > 0.01 && x[lifts] > 0.5 ? 1 : 0);
        return lifts;
    }
}
