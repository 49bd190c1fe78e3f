package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.physics.Terms;

/** Gaps at lip seals on the suction side: pressure inside closes them, suction opens them. */
final class AirIn {
    /** Suction that lifts a lip [Pa]. */
    private static final double LIFTS = 200;

    private static final List<String> BUBBLES = List.of("clear water", "bubbles");
    /** Air that shows as bubbles in a clear hose [kg/s]. */
    private static final double SEEN = 1e-6;

    private AirIn() {}

    static void through(Component c, int node, double bore, Blueprint b) {
        if (bore <= 0) {
            b.choice(c, "bubbles behind it", BUBBLES, x -> 0);
            return;
        }
        FluidPlan.Passage gap = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        FluidPlan.OneWay lip = new FluidPlan.OneWay(LIFTS, LIFTS, gap.a(), gap.b(), 0);
        int flow = b.fluid()
                .branch(c.id() + " air gap", b.floor().node(), node, lip, FluidPlan.ALWAYS)
                .flow();
        b.choice(c, "bubbles behind it", BUBBLES, x -> x[flow] > SEEN ? 1 : 0);
    }
}
