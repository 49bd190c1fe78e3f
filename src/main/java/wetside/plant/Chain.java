package wetside.plant;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.FluidPlan;

/** Branches in series between two nodes, while a network is compiled. */
final class Chain {
    /** A branch of the plan, walked with or against its own direction. */
    record Link(int branch, boolean forward) {}

    final int from;
    final int to;
    final List<Link> links;
    /** Nodes between the links, in the same order; one fewer than links. */
    final List<Integer> inner;

    private Chain(int from, int to, List<Link> links, List<Integer> inner) {
        this.from = from;
        this.to = to;
        this.links = List.copyOf(links);
        this.inner = List.copyOf(inner);
    }

    static Chain single(int branch, int from, int to) {
        return new Chain(from, to, List.of(new Link(branch, true)), List.of());
    }

    Chain reversed() {
        List<Link> back = new ArrayList<>();
        List<Integer> nodes = new ArrayList<>();
        for (int k = links.size() - 1; k >= 0; k--) {
            back.add(new Link(links.get(k).branch(), !links.get(k).forward()));
        }
        for (int k = inner.size() - 1; k >= 0; k--) {
            nodes.add(inner.get(k));
        }
        return new Chain(to, from, back, nodes);
    }

    /** The same chain, seen as coming from a node. */
    Chain startingAt(int node) {
        return from == node ? this : reversed();
    }

    /** This chain, then the next, joined at this one's end. */
    Chain then(Chain next) {
        List<Link> all = new ArrayList<>(links);
        all.addAll(next.links);
        List<Integer> nodes = new ArrayList<>(inner);
        nodes.add(to);
        nodes.addAll(next.inner);
        return new Chain(from, next.to, all, nodes);
    }

    int other(int node) {
        return from == node ? to : from;
    }

    boolean isLoop() {
        return from == to;
    }

    /** The one link that is more than a passage, or -1. */
    int special(FluidPlan plan) {
        for (int k = 0; k < links.size(); k++) {
            if (!(law(plan, k) instanceof FluidPlan.Passage)) {
                return k;
            }
        }
        return -1;
    }

    FluidPlan.Law law(FluidPlan plan, int link) {
        return plan.branches().get(links.get(link).branch()).law();
    }

    /** True when a link can hold pressure back: a valve, or anything but a passage. */
    boolean blocks(FluidPlan plan, int link) {
        FluidPlan.Branch branch = plan.branches().get(links.get(link).branch());
        return branch.opening() != FluidPlan.ALWAYS || !(branch.law() instanceof FluidPlan.Passage);
    }

    /** True when an inner node has something that can hold pressure back on its far side, seen from the start. */
    boolean blockedBefore(FluidPlan plan, int position) {
        for (int k = 0; k <= position; k++) {
            if (blocks(plan, k)) {
                return true;
            }
        }
        return false;
    }

    boolean blockedAfter(FluidPlan plan, int position) {
        for (int k = position + 1; k < links.size(); k++) {
            if (blocks(plan, k)) {
                return true;
            }
        }
        return false;
    }
}
