package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Balance of every node for trial pressures, and its slopes. Sites are numbered vessels first, then nodes with a
 * pressure of their own, then nodes held from outside.
 *
 * <pre>
 * node     C (p − pⁿ)/Δt + Σ out − Σ in = 0
 * vessel   [M(p − Δt Σ A q_gas) − Mⁿ]/Δt + Σ out − Σ in = 0     (liquid in the sums; A pressure rise per mass of gas)
 * </pre>
 *
 * Suction nodes of pumps are solved exactly inside every evaluation: cavitation would otherwise bend the residual too
 * sharply for Newton's method.
 */
final class FlowSystem {
    /** Mass a line takes up per pressure: a few millilitres of water and the wall around them [kg/Pa]. */
    static final double COMPLIANCE = 3e-12;

    final int vessels;
    final int unknowns;
    final ChainLaws laws;
    final int[] from;
    final int[] to;
    final double[] p;
    final double[] before;
    final double[] f;
    final double[] scale;
    private final double[] gasRise;
    private final double[] slope;
    private final boolean[] solved;
    private final int[] suction;
    private final int[][] suctionChains;
    private final SparseLu lu;
    private final int[] fromFrom;
    private final int[] fromTo;
    private final int[] toFrom;
    private final int[] toTo;
    private final int[] diagonal;
    private final double[] gasForward;
    private final double[] gasBack;
    private VesselRow[] rows;
    private double dt;
    double anchor;
    final double[] anchorAt;
    long evaluations;

