package wetside.tour;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wetside.blueprint.FluidPlan;
import wetside.kind.Authorship;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;

/**
 * Where water, steam and what is let off can go in a machine that works: through each part along the branches its kind has
 * written, each from where it is meant to come to where it is meant to go.
 */
final class WaterWays {
    /** A port this far above the level is in the steam [share of the volume]. */
    private static final double ABOVE = 0.005;

    private final Machine machine;
    private final Authorship authors;

    /** A way out of one part to the port of another. */
    record Exit(Machine.End from, Machine.End to, boolean circulates) {}

    WaterWays(Machine machine) {
        this.machine = machine;
        authors = Authorship.of(machine);
    }

    Machine machine() {
        return machine;
    }

    /** Parts that water comes from, with the ports it leaves by: a store that runs empty, or an endless supply. */
    List<Machine.End> sources(boolean endless) {
        List<Machine.End> sources = new ArrayList<>();
        for (Component c : machine.components()) {
            for (FluidPlan.Opening o : authors.of(c.id()).openings()) {
                Set<Integer> reached = reached(c, o.node());
                ports(c).stream()
                        .filter(p -> o.stock() == FluidPlan.ALWAYS == endless && reached.contains(node(c, p)))
                        .map(p -> new Machine.End(c.id(), p.name()))
                        .filter(end -> !across(end).isEmpty())
                        .filter(end -> across(end).stream().allMatch(this::takesIn))
                        .forEach(sources::add);
            }
        }
        return sources;
    }

    /** Ports of vessels that open into steam, each with something joined to it. */
    List<Machine.End> steamPorts(Component c) {
        return ports(c).stream()
                .filter(p -> authors.of(c.id()).takeOffs().stream().anyMatch(t -> t.node() == node(c, p) && isSteam(t)))
                .map(p -> new Machine.End(c.id(), p.name()))
                .filter(end -> !across(end).isEmpty())
                .toList();
    }

    private boolean isSteam(FluidPlan.TakeOff t) {
        return t.height() > authors.blueprint().fluid().vessel(t.vessel()).fill() + ABOVE;
    }

    /** The part's own vessel stands partly empty, so that steam gathers in it. */
    boolean isPartlyFilled(Component c) {
        return authors.of(c.id()).takeOffs().stream()
                .anyMatch(t -> isSteam(t)
                        && authors.blueprint().fluid().vessel(t.vessel()).fill() < 0.95);
    }

    /** Nothing passes through the part: it only feels what stands in front of it. */
    boolean isDeadEnd(Component c) {
        Authorship.Share o = authors.of(c.id());
        return o.branches().isEmpty()
                && o.takeOffs().isEmpty()
                && o.loops().isEmpty()
                && o.openings().isEmpty();
    }

    /** Whether anything can enter the part there. */
    boolean takesIn(Machine.End end) {
        Component c = machine.component(end.component());
        Authorship.Share o = authors.of(c.id());
        int node = node(end);
        return isDeadEnd(c)
                || o.branches().stream().anyMatch(b -> b.from() == node)
                || o.takeOffs().stream().anyMatch(t -> t.node() == node)
                || o.loops().stream().anyMatch(l -> l.upper() == node)
                || o.openings().stream().anyMatch(p -> p.node() == node)
                || leadsOn(end, new HashSet<>());
    }

    /** A plain fitting lets through either way: what comes to it from behind goes on where something takes it in. */
    private boolean leadsOn(Machine.End end, Set<Machine.End> asked) {
        Component c = machine.component(end.component());
        if (!isPlain(c) || !asked.add(end)) {
            return false;
        }
        return ports(c).stream()
                .map(p -> new Machine.End(c.id(), p.name()))
                .filter(other -> !other.equals(end))
                .flatMap(other -> across(other).stream())
                .anyMatch(to -> isPlain(machine.component(to.component())) ? leadsOn(to, asked) : takesIn(to));
    }

    /** Always open, and the same from either end. */
    private boolean isPlain(Component c) {
        Authorship.Share o = authors.of(c.id());
        return !o.branches().isEmpty()
                && o.takeOffs().isEmpty()
                && o.loops().isEmpty()
                && o.openings().isEmpty()
                && o.branches().stream()
                        .allMatch(b -> b.law() instanceof FluidPlan.Passage && b.opening() == FluidPlan.ALWAYS);
    }

    /** Ways on for what has come in at a port; not by the ports of a vessel that are in its steam. */
    List<Exit> exits(Machine.End in) {
        Component c = machine.component(in.component());
        int entry = node(in);
        Set<Integer> reached = reached(c, entry);
        if (isPlain(c) && reached.size() == 1) {
            authors.of(c.id()).branches().forEach(b -> reached.addAll(List.of(b.from(), b.to())));
        }
        List<Exit> exits = new ArrayList<>();
        for (Port p : ports(c)) {
            Machine.End out = new Machine.End(c.id(), p.name());
            if (!out.equals(in) && reached.contains(node(out))) {
                boolean ring = authors.of(c.id()).loops().stream().anyMatch(l -> l.lower() == node(out));
                across(out).stream().filter(this::takesIn).forEach(to -> exits.add(new Exit(out, to, ring)));
            }
        }
        return exits;
    }

    /** What lies on the far side of a port's line. */
    List<Machine.End> across(Machine.End end) {
        List<Machine.End> others = new ArrayList<>();
        for (Machine.Line l : machine.joins().lines()) {
            if (l.from().equals(end)) {
                others.add(l.to());
            } else if (l.to().equals(end)) {
                others.add(l.from());
            }
        }
        return others;
    }

    private Set<Integer> reached(Component c, int entry) {
        Authorship.Share o = authors.of(c.id());
        Set<Integer> reached = new LinkedHashSet<>(Set.of(entry));
        Deque<Integer> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            int at = open.pop();
            List<Integer> next = new ArrayList<>();
            o.branches().stream().filter(b -> b.from() == at).forEach(b -> next.add(b.to()));
            o.loops().stream().filter(l -> l.upper() == at).forEach(l -> next.add(l.lower()));
            o.takeOffs().stream()
                    .filter(t -> t.node() == at)
                    .forEach(t -> o.takeOffs().stream()
                            .filter(other -> other.vessel() == t.vessel() && !isSteam(other))
                            .forEach(other -> next.add(other.node())));
            next.stream().filter(reached::add).forEach(open::push);
        }
        return reached;
    }

    /** All ports something can go out by, wherever it came in. */
    List<Machine.End> outs(Component c) {
        Authorship.Share o = authors.of(c.id());
        return ports(c).stream()
                .filter(p -> o.branches().stream().anyMatch(b -> b.to() == node(c, p))
                        || o.takeOffs().stream().anyMatch(t -> t.node() == node(c, p)))
                .map(p -> new Machine.End(c.id(), p.name()))
                .toList();
    }

    /** What leaves the port is not used any more. */
    boolean isSpent(Machine.End end) {
        return machine.component(end.component())
                .kind()
                .port(end.port())
                .map(Port::spent)
                .orElse(false);
    }

    /** What leaves the part there, or out of the part itself when nothing is joined, runs to waste. */
    boolean letsOff(Component c) {
        return ports(c).stream()
                .anyMatch(p ->
                        p.spent() && !across(new Machine.End(c.id(), p.name())).isEmpty());
    }

    private static List<Port> ports(Component c) {
        return c.kind().ports().stream().filter(p -> p.medium() == Medium.FLUID).toList();
    }

    private int node(Component c, Port p) {
        return authors.blueprint().node(c, p.name());
    }

    int node(Machine.End end) {
        return authors.blueprint().node(machine.component(end.component()), end.port());
    }
}
