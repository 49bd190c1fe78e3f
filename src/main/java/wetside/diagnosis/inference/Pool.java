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

    static Pool of(Library library) {
        Pool pool = new Pool(library.questions().size());
        for (int q = 0; q < library.questions().size(); q++) {
            if (library.questions().get(q).answering() instanceof Answering.Choice choice) {
                pool.options[q] = shares(library, q, choice.options().size());
            } else {
                pool.moments(library, q);
            }
        }
        return pool;
    }

    private static double[] shares(Library library, int question, int options) {
        double[] sums = new double[options];
        double all = 0;
        for (int c = 0; c < library.causes().size(); c++) {
            int draws = library.signatures().draws(c);
            for (int k = 0; k < draws; k++) {
                float value = library.signatures().value(c, k, question);
                if (!Float.isNaN(value)) {
                    double weight = library.causes().get(c).weight() / draws;
                    sums[(int) value] += weight;
                    all += weight;
                }
            }
        }
        double total = all;
        return Arrays.stream(sums)
                .map(sum -> 0.5 / options + 0.5 * (total > 0 ? sum / total : 1.0 / options))
                .toArray();
    }

    /** Every cause counts alike here: what a rare fault does to a reading belongs to what a reading can be. */
    private void moments(Library library, int q) {
        double count = 0;
        double sum = 0;
        double squares = 0;
        for (int c = 0; c < library.causes().size(); c++) {
            float[] rows = library.signatures().rows(c);
            for (int at = q; at < rows.length; at += library.questions().size()) {
                if (!Float.isNaN(rows[at])) {
                    count++;
                    double step = rows[at] - sum;
                    sum += step / count;
                    squares += step * (rows[at] - sum);
                }
            }
        }
        mean[q] = sum;
        sd[q] = count > 1 ? Math.sqrt(squares / (count - 1)) : 0;
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
