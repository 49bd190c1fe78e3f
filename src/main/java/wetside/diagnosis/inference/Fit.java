package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.List;
import wetside.diagnosis.inference.Readings.Report;

/** How well one cause explains the readings, and what its draws, so weighted, say about questions not yet asked. */
final class Fit {
    /** A draw with less than this share of belief adds nothing that shows. */
    private static final double NOTHING = 1e-15;

    final double logLikelihood;
    final Hump[] humps;
    /** Share of each hump, given the readings. */
    final double[] share;

    private final Readings readings;
    private final float[] rows;
    private final Layout layout;
    private final double[] drawWeight;
    private double[] believed;
    private double[] options;

    Fit(Readings readings, float[] rows, Layout layout, Assumptions assumptions) {
        this(readings, rows, null, layout, assumptions);
    }

    /** @param counts what each draw counts before any answer, 1 on average; null for all the same */
    Fit(Readings readings, float[] rows, double[] counts, Layout layout, Assumptions assumptions) {
        this.rows = rows;
        this.layout = layout;
        int stride = layout.stride;
        List<int[]> heaps = new Heaps(readings, rows, stride, assumptions.separation()).split();
        this.readings = readings;
        int draws = rows.length / stride;
        drawWeight = weights(readings, rows, counts, stride, assumptions);
        humps = new Hump[heaps.size()];
        double[] logs = new double[humps.length];
        for (int h = 0; h < humps.length; h++) {
            humps[h] = new Hump(readings, rows, stride, heaps.get(h), drawWeight, counts, assumptions);
            logs[h] = humps[h].logWeight - Math.log(draws) + humps[h].logDensity + missing(humps[h]);
        }
        logLikelihood = draws == 0 ? readings.logBroad() : Shares.logSum(logs);
        share = Double.isFinite(logLikelihood) && draws > 0 ? Shares.of(logs) : logs;
    }

    private static double[] weights(
            Readings readings, float[] rows, double[] counts, int stride, Assumptions assumptions) {
        double[] weights = new double[rows.length / stride];
        Reporter reporter = new Reporter(assumptions.sameMind());
        for (int k = 0; k < weights.length; k++) {
            weights[k] = counts == null ? 1 : counts[k];
            for (List<Report> group : readings.reports) {
                weights[k] *= reporter.likelihood(group, rows, k * stride);
            }
        }
        return weights;
    }

    /** The log likelihood when each draw counts as often as given. */
    double logRecounted(double[] counts) {
        double[] logs = new double[humps.length];
        for (int h = 0; h < logs.length; h++) {
            logs[h] = humps[h].logRecounted(counts) - Math.log(draws()) + missing(humps[h]);
        }
        return Shares.logSum(logs);
    }

    /** A reading the cause has no value for tells nothing about it: broad density. */
    private double missing(Hump hump) {
        double log = 0;
        int next = 0;
        for (int i = 0; i < readings.size(); i++) {
            if (next < hump.dims.length && hump.dims[next] == i) {
                next++;
            } else {
                log += readings.logBroad[i];
            }
        }
        return log;
    }

    int draws() {
        return drawWeight.length;
    }

    /** Weight of each draw given the readings. */
    double[] believed() {
        if (believed == null) {
            believed = new double[draws()];
            for (int h = 0; h < humps.length; h++) {
                for (int m = 0; m < humps[h].members.length; m++) {
                    believed[humps[h].members[m]] = share[h] * humps[h].share[m];
                }
            }
        }
        return believed;
    }

    /** Probability of each true option of a question; what has no value is left out of the sum. */
    double[] options(int q) {
        if (options == null) {
            options = allOptions();
        }
        return Arrays.copyOfRange(options, layout.optionsAt[q], layout.optionsAt[q] + layout.options[q]);
    }

    /** Draw after draw, as the rows lie. */
    private double[] allOptions() {
        double[] sums = new double[layout.sums];
        double[] weights = believed();
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > NOTHING) {
                int row = k * layout.stride;
                for (int q : layout.choices) {
                    float x = rows[row + q];
                    sums[layout.optionsAt[q] + (x >= 0 ? (int) x : layout.options[q])] += weights[k];
                }
            }
        }
        return sums;
    }

    Hump.Expected predict(int hump, int q) {
        return humps[hump].predict(rows, layout, q);
    }
}
