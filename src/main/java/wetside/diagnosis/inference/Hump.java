package wetside.diagnosis.inference;

import java.util.Arrays;

/**
 * One heap of draws as a density over the numbers read: a normal distribution around every draw, pulled towards their
 * mean, so that mean and covariance stay those of the draws:
 *
 * <pre>L = SUM_k w_k N(y; m + sqrt(1 - h^2) (x_k - m), h^2 S + R)</pre>
 *
 * with S the covariance of the draws, R instrument and twin. h = 1 is one normal distribution, stable from few draws; h
 * = 0 is the plain kernel sum, true to any shape but in need of very many. h grows with the number d of readings, because
 * no draw is near in all of many readings, and the nearest would speak for all by chance:
 *
 * <pre>h = min(1, s sqrt(d/4) (4 / ((d + 2) n))^(1/(d + 4))),   d at least 4, n draws that speak</pre>
 */
final class Hump {
    /** Readings up to which they are smoothed alike. */
    private static final double FEW = 4;

    final int[] members;
    /** Which readings exist in this heap, as positions in the readings. */
    final int[] dims;

    final double[] mean;
    final double logWeight;
    final double logDensity;
    /** Share of each member, given the readings. */
    final double[] share;

    private final double[] weight;
    private final double[] deviation;
    private final double widening;
    private final double smooth;
    private final double kept;
    private final Centre[] centres;
    private final Centre likeliest;
    private Projection projection;

    Hump(
            Readings readings,
            float[] rows,
            int stride,
            int[] members,
            double[] drawWeight,
            double[] counts,
            Assumptions assumptions) {
        this.members = members;
        dims = present(readings, rows, stride, members[0]);
        weight = among(members, drawWeight);
        logWeight = Math.log(sum(members, drawWeight));
        heed(among(members, counts), assumptions.fewest());
        double effective = 1 / product(weight, weight);
        widening = widening(effective);
        smooth = smooth(assumptions.smoothing(), effective);
        mean = new double[dims.length];
        deviation = deviations(readings, rows, stride);
        double[] covariance = covariance();
        kept = kept(covariance, effective);
        centres = centres(covariance, readings);
        double[] logs = new double[members.length];
        for (int m = 0; m < members.length; m++) {
            logs[m] = Math.log(weight[m]) + centres[m].logDensity;
        }
        logDensity = Shares.logSum(logs);
        share = Shares.of(logs);
        likeliest = best();
    }

    /** The weights of the members as shares; all the same where there are none. */
    private static double[] among(int[] members, double[] drawWeight) {
        double sum = sum(members, drawWeight);
        double[] shares = new double[members.length];
        for (int m = 0; m < shares.length; m++) {
            shares[m] = sum > 0 && drawWeight != null ? drawWeight[members[m]] / sum : 1.0 / shares.length;
        }
        return shares;
    }

