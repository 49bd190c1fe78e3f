package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import wetside.blueprint.FluidPlan;

/** Carries a solution back to the plan: the flow of every branch, and the pressures that were wanted. */
final class FlowReadout {
    /** A wanted pressure that is a site's own. */
    private record AtSite(int site, int slot) {}

    /** A wanted pressure beside a known one. */
    private record Beside(int known, int slot, double head) {}

    /** One link on the way from a known pressure to a wanted one. */
    private record Walk(FluidPlan.Branch branch, double sign, double head) {}

    /** A wanted pressure inside a chain, reachable from its two ends. */
    private record Inside(int chain, int start, Walk[] fromStart, int end, Walk[] fromEnd, int slot) {}

    private final FluidPlan plan;
    private final FlowSystem system;
    private final int[][] flowSlots;
    private final double[][] signs;
    private final int[] chainOf;
    private final AtSite[] sites;
    private final Inside[] insides;
    private final Beside[] besides;

    FlowReadout(FluidPlan plan, ReducedNetwork net, List<Chain> chains, Map<Integer, Integer> site, FlowSystem system) {
        this.plan = plan;
        this.system = system;
        flowSlots = new int[chains.size()][];
        signs = new double[chains.size()][];
        chainOf = new int[plan.branches().size()];
        Arrays.fill(chainOf, -1);
        for (int c = 0; c < chains.size(); c++) {
            List<Chain.Link> links = chains.get(c).links;
            flowSlots[c] = links.stream()
                    .mapToInt(l -> plan.branches().get(l.branch()).flow())
                    .toArray();
            signs[c] = links.stream().mapToDouble(l -> l.forward() ? 1 : -1).toArray();
            for (Chain.Link link : links) {
                chainOf[link.branch()] = c;
            }
        }
        sites = plan.pressures().stream()
                .filter(p -> site.containsKey(p.node()))
                .map(p -> new AtSite(site.get(p.node()), p.slot()))
                .toArray(AtSite[]::new);
        insides = net.insides.stream().map(i -> inside(i, net, site)).toArray(Inside[]::new);
        besides = net.aliases.stream()
                .map(a -> new Beside(plan.pressure(a.of()), plan.pressure(a.node()), head(a.rise())))
                .toArray(Beside[]::new);
    }

    private static double head(double rise) {
        return ChainLaws.DENSITY * ChainLaws.GRAVITY * rise;
    }

    private Inside inside(ReducedNetwork.Inside at, ReducedNetwork net, Map<Integer, Integer> site) {
        List<Walk> fromStart = new ArrayList<>();
        List<Walk> fromEnd = new ArrayList<>();
        List<Chain.Link> links = at.chain().links;
        for (int k = 0; k < links.size(); k++) {
            Chain.Link link = links.get(k);
            FluidPlan.Branch branch = plan.branches().get(link.branch());
            double sign = link.forward() ? 1 : -1;
            if (k <= at.position()) {
                fromStart.add(new Walk(branch, sign, head(net.rise(link))));
            } else {
                fromEnd.add(new Walk(branch, -sign, -head(net.rise(link))));
            }
        }
        Collections.reverse(fromEnd);
        return new Inside(
                chainOf[links.get(0).branch()],
                site.get(at.chain().from),
                fromStart.toArray(Walk[]::new),
                site.get(at.chain().to),
                fromEnd.toArray(Walk[]::new),
                plan.pressure(at.node()));
    }

    void write(double[] x) {
        for (int c = 0; c < flowSlots.length; c++) {
            double q = system.laws.q[c];
            for (int k = 0; k < flowSlots[c].length; k++) {
                x[flowSlots[c][k]] = signs[c][k] * q;
            }
        }
        for (AtSite s : sites) {
            x[s.slot] = system.p[s.site];
        }
        for (Inside i : insides) {
            x[i.slot] = blocked(i.fromStart, x) && !blocked(i.fromEnd, x)
                    ? walk(i.chain, system.p[i.end], i.fromEnd, x)
                    : walk(i.chain, system.p[i.start], i.fromStart, x);
        }
        for (Beside b : besides) {
            x[b.slot] = x[b.known] - b.head;
        }
    }

    private static boolean blocked(Walk[] way, double[] x) {
        for (Walk w : way) {
            if (!(w.branch.law() instanceof FluidPlan.Passage)
                    || w.branch.opening() >= 0 && !(x[w.branch.opening()] > ChainLaws.LEAST_OPENING)) {
                return true;
            }
        }
        return false;
    }

    private double walk(int chain, double pressure, Walk[] way, double[] x) {
        double through = chain < 0 ? 1 : system.laws.through(chain);
        double wet = chain < 0 ? 1 : system.laws.wet(chain);
        double p = pressure;
        for (Walk w : way) {
            if (w.branch.law() instanceof FluidPlan.Passage passage) {
                double opening = w.branch.opening() < 0 ? 1 : x[w.branch.opening()];
                p -= ChainLaws.drop(passage, opening * through, w.sign * x[w.branch.flow()]) + wet * w.head;
            }
        }
        return p;
    }

    double gasShare(int branch) {
        int c = chainOf[branch];
        return c < 0 ? 0 : system.vessels.gas(c);
    }

    int[] slotsAt(int vessel) {
        return Arrays.stream(sites)
                .filter(s -> s.site() == vessel)
                .mapToInt(AtSite::slot)
                .toArray();
    }
}
