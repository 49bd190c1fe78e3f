package wetside.plant;

import java.util.Arrays;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Medium;

/** Numbers the heat nodes that matter and says which are vessel contents. */
final class HeatNodes {
    private final int[] compact;
    private final double[] capacity;
    private final int[] vesselNode;
    private final int[] wetted;

    HeatNodes(Blueprint b) {
        compact = new int[b.nodeCount(Medium.HEAT)];
        Arrays.fill(compact, -1);
        int n = 0;
        for (HeatPlan.Capacity c : b.heat().capacities()) {
            n = use(c.node(), n);
        }
        for (HeatPlan.Conductance c : b.heat().conductances()) {
            n = use(c.from(), n);
            n = use(c.to(), n);
        }
        for (HeatPlan.Immersed i : b.heat().immersed()) {
            n = use(i.metal(), n);
            n = use(i.content(), n);
        }
        for (FluidPlan.Vessel v : b.fluid().vessels()) {
            n = use(v.heatNode(), n);
        }
        for (HeatPlan.Source s : b.heat().sources()) {
            n = use(s.node(), n);
        }
        for (FluidPlan.Exchange e : b.fluid().exchanges()) {
            n = use(e.heatNode(), n);
        }
        for (FluidPlan.Loop l : b.fluid().loops()) {
            n = use(l.heatNode(), n);
        }
        for (HeatPlan.Sensor s : b.heat().sensors()) {
            n = use(s.node(), n);
        }
        for (HeatPlan.NodeSlot s : b.heat().temperatures()) {
            n = use(s.node(), n);
        }
        vesselNode = b.fluid().vessels().stream()
                .mapToInt(v -> compact[v.heatNode()])
                .toArray();
        double[] held = new double[n + vesselNode.length];
        b.heat().capacities().forEach(c -> held[compact[c.node()]] += c.capacity());
        wetted = new int[vesselNode.length];
        Arrays.fill(wetted, -1);
        for (int v = 0; v < vesselNode.length; v++) {
            if (held[vesselNode[v]] > 0) {
                wetted[v] = n;
                held[n++] = held[vesselNode[v]];
                held[vesselNode[v]] = 0;
            }
        }
        capacity = Arrays.copyOf(held, n);
    }

    private int use(int node, int next) {
        if (node == HeatPlan.SURROUNDINGS || compact[node] >= 0) {
            return next;
        }
        compact[node] = next;
        return next + 1;
    }

    int count() {
        return capacity.length;
    }

    /** Number of a blueprint node; -1 for the surroundings. */
    int of(int node) {
        return node == HeatPlan.SURROUNDINGS ? -1 : compact[node];
    }

    /** Fixed heat capacity of a node [J/K], without vessel content. */
    double capacity(int i) {
        return capacity[i];
    }

    /** Node of the metal wetted by vessel {@code v}, a node of its own beside the content, or -1. */
    int wettedBy(int v) {
        return wetted[v];
    }

    /** Vessel whose content a node is, or -1. */
    int vesselWith(int i) {
        for (int v = 0; v < vesselNode.length; v++) {
            if (vesselNode[v] == i) {
                return v;
            }
        }
        return -1;
    }

    int ofVessel(int v) {
        return vesselNode[v];
    }
}
