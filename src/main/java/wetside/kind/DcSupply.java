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

/** Low-voltage supply for board, controllers and relay inputs. */
public final class DcSupply implements Kind {
    static final Parameter VOLTS =
            Parameter.usual("output", Dimension.VOLTAGE, 12, 0, 48, Spread.relative(0.03), "direct voltage, unloaded");
    static final Parameter INNER = Ohms.closed("output resistance", 0.5, "inside the supply");
    static final Parameter LEAST = Parameter.usual(
            "least input", Dimension.VOLTAGE, 85, 10, 260, Spread.EXACT, "mains voltage below which it gives nothing");
    static final Parameter DRAWS = Parameter.usual(
            "input resistance", Dimension.RESISTANCE, 8000, 500, 1e6, Spread.relative(0.2), "as the mains sees it");

    private static final Declaration DECLARATION = new Declaration(
            "DC supply",
            List.of(
                    Port.current("line", "mains"),
                    Port.current("neutral", "mains"),
                    Port.current("plus", "output"),
                    Port.current("minus", "output")),
            List.of(VOLTS, INNER, LEAST, DRAWS));

    private static final List<Fault> FAULTS =
            List.of(Fault.of("dead", 1.2, set(VOLTS, 0)), Fault.of("weak", 0.6, set(INNER, 15, 120)));

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
        int line = b.terminal(c, "line");
        int neutral = b.terminal(c, "neutral");
        b.current().add(new CurrentPlan.Resistor(c.id() + " input", line, neutral, c.get(DRAWS)));
        b.current()
                .add(new CurrentPlan.Supply(
                        c.id() + " output",
                        b.terminal(c, "minus"),
                        b.terminal(c, "plus"),
                        line,
                        neutral,
                        c.get(LEAST),
                        c.get(VOLTS),
                        c.get(INNER)));
    }
}
