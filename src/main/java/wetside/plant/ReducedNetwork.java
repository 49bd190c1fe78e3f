package wetside.plant;

import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import wetside.blueprint.FluidPlan;

/**
 * A network without what cannot matter: dead ends dropped, and ways from a node back to itself (what circulates there by
 * its own warmth is found elsewhere); passages in series made one. Where a pressure is wanted that no longer has a node,
 * it says how to find it afterwards.
 */
final class ReducedNetwork {
    /** A dropped node takes the pressure of another, less the weight of the water between. */
    record Alias(int node, int of, double rise) {}

    /** A wanted node inside a chain, after link {@code position}. */
    record Inside(int node, Chain chain, int position) {}

    final List<Chain> chains = new ArrayList<>();
    /** Nodes with a pressure of their own, vessels and held nodes not among them. */
    final List<Integer> kept = new ArrayList<>();
    /** In an order in which each can be found from those before it. */
    final List<Alias> aliases = new ArrayList<>();

    final List<Inside> insides = new ArrayList<>();
    private final FluidPlan plan;
    private final Set<Integer> fixed = new HashSet<>();
    private final Set<Integer> wanted = new HashSet<>();
    private final Map<Integer, List<Chain>> at = new TreeMap<>();
    private final Set<Integer> gone = new HashSet<>();
    private final Set<Integer> level = new HashSet<>();

    /** By {@link #key}: plants are made by the thousand, and faults seldom change how things are joined. */
    private static final Map<LongBuffer, ReducedNetwork> KNOWN = new ConcurrentHashMap<>();

    private static final int MOST_KNOWN = 256;

    /** The network of a plan; the same again for one that is joined in the same way. */
    static ReducedNetwork of(FluidPlan plan) {
        LongBuffer key = key(plan);
        ReducedNetwork known = KNOWN.get(key);
        if (known != null) {
            known.wanted.forEach(plan::pressure);
            return known;
        }
        if (KNOWN.size() >= MOST_KNOWN) {
            KNOWN.clear();
        }
        ReducedNetwork made = new ReducedNetwork(plan);
        KNOWN.put(key, made);
        return made;
    }

    /** Everything of a plan that is looked at here. */
    private static LongBuffer key(FluidPlan plan) {
        LongStream.Builder key = LongStream.builder();
        for (FluidPlan.Branch b : plan.branches()) {
            int sort = b.law() instanceof FluidPlan.Passage
                    ? 0
                    : b.law() instanceof FluidPlan.OneWay ? 1 : b.law() instanceof FluidPlan.Pump ? 2 : 3;
            int open = b.opening() == FluidPlan.ALWAYS ? 1 : 0;
            key.add((long) b.from() << 32 | b.to()).add(2 * sort + open).add(Double.doubleToRawLongBits(b.rise()));
        }
        key.add(-1);
        plan.takeOffs().forEach(t -> key.add(t.node()));
        key.add(-1);
        plan.openings().forEach(o -> key.add(o.node()));
        plan.outlets().forEach(o -> key.add(o.node()));
        plan.stores().forEach(s -> key.add(s.node()));
        key.add(-1);
        plan.pressures().forEach(p -> key.add(p.node()));
        key.add(-1);
        plan.loops().forEach(l -> key.add((long) l.upper() << 32 | l.lower()));
        return LongBuffer.wrap(key.build().toArray());
    }

    private ReducedNetwork(FluidPlan plan) {
        this.plan = plan;
        plan.takeOffs().forEach(t -> fixed.add(t.node()));
        plan.openings().forEach(o -> fixed.add(o.node()));
        plan.outlets().forEach(o -> fixed.add(o.node()));
        plan.stores().forEach(s -> fixed.add(s.node()));
        plan.pressures().forEach(p -> wanted.add(p.node()));
        for (FluidPlan.Loop loop : plan.loops()) {
            wayToVessel(loop.upper());
            wayToVessel(loop.lower());
        }
        for (int k = 0; k < plan.branches().size(); k++) {
            FluidPlan.Branch branch = plan.branches().get(k);
            if (branch.from() != branch.to()) {
                attach(Chain.single(k, branch.from(), branch.to()));
            }
        }
        while (dropOne() || joinOne()) {
            // each turn removes a node
        }
        collect();
    }

    private void attach(Chain chain) {
        if (chain.isLoop()) {
            standBeside(chain.from, chain, chain.inner.size());
            return;
        }
        at.computeIfAbsent(chain.from, n -> new ArrayList<>()).add(chain);
        at.computeIfAbsent(chain.to, n -> new ArrayList<>()).add(chain);
    }

    private void detach(Chain chain) {
        at.get(chain.from).remove(chain);
        at.get(chain.to).remove(chain);
    }

    private boolean dropOne() {
        for (int node : List.copyOf(at.keySet())) {
            if (!fixed.contains(node) && at.get(node).size() == 1) {
                Chain chain = at.get(node).get(0).startingAt(node).reversed();
                if (!wantedBehindValve(chain)) {
                    drop(at.get(node).get(0), chain);
                    return true;
                }
            }
        }
        return false;
    }

