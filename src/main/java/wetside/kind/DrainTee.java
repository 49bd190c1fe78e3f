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
import wetside.physics.Terms;
import wetside.units.Dimension;

/** A plastic tee near the boiler that gathers what valves let off; heat makes it brittle. */
public final class DrainTee implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 5e-3, 0.5e-3, 25e-3, Spread.relative(0.05), "inside");
    static final Parameter LEAK = Leaks.outward("through a crack");

    private static final Declaration DECLARATION = new Declaration(
            "drain tee",
            List.of(
                    Port.fluid("a", "from one valve"),
                    Port.fluid("b", "from another valve"),
                    Port.fluid("out", "to the drain tube")),
            List.of(BORE, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("cracked", 2.0, log(LEAK, 1.5e-3, 6e-3)),
            Fault.of("clogged with scale", 0.3, log(BORE, 1e-3, 0.5e-3)));

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
        FluidPlan.Passage arm = Blueprint.pipe(c.get(BORE), 0.03, 1, Terms.Liquid.HOT);
        int middle = b.node(c, "out");
        b.fluid().branch(c.id() + " a", b.node(c, "a"), middle, arm, FluidPlan.ALWAYS);
        b.fluid().branch(c.id() + " b", b.node(c, "b"), middle, arm, FluidPlan.ALWAYS);
        Leaks.seen(c, middle, c.get(LEAK), b);
    }
}
