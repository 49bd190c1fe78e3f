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

/** A cock at the bottom of a boiler, to empty it. */
public final class DrainCock implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 3e-3, 0.5e-3, 25e-3, Spread.relative(0.1), "when open");
    static final Parameter LEAK = Leaks.seat("leak");

    private static final Declaration DECLARATION = new Declaration(
            "drain cock", List.of(Port.fluid("in", "from the boiler")), List.of(BORE, LEAK), Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(Fault.of("drips", 0.6, log(LEAK, 0.03e-3, 0.4e-3)));

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
        int position = b.handle(c, "position", List.of("shut", "open"), 0);
        int in = b.node(c, "in");
        int end = b.innerNode();
        FluidPlan.Passage way = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id(), in, end, way, position);
        Leaks.between(c.id(), in, end, c.get(LEAK), b);
        Outflow.readings(c, b.fluid().outlet(c.id(), end), b);
    }
}
