package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;

/**
 * The fluid network of one machine, compiled; one object per thread, its state is in the state array.
 *
 * <p>A step is solved implicitly for the pressures of vessels and nodes ({@link FlowSystem}, {@link FlowNewton}) with
 * what stands at every end taken as it was ({@link Donors}); if the flows then prove that it stood otherwise, solved
 * again.
 */
public final class Hydraulics {
    private static final int REPEATS = 2;
    private static final double SAME = 0.1;

    private final int vesselCount;
    private final StoreBalance stores;
    private final FlowSystem system;
    private final ChainLaws laws;
    private final Donors donors;
    private final FlowNewton newton;
    private final FlowReadout readout;
    private final Assumed assumed;
    private final Convergence convergence = new Convergence();
    private final int[] heldSlot;
    private final int[] nodeSlot;
    private final int[] gasSlot;
    private final int[] vesselSlot;
    private final int airSlot;
    private final String[] names;

    private Hydraulics(FluidPlan plan, Slots slots) {
        vesselCount = plan.vessels().size();
        airSlot = slots.find("surroundings.air pressure");
        Map<Integer, Integer> held = new HashMap<>();
        plan.outlets().forEach(o -> hold(held, o.node(), airSlot, o.name()));
        plan.openings().forEach(o -> hold(held, o.node(), o.pressure(), "the opening at node " + o.node()));
        Map<Integer, Integer> site = new HashMap<>();
        for (FluidPlan.TakeOff t : plan.takeOffs()) {
            Integer other = site.put(t.node(), t.vessel());
            if (other != null && other != t.vessel() || held.containsKey(t.node())) {
                throw new ImpossibleNetwork("vessel '" + plan.vessel(t.vessel()).name()
                        + "' is joined to another vessel or to the open without a line between them");
            }
        }
        ReducedNetwork net = ReducedNetwork.of(plan);
        stores = new StoreBalance(plan.stores(), vesselCount);
        int n = vesselCount;
        for (FluidPlan.Store s : plan.stores()) {
            if (held.containsKey(s.node()) || site.putIfAbsent(s.node(), n) != null) {
                throw new ImpossibleNetwork(
                        "'" + s.name() + "' is joined to a vessel or to the open without a line between them");
            }
            plan.pressure(s.node());
            n++;
        }
        nodeSlot = new int[net.kept.size()];
        gasSlot = new int[net.kept.size()];
        for (int k = 0; k < nodeSlot.length; k++) {
            int node = net.kept.get(k);
            site.put(node, n++);
            nodeSlot[k] = plan.pressure(node);
            gasSlot[k] = slots.smooth("node " + node + ".gas share", 0);
        }
        vesselSlot = new int[vesselCount];
        for (int k = 0; k < vesselCount; k++) {
            vesselSlot[k] = slots.smooth("vessel " + k + ".pressure among flows", 0);
        }
        int unknowns = n;
        heldSlot = new int[held.size()];
        for (Map.Entry<Integer, Integer> h : held.entrySet()) {
            heldSlot[n - unknowns] = h.getValue();
            site.put(h.getKey(), n++);
        }
        plan.pressures().forEach(p -> slots.startAt(p.slot(), airSlot < 0 ? 101325 : slots.first(airSlot)));
        List<Chain> chains = forwards(plan, net.chains);
        laws = new ChainLaws(plan, net, chains);
        int[] from = chains.stream().mapToInt(c -> site.get(c.from)).toArray();
        int[] to = chains.stream().mapToInt(c -> site.get(c.to)).toArray();
        system = new FlowSystem(vesselCount, stores, unknowns, n, from, to, laws);
        donors = new Donors(plan, chains, system, site);
        newton = new FlowNewton(system, convergence);
        readout = new FlowReadout(plan, net, chains, site, system);
        assumed = new Assumed();
        names = new String[unknowns];
        for (int k = 0; k < unknowns; k++) {
            names[k] = k < vesselCount
                    ? plan.vessel(k).name()
                    : k < system.firstNode
                            ? plan.stores().get(k - vesselCount).name()
                            : beside(plan, net.kept.get(k - system.firstNode));
        }
    }

    private static void hold(Map<Integer, Integer> held, int node, int slot, String what) {
        Integer other = held.put(node, slot);
        if (other != null && other != slot) {
            throw new ImpossibleNetwork(
                    what + " is held at two pressures: nothing lies between two ends that are open");
        }
    }

    /** Chains with a check are walked the way the check opens. */
    private static List<Chain> forwards(FluidPlan plan, List<Chain> chains) {
        List<Chain> turned = new ArrayList<>();
        for (Chain chain : chains) {
            int special = chain.special(plan);
            turned.add(special >= 0 && !chain.links.get(special).forward() ? chain.reversed() : chain);
        }
        return turned;
    }

    private static String beside(FluidPlan plan, int node) {
        return plan.branches().stream()
                .filter(b -> b.from() == node || b.to() == node)
                .map(FluidPlan.Branch::name)
                .reduce((a, b) -> a + " / " + b)
                .map(s -> "where " + s + " meet")
                .orElse("node " + node);
    }

