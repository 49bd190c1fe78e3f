package wetside.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import wetside.water.Composition;

/**
 * The waters an analysis may mean: one with everything at its middle, and a Latin hypercube over what was measured within
 * its accuracy and over what was assumed. Always the same for the same sheet.
 */
public final class Waters {
    /** Waters drawn where nobody asks for another number. */
    public static final int DRAWS = 96;

    private final Composition middle;
    private final Composition[] drawn;
    private final List<Input> inputs;
    private final double[][] chances;

    /** Something a water hangs on, measured or assumed. */
    public record Input(String words, boolean measured) {}

    private Waters(Composition middle, Composition[] drawn, List<Input> inputs, double[][] chances) {
        this.middle = middle;
        this.drawn = drawn;
        this.inputs = inputs;
        this.chances = chances;
    }

    static Waters of(Completion completion, int draws, long seed) {
        List<Input> inputs = completion.inputs();
        int n = inputs.size();
        double[][] chances = new double[draws][n];
        for (int i = 0; i < n; i++) {
            SplittableRandom random =
                    new SplittableRandom(seed * 31 + inputs.get(i).words().hashCode());
            int[] cells = new int[draws];
            for (int k = 0; k < draws; k++) {
                int j = random.nextInt(k + 1);
                cells[k] = cells[j];
                cells[j] = k;
            }
            for (int k = 0; k < draws; k++) {
                chances[k][i] = (cells[k] + random.nextDouble()) / draws;
            }
        }
        double[] half = new double[n];
        Arrays.fill(half, 0.5);
        Composition[] drawn = new Composition[draws];
        for (int k = 0; k < draws; k++) {
            drawn[k] = completion.water(chances[k]);
        }
        return new Waters(completion.water(half), drawn, inputs, chances);
    }

    /** Known to the last digit: for recipes and tests. */
    public static Waters exactly(Composition c) {
        return new Waters(c, new Composition[] {c}, List.of(), new double[1][0]);
    }

    public Composition middle() {
        return middle;
    }

    public List<Composition> drawn() {
        return List.of(drawn);
    }

    /** All of them treated. */
    public Waters treated(UnaryOperator<Composition> by) {
        return new Waters(by.apply(middle), Arrays.stream(drawn).map(by).toArray(Composition[]::new), inputs, chances);
    }

    /** A result of every one of them. */
    public Ranged of(ToDoubleFunction<Composition> result) {
        double[] all = new double[drawn.length];
        for (int k = 0; k < all.length; k++) {
            all[k] = result.applyAsDouble(drawn[k]);
        }
        return ranged(result.applyAsDouble(middle), all);
    }

    /** The range of values of the draws in their order, which may hold more unknowns than the water. */
    public Ranged ranged(double atMiddle, double[] all) {
        double[] sorted =
                Arrays.stream(all).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (sorted.length == 0 || Double.isNaN(atMiddle)) {
            return new Ranged(atMiddle, atMiddle, atMiddle, "");
        }
        double low = Math.min(atMiddle, quantile(sorted, 0.05));
        double high = Math.max(atMiddle, quantile(sorted, 0.95));
        return new Ranged(low, atMiddle, high, mainly(all));
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int i = (int) at;
        return i + 1 < sorted.length ? sorted[i] + (at - i) * (sorted[i + 1] - sorted[i]) : sorted[i];
    }

    /** The inputs whose ranks go with the ranks of the result, at most two, the stronger first. */
    private String mainly(double[] all) {
        double[] ranks = ranks(all);
        int best = -1;
        int second = -1;
        double[] tie = new double[inputs.size()];
        for (int i = 0; i < tie.length; i++) {
            int column = i;
            tie[i] = Math.abs(correlation(
                    ranks,
                    ranks(Arrays.stream(chances).mapToDouble(c -> c[column]).toArray())));
            if (best < 0 || tie[i] > tie[best]) {
                second = best;
                best = i;
            } else if (second < 0 || tie[i] > tie[second]) {
                second = i;
            }
        }
        if (best < 0 || !(tie[best] > 0.35)) {
            return "";
        }
        String first = inputs.get(best).words();
        return second >= 0 && tie[second] > 0.35
                ? first + ", then " + inputs.get(second).words()
                : first;
    }

    private static double[] ranks(double[] v) {
        Integer[] order = new Integer[v.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(v[a], v[b]));
        double[] ranks = new double[v.length];
        for (int i = 0; i < order.length; ) {
            int j = i;
            while (j < order.length && Double.compare(v[order[j]], v[order[i]]) == 0) {
                j++;
            }
            for (int k = i; k < j; k++) {
                ranks[order[k]] = (i + j - 1) / 2.0;
            }
            i = j;
        }
        return ranks;
    }

    private static double correlation(double[] a, double[] b) {
        double ma = Arrays.stream(a).average().orElse(0);
        double mb = Arrays.stream(b).average().orElse(0);
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.length; i++) {
            ab += (a[i] - ma) * (b[i] - mb);
            aa += (a[i] - ma) * (a[i] - ma);
            bb += (b[i] - mb) * (b[i] - mb);
        }
        return aa == 0 || bb == 0 ? 0 : ab / Math.sqrt(aa * bb);
    }
}
