package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Draws that fall into separate heaps: a relief valve opens in some and not in others, a reading exists in some and not
 * in others. One normal distribution over both would have its middle where no draw is.
 */
final class Heaps {
    private static final int MOST = 3;

    private final Readings readings;
    private final float[] rows;
    private final int stride;
    private final double separation;

    Heaps(Readings readings, float[] rows, int stride, double separation) {
        this.readings = readings;
        this.rows = rows;
        this.stride = stride;
        this.separation = separation;
    }

    /** The draws of a cause in heaps, by which readings exist and then by distance; at most two splits by distance. */
    List<int[]> split() {
        List<int[]> heaps = byMissing(rows.length / stride);
        int most = heaps.size() + MOST - 1;
        for (int at = 0; at < heaps.size() && heaps.size() < most; ) {
            Cut cut = widest(heaps.get(at));
            if (cut == null) {
                at++;
            } else {
                heaps.set(at, cut.low);
                heaps.add(cut.high);
            }
        }
        return heaps;
    }

    private List<int[]> byMissing(int draws) {
        if (complete(draws)) {
            return draws == 0
                    ? new ArrayList<>()
                    : new ArrayList<>(List.of(IntStream.range(0, draws).toArray()));
        }
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        StringBuilder pattern = new StringBuilder();
        for (int k = 0; k < draws; k++) {
            pattern.setLength(0);
            for (int i = 0; i < readings.size(); i++) {
                pattern.append(readings.tells(i, rows, k * stride) ? '+' : '-');
            }
            groups.computeIfAbsent(pattern.toString(), key -> new ArrayList<>()).add(k);
        }
        List<int[]> heaps = new ArrayList<>();
        groups.values()
                .forEach(group ->
                        heaps.add(group.stream().mapToInt(Integer::intValue).toArray()));
        return heaps;
    }

    private boolean complete(int draws) {
        for (int i = 0; i < readings.size(); i++) {
            for (int k = 0; k < draws; k++) {
                if (!readings.tells(i, rows, k * stride)) {
                    return false;
                }
            }
        }
        return true;
    }

    private record Cut(int[] low, int[] high) {}

    private record Split(double limit, double distance) {}

    private Cut widest(int[] members) {
        if (members.length < 4 || separation == Double.POSITIVE_INFINITY) {
            return null;
        }
        // few draws scatter into chance heaps, so they must lie further apart
        double most = separation + 8.0 / members.length;
        Cut cut = null;
        for (int i = 0; i < readings.size(); i++) {
            double span = span(members, readings.question[i]);
            Split split = span * span < most * most * readings.variance[i] || Double.isNaN(span)
                    ? null
                    : split(sorted(members, readings.question[i]), readings.variance[i], most);
            if (split != null) {
                most = split.distance;
                cut = at(members, readings.question[i], split.limit);
            }
        }
        return cut;
    }

    /** How far the values reach; not a number when one of them is none. */
    private double span(int[] members, int q) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int member : members) {
            low = Math.min(low, rows[member * stride + q]);
            high = Math.max(high, rows[member * stride + q]);
        }
        return high - low;
    }

    private double[] sorted(int[] members, int q) {
        double[] values = new double[members.length];
        for (int m = 0; m < members.length; m++) {
            values[m] = rows[members[m] * stride + q];
        }
        Arrays.sort(values);
        return values;
    }

    /** How many lowest values to split off so that the heaps lie furthest apart; null when none exceeds {@code most}. */
    private static Split split(double[] sorted, double noise, double most) {
        int n = sorted.length;
        double[] sum = new double[n + 1];
        double[] squares = new double[n + 1];
        for (int i = 0; i < n; i++) {
            double x = sorted[i] - sorted[n / 2];
            sum[i + 1] = sum[i] + x;
            squares[i + 1] = squares[i] + x * x;
        }
        int smallest = Math.max(2, n / 16);
        Split best = null;
        double furthest = most;
        for (int low = smallest; low <= n - smallest; low++) {
            double distance = distance(sum, squares, low, noise);
            if (sorted[low] > sorted[low - 1] && distance > furthest) {
                furthest = distance;
                best = new Split(0.5 * (sorted[low - 1] + sorted[low]), distance);
            }
        }
        return best;
    }

    private static double distance(double[] sum, double[] squares, int low, double noise) {
        int n = sum.length - 1;
        int high = n - low;
        double below = sum[low] / low;
        double above = (sum[n] - sum[low]) / high;
        double spreadBelow = (squares[low] - low * below * below) / (low - 1);
        double spreadAbove = (squares[n] - squares[low] - high * above * above) / (high - 1);
        return (above - below) / Math.sqrt(0.5 * Math.max(0, spreadBelow + spreadAbove) + noise);
    }

    private Cut at(int[] members, int q, double limit) {
        int[] low =
                Arrays.stream(members).filter(k -> rows[k * stride + q] < limit).toArray();
        int[] high = Arrays.stream(members)
                .filter(k -> rows[k * stride + q] >= limit)
                .toArray();
        return new Cut(low, high);
    }
}