    FlowSystem(int vessels, int unknowns, int sites, int[] from, int[] to, ChainLaws laws) {
        this.vessels = vessels;
        this.unknowns = unknowns;
        this.from = from;
        this.to = to;
        this.laws = laws;
        p = new double[sites];
        before = new double[sites];
        f = new double[unknowns];
        scale = new double[unknowns];
        gasRise = new double[vessels];
        slope = new double[unknowns];
        anchorAt = new double[unknowns];
        solved = new boolean[unknowns];
        gasForward = new double[laws.count];
        gasBack = new double[laws.count];
        suction = suctionNodes();
        suctionChains = new int[suction.length][];
        for (int s = 0; s < suction.length; s++) {
            suctionChains[s] = chainsAt(suction[s]);
        }
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
            place[c] = row[c] < unknowns && column[c] < unknowns ? lu.at(row[c], column[c]) : -1;
        }
        return place;
    }

    private int[] suctionNodes() {
        int[] found = new int[laws.count];
        int n = 0;
        for (int c = 0; c < laws.count; c++) {
            int node = from[c];
            if (laws.isPump(c) && node >= vessels && node < unknowns && !solved[node] && !besideSolved(node)) {
                solved[node] = true;
                found[n++] = node;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private boolean besideSolved(int node) {
        for (int c : chainsAt(node)) {
            int other = from[c] == node ? to[c] : from[c];
            if (other < unknowns && solved[other]) {
                return true;
            }
        }
        return false;
    }

    private int[] chainsAt(int node) {
        return IntStream.range(0, laws.count)
                .filter(c -> from[c] == node || to[c] == node)
                .toArray();
    }

    boolean isHeld(int site) {
        return site >= unknowns;
    }

    /** Begins a step: {@link #p} holds the held pressures and the first guesses, {@link #before} the pressures at its start. */
    void begin(double dt, VesselRow[] rows) {
        this.dt = dt;
        this.rows = rows;
        anchor = 0;
    }

    /** Share of a chain's mass flow that is gas, forwards and backwards. */
    void gas(int c, double forward, double back) {
        gasForward[c] = forward;
        gasBack[c] = back;
    }

    double gas(int c) {
        return laws.q[c] >= 0 ? gasForward[c] : gasBack[c];
    }

    /** Flows, then imbalance [kg/s] of every unknown at {@link #p}. */
    void evaluate() {
        evaluations++;
        for (int s = 0; s < suction.length; s++) {
            solveSuction(s);
        }
        Arrays.fill(f, 0);
        Arrays.fill(gasRise, 0);
        double[] q = laws.q;
        for (int c = 0; c < laws.count; c++) {
            int i = from[c];
            int j = to[c];
            laws.flow(c, p[i], p[j]);
            double flow = q[c];
            double gas = flow >= 0 ? gasForward[c] : gasBack[c];
            if (i < unknowns) {
                f[i] += leaving(i, flow, gas);
            }
            if (j < unknowns) {
                f[j] += leaving(j, -flow, gas);
            }
        }
        for (int v = 0; v < vessels; v++) {
            VesselRow row = rows[v];
            f[v] += (row.massAt(p[v] - dt * (gasRise[v] - row.perGas * row.assumed)) - row.mass) / dt;
            slope[v] = row.slope;
        }
        for (int k = vessels; k < unknowns; k++) {
            f[k] += COMPLIANCE * (p[k] - before[k]) / dt;
        }
        if (anchor > 0) {
            for (int k = 0; k < unknowns; k++) {
                f[k] += solved[k] ? 0 : anchor * (p[k] - anchorAt[k]);
            }
        }
    }

    /** Pressure a vessel's imbalance is worth [Pa s/kg]. */
    double pressurePerFlow(int vessel) {
        return dt / slope[vessel];
    }

    private double leaving(int site, double flow, double gas) {
        if (site >= vessels || gas == 0) {
            return flow;
        }
        gasRise[site] -= flow * gas * perGas(site, flow);
        return flow * (1 - gas);
    }

    /** What comes in may be air, which the pressure feels most. */
    private double perGas(int vessel, double leaving) {
        return leaving >= 0 ? rows[vessel].perGas : Math.max(rows[vessel].perGas, rows[vessel].perAir);
    }

    /** Newton's step for the last evaluation; false when the matrix is not sound. */
    boolean step(double[] d) {
        double[] a = lu.a;
        lu.clear();
        Arrays.fill(scale, 1);
        for (int c = 0; c < laws.count; c++) {
            double byFrom = laws.byFrom[c];
            double byTo = laws.byTo[c];
            int i = from[c];
            int j = to[c];
            if (i < unknowns) {
                double w = share(c, i, laws.q[c]);
                a[fromFrom[c]] += w * byFrom;
                if (j < unknowns) {
                    a[fromTo[c]] += w * byTo;
                }
            }
            if (j < unknowns) {
                double w = share(c, j, -laws.q[c]);
                a[toTo[c]] -= w * byTo;
                if (i < unknowns) {
                    a[toFrom[c]] -= w * byFrom;
                }
            }
        }
        for (int k = 0; k < unknowns; k++) {
            double storage = k < vessels ? slope[k] : COMPLIANCE;
            a[diagonal[k]] += storage / dt + (solved[k] ? 0 : anchor);
            scale[k] = 1 / scale[k];
        }
        return lu.solve(f, d);
    }

    /** Weight of a chain's flow in a node's row; remembers the largest, by which the row is scaled for comparisons. */
    private double share(int c, int site, double leaving) {
        double gas = laws.q[c] >= 0 ? gasForward[c] : gasBack[c];
        if (site >= vessels || gas == 0) {
            return 1;
        }
        double w = 1 - gas + gas * perGas(site, leaving) * slope[site];
        scale[site] = Math.max(scale[site], w);
        return w;
    }

    /** Finds the pressure at which a suction node balances, the others held. */
    private void solveSuction(int s) {
        int node = suction[s];
        int[] chains = suctionChains[s];
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        double reach = 1e5;
        double x = p[node];
        for (int turn = 0; turn < 200; turn++) {
            double sum = COMPLIANCE * (x - before[node]) / dt;
            double by = COMPLIANCE / dt;
            for (int c : chains) {
                if (from[c] == node) {
                    laws.flow(c, x, p[to[c]]);
                    sum += laws.q[c];
                    by += laws.byFrom[c];
                } else {
                    laws.flow(c, p[from[c]], x);
                    sum -= laws.q[c];
                    by -= laws.byTo[c];
                }
            }
            if (sum > 0) {
                high = x;
            } else {
                low = x;
            }
            double move = -sum / by;
            if (Math.abs(sum) < 1e-12 || Math.abs(move) < 1e-7 + 1e-13 * Math.abs(x) || high - low < 1e-7) {
                break;
            }
            double next = x + Math.max(-reach, Math.min(reach, move));
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            } else if (turn > 40 && high - low < 1e12) {
                next = (low + high) / 2;
            } else if (next != x + move) {
                reach *= 2;
            }
            x = next;
        }
        p[node] = x;
    }
}
