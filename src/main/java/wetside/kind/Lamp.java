package wetside.kind;

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

/** An indicator lamp: seen lit from a third of its rated current up. */
public final class Lamp implements Kind {
    static final Parameter VOLTAGE =
            Parameter.usual("rated voltage", Dimension.VOLTAGE, 230, 1, 260, Spread.EXACT, "voltage it is made for");
    static final Parameter CURRENT = Parameter.usual(
            "rated current", Dimension.CURRENT, 2e-3, 1e-4, 1, Spread.relative(0.2), "at its rated voltage");
    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance of its leads and solder joints");

    private static final double SEEN = 1 / 3.0;

    private static final Declaration DECLARATION = new Declaration(
            "lamp",
            List.of(Port.current("1", "one terminal"), Port.current("2", "other terminal")),
            List.of(VOLTAGE, CURRENT, BREAK));

    private static final List<Fault> FAULTS = List.of(Fault.of("dead", 2.0, set(BREAK, Ohms.OPEN)));

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
        double ohms = c.get(VOLTAGE) / c.get(CURRENT) + c.get(BREAK);
        int lamp = b.current().add(new CurrentPlan.Resistor(c.id(), b.terminal(c, "1"), b.terminal(c, "2"), ohms));
        int amps = b.current().amps(lamp);
        double least = SEEN * c.get(CURRENT);
        b.choice(c, "light", LampPattern.LIT, x -> Math.abs(x[amps]) > least ? 1 : 0);
    }
}
