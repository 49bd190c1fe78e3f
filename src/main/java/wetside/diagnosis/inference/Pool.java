package wetside.diagnosis.inference;

import java.util.Arrays;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;

/**
 * What a question reads over all causes together: the broad expectation of somebody who knows the kind of machine and
 * nothing of the fault. It judges "something else", and whatever a cause has no value for.
 */
final class Pool {
    /** An unknown cause may move a reading further than any known one. */
    private static final double WIDER = 2;

    private final double[] mean;
    private final double[] sd;
    private final double[][] options;

    private Pool(int questions) {
        mean = new double[questions];
        sd = new double[questions];
        options = new double[questions][];
    }

    /** Row after row, as they lie: question after question would fetch all of a library for each. */
    static Pool of(Library library) {
        int width = library.questions().size();
        Pool pool = new Pool(width);
        double[] counts = new double[width];
        double[] squares = new double[width];
        for (int q = 0; q < width; q++) {
            if (library.questions().get(q).answering() instanceof Answering.Choice choice) {
                pool.options[q] = new double[choice.options().size()];
            }
        }
        for (int c = 0; c < library.causes().size(); c++) {
            float[] rows = library.signatures().rows(c);
            double weight =
                    library.causes().get(c).weight() / library.signatures().draws(c);
            for (int row = 0; row < rows.length; row += width) {
                pool.add(rows, row, weight, counts, squares);
            }
        }
        for (int q = 0; q < width; q++) {
            pool.sd[q] = counts[q] > 1 ? Math.sqrt(squares[q] / (counts[q] - 1)) : 0;
            if (pool.options[q] != null) {
                pool.options[q] = shares(pool.options[q], counts[q]);
            }
        }
        return pool;
    }

    private void add(float[] rows, int row, double weight, double[] counts, double[] squares) {
        for (int q = 0; q < counts.length; q++) {
            float value = rows[row + q];
            if (Float.isNaN(value)) {
                continue;
            }
            if (options[q] != null) {
                options[q][(int) value] += weight;
                counts[q] += weight;
            } else {
                // Every cause counts alike here: what a rare fault does to a reading belongs to what it can be.
                counts[q]++;
                double step = value - mean[q];
                mean[q] += step / counts[q];
                squares[q] += step * (value - mean[q]);
            }
        }
    }

    private static double[] shares(double[] sums, double total) {
        return Arrays.stream(sums)
                .map(sum -> 0.5 / sums.length + 0.5 * (total > 0 ? sum / total : 1.0 / sums.length))
                .toArray();
    }

    /** Logarithm of the broad density of a number. */
    double logDensity(int question, double value, double variance) {
        double scale = WIDER * Math.sqrt(sd[question] * sd[question] + variance);
        return Normal.logWideDensity(value - mean[question], scale);
    }

    /** Broad probability of an option. */
    double chance(int question, int option) {
        return options[question][option];
    }

    double mean(int question) {
        return mean[question];
    }

    double sd(int question) {
        return sd[question];
    }
}
