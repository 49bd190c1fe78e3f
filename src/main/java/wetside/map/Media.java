package wetside.map;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;
import wetside.machine.Trait;

/**
 * What each line and wire of a machine carries, found by following the parts' own branches: water from where it enters,
 * steam from where boilers open above their level, drain from where parts let something off, current from the socket and
 * from low-voltage supplies. Where nothing passes at an end, or a wire only tells, it is sensing.
 */
final class Media {
    /** A port this far above the level is in the steam [share of the volume]. */
    private static final double ABOVE = 0.005;

    private final Owned owned;
    private final Map<Integer, Layer> nodes = new HashMap<>();
    private final Set<Integer> earth = new HashSet<>();
    private final Set<Integer> powered = new HashSet<>();

    Media(Owned owned) {
        this.owned = owned;
        meantForSteam();
        Set<Integer> steamStarts = new HashSet<>();
        Deque<Integer> water = new ArrayDeque<>();
        fluid().openings().forEach(o -> water.add(o.node()));
        fill(water, Layer.WATER, steamStarts);
        fill(new ArrayDeque<>(steamStarts), Layer.STEAM, new HashSet<>());
        fill(wasteStarts(), Layer.DRAIN, new HashSet<>());
        earth();
        power();
    }

    /** A tap made for steam gets it from whatever boils, even where water stands before it most of the time. */
    private void meantForSteam() {
        for (Component c : owned.machine().components()) {
            if (c.kind().is(Trait.FOR_STEAM)) {
                Deque<Integer> after = new ArrayDeque<>();
                for (Port p : c.kind().ports()) {
                    Machine.End end = new Machine.End(c.id(), p.name());
                    if (p.medium() == Medium.FLUID) {
                        nodes.put(owned.node(end), Layer.STEAM);
                        if (owned.branches(c.id()).stream().anyMatch(b -> b.to() == owned.node(end))) {
                            after.add(owned.node(end));
                        }
                    }
                }
                nodes.keySet().removeAll(after);
                fill(after, Layer.STEAM, new HashSet<>());
            }
        }
    }

    private FluidPlan fluid() {
        return owned.blueprint().fluid();
    }

    /** Spreads from the starts over all that is not yet known. */
    private void fill(Deque<Integer> open, Layer layer, Set<Integer> steam) {
        open.removeIf(n -> nodes.putIfAbsent(n, layer) != null);
        while (!open.isEmpty()) {
            int at = open.pop();
            for (Component c : owned.machine().components()) {
                for (FluidPlan.Branch b : owned.branches(c.id())) {
                    if ((b.from() == at || b.to() == at) && !letsOff(c, b)) {
                        visit(b.from() == at ? b.to() : b.from(), layer, open);
                    }
                }
            }
            for (FluidPlan.Branch b : fluid().branches()) {
                if (b.name().startsWith("line ") && (b.from() == at || b.to() == at)) {
                    visit(b.from() == at ? b.to() : b.from(), layer, open);
                }
            }
            if (layer == Layer.WATER) {
                throughVessel(at, open, steam);
            }
        }
    }

    private void visit(int node, Layer layer, Deque<Integer> open) {
        if (nodes.putIfAbsent(node, layer) == null) {
            open.push(node);
        }
    }

    private void throughVessel(int at, Deque<Integer> open, Set<Integer> steam) {
        fluid().takeOffs().stream()
                .filter(t -> t.node() == at)
                .forEach(in -> fluid().takeOffs().stream()
                        .filter(t -> t.vessel() == in.vessel())
                        .forEach(t -> {
                            if (t.height() > fluid().vessel(t.vessel()).fill() + ABOVE) {
                                steam.add(t.node());
                            } else {
                                visit(t.node(), Layer.WATER, open);
                            }
                        }));
    }

    /** The branch ends at a port that leads to waste: nothing is followed through it either way. */
    private boolean letsOff(Component c, FluidPlan.Branch b) {
        return c.kind().ports().stream()
                .filter(p -> p.medium() == Medium.FLUID && p.spent())
                .map(p -> owned.blueprint().node(c, p.name()))
                .anyMatch(n -> b.from() == n || b.to() == n);
    }

    private Deque<Integer> wasteStarts() {
        Deque<Integer> starts = new ArrayDeque<>();
        for (Component c : owned.machine().components()) {
            for (Port p : c.kind().ports()) {
                if (p.medium() == Medium.FLUID && p.spent()) {
                    starts.add(owned.blueprint().node(c, p.name()));
                }
            }
        }
        return starts;
    }

    private void earth() {
        for (Component c : owned.machine().components()) {
            for (Port p : c.kind().ports()) {
                if (p.medium() == Medium.CURRENT && p.name().endsWith("earth")) {
                    earth.add(owned.blueprint().terminal(c, p.name()));
                }
            }
        }
    }

    /** All terminals that mains reaches without the help of earth, and those of low-voltage supplies. */
    private void power() {
        Deque<Integer> open = new ArrayDeque<>();
        List<CurrentPlan.Element> elements = owned.blueprint().current().elements();
        for (CurrentPlan.Element e : elements) {
            if (e instanceof CurrentPlan.Source) {
                open.addAll(List.of(e.from(), e.to()));
            }
        }
        open.removeIf(n -> isEarth(n) || !powered.add(n));
        while (!open.isEmpty()) {
            int at = open.pop();
            for (CurrentPlan.Element e : elements) {
                if ((e.from() == at || e.to() == at) && !isEarth(e.from()) && !isEarth(e.to())) {
                    int other = e.from() == at ? e.to() : e.from();
                    if (powered.add(other)) {
                        open.push(other);
                    }
                }
            }
        }
        for (CurrentPlan.Element e : elements) {
            if (e instanceof CurrentPlan.Supply) {
                powered.addAll(List.of(e.from(), e.to()));
            }
        }
    }

    private boolean isEarth(int terminal) {
        return earth.contains(terminal);
    }

    /** What a line between two fluid ports carries. */
    Layer ofLine(Machine.End from, Machine.End to) {
        if (!owned.passes(from) || !owned.passes(to)) {
            return owned.letsOut(from.component()) ? Layer.DRAIN : Layer.SENSING;
        }
        Layer known = nodes.get(owned.node(from));
        return known != null ? known : nodes.getOrDefault(owned.node(to), Layer.WATER);
    }

    Layer ofWire(Machine.End end) {
        int terminal = terminal(end);
        return powered.contains(terminal) || isEarth(terminal) ? Layer.CURRENT : Layer.SENSING;
    }

    boolean isEarth(Machine.End end) {
        return isEarth(terminal(end));
    }

    /** Terminals that wires make one have the same number. */
    int terminal(Machine.End end) {
        Blueprint b = owned.blueprint();
        return b.terminal(owned.machine().component(end.component()), end.port());
    }
}
