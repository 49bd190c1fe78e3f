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

/** A fitting with three ends. */
public final class Tee implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 5e-3, 1e-3, 25e-3, Spread.relative(0.05), "of the two arms");
    static final Parameter LEAK = Leaks.outward("at a joint");

    private static final Declaration DECLARATION = new Declaration(
            "tee",
            List.of(
                    Port.fluid("a", "where water comes from"),
                    Port.fluid("b", "one way on"),
                    Port.fluid("c", "other way on")),
            List.of(BORE, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("joint weeps", 0.4, log(LEAK, 0.02e-3, 0.3e-3)),
            Fault.of("cracked", 0.1, log(LEAK, 0.5e-3, 3e-3)));

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
        FluidPlan.Passage arm = Blueprint.pipe(c.get(BORE), 0.02, 1, Terms.Liquid.COLD);
        int middle = b.node(c, "a");
        b.fluid().branch(c.id() + " b", middle, b.node(c, "b"), arm, FluidPlan.ALWAYS);
        b.fluid().branch(c.id() + " c", middle, b.node(c, "c"), arm, FluidPlan.ALWAYS);
        Leaks.seen(c, middle, c.get(LEAK), b);
    }
}
