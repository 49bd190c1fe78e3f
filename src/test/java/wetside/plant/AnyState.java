package wetside.plant;

import java.util.Random;

/** Solves the network of {@link TwinNetwork} from many random states and counts: the test's larger brother. */
public final class AnyState {
    public final long solves;
    public final long failures;
    public final long fallbacks;
    public final double meanIterations;
    private final int[] histogram = new int[5000];

    public AnyState(int count, long seed) {
        Random r = new Random(seed);
        long all = 0;
        long failed = 0;
        long slow = 0;
        for (int i = 0; i < count; i++) {
            TwinNetwork net = new TwinNetwork(r);
            double[] x = net.any(r);
            failed += net.hydraulics.solve(x, i % 2 == 0 ? 0.05 : 20, net.rows) ? 0 : 1;
            Convergence c = net.hydraulics.convergence();
            all += c.iterations();
            slow += c.fallbacks() > 0 ? 1 : 0;
            histogram[(int) Math.min(histogram.length - 1, c.iterations())]++;
        }
        solves = count;
        failures = failed;
        fallbacks = slow;
        meanIterations = (double) all / count;
    }

    /** Iterations that this share of the states did not exceed, repetitions included. */
    public int iterations(double share) {
        long seen = 0;
        for (int k = 0; k < histogram.length; k++) {
            seen += histogram[k];
            if (seen >= share * solves) {
                return k;
            }
        }
        return histogram.length;
    }
}
