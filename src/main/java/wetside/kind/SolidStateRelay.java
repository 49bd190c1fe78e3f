package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** Relay without moving parts. Its lamp sits on the input: it shows what is commanded, not what flows. */
public final class SolidStateRelay implements Kind {
    static final Parameter PULL_IN = Parameter.condition(
            "pulls in at", Dimension.VOLTAGE, 3, 0.5, 1000, Spread.relative(0.1), "input voltage that closes it");
    static final Parameter INPUT = Ohms.closed("input resistance", 1200, "of the control side");
    static final Parameter ON = Ohms.closed("on resistance", 0.03, "of the load side when closed");
    static final Parameter OFF = Ohms.open("off resistance", 100e3, "of the load side when open: its snubber leaks");
    static final Parameter LAMP = Parameter.condition(
            "lamp lights at", Dimension.VOLTAGE, 2.5, 0.5, 1000, Spread.EXACT, "input voltage its lamp shows");

    private static final Declaration DECLARATION = new Declaration(
            "solid-state relay",
            List.of(
                    Port.current("load 1", "load side"),
                    Port.current("load 2", "load side"),
                    Port.current("plus", "input"),
                    Port.current("minus", "input")),
            List.of(PULL_IN, INPUT, ON, OFF, LAMP));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("stuck on", 2.0, set(OFF, 0.05)),
            Fault.of("never closes", 0.8, set(PULL_IN, 1000)),
            Fault.of("input open", 0.2, set(INPUT, Ohms.OPEN), set(PULL_IN, 1000), set(LAMP, 1000)),
            Fault.of("high resistance when on", 0.4, log(ON, 1, 40)),
            Fault.of("lamp dead", 0.3, set(LAMP, 1000)));

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
        current.add(new CurrentPlan.Resistor(c.id() + " input", plus, minus, c.get(INPUT)));
        current.add(new CurrentPlan.Driven(
                c.id() + " load",
                b.terminal(c, "load 1"),
                b.terminal(c, "load 2"),
                plus,
                minus,
                c.get(PULL_IN),
                c.get(ON),
                c.get(OFF)));
        int lit = current.share(c.id() + " lamp", minus, plus, c.get(LAMP));
        b.choice(c, "lamp", LampPattern.WORDS, x -> LampPattern.of(x[lit]));
    }
}
