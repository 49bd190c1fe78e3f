package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongSetting;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** A membrane that opens a contact when the boiler's pressure has risen to a setting and closes it some way below. */
public final class PressureSwitch implements Kind {
    static final Parameter SET = Parameter.setting(
            "set pressure", Dimension.PRESSURE, 1.2e5, 0.1e5, 16e5, Spread.absolute(0.04e5), "at which it opens");
    static final Parameter DIFFERENTIAL = Parameter.usual(
            "differential",
            Dimension.PRESSURE,
            0.15e5,
            0.02e5,
            4e5,
            Spread.relative(0.2),
            "how far below that it closes again");
    static final Parameter LAG = Parameter.usual(
            "lag", Dimension.TIME, 0.5, 0.05, 20000, Spread.relative(0.4), "until two thirds of a change arrive");
    static final Parameter CONTACT = Ohms.closed("contact", 0.01, "resistance of the closed contact");
    static final Parameter GAP = Ohms.open("gap", Ohms.OPEN, "resistance of the open contact");
    static final Parameter LEAK = Leaks.outward("at membrane or union");

    private static final Declaration DECLARATION = new Declaration(
            "pressure switch",
            List.of(
                    Port.fluid("in", "end of its capillary"),
                    Port.current("1", "one terminal"),
                    Port.current("2", "other terminal")),
            List.of(SET, DIFFERENTIAL, LAG, CONTACT, GAP, LEAK));

    private static final List<Fault> FAULTS = List.of(
            wrongSetting("set low", 3.0, times(SET, 0.85, 0.35)),
            wrongSetting("set high", 2.0, times(SET, 1.12, 1.6)),
            Fault.of("contacts welded", 2.0, set(GAP, 0.02)),
            Fault.of("contacts burnt open", 2.0, log(CONTACT, 1e5, Ohms.OPEN)),
            Fault.of("contacts charred", 2.0, log(CONTACT, 1, 30)),
            Fault.of("capillary blocked", 1.5, log(LAG, 100, 2500)),
            Fault.of("membrane leaks", 0.8, log(LEAK, 0.03e-3, 0.4e-3)));

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
        int in = b.node(c, "in");
        int pressure = b.fluid().pressure(in);
        int felt = b.slots().smooth(c.id() + ".felt", 0);
        int closed = b.slots().state(c.id() + ".closed", 1);
        double opens = c.get(SET);
        double closes = opens - c.get(DIFFERENTIAL);
        double lag = c.get(LAG);
        b.control((x, dt) -> {
            x[felt] += (x[pressure] - x[b.atmosphere()] - x[felt]) * -Math.expm1(-dt / lag);
            x[closed] = x[felt] > opens ? 0 : x[felt] < closes ? 1 : x[closed];
        });
        int contact = b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), closed, c.get(CONTACT), c.get(GAP)));
        Browning.of(c, b, contact);
        Leaks.seen(c, in, c.get(LEAK), b);
    }
}
