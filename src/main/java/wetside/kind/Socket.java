package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.timesMeant;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** The wall socket and all of the house behind it: voltage, the impedance of its line and neutral, and its earth. */
public final class Socket implements Kind {
    static final Parameter VOLTAGE = Parameter.usual(
            "voltage", Dimension.VOLTAGE, 230, 0, 290, Spread.relative(0.04), "between line and neutral, unloaded");
    static final Parameter LINE = Ohms.closed("line impedance", 0.35, "of the house in the line, contacts included");
    static final Parameter NEUTRAL = Ohms.closed("neutral impedance", 0.15, "of the house in the neutral");
    static final Parameter EARTH =
            Ohms.closed("earth impedance", 0.2, "from the earth contact to where earth and neutral meet");

    private static final Declaration DECLARATION = new Declaration(
            "socket",
            List.of(
                    Port.current("line", "live contact"),
                    Port.current("neutral", "neutral contact"),
                    Port.current("earth", "protective contact")),
            List.of(VOLTAGE, LINE, NEUTRAL, EARTH));

    private static final List<Fault> FAULTS = List.of(
            // what a supply may be by standard, ± 10 % of what it is meant to be (EN 50160, IEC 60038), is no fault
            Fault.wrongInstallation("low voltage", 1.5, timesMeant(VOLTAGE, 0.90, 0.82)),
            Fault.wrongInstallation("high voltage", 0.3, timesMeant(VOLTAGE, 1.10, 1.15)),
            Fault.wrongInstallation("no earth", 0.5, set(EARTH, Ohms.OPEN)),
            Fault.of("worn contacts", 0.8, log(LINE, 2, 12)),
            Fault.of("dead", 1.0, set(VOLTAGE, 0)));

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
        int star = b.innerTerminal();
        int volts = b.slots().smooth(c.id() + ".mains", c.get(VOLTAGE));
        CurrentPlan current = b.current();
        current.add(new CurrentPlan.Source(c.id() + " line", star, b.terminal(c, "line"), volts, c.get(LINE)));
        current.add(new CurrentPlan.Resistor(c.id() + " neutral", star, b.terminal(c, "neutral"), c.get(NEUTRAL)));
        current.add(new CurrentPlan.Resistor(c.id() + " earth", star, b.terminal(c, "earth"), c.get(EARTH)));
    }
}
