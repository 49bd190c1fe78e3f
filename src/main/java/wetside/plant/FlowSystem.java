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
 * vessel   [M(z, M_a + Δt Σ q_air) − Mⁿ]/Δt + Σ out − Σ in = 0     (water substance in the sums)
 *          p − z − Δt B Σ q_steam = 0                              (flows in)
 * </pre>
 *
 * where z is the pressure the vessel would have if steam brought and took no heat, and B dp/dm by that heat: two mild
 * equations in place of one that is steep when little air is left. The second is eliminated from the linear system.
 *
 * Suction nodes of pumps are solved exactly inside every evaluation: cavitation would otherwise bend the residual too
 * sharply for Newton's method.
 */
final class FlowSystem {
    /** Mass a line takes up per pressure: a few millilitres of water and the wall around them [kg/Pa]. */
    static final double COMPLIANCE = 3e-12;

    /** A suction pressure this near its root is as good as there [Pa]. */
    private static final double CLOSE = 1e-3;

    final int vessels;
    final int unknowns;
    final ChainLaws laws;
    final int[] from;
    final int[] to;
    final double[] p;
    final double[] before;
    final double[] f;
    final double[] z;
    final double[] dz;
    private final double[] steam;
    private final double[] air;
    private final double[] off;
    private final double[] storage;
    private final double[] perAir;
    private final double[] frozen;
    private final double[] right;
    private final boolean[] solved;
    private final int[] suction;
    private final int[][] suctionChains;
    private final boolean[] known;
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
        z = new double[vessels];
        dz = new double[vessels];
        steam = new double[vessels];
        air = new double[vessels];
        off = new double[vessels];
        storage = new double[vessels];
        perAir = new double[vessels];
        frozen = new double[vessels];
        right = new double[unknowns];
        anchorAt = new double[unknowns];
        solved = new boolean[unknowns];
        gasForward = new double[laws.count];
        gasBack = new double[laws.count];
        known = new boolean[laws.count];
        suction = suctionNodes();
        suctionChains = new int[suction.length][];
        for (int s = 0; s < suction.length; s++) {
            suctionChains[s] = chainsAt(suction[s]);
            for (int c : suctionChains[s]) {
                known[c] = true;
            }
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
        restart();
    }

    /** Vessels begin where they agree with what they hold. */
    void restart() {
        System.arraycopy(p, 0, z, 0, vessels);
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
        Arrays.fill(steam, 0);
        Arrays.fill(air, 0);
        double[] q = laws.q;
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            int i = from[c];
            int j = to[c];
            if (!known[c]) {
                laws.flow(c, p[i], p[j]);
            }
            double flow = q[c];
            if (i < unknowns) {
                f[i] += flow;
            }
            if (j < unknowns) {
                f[j] -= flow;
            }
            double gas = flow >= 0 ? gasForward[c] : gasBack[c];
            if (gas > 0) {
                gasEnters(i, i, j, -flow * gas);
                gasEnters(j, i, j, flow * gas);
            }
        }
        for (int v = 0; v < vessels; v++) {
            VesselRow row = rows[v];
            f[v] += air[v] + (row.massAt(z[v], airAfter(v, row.air)) - row.mass) / dt;
            off[v] = p[v] - z[v] - dt * row.boil * (steam[v] - row.assumed);
            storage[v] = row.byPressure / dt;
            perAir[v] *= -row.byAir;
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

    /** Air in a vessel when the step ends; leaves in {@link #perAir} how it follows the flow. It never quite runs out. */
    private double airAfter(int v, double before) {
        double change = dt * air[v];
        if (change >= 0) {
            perAir[v] = 1;
            return before + change;
        }
        double spare = before - Flash.LEAST_AIR + 1e-12;
        double left = spare / (spare - change);
        perAir[v] = left * left;
        return Flash.LEAST_AIR + spare * left;
    }

    private void gasEnters(int site, int from, int to, double flow) {
        if (site < vessels) {
            double share = airShare(site, from, to, flow);
            air[site] += flow * share;
            steam[site] += flow * (1 - share);
        }
    }

    /** Air in gas that enters (or leaves, below 0) a vessel. What comes from a line may be air, which is felt most. */
    private double airShare(int vessel, int from, int to, double entering) {
        if (entering < 0) {
            return rows[vessel].airShare;
        }
        int donor = from == vessel ? to : from;
        return donor < vessels ? rows[donor].airShare : 1;
    }

    /** Newton's step for the last evaluation: {@code d} for every unknown, {@link #dz}; false when the matrix is not sound. */
    boolean step(double[] d) {
        double[] a = lu.a;
        lu.clear();
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            double byFrom = laws.byFrom[c];
            double byTo = laws.byTo[c];
            int i = from[c];
            int j = to[c];
            if (i < unknowns) {
                double w = i < vessels ? weight(c, i) : 1;
                a[fromFrom[c]] += w * byFrom;
                if (j < unknowns) {
                    a[fromTo[c]] += w * byTo;
                }
            }
            if (j < unknowns) {
                double w = j < vessels ? weight(c, j) : 1;
                a[toTo[c]] -= w * byTo;
                if (i < unknowns) {
                    a[toFrom[c]] -= w * byFrom;
                }
            }
        }
        for (int k = 0; k < unknowns; k++) {
            a[diagonal[k]] += (k < vessels ? storage[k] : COMPLIANCE / dt) + (solved[k] ? 0 : anchor);
            right[k] = k < vessels ? f[k] + storage[k] * off[k] : f[k];
        }
        boolean sound = lu.solve(right, d);
        stepInside(d);
        return sound;
    }

