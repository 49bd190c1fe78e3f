package wetside.map;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;

/** A machine's blueprint, and which component wrote which branch into it. */
final class Owned {
    private final Machine machine;
    private final Blueprint blueprint;
    private final Map<String, List<FluidPlan.Branch>> branches = new LinkedHashMap<>();
    private final Map<String, FluidPlan.Loop> circulation = new HashMap<>();
    private final Set<String> sources = new HashSet<>();
    private final Set<String> sinks = new HashSet<>();
    private final Map<String, List<Integer>> ends = new LinkedHashMap<>();

    Owned(Machine machine) {
        this.machine = machine;
        blueprint = new Blueprint(machine);
        machine.components().forEach(this::build);
    }

    private void build(Component c) {
        FluidPlan fluid = blueprint.fluid();
        int before = fluid.branches().size();
        int held = fluid.takeOffs().size();
        int opened = fluid.openings().size();
        int given = fluid.outlets().size();
        int circling = fluid.loops().size();
        Kinds.of(c).build(c, blueprint);
        branches.put(
                c.id(),
                List.copyOf(fluid.branches().subList(before, fluid.branches().size())));
        List<Integer> nodes = new ArrayList<>();
        fluid.takeOffs().subList(held, fluid.takeOffs().size()).forEach(t -> nodes.add(t.node()));
        fluid.openings().subList(opened, fluid.openings().size()).forEach(o -> nodes.add(o.node()));
        if (fluid.openings().size() > opened) {
            sources.add(c.id());
        } else if (fluid.outlets().size() > given) {
            sinks.add(c.id());
        }
        fluid.loops().subList(circling, fluid.loops().size()).forEach(l -> {
            nodes.addAll(List.of(l.upper(), l.lower()));
            circulation.put(c.id(), l);
        });
        ends.put(c.id(), nodes);
    }

    Blueprint blueprint() {
        return blueprint;
    }

    Machine machine() {
        return machine;
    }

    List<FluidPlan.Branch> branches(String component) {
        return branches.get(component);
    }

    boolean isFluid(Machine.End end) {
        return port(end).medium() == Medium.FLUID;
    }

    Port port(Machine.End end) {
        return machine.component(end.component()).kind().port(end.port()).orElseThrow();
    }

    int node(Machine.End end) {
        return blueprint.node(machine.component(end.component()), end.port());
    }

    /** True when anything can pass between the component and the line joined there. */
    boolean passes(Machine.End end) {
        int node = node(end);
        return ends.get(end.component()).contains(node)
                || branches.get(end.component()).stream().anyMatch(b -> b.from() == node || b.to() == node);
    }

    /** Lets something out itself. */
    boolean letsOut(String component) {
        return sinks.contains(component);
    }

    /** Something begins or ends in it: a boiler, a supply, an outlet. */
    boolean isEnd(String component) {
        return sources.contains(component)
                || sinks.contains(component)
                || !ends.get(component).isEmpty();
    }

    /**
     * How the component is built to pass at an end: above zero out of it, below zero into it. Pipes and tees say nothing;
     * what only lets through one way does, and a supply gives.
     */
    int outward(Machine.End end) {
        int node = node(end);
        int votes = sources.contains(end.component()) ? 1 : 0;
        FluidPlan.Loop loop = circulation.get(end.component());
        if (loop != null && (loop.upper() == node || loop.lower() == node)) {
            return loop.lower() == node ? 1 : -1;
        }
        for (FluidPlan.Branch b : branches.get(end.component())) {
            if (!(b.law() instanceof FluidPlan.Passage)) {
                votes += b.to() == node ? 3 : 0;
                votes -= b.from() == node ? 3 : 0;
            }
        }
        return votes;
    }
}
