package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.physics.Terms;

/** Gaps at lip seals on the suction side: pressure inside closes them, suction opens them. */
final class AirIn {
    /** Suction that lifts a lip [Pa]. */
    private static final double LIFTS = 200;

    private AirIn() {}

    static void through(Component c, int node, double bore, Blueprint b) {
        through(c, "air gap", node, bore, FluidPlan.ALWAYS, b);
    }

    /** @param held slot: further suction it takes to lift the lip [Pa] */
    static void through(Component c, String name, int node, double bore, int held, Blueprint b) {
        if (bore > 0) {
            FluidPlan.Passage gap = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
            FluidPlan.OneWay lip = new FluidPlan.OneWay(LIFTS, LIFTS, gap.a(), gap.b(), 0);
            b.fluid().branch(c.id() + " " + name, b.floor().node(), node, lip, held);
        }
    }
}
