package wetside.map;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.kind.Authorship;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;

/** What passes, begins and ends in each component, by what its kind has written into the blueprint. */
final class Owned {
    private final Machine machine;
    private final Authorship authors;

    Owned(Machine machine) {
        this.machine = machine;
        authors = Authorship.of(machine);
    }

    Blueprint blueprint() {
        return authors.blueprint();
    }

    Machine machine() {
        return machine;
    }

    List<FluidPlan.Branch> branches(String component) {
        return authors.of(component).branches();
    }

    boolean isFluid(Machine.End end) {
        return port(end).medium() == Medium.FLUID;
    }

    Port port(Machine.End end) {
        return machine.component(end.component()).kind().port(end.port()).orElseThrow();
    }

    int node(Machine.End end) {
        return blueprint().node(machine.component(end.component()), end.port());
    }

    /** True when anything can pass between the component and the line joined there. */
    boolean passes(Machine.End end) {
        int node = node(end);
        return ends(end.component()).contains(node)
                || branches(end.component()).stream().anyMatch(b -> b.from() == node || b.to() == node);
    }

    /** Nodes where something is kept, begins or goes round inside the component. */
    private List<Integer> ends(String component) {
        Authorship.Share share = authors.of(component);
        List<Integer> nodes = new ArrayList<>();
        share.takeOffs().forEach(t -> nodes.add(t.node()));
        share.openings().forEach(o -> nodes.add(o.node()));
        share.loops().forEach(l -> nodes.addAll(List.of(l.upper(), l.lower())));
        return nodes;
    }

    private boolean gives(String component) {
        return !authors.of(component).openings().isEmpty();
    }

    /** Lets something out itself. */
    boolean letsOut(String component) {
        return !gives(component) && !authors.of(component).outlets().isEmpty();
    }

    /** Something begins or ends in it: a boiler, a supply, an outlet. */
    boolean isEnd(String component) {
        return letsOut(component) || !ends(component).isEmpty();
    }

    /**
     * How the component is built to pass at an end: above zero out of it, below zero into it. Pipes and tees say nothing;
     * what only lets through one way does, and a supply gives.
     */
    int outward(Machine.End end) {
        int node = node(end);
        int votes = gives(end.component()) ? 1 : 0;
        for (FluidPlan.Loop loop : authors.of(end.component()).loops()) {
            if (loop.upper() == node || loop.lower() == node) {
                return loop.lower() == node ? 1 : -1;
            }
        }
        for (FluidPlan.Branch b : branches(end.component())) {
            if (!(b.law() instanceof FluidPlan.Passage)) {
                votes += b.to() == node ? 3 : 0;
                votes -= b.from() == node ? 3 : 0;
            }
        }
        return votes;
    }
}
