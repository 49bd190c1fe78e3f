package wetside.kind;

import static wetside.kind.Fault.log;

import java.util.List;
import wetside.blueprint.Blueprint;
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
    static final Parameter OPENS = Parameter.condition(
            "opens to", Dimension.RATIO, 1, 1e-6, 1, Spread.EXACT, "share of its bore that comes free");
    static final Parameter LEAK = Leaks.seat("leak");
    static final Parameter SHELL_LEAK = Leaks.outward("at the armature tube");

    private static final Declaration DECLARATION = new Declaration(
            "solenoid valve",
            List.of(
                    Port.fluid("in", "the pressure side"),
                    Port.fluid("out", "the side it feeds"),
                    Coil.ONE_END,
                    Coil.OTHER_END),
            List.of(BORE, Coil.RESISTANCE, Coil.PULL_IN, Coil.BREAK, OPENS, LEAK, SHELL_LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("stuck shut with scale", 1.5, log(OPENS, 0.003, 1e-6)),
            Fault.of("stuck open", 0.4, log(LEAK, 0.8e-3, 2.5e-3)),
            Fault.of("weeps", 1.5, log(LEAK, 0.03e-3, 0.3e-3)),
            Coil.BURNT,
            Coil.SHORTED,
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
        int open = Coil.build(c, b);
        double bore = c.get(BORE) * Math.sqrt(c.get(OPENS));
        FluidPlan.Passage seat = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), in, out, seat, open);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
        Leaks.seen(c, in, c.get(SHELL_LEAK), b);
    }
}
