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

/** The green-yellow wire from the inlet to the stud all metal is bonded to. */
public final class ProtectiveConductor implements Kind {
    static final Parameter OHMS = Ohms.closed("resistance", 0.03, "wire, crimp and stud");

    private static final Declaration DECLARATION = new Declaration(
            "protective conductor",
            List.of(Port.current("supply", "end at the inlet"), Port.current("case", "stud on the frame")),
            List.of(OHMS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("off its stud", 0.15, set(OHMS, Ohms.OPEN)),
            Fault.of("loose on its stud", 0.3, log(OHMS, 0.5, 20)));

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
        b.current().add(new CurrentPlan.Resistor(c.id(), b.terminal(c, "supply"), b.terminal(c, "case"), c.get(OHMS)));
    }
}
