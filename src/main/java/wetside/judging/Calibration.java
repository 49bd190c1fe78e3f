package wetside.judging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Whether what is said with so much confidence is right so often.
 *
 * <pre>ECE = SUM_b n_b/N |right_b - confidence_b|</pre>
 *
 * Even perfect forecasts have an ECE above nothing, the more the fewer they are; {@link #limit} is what perfect forecasts
 * of just these confidences would stay under nineteen times in twenty.
 */
public final class Calibration {
    private static final int BINS = 10;
    private static final int ROUNDS = 2000;
    private static final double Z = 1.96;

    private final double[] confidence;
    private final boolean[] right;

    private Calibration(double[] confidence, boolean[] right) {
        this.confidence = confidence;
        this.right = right;
    }

    /**
     * @param confidence what was said
     * @param right      whether it was so
     */
    public static Calibration of(double[] confidence, boolean[] right) {
        return new Calibration(confidence.clone(), right.clone());
    }

    static Calibration of(List<Belief> beliefs) {
        boolean[] right = new boolean[beliefs.size()];
        for (int i = 0; i < right.length; i++) {
            right[i] = beliefs.get(i).right();
        }
        return new Calibration(beliefs.stream().mapToDouble(Belief::top).toArray(), right);
    }

    /**
     * Forecasts of about the same confidence.
     *
     * @param n          how many
     * @param confidence their mean
     * @param right      share that was right
     * @param low        lower end of Wilson's 95 % interval of that share
     * @param high       its upper end
     */
    public record Bin(int n, double confidence, double right, double low, double high) {}

    /** The bins that hold anything, from the least confident on. */
    public List<Bin> bins() {
        List<Bin> bins = new ArrayList<>();
        for (int b = 0; b < BINS; b++) {
            int n = 0;
            int hits = 0;
            double sum = 0;
            for (int i = 0; i < right.length; i++) {
                if (bin(confidence[i]) == b) {
                    n++;
                    sum += confidence[i];
                    hits += right[i] ? 1 : 0;
                }
            }
            if (n > 0) {
                bins.add(bin(n, sum / n, (double) hits / n));
            }
        }
        return bins;
    }

    private static Bin bin(int n, double confidence, double p) {
        double middle = (p + Z * Z / (2 * n)) / (1 + Z * Z / n);
        double half = Z / (1 + Z * Z / n) * Math.sqrt(p * (1 - p) / n + Z * Z / (4.0 * n * n));
        return new Bin(n, confidence, p, Math.max(0, middle - half), Math.min(1, middle + half));
    }

    private static int bin(double confidence) {
        return Math.min(BINS - 1, (int) (confidence * BINS));
    }

    public double error() {
        return error(right);
    }

    private double error(boolean[] so) {
        double[] gap = new double[BINS];
        for (int i = 0; i < so.length; i++) {
            gap[bin(confidence[i])] += (so[i] ? 1 : 0) - confidence[i];
        }
        return Arrays.stream(gap).map(Math::abs).sum() / Math.max(1, so.length);
    }

    /** What perfectly calibrated forecasts of these confidences stay under in 95 of 100 cases. */
    public double limit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] errors = new double[ROUNDS];
        for (int r = 0; r < ROUNDS; r++) {
            boolean[] so = new boolean[right.length];
            for (int i = 0; i < so.length; i++) {
                so[i] = random.nextDouble() < confidence[i];
            }
            errors[r] = error(so);
        }
        Arrays.sort(errors);
        return errors[(int) (0.95 * ROUNDS)];
    }
}
