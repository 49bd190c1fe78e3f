package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** Leaks as sharp orifices; a bore of zero is no branch at all. */
final class Leaks {
    /** What a person says who looks for water: index by flow. */
    static final List<String> WETNESS = List.of("dry", "drips", "runs");

    /** About a drop in a quarter of a minute [kg/s]. */
    private static final double DRIP = 3e-6;
    /** Where drops become a thread [kg/s]. */
    private static final double RUN = 3e-4;

    private Leaks() {}

    /** Condition of a part that may leak to the outside. */
    static Parameter outward(String where) {
        return Parameter.condition(
                "outward leak",
                Dimension.LENGTH,
                0,
                0,
                6e-3,
                Spread.EXACT,
                "bore of an orifice that would leak as much " + where);
    }

    /** Condition of a seat that may leak when shut. */
    static Parameter seat(String name) {
        return Parameter.condition(
                name,
                Dimension.LENGTH,
                0,
                0,
                4e-3,
                Spread.EXACT,
                "bore of an orifice that would leak as much when shut");
    }

    static void between(String name, int from, int to, double bore, Blueprint b) {
        if (bore > 0) {
            FluidPlan.Passage hole = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
            b.fluid().branch(name + " leak", from, to, hole, FluidPlan.ALWAYS);
        }
    }

    /** To the bench under the machine. */
    static void outside(String name, int from, double bore, Blueprint b) {
        between(name, from, b.floor().node(), bore, b);
    }

    /** To the bench under the machine, and seen by whoever looks at the part with the panels off. */
    static void seen(Component c, int from, double bore, Blueprint b) {
        if (bore <= 0) {
            b.choice(c, "outside", WETNESS, x -> 0);
            return;
        }
        FluidPlan.Passage hole = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        int flow = b.fluid()
                .branch(c.id() + " outside leak", from, b.floor().node(), hole, FluidPlan.ALWAYS)
                .flow();
        b.choice(c, "outside", WETNESS, x -> wetness(x[flow]));
    }

    static int wetness(double flow) {
        return flow > RUN ? 2 : flow > DRIP ? 1 : 0;
    }
}
