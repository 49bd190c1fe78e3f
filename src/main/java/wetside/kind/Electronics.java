package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** What boards have in common: a supply they load, inputs behind a resistance, outputs that are contacts. */
final class Electronics {
    static final Parameter LEAST = Parameter.condition(
            "works from", Dimension.VOLTAGE, 9, 1, 1000, Spread.relative(0.03), "supply below which it is dead");

    private Electronics() {}

    static Parameter draws(double ohms) {
        return Parameter.usual(
                "supply resistance", Dimension.RESISTANCE, ohms, 5, 1e5, Spread.relative(0.1), "as its supply sees it");
    }

    /** Loads the supply between the ports plus and minus. */
    static void supply(Component c, Blueprint b, double ohms) {
        b.current()
                .add(new CurrentPlan.Resistor(c.id() + " supply", b.terminal(c, "plus"), b.terminal(c, "minus"), ohms));
    }

    /** The far side of an input's own resistance. */
    static int behind(Component c, Blueprint b, String port, double ohms) {
        int inside = b.innerTerminal();
        b.current().add(new CurrentPlan.Resistor(c.id() + " " + port + " input", b.terminal(c, port), inside, ohms));
        return inside;
    }

    /** Named after the port {@code named}, which is one of its two ends. */
    static void contact(
            Component c, Blueprint b, String named, String from, String to, int slot, double on, double off) {
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " " + named, b.terminal(c, from), b.terminal(c, to), slot, on, off));
    }
}
