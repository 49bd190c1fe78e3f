package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Balance of every node for trial pressures, and its slopes. Sites are numbered vessels first ({@link VesselBalance}), then
 * stores ({@link StoreBalance}), then nodes with a pressure of their own, then nodes held from outside.
 *
 * <pre>
 * node     C (p − pⁿ)/Δt + Σ out − Σ in = 0
 * </pre>
 */
final class FlowSystem {
    /** Mass a line takes up per pressure: a few millilitres of water and the wall around them [kg/Pa]. */
    static final double COMPLIANCE = 3e-12;

    final int unknowns;
    final ChainLaws laws;
    final VesselBalance vessels;
    final StoreBalance stores;
    /** First site that is neither vessel nor store. */
    final int firstNode;

    final int[] from;
    final int[] to;
    final double[] p;
    /** Pressures when the step began. */
    final double[] before;
    /** Imbalance of every site [kg/s]; without meaning for held ones. */
    final double[] f;

    private final SuctionNodes suction;
    private final double[] right;
    private final SparseLu lu;
    private final int[] fromFrom;
    private final int[] fromTo;
    private final int[] toFrom;
    private final int[] toTo;
    private final int[] diagonal;
    private double dt;
    /** Strength of the springs that tie pressures to {@link #anchorAt} [kg/(s Pa)]. */
    double anchor;

    final double[] anchorAt;
    long evaluations;

    FlowSystem(int vessels, StoreBalance stores, int unknowns, int sites, int[] from, int[] to, ChainLaws laws) {
        this.unknowns = unknowns;
        this.from = from;
        this.to = to;
        this.laws = laws;
        this.vessels = new VesselBalance(vessels, laws, from, to);
        this.stores = stores;
        firstNode = vessels + stores.count();
        p = new double[sites];
        before = new double[sites];
        f = new double[sites];
        right = new double[unknowns];
        anchorAt = new double[unknowns];
        suction = new SuctionNodes(laws, from, to, firstNode, unknowns);
        laws.leaveOut(suction.chains());
        List<int[]> pairs = new ArrayList<>();
        for (int c = 0; c < laws.count; c++) {
            if (from[c] < unknowns && to[c] < unknowns) {
                pairs.add(new int[] {from[c], to[c]});
            }
        }
        lu = new SparseLu(unknowns, pairs.toArray(int[][]::new));
        fromFrom = places(from, from);
        fromTo = places(from, to);
        toFrom = places(to, from);
        toTo = places(to, to);
        diagonal = new int[unknowns];
        for (int i = 0; i < unknowns; i++) {
            diagonal[i] = lu.at(i, i);
        }
    }

    private int[] places(int[] row, int[] column) {
        int[] place = new int[laws.count];
        for (int c = 0; c < laws.count; c++) {
            place[c] = row[c] < unknowns && column[c] < unknowns ? lu.at(row[c], column[c]) : lu.nowhere();
        }
        return place;
    }

    boolean isNode(int site) {
        return site >= firstNode && site < unknowns;
    }

    /** Begins a step: {@link #p} holds the held pressures and the first guesses. */
    void begin(double dt, VesselRow[] rows) {
        this.dt = dt;
        vessels.begin(dt, rows);
        System.arraycopy(p, 0, before, 0, before.length);
        restart();
    }

    /** Vessels begin where they agree with what they hold. */
    void restart() {
        System.arraycopy(p, 0, vessels.z, 0, vessels.count);
    }

    /** Flows, then the imbalance of every unknown at {@link #p}. */
    void evaluate() {
        evaluations++;
        double perPressure = COMPLIANCE / dt;
        suction.solve(p, before, perPressure);
        laws.flows(p, from, to);
        Arrays.fill(f, 0);
        double[] q = laws.q;
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            f[from[c]] += q[c];
            f[to[c]] -= q[c];
        }
        vessels.evaluate(p, f);
        stores.evaluate(p, f);
        for (int k = firstNode; k < unknowns; k++) {
            f[k] += perPressure * (p[k] - before[k]);
        }
        if (anchor > 0) {
            for (int k = 0; k < unknowns; k++) {
                f[k] += suction.isSolved(k) ? 0 : anchor * (p[k] - anchorAt[k]);
            }
        }
    }

    /** Newton's step for the last evaluation; false when the matrix is not sound. */
    boolean step(double[] d) {
        double[] a = lu.a;
        lu.clear();
        double[] byFrom = laws.byFrom;
        double[] byTo = laws.byTo;
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            a[fromFrom[c]] += byFrom[c];
            a[fromTo[c]] += byTo[c];
            a[toTo[c]] -= byTo[c];
            a[toFrom[c]] -= byFrom[c];
        }
        vessels.weigh(a, fromFrom, fromTo, toFrom, toTo);
        System.arraycopy(f, 0, right, 0, unknowns);
        for (int v = 0; v < vessels.count; v++) {
            a[diagonal[v]] += vessels.storage(v) + anchor;
            right[v] += vessels.storage(v) * vessels.off(v);
        }
        for (int k = vessels.count; k < firstNode; k++) {
            a[diagonal[k]] += stores.slope(k) + anchor;
        }
        double perPressure = COMPLIANCE / dt;
        for (int k = firstNode; k < unknowns; k++) {
            a[diagonal[k]] += perPressure + (suction.isSolved(k) ? 0 : anchor);
        }
        boolean sound = lu.solve(right, d);
        vessels.follow(d);
        return sound;
    }

    /** Sum of all imbalances of the last evaluation [kg/s]. */
    double size() {
        double sum = vessels.size(f);
        for (int k = vessels.count; k < unknowns; k++) {
            sum += Math.abs(f[k]);
        }
        return sum;
    }

    /** F·d for the last evaluation. */
    double along(double[] d) {
        double sum = vessels.along(f, d);
        for (int k = vessels.count; k < unknowns; k++) {
            sum += f[k] * d[k];
        }
        return sum;
    }
}
