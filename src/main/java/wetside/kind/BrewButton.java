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

/** Button that stays where it is pressed, with two contacts: mains for a valve, and a signal for a board. */
public final class BrewButton implements Kind {
    static final Parameter MAINS = Ohms.closed("mains contact", 0.02, "resistance of the closed mains contact");
    static final Parameter SIGNAL = Ohms.closed("signal contact", 0.03, "resistance of the closed signal contact");
    static final Parameter MAINS_GAP = Ohms.open("mains gap", Ohms.OPEN, "resistance of the open mains contact");
    static final Parameter SIGNAL_GAP = Ohms.open("signal gap", Ohms.OPEN, "resistance of the open signal contact");

    private static final Declaration DECLARATION = new Declaration(
            "brew button",
            List.of(
                    Port.current("line", "live conductor"),
                    Port.current("valve", "to the brew valve"),
                    Port.current("1", "signal"),
                    Port.current("2", "signal, other terminal")),
            List.of(MAINS, SIGNAL, MAINS_GAP, SIGNAL_GAP));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("mains contact burnt", 0.8, log(MAINS, 20e3, Ohms.OPEN)),
            Fault.of("mains contact welded", 0.3, set(MAINS_GAP, 0.02)),
            Fault.of("signal contact burnt", 0.6, log(SIGNAL, 20e3, Ohms.OPEN)),
            Fault.of("jammed in", 0.5, set(MAINS_GAP, 0.02), set(SIGNAL_GAP, 0.03)));

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
        int button = b.handle(c, "button", List.of("out", "in"), 0);
        contact(c, b, "mains", new String[] {"line", "valve"}, button, c.get(MAINS), c.get(MAINS_GAP));
        contact(c, b, "signal", new String[] {"1", "2"}, button, c.get(SIGNAL), c.get(SIGNAL_GAP));
    }

    private static void contact(
            Component c, Blueprint b, String name, String[] ends, int button, double on, double off) {
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " " + name, b.terminal(c, ends[0]), b.terminal(c, ends[1]), button, on, off));
    }
}
