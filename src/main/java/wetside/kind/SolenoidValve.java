package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** A two-way valve, shut without current. */
public final class SolenoidValve implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 2.5e-3, 0.5e-3, 25e-3, Spread.relative(0.1), "when open");
    static final Parameter COIL = Parameter.usual(
            "coil resistance", Dimension.RESISTANCE, 3500, 1, 1e9, Spread.relative(0.1), "between its terminals");
    static final Parameter PULL_IN = Parameter.usual(
            "pull-in voltage", Dimension.VOLTAGE, 160, 3, 1000, Spread.relative(0.1), "least that opens it");
    static final Parameter OPENS = Parameter.condition(
            "opens to", Dimension.RATIO, 1, 1e-6, 1, Spread.EXACT, "share of its bore that comes free");
    static final Parameter LEAK = Leaks.seat("leak");
    static final Parameter SHELL_LEAK = Leaks.outward("at the armature tube");

    private static final Declaration DECLARATION = new Declaration(
            "solenoid valve",
            List.of(
                    Port.fluid("in", "the pressure side"),
                    Port.fluid("out", "the side it feeds"),
                    Port.current("a", "coil"),
                    Port.current("b", "coil, other end")),
            List.of(BORE, COIL, PULL_IN, OPENS, LEAK, SHELL_LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("stuck shut with scale", 1.5, log(OPENS, 0.003, 1e-6)),
            Fault.of("stuck open", 0.4, log(LEAK, 0.8e-3, 2.5e-3)),
            Fault.of("weeps", 1.5, log(LEAK, 0.03e-3, 0.3e-3)),
            Fault.of("coil open", 0.8, set(COIL, 1e9)),
            Fault.of("coil turns shorted", 0.3, times(COIL, 0.5, 0.05), set(PULL_IN, 270, 900)),
            Fault.of("armature tube leaks", 0.2, log(SHELL_LEAK, 0.03e-3, 0.3e-3)));

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
        int a = b.terminal(c, "a");
        int other = b.terminal(c, "b");
        int coil = b.current().add(new CurrentPlan.Resistor(c.id() + " coil", a, other, c.get(COIL)));
        int open = b.current().share(c.id(), a, other, c.get(PULL_IN));
        int amps = b.current().amps(coil);
        double bore = c.get(BORE) * Math.sqrt(c.get(OPENS));
        FluidPlan.Passage seat = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), in, out, seat, open);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
        Leaks.seen(c, in, c.get(SHELL_LEAK), b);
        b.choice(c, "sound", List.of("silent", "hums"), x -> Math.abs(x[amps]) > 0.01 && x[open] > 0.5 ? 1 : 0);
    }
}