    private static double sum(int[] members, double[] drawWeight) {
        double sum = 0;
        for (int m = 0; m < members.length; m++) {
            sum += drawWeight == null ? 1 : drawWeight[members[m]];
        }
        return sum;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private double smooth(double smoothing, double effective) {
        double d = Math.max(FEW, dims.length);
        return Math.min(1, smoothing * Math.sqrt(d / FEW) * Math.pow(4 / ((d + 2) * effective), 1 / (d + 4)));
    }

    /** Mixes in as much of what the draws counted before any answer as makes {@code fewest} of them speak, or half of them. */
    private void heed(double[] before, double fewest) {
        double own = product(weight, weight);
        double shared = product(weight, before);
        double other = product(before, before);
        double wanted = fewest > 0 ? Math.max(1 / fewest, 2 * other) : own;
        if (own <= wanted) {
            return;
        }
        double a = own - 2 * shared + other;
        double b = shared - other;
        double kept = Math.min(1, (Math.sqrt(b * b + a * (wanted - other)) - b) / a);
        for (int m = 0; m < weight.length; m++) {
            weight[m] = kept * weight[m] + (1 - kept) * before[m];
        }
    }

    /** Log of the mean density when each draw counts as often as given; the smoothing stays. */
    double logRecounted(double[] counts) {
        double sum = 0;
        for (int m = 0; m < members.length; m++) {
            sum += counts[members[m]] * share[m];
        }
        return logWeight + logDensity + Math.log(sum);
    }

    private static int[] present(Readings readings, float[] rows, int stride, int draw) {
        int[] dims = new int[readings.size()];
        int n = 0;
        for (int i = 0; i < dims.length; i++) {
            if (readings.tells(i, rows, draw * stride)) {
                dims[n++] = i;
            }
        }
        return Arrays.copyOf(dims, n);
    }

    /** What is not known of the moments of so few draws widens them; one draw alone has no spread to widen. */
    private static double widening(double effective) {
        return effective <= 1 + 1e-9
                ? 0
                : effective / (effective - 1) * Math.min(6, (1 + 1 / effective) * (1 + 2 / (effective - 1)));
    }

    private double[] deviations(Readings readings, float[] rows, int stride) {
        int n = dims.length;
        double[] deviations = new double[members.length * n];
        for (int j = 0; j < n; j++) {
            int q = readings.question[dims[j]];
            for (int m = 0; m < members.length; m++) {
                deviations[m * n + j] = rows[members[m] * stride + q];
                mean[j] += weight[m] * deviations[m * n + j];
            }
            for (int m = 0; m < members.length; m++) {
                deviations[m * n + j] -= mean[j];
            }
        }
        return deviations;
    }

    private double[] covariance() {
        int n = dims.length;
        double[] covariance = new double[n * n];
        for (int m = 0; m < members.length; m++) {
            for (int i = 0; i < n; i++) {
                double weighted = weight[m] * deviation[m * n + i];
                for (int j = 0; j <= i; j++) {
                    covariance[i * n + j] += weighted * deviation[m * n + j];
                }
            }
        }
        return covariance;
    }

    /** How much of the covariances to keep: the less certain the correlations, the less (Schaefer-Strimmer form). */
    private double kept(double[] covariance, double effective) {
        int n = dims.length;
        double uncertain = 0;
        double squares = 0;
        double chance = 2 / effective;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double product = covariance[i * n + i] * covariance[j * n + j];
                double r2 = product > 0 ? covariance[i * n + j] * covariance[i * n + j] / product : 0;
                uncertain += ((1 - r2) * (1 - r2) + chance * chance) / Math.max(effective - 1, 1e-9);
                squares += r2;
            }
        }
        return squares > 0 ? Math.max(0, 1 - uncertain / squares) : 0;
    }

    private Centre[] centres(double[] covariance, Readings readings) {
        int n = dims.length;
        double[] total = new double[n * n];
        double[] logFloor = new double[n];
        double[] value = new double[n];
        double local = widening * smooth * smooth;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                total[i * n + j] = local * kept * covariance[i * n + j] + readings.shared(dims[i], dims[j]);
            }
            total[i * n + i] = local * covariance[i * n + i] + readings.variance[dims[i]];
            logFloor[i] = readings.logFloor[dims[i]];
            value[i] = readings.value[dims[i]];
        }
        Centre.Precision precision = Centre.Precision.of(total, n);
        Centre[] centres = new Centre[members.length];
        double spread = spread();
        for (int m = 0; m < members.length; m++) {
            double[] residual = new double[n];
            for (int i = 0; i < n; i++) {
                residual[i] = value[i] - mean[i] - spread * deviation[m * n + i];
            }
            centres[m] = m > 0 && spread == 0 ? centres[0] : new Centre(precision, residual, logFloor);
        }
        return centres;
    }

    /** How far the centres keep the draws' distance from their mean. */
    double spread() {
        return smooth == 0 ? 1 : Math.sqrt(widening * Math.max(0, 1 - smooth * smooth));
    }

    /** The readings held against the likeliest member. */
    Centre likeliest() {
        return likeliest;
    }

    private Centre best() {
        int best = 0;
        for (int m = 1; m < share.length; m++) {
            best = share[m] > share[best] ? m : best;
        }
        return centres[best];
    }

    /** Variance of the draws at one reading, without instrument and twin. */
    double variance(int i) {
        double sum = 0;
        for (int m = 0; m < members.length; m++) {
            double d = deviation[m * dims.length + i];
            sum += weight[m] * d * d;
        }
        return widening * sum;
    }

    /** What another question is expected to read: mean, variance, and the share of draws that have a value at all. */
    record Expected(double mean, double variance, double valued) {}

    /** Worked out for all numbers when the first is asked for. */
    Expected predict(float[] rows, Layout layout, int q) {
        if (projection == null) {
            projection = new Projection(this, rows, layout);
        }
        return projection.of(layout.numberAt[q]);
    }

    double weight(int member) {
        return weight[member];
    }

    /** Distance of a member from the mean at a reading of this heap. */
    double deviation(int member, int dim) {
        return deviation[member * dims.length + dim];
    }

    /** Precision times residual at a member: read, never write. */
    double[] pull(int member) {
        return centres[member].pull;
    }

    /** How much of the covariance of a reading with something not read is believed around a centre. */
    double correlated() {
        return widening * smooth * smooth * kept;
    }

    /** What is left of a variance around a centre when the readings are known. */
    double left(double variance, double[] cross) {
        double local = widening * smooth * smooth * variance;
        return Math.max(local - likeliest.explained(cross), 1e-3 * local);
    }
}
