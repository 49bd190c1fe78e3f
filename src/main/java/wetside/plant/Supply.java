package wetside.plant;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;

/**
 * Which source has fed the vessels so far: the one reached along ways that stand open at the start. Their water has its
 * salt.
 */
final class Supply {
    private static final double DRINKING_WATER = 0.03;

    private final FluidPlan plan;
    private final Slots slots;
    private final double[] x;
    private final Map<Integer, FluidPlan.Opening> sources = new HashMap<>();
    private final BitSet seen = new BitSet();

    private Supply(FluidPlan plan, Slots slots, double[] x) {
        this.plan = plan;
        this.slots = slots;
        this.x = x;
        plan.openings().forEach(o -> sources.put(o.node(), o));
        plan.outlets().forEach(o -> seen.set(o.node()));
    }

    /** Conductivity at 25 °C of the nearest source with water in it [S/m]. */
    static double conductivity(FluidPlan plan, Slots slots, double[] x) {
        return new Supply(plan, slots, x).nearest();
    }

    private double nearest() {
        Deque<Integer> open = new ArrayDeque<>();
        plan.takeOffs().forEach(t -> reach(t.node(), open));
        while (!open.isEmpty()) {
            int node = open.poll();
            FluidPlan.Opening source = sources.get(node);
            if (source != null && (source.stock() < 0 || x[source.stock()] > 0)) {
                return x[source.conductivity()];
            }
            for (FluidPlan.Branch b : plan.branches()) {
                if ((b.from() == node || b.to() == node) && !turnedOff(b)) {
                    reach(b.from() == node ? b.to() : b.from(), open);
                }
            }
        }
        return DRINKING_WATER;
    }

    private void reach(int node, Deque<Integer> open) {
        if (!seen.get(node)) {
            seen.set(node);
            open.add(node);
        }
    }

    /** Turned off by hand; what current opens has been open before. */
    private boolean turnedOff(FluidPlan.Branch b) {
        return b.law() instanceof FluidPlan.Passage
                && b.opening() != FluidPlan.ALWAYS
                && slots.isState(b.opening())
                && x[b.opening()] <= 0;
    }
}
