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

/** A power wire with its push-on connectors, worth a name of its own because it fails on its own. */
public final class Lead implements Kind {
    static final Parameter OHMS = Ohms.closed("resistance", 0.02, "wire and both connectors");
    static final Parameter INSULATION = Ohms.open("insulation", Ohms.INSULATION, "from the wire to what it touches");

    private static final Declaration DECLARATION = new Declaration(
            "lead",
            List.of(
                    Port.current("1", "one end"),
                    Port.current("2", "other end"),
                    Port.current("case", "metal it lies against").orPlugged()),
            List.of(OHMS, INSULATION));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("off", 0.5, set(OHMS, Ohms.OPEN)),
            Fault.of("connector burnt", 0.7, log(OHMS, 1, 60)),
            Fault.of("chafed through to the case", 0.15, log(INSULATION, 1e4, 0.5)));

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
        int one = b.terminal(c, "1");
        int wire = b.current().add(new CurrentPlan.Resistor(c.id(), one, b.terminal(c, "2"), c.get(OHMS)));
        b.current()
                .add(new CurrentPlan.Resistor(c.id() + " insulation", one, b.terminal(c, "case"), c.get(INSULATION)));
        Browning.of(c, b, wire);
    }
}
