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

/** A fine mesh in the suction hose that keeps grit out of the pump. */
public final class Strainer implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore",
            Dimension.LENGTH,
            4e-3,
            0.1e-3,
            15e-3,
            Spread.relative(0.1),
            "of an orifice that would hold back as much, clean");
    static final Parameter FREE = Parameter.condition(
            "free", Dimension.RATIO, 1, 1e-4, 1, Spread.EXACT, "share of its mesh that is not clogged");
    static final Parameter AIR = Parameter.condition(
            "air gap", Dimension.LENGTH, 0, 0, 4e-3, Spread.EXACT, "bore of an orifice that would let in as much air");

    static final Parameter LEAK = Leaks.outward("past the seal");

    private static final Declaration DECLARATION = new Declaration(
            "strainer",
            List.of(Port.fluid("in", "from the source"), Port.fluid("out", "to the pump")),
            List.of(BORE, FREE, AIR, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("clogged", 2.5, log(FREE, 0.075, 0.004)),
            Fault.of("housing seal worn", 0.5, log(LEAK, 0.06e-3, 0.4e-3), log(AIR, 0.1e-3, 0.8e-3)));

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
        FluidPlan.Passage mesh = Blueprint.jet(c.get(BORE) * Math.sqrt(c.get(FREE)), Terms.SHARP, Terms.Liquid.COLD);
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), b.node(c, "in"), out, mesh, FluidPlan.ALWAYS);
        int look = c.get(FREE) > 0.3 ? 0 : 1;
        b.choice(c, "mesh", List.of("clean", "clogged"), x -> look);
        AirIn.through(c, out, c.get(AIR), b);
        Leaks.seen(c, out, c.get(LEAK), b);
    }
}