    /** A gauge behind a valve keeps the pressure locked in with it; only its own node can know. */
    private boolean wantedBehindValve(Chain outwards) {
        for (int k = 0; k < outwards.links.size(); k++) {
            int node = k < outwards.inner.size() ? outwards.inner.get(k) : outwards.to;
            if (wanted.contains(node) && outwards.blockedBefore(plan, k)) {
                return true;
            }
        }
        return false;
    }

    private void drop(Chain attached, Chain outwards) {
        detach(attached);
        standBeside(outwards.from, outwards, outwards.links.size());
    }

    /** Nothing flows in a chain any more: its first so many nodes after the start take the pressure of the start. */
    private void standBeside(int start, Chain chain, int count) {
        int before = start;
        List<Alias> fresh = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            int node = k < chain.inner.size() ? chain.inner.get(k) : chain.to;
            fresh.add(new Alias(node, before, rise(chain.links.get(k))));
            gone.add(node);
            before = node;
        }
        for (int k = fresh.size() - 1; k >= 0; k--) {
            if (wanted.contains(fresh.get(k).node())) {
                wanted.add(fresh.get(k).of());
            }
        }
        aliases.addAll(0, fresh);
    }

    /**
     * Height gained along a link [m]. Pipes of a natural circulation count as level: both ends of the vessel they hang on
     * are taken at one pressure, so the column in the vessel is missing that would balance theirs.
     */
    double rise(Chain.Link link) {
        double rise = level.contains(link.branch())
                ? 0
                : plan.branches().get(link.branch()).rise();
        return link.forward() ? rise : -rise;
    }

    /** Passages on the shortest way from a node to a vessel. */
    private void wayToVessel(int start) {
        Set<Integer> vessels = new HashSet<>();
        plan.takeOffs().forEach(t -> vessels.add(t.node()));
        Map<Integer, Integer> by = new TreeMap<>();
        List<Integer> reached = new ArrayList<>(List.of(start));
        for (int k = 0; k < reached.size(); k++) {
            int node = reached.get(k);
            if (vessels.contains(node)) {
                for (int at = node; at != start; at = other(by.get(at), at)) {
                    level.add(by.get(at));
                }
                return;
            }
            for (int b = 0; b < plan.branches().size(); b++) {
                int next = other(b, node);
                boolean passage = plan.branches().get(b).law() instanceof FluidPlan.Passage;
                if (passage && next >= 0 && next != start && by.putIfAbsent(next, b) == null) {
                    reached.add(next);
                }
            }
        }
    }

    /** The far end of a branch, or -1 when it does not touch the node. */
    private int other(int branch, int node) {
        FluidPlan.Branch b = plan.branches().get(branch);
        return b.from() == node ? b.to() : b.to() == node ? b.from() : -1;
    }

    private boolean joinOne() {
        for (int node : List.copyOf(at.keySet())) {
            List<Chain> here = at.get(node);
            if (fixed.contains(node) || here.size() != 2) {
                continue;
            }
            Chain joined =
                    here.get(0).startingAt(node).reversed().then(here.get(1).startingAt(node));
            if (oneLaw(joined)) {
                List<Chain> old = List.copyOf(here);
                old.forEach(this::detach);
                gone.add(node);
                attach(joined);
                return true;
            }
        }
        return false;
    }

    /** At most one check in it, no pump, and no wanted pressure locked in between two valves. */
    private boolean oneLaw(Chain joined) {
        int checks = 0;
        for (int k = 0; k < joined.links.size(); k++) {
            FluidPlan.Law law = joined.law(plan, k);
            if (law instanceof FluidPlan.Pump || law instanceof FluidPlan.Regulator) {
                return false;
            }
            checks += law instanceof FluidPlan.OneWay ? 1 : 0;
        }
        for (int k = 0; k < joined.inner.size(); k++) {
            if (wanted.contains(joined.inner.get(k)) && joined.blockedBefore(plan, k) && joined.blockedAfter(plan, k)) {
                return false;
            }
        }
        return checks <= 1;
    }

    private void collect() {
        Set<Chain> all = new LinkedHashSet<>();
        at.keySet().stream().sorted().forEach(n -> all.addAll(at.get(n)));
        chains.addAll(all);
        at.keySet().stream()
                .sorted()
                .filter(n -> !fixed.contains(n) && !gone.contains(n))
                .filter(n -> !at.get(n).isEmpty() || wanted.contains(n))
                .forEach(kept::add);
        for (Chain chain : chains) {
            for (int k = 0; k < chain.inner.size(); k++) {
                if (wanted.contains(chain.inner.get(k))) {
                    insides.add(new Inside(chain.inner.get(k), chain, k));
                }
            }
        }
        wanted.forEach(plan::pressure);
        aliases.removeIf(a -> !wanted.contains(a.node()));
    }
}