    /**
     * Compiles a network. Call it before the state array is made: pressures and gas shares of the nodes that stay are
     * given slots of their own, so that copying the state array copies everything.
     *
     * @param nodeCount how many fluid nodes were numbered
     * @throws ImpossibleNetwork when the network cannot be, e.g. two vessels are one node
     */
    public static Hydraulics of(FluidPlan plan, Slots slots, int nodeCount) {
        return new Hydraulics(plan, slots);
    }

    /**
     * Flows and pressures at the end of a step. Openings, speeds, held pressures and stocks are read from the state; flow
     * of every branch and every demanded pressure are written to it (pressures of nodes at a vessel too: see {@link
     * #slotsAt}).
     *
     * @param x  state array
     * @param dt length of the step [s], above 0
     * @param v  the vessels in the plan's order, each set for this step
     * @return false when some node does not balance; see {@link #convergence}
     */
    public boolean solve(double[] x, double dt, VesselRow[] v) {
        begin(x, dt, v);
        convergence.solves++;
        boolean balanced = newton.solve();
        for (int k = 0; k < REPEATS && balanced && believesOtherwise(); k++) {
            convergence.repeats++;
            assumed.keep();
            donors.carry();
            if (!newton.solve() && !again()) {
                assumed.restore();
                break;
            }
        }
        donors.mix();
        store(x, v);
        if (!balanced) {
            convergence.failures++;
            convergence.worst = names[newton.worst()];
            convergence.worstImbalance = system.f[newton.worst()];
        }
        return balanced;
    }

    /** Whether the flows show that something else stood at their donors than was assumed. */
    private boolean believesOtherwise() {
        donors.mix();
        return donors.error() > SAME;
    }

    /** From the start of the step, where the vessels at least agree with what they hold. */
    private boolean again() {
        System.arraycopy(system.before, 0, system.p, 0, system.unknowns);
        system.restart();
        return newton.solve();
    }

    /** A balanced solution with what it assumed, in case the better assumption finds none. */
    private final class Assumed {
        private final double[] p = new double[system.unknowns];
        private final double[] z = new double[vesselCount];

        void keep() {
            System.arraycopy(system.p, 0, p, 0, p.length);
            System.arraycopy(system.vessels.z, 0, z, 0, z.length);
            donors.keep();
        }

        void restore() {
            System.arraycopy(p, 0, system.p, 0, p.length);
            System.arraycopy(z, 0, system.vessels.z, 0, z.length);
            donors.restore();
            system.evaluate();
        }
    }

    /** The system at its first guess. */
    FlowSystem begin(double[] x, double dt, VesselRow[] v) {
        double air = airSlot < 0 ? 101325 : x[airSlot];
        laws.open(x, air);
        Arrays.fill(laws.q, 0);
        for (int k = 0; k < vesselCount; k++) {
            system.p[k] = v[k].guess(x[vesselSlot[k]]);
        }
        for (int k = 0; k < nodeSlot.length; k++) {
            system.p[system.firstNode + k] = x[nodeSlot[k]];
            donors.share(system.firstNode + k, x[gasSlot[k]]);
        }
        for (int k = 0; k < heldSlot.length; k++) {
            system.p[system.unknowns + k] = heldSlot[k] < 0 ? air : x[heldSlot[k]];
        }
        stores.begin(x, dt, system.p);
        system.begin(dt, v);
        donors.begin(x, v, air);
        donors.carry();
        return system;
    }

    private void store(double[] x, VesselRow[] v) {
        for (int k = 0; k < vesselCount; k++) {
            v[k].pressure = system.p[k];
            x[vesselSlot[k]] = system.p[k];
        }
        for (int k = 0; k < nodeSlot.length; k++) {
            x[nodeSlot[k]] = system.p[system.firstNode + k];
            x[gasSlot[k]] = donors.share(system.firstNode + k);
        }
        readout.write(x);
    }

    /** Share of a branch's mass flow in the last solve that is gas (steam and air), 0..1, as it left its donor. */
    public double gasShare(int branch) {
        return readout.gasShare(branch);
    }

    /** The demanded pressure slots of nodes that open into a vessel, to be overwritten when the flash knows better. */
    public int[] slotsAt(int vessel) {
        return readout.slotsAt(vessel);
    }

    /** Mass in the lines' own compliance for a state [kg]; changes of it belong in a mass balance. */
    public double lineMass(double[] x) {
        double sum = 0;
        for (int slot : nodeSlot) {
            sum += FlowSystem.COMPLIANCE * x[slot];
        }
        return sum;
    }

    /** Nodes with a pressure of their own, vessels included: how large the system is that each step solves. */
    public int size() {
        return system.unknowns;
    }

    /** Branches left after reduction. */
    public int chains() {
        return laws.count;
    }

    public Convergence convergence() {
        return convergence;
    }
}
