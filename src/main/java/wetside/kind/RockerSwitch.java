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

/** A switch for the hand with two positions and one change-over contact: brew, steam, hot water, economy. */
public final class RockerSwitch implements Kind {
    static final Parameter CONTACT = Ohms.closed("contact", 0.03, "resistance of the contact that closes when on");
    static final Parameter REST =
            Ohms.closed("rest contact", 0.03, "resistance of the contact that is closed when off");
    static final Parameter GAP = Ohms.open("gap", Ohms.OPEN, "resistance of the first contact when off");
    static final Parameter FOLLOWS = Parameter.condition(
            "follows the hand", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "1 when the contacts move with the rocker");

    private static final Declaration DECLARATION = new Declaration(
            "rocker switch",
            List.of(
                    Port.current("in", "common terminal"),
                    Port.current("on", "joined to the common terminal when on"),
                    Port.current("off", "joined to it when off").orPlugged()),
            List.of(CONTACT, REST, GAP, FOLLOWS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("contact burnt", 1.0, log(CONTACT, 1e5, Ohms.OPEN)),
            Fault.of("contact charred", 0.5, log(CONTACT, 5, 200)),
            Fault.of("does not switch off", 0.4, set(GAP, 0.03)),
            Fault.of("broken inside", 0.6, set(FOLLOWS, 0)));

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
        int hand = b.handle(c, "switch", List.of("off", "on"), 0);
        int on = b.slots().state(c.id() + ".on", 0);
        int off = b.slots().state(c.id() + ".off", 1);
        boolean follows = c.get(FOLLOWS) > 0.5;
        b.control((x, dt) -> {
            x[on] = follows ? x[hand] : 0;
            x[off] = 1 - x[on];
        });
        int in = b.terminal(c, "in");
        int first = b.current()
                .add(new CurrentPlan.Contact(c.id(), in, b.terminal(c, "on"), on, c.get(CONTACT), c.get(GAP)));
        Browning.of(c, b, first);
        b.current()
                .add(new CurrentPlan.Contact(c.id() + " rest", in, b.terminal(c, "off"), off, c.get(REST), Ohms.OPEN));
    }
}
