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

/** A spout, a wand's tip, the blow-off of a safety valve: where water or steam comes out and is seen. */
public final class Outlet implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 5e-3, 0.05e-3, 25e-3, Spread.relative(0.1), "of its holes together");
    static final Parameter FREE = Parameter.condition(
            "free", Dimension.RATIO, 1, 0.0005, 1, Spread.EXACT, "share of the holes' area that is clear");

    /** Air flowing in that can be heard at the tip [kg/s]. */
    private static final double HEARD = 3e-6;

    private static final List<Fault> FAULTS = List.of(Fault.of("holes blocked", 1.0, log(FREE, 0.15, 0.002)));

    private final Declaration declaration;

    private Outlet(String name) {
        declaration = new Declaration(
                name,
                List.of(
                        Port.fluid("in", "what it lets out"),
                        Port.fluid("over", "what stands below and catches it").orPlugged()),
                List.of(BORE, FREE));
    }

    static Outlet spout() {
        return new Outlet("outlet");
    }

    /** Flows like any other; but nobody unscrews it: what blocks it is the valve's end. */
    static Outlet blowOff() {
        return new Outlet("blow-off");
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        int end = b.node(c, "over");
        FluidPlan.Passage holes = Blueprint.jet(c.get(BORE) * Math.sqrt(c.get(FREE)), Terms.SHARP, Terms.Liquid.HOT);
        int flow = b.fluid()
                .branch(c.id(), b.node(c, "in"), end, holes, FluidPlan.ALWAYS)
                .flow();
        b.choice(c, "suction", List.of("none", "air hisses in"), x -> x[flow] < -HEARD ? 1 : 0);
        int look = c.get(FREE) > 0.3 ? 0 : 1;
        b.choice(c, "holes", List.of("clear", "caked"), x -> look);
        FluidPlan.Outlet outlet = b.fluid().outlet(c.id(), end);
        if (!c.place().behind().isEmpty()) {
            b.cover(outlet);
        }
        Outflow.readings(c, outlet, b);
    }
}
