package wetside.kind;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Machine;

/** A machine's blueprint, and which component wrote what into its pipes. Maps and walks read it; the plant does not care. */
public final class Authorship {
    private final Blueprint blueprint;
    private final Map<String, Share> shares = new LinkedHashMap<>();

    /** What one component has written. */
    public record Share(
            List<FluidPlan.Branch> branches,
            List<FluidPlan.TakeOff> takeOffs,
            List<FluidPlan.Loop> loops,
            List<FluidPlan.Opening> openings,
            List<FluidPlan.Outlet> outlets) {

        private Share since(Share before) {
            return new Share(
                    added(branches, before.branches),
                    added(takeOffs, before.takeOffs),
                    added(loops, before.loops),
                    added(openings, before.openings),
                    added(outlets, before.outlets));
        }

        private static <T> List<T> added(List<T> now, List<T> before) {
            return List.copyOf(now.subList(before.size(), now.size()));
        }
    }

    private Authorship(Blueprint blueprint) {
        this.blueprint = blueprint;
    }

    public static Authorship of(Machine machine) {
        Authorship a = new Authorship(new Blueprint(machine));
        Kinds.inBuildingOrder(machine).forEach(a::build);
        return a;
    }

    private void build(Component c) {
        Share before = all();
        Kinds.of(c).build(c, blueprint);
        shares.put(c.id(), all().since(before));
    }

    private Share all() {
        FluidPlan f = blueprint.fluid();
        return new Share(
                List.copyOf(f.branches()),
                List.copyOf(f.takeOffs()),
                List.copyOf(f.loops()),
                List.copyOf(f.openings()),
                List.copyOf(f.outlets()));
    }

    public Blueprint blueprint() {
        return blueprint;
    }

    public Share of(String component) {
        return shares.get(component);
    }
}
