package wetside.diagnosis.inference;

/**
 * What the draws of one heap, weighed by the readings, say of all numbers not read: every draw's value, pulled towards the
 * mean and moved by what the readings did to what they correlate with.
 *
 * <pre>at_m = c + s (x_m - c) + cross . pull_m,   E and Var over the members' shares</pre>
 *
 * All numbers are taken side by side, draw after draw, as the rows lie: this runs for every cause after every answer, and
 * needs nothing but sums of values, of their squares and of their products with what each draw got from the readings.
 */
final class Projection {
    /** A member with less than this share of belief adds nothing that shows. */
    private static final double NOTHING = 1e-15;

    private final double[] mean;
    private final double[] variance;
    private final double[] valued;

    /** Sums over the members by number, of values counted from those of the first member. */
    private static final class Sums {
        final double[] first;
        final double[] value;
        final double[] square;
        final double[] believed;
        final double[] believedSquare;
        final double[][] weighted;
        final double[][] pulled;

        Sums(int numbers, int readings) {
            first = new double[numbers];
            value = new double[numbers];
            square = new double[numbers];
            believed = readings == 0 ? value : new double[numbers];
            believedSquare = readings == 0 ? square : new double[numbers];
            weighted = new double[readings][numbers];
            pulled = new double[readings][numbers];
        }
    }

    Projection(Hump hump, float[] rows, Layout layout) {
        int numbers = layout.numbers.length;
        int n = hump.dims.length;
        mean = new double[numbers];
        variance = new double[numbers];
        valued = new double[numbers];
        Sums sums = sums(hump, rows, layout);
        double[] meanPull = new double[n];
        double[] meanWeighted = new double[n];
        double[] squarePull = new double[n * n];
        for (int m = 0; m < hump.members.length; m++) {
            double[] pull = hump.pull(m);
            for (int j = 0; j < n; j++) {
                double p = hump.share[m] > NOTHING ? hump.share[m] * pull[j] : 0;
                meanPull[j] += p;
                meanWeighted[j] += hump.weight(m) * hump.deviation(m, j);
                for (int i = 0; i < n && p != 0; i++) {
                    squarePull[j * n + i] += p * pull[i];
                }
            }
        }
        double[] cross = new double[n];
        for (int i = 0; i < numbers; i++) {
            if (Double.isNaN(sums.value[i])) {
                partly(hump, rows, layout, i);
            } else {
                complete(hump, sums, i, cross, meanPull, meanWeighted, squarePull);
            }
        }
    }

    private static Sums sums(Hump hump, float[] rows, Layout layout) {
        int[] at = layout.numbers;
        int n = hump.dims.length;
        Sums sums = new Sums(at.length, n);
        for (int i = 0; i < at.length; i++) {
            sums.first[i] = rows[hump.members[0] * layout.stride + at[i]];
        }
        double[] x = new double[at.length];
        double[] squares = new double[at.length];
        for (int m = 0; m < hump.members.length; m++) {
            int row = hump.members[m] * layout.stride;
            for (int i = 0; i < at.length; i++) {
                x[i] = rows[row + at[i]] - sums.first[i];
                squares[i] = x[i] * x[i];
            }
            add(sums.value, hump.weight(m), x);
            add(sums.square, hump.weight(m), squares);
            for (int j = 0; j < n; j++) {
                add(sums.weighted[j], hump.weight(m) * hump.deviation(m, j), x);
            }
            if (n > 0 && hump.share[m] > NOTHING) {
                add(sums.believed, hump.share[m], x);
                add(sums.believedSquare, hump.share[m], squares);
                for (int j = 0; j < n; j++) {
                    add(sums.pulled[j], hump.share[m] * hump.pull(m)[j], x);
                }
            }
        }
        return sums;
    }

    private static void add(double[] sums, double factor, double[] x) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += factor * x[i];
        }
    }

    private void complete(
            Hump hump,
            Sums sums,
            int i,
            double[] cross,
            double[] meanPull,
            double[] meanWeighted,
            double[] squarePull) {
        int n = cross.length;
        double centre = sums.value[i];
        double s = hump.spread();
        double of = Math.max(0, sums.square[i] - centre * centre);
        double believed = sums.believed[i] - centre;
        double middle = s * believed;
        double square = s * s * (sums.believedSquare[i] - 2 * centre * sums.believed[i] + centre * centre);
        for (int j = 0; j < n; j++) {
            cross[j] = hump.correlated() * (sums.weighted[j][i] - centre * meanWeighted[j]);
        }
        for (int j = 0; j < n; j++) {
            middle += cross[j] * meanPull[j];
            double pulls = 0;
            for (int k = 0; k < n; k++) {
                pulls += cross[k] * squarePull[j * n + k];
            }
            square += cross[j] * (pulls + 2 * s * (sums.pulled[j][i] - centre * meanPull[j]));
        }
        valued[i] = 1;
        mean[i] = sums.first[i] + centre + middle;
        variance[i] = hump.left(of, cross) + Math.max(0, square - middle * middle);
    }

    /** One number that some members have no value for. */
    private void partly(Hump hump, float[] rows, Layout layout, int i) {
        int n = hump.dims.length;
        double[] x = new double[hump.members.length];
        double sum = 0;
        double centre = 0;
        for (int m = 0; m < x.length; m++) {
            x[m] = rows[hump.members[m] * layout.stride + layout.numbers[i]];
            if (!Double.isNaN(x[m])) {
                valued[i] += hump.share[m];
                sum += hump.weight(m);
                centre += hump.weight(m) * x[m];
            }
        }
        if (!(valued[i] > 0) || !(sum > 0)) {
            valued[i] = 0;
            return;
        }
        centre /= sum;
        double of = 0;
        double[] cross = new double[n];
        for (int m = 0; m < x.length; m++) {
            if (!Double.isNaN(x[m])) {
                double pulled = hump.weight(m) / sum * (x[m] - centre);
                of += pulled * (x[m] - centre);
                for (int j = 0; j < n; j++) {
                    cross[j] += hump.correlated() * pulled * hump.deviation(m, j);
                }
            }
        }
        around(hump, i, x, centre, cross);
        variance[i] += hump.left(of, cross);
    }

    private void around(Hump hump, int i, double[] x, double centre, double[] cross) {
        double middle = 0;
        double square = 0;
        for (int m = 0; m < x.length; m++) {
            if (!Double.isNaN(x[m]) && hump.share[m] > 0) {
                double at = hump.spread() * (x[m] - centre);
                for (int j = 0; j < cross.length; j++) {
                    at += cross[j] * hump.pull(m)[j];
                }
                middle += hump.share[m] / valued[i] * at;
                square += hump.share[m] / valued[i] * at * at;
            }
        }
        mean[i] = centre + middle;
        variance[i] = Math.max(0, square - middle * middle);
    }

    /** What the number at this place among the numbers is expected to read. */
    Hump.Expected of(int number) {
        return new Hump.Expected(mean[number], variance[number], valued[number]);
    }
}
