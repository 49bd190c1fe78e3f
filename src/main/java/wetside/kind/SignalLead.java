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

/** A thin wire to a sensor, a probe or an input: little current, so a bad connector shows as a wrong value. */
public final class SignalLead implements Kind {
    static final Parameter OHMS = Ohms.closed("resistance", 0.1, "wire and both connectors");

    private static final Declaration DECLARATION = new Declaration(
            "signal lead", List.of(Port.current("1", "one end"), Port.current("2", "other end")), List.of(OHMS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("off", 0.7, set(OHMS, Ohms.OPEN)), Fault.of("connector corroded", 0.6, log(OHMS, 100, 200e3)));

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
        int on = b.handle(c, "connector", List.of("pulled off", "on"), 1);
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), on, c.get(OHMS), Ohms.OPEN));
    }
}
