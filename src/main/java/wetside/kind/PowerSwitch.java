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

/** Two-pole switch by hand. */
public final class PowerSwitch implements Kind {
    static final Parameter LINE = Ohms.closed("line contact", 0.01, "resistance of the closed line pole");
    static final Parameter NEUTRAL = Ohms.closed("neutral contact", 0.01, "resistance of the closed neutral pole");
    static final Parameter GAP = Ohms.open("gap", Ohms.OPEN, "resistance of both poles when off");

    private static final Declaration DECLARATION = new Declaration(
            "power switch",
            List.of(
                    Port.current("line in", "from the cord"),
                    Port.current("line out", "to the machine"),
                    Port.current("neutral in", "from the cord"),
                    Port.current("neutral out", "to the machine")),
            List.of(LINE, NEUTRAL, GAP));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("line contact burnt open", 0.8, log(LINE, 1e5, Ohms.OPEN)),
            Fault.of("neutral contact burnt open", 0.5, log(NEUTRAL, 1e5, Ohms.OPEN)),
            Fault.of("contact charred", 0.6, log(LINE, 1, 15)),
            Fault.of("does not switch off", 0.2, set(GAP, 0.01)));

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
        int lever = b.handle(c, "switch", List.of("off", "on"), 0);
        Browning.of(c, b, pole(c, b, lever, "line", c.get(LINE)));
        pole(c, b, lever, "neutral", c.get(NEUTRAL));
    }

    private static int pole(Component c, Blueprint b, int lever, String name, double on) {
        return b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " " + name,
                        b.terminal(c, name + " in"),
                        b.terminal(c, name + " out"),
                        lever,
                        on,
                        c.get(GAP)));
    }
}