    /** Weight of a chain's flow in a vessel's row. */
    private double weight(int c, int vessel) {
        double flow = laws.q[c];
        double gas = flow >= 0 ? gasForward[c] : gasBack[c];
        if (gas == 0) {
            return 1;
        }
        double share = airShare(vessel, from[c], to[c], to[c] == vessel ? flow : -flow);
        double asSteam = 1 + storage[vessel] * dt * rows[vessel].boil;
        return 1 - gas + gas * (share * perAir[vessel] + (1 - share) * asSteam);
    }

    private void stepInside(double[] d) {
        for (int v = 0; v < vessels; v++) {
            dz[v] = d[v] + off[v];
        }
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            double gas = laws.q[c] >= 0 ? gasForward[c] : gasBack[c];
            if (gas > 0) {
                double change = gas
                        * ((from[c] < unknowns ? laws.byFrom[c] * d[from[c]] : 0)
                                + (to[c] < unknowns ? laws.byTo[c] * d[to[c]] : 0));
                steamEnters(from[c], c, -laws.q[c], -change);
                steamEnters(to[c], c, laws.q[c], change);
            }
        }
    }

    private void steamEnters(int vessel, int c, double flow, double change) {
        if (vessel < vessels) {
            dz[vessel] -= dt * rows[vessel].boil * (1 - airShare(vessel, from[c], to[c], flow)) * change;
        }
    }

    /** F·d for the last evaluation. */
    double along(double[] d) {
        double sum = 0;
        for (int v = 0; v < vessels; v++) {
            sum += (f[v] + frozen[v] * off[v]) / (1 + frozen[v] * dt * rows[v].boil) * d[v];
        }
        for (int k = vessels; k < unknowns; k++) {
            sum += f[k] * d[k];
        }
        return sum;
    }

    /** Holds what weighs the vessels' two balances against each other while a step is searched along. */
    void freeze() {
        System.arraycopy(storage, 0, frozen, 0, vessels);
    }

    /** How far a vessel's pressure is from what its steam makes it [Pa]. */
    double off(int vessel) {
        return off[vessel];
    }

    /** Mass flow a vessel takes up per pressure [kg/(s Pa)]. */
    double storage(int vessel) {
        return storage[vessel];
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
                if (laws.isShut(c)) {
                    continue;
                }
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
            if (Math.abs(sum) < 1e-12 || high - low < 1e-7) {
                break;
            }
            if (Math.abs(move) < CLOSE) {
                x += move;
                follow(node, chains, move);
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

    /** So small a move may be followed along the slopes. */
    private void follow(int node, int[] chains, double move) {
        for (int c : chains) {
            laws.q[c] += (from[c] == node ? laws.byFrom[c] : laws.byTo[c]) * move;
        }
    }
}
