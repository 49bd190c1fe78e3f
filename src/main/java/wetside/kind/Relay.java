package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.ArrayList;
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
 * A coil that pulls one or more contacts shut: the small relay of one pole on a low voltage, the contactor of two on the
 * mains. Burning strikes the first pole. Assumes: the coil is a resistance, and lets go at the voltage at which it pulls.
 */
public final class Relay implements Kind {
    static final Parameter CONTACT = Ohms.closed("contact", 0.01, "resistance of each closed contact");
    static final Parameter FIRST = Ohms.closed("first contact burnt", 1e-4, "resistance that burning adds to pole 1");
    static final Parameter GAP = Ohms.open("first gap", Ohms.OPEN, "resistance of pole 1 when open");
    static final Parameter OTHER_GAP = Ohms.open("other gap", Ohms.OPEN, "resistance of the other poles when open");
    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance in series with the coil");

    private final Parameter coil;
    private final Parameter pullIn;
    private final int poles;
    private final Declaration declaration;
    private final List<Fault> faults;

    /**
     * @param poles  contacts it closes together
     * @param ohms   usual resistance of its coil [Ω]
     * @param pullIn usual least voltage that closes it [V]
     */
    Relay(String name, int poles, double ohms, double pullIn) {
        this.poles = poles;
        coil = Parameter.usual(
                "coil resistance", Dimension.RESISTANCE, ohms, 1, 1e5, Spread.relative(0.1), "between its terminals");
        this.pullIn = Parameter.usual(
                "pull-in voltage", Dimension.VOLTAGE, pullIn, 2, 1000, Spread.relative(0.08), "least that closes it");
        List<Parameter> parameters = new ArrayList<>(List.of(coil, this.pullIn, CONTACT, FIRST, GAP, BREAK));
        if (poles > 1) {
            parameters.add(OTHER_GAP);
        }
        declaration = new Declaration(name, ports(poles), List.copyOf(parameters));
        faults = faults(poles);
    }

    private static List<Port> ports(int poles) {
        List<Port> ports = new ArrayList<>();
        ports.add(Port.current("coil 1", "coil"));
        ports.add(Port.current("coil 2", "coil, other end"));
        for (int k = 1; k <= poles; k++) {
            ports.add(Port.current("in " + k, "pole " + k));
            ports.add(Port.current("out " + k, "pole " + k + ", other side"));
        }
        return List.copyOf(ports);
    }

    private List<Fault> faults(int poles) {
        List<Fault> all = new ArrayList<>();
        all.add(Fault.of("coil open", 0.8, set(BREAK, Ohms.OPEN)));
        all.add(Fault.of("does not pull in", 0.8, times(pullIn, 2, 3)));
        all.add(Fault.of("contacts burnt open", 1.5, log(FIRST, 1e5, Ohms.OPEN)));
        all.add(Fault.of("contacts charred", 1.0, log(FIRST, 1, 30)));
        all.add(
                poles > 1
                        ? Fault.of("contacts welded", 1.0, set(GAP, 0.02), set(OTHER_GAP, 0.02))
                        : Fault.of("contacts welded", 1.5, set(GAP, 0.02)));
        if (poles > 1) {
            all.add(Fault.of("one pole welded", 0.6, set(GAP, 0.02)));
        }
        return List.copyOf(all);
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    @Override
    public List<Fault> faults() {
        return faults;
    }

    @Override
    public void build(Component c, Blueprint b) {
        int one = b.terminal(c, "coil 1");
        int two = b.terminal(c, "coil 2");
        int wound = b.innerTerminal();
        CurrentPlan current = b.current();
        current.add(new CurrentPlan.Resistor(c.id() + " break", one, wound, c.get(BREAK)));
        current.add(new CurrentPlan.Resistor(c.id() + " coil", wound, two, c.get(coil)));
        for (int k = 1; k <= poles; k++) {
            double on = c.get(CONTACT) + (k == 1 ? c.get(FIRST) : 0);
            double off = c.get(k == 1 ? GAP : OTHER_GAP);
            int pole = current.add(new CurrentPlan.Driven(
                    c.id() + " pole " + k,
                    b.terminal(c, "in " + k),
                    b.terminal(c, "out " + k),
                    wound,
                    two,
                    c.get(pullIn),
                    Math.min(on, Ohms.OPEN),
                    off));
            if (k == 1) {
                Browning.of(c, b, pole);
            }
        }
        int pulled = current.share(c.id(), wound, two, c.get(pullIn));
        b.choice(c, "armature", List.of("dropped", "pulled in"), x -> x[pulled] > 0.5 ? 1 : 0);
    }
}
