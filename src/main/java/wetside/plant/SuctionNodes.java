package wetside.plant;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Nodes from which a pump draws, each solved exactly for its own pressure inside every evaluation of the network:
 * cavitation would otherwise bend the balance too sharply for Newton's method.
 */
final class SuctionNodes {
    /** A pressure this near its root is as good as there [Pa]. */
    private static final double CLOSE = 1e-3;

    private static final double BALANCED = 1e-12;
    private static final int TURNS = 200;
    private static final int PATIENCE = 40;

    private final ChainLaws laws;
    private final int[] from;
    private final int[] to;
    private final int[] nodes;
    private final int[][] chains;
    private final boolean[] solved;

    /** Picks them: no two side by side, none of them a vessel or held. */
    SuctionNodes(ChainLaws laws, int[] from, int[] to, int first, int end) {
        this.laws = laws;
        this.from = from;
        this.to = to;
        solved = new boolean[end];
        int[] found = new int[laws.count];
        int n = 0;
        for (int c = 0; c < laws.count; c++) {
            int node = from[c];
            if (laws.isPump(c) && node >= first && node < end && !solved[node] && !besideSolved(node)) {
                solved[node] = true;
                found[n++] = node;
            }
        }
        nodes = Arrays.copyOf(found, n);
        chains = Arrays.stream(nodes).mapToObj(this::chainsAt).toArray(int[][]::new);
    }

    private boolean besideSolved(int node) {
        return Arrays.stream(chainsAt(node))
                .map(c -> from[c] == node ? to[c] : from[c])
                .anyMatch(other -> other < solved.length && solved[other]);
    }

    private int[] chainsAt(int node) {
        return IntStream.range(0, laws.count)
                .filter(c -> from[c] == node || to[c] == node)
                .toArray();
    }

    boolean isSolved(int site) {
        return solved[site];
    }

    /** Chains whose flow {@link #solve} leaves behind. */
    int[] chains() {
        return Arrays.stream(chains).flatMapToInt(Arrays::stream).toArray();
    }

    /** Finds the pressures at which they balance, all other pressures held. */
    void solve(double[] p, double[] before, double perPressure) {
        for (int s = 0; s < nodes.length; s++) {
            p[nodes[s]] = solve(nodes[s], chains[s], p, before[nodes[s]], perPressure);
        }
    }

    private double sum;
    private double slope;

    private double solve(int node, int[] around, double[] p, double before, double perPressure) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        double reach = 1e5;
        double x = p[node];
        for (int turn = 0; turn < TURNS; turn++) {
            balance(node, around, p, x);
            sum += perPressure * (x - before);
            slope += perPressure;
            if (sum > 0) {
                high = x;
            } else {
                low = x;
            }
            double move = -sum / slope;
            if (Math.abs(move) < CLOSE) {
                follow(node, around, move);
                return x + move;
            }
            if (Math.abs(sum) < BALANCED || high - low < 1e-7) {
                return x;
            }
            double next = x + Math.max(-reach, Math.min(reach, move));
            boolean astray = !(next > low && next < high) || turn > PATIENCE && high - low < 1e12;
            reach *= next == x + move ? 1 : 2;
            x = astray ? (low + high) / 2 : next;
        }
        balance(node, around, p, x);
        return x;
    }

    private void balance(int node, int[] around, double[] p, double x) {
        sum = 0;
        slope = 0;
        for (int c : around) {
            if (laws.isShut(c)) {
                continue;
            }
            if (from[c] == node) {
                laws.flow(c, x, p[to[c]]);
                sum += laws.q[c];
                slope += laws.byFrom[c];
            } else {
                laws.flow(c, p[from[c]], x);
                sum -= laws.q[c];
                slope -= laws.byTo[c];
            }
        }
    }

    /** So small a move may be followed along the slopes. */
    private void follow(int node, int[] around, double move) {
        for (int c : around) {
            laws.q[c] += (from[c] == node ? laws.byFrom[c] : laws.byTo[c]) * move;
        }
    }
}
