package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.physics.Terms;

/** Leaks as sharp orifices; a bore of zero is no branch at all. */
final class Leaks {
    private Leaks() {}

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
}
