package wetside.diagnosis.exact;

import java.util.Arrays;
import java.util.PriorityQueue;
import wetside.diagnosis.inference.Shares;

/**
 * Isolating one of a few states by tests that each answer yes or no for certain, at unit cost a test: how many are
 * needed on average, by the best plan and by plans that look only at what the next test teaches.
 */
public final class TestSequence {
    private final double[] prior;
    private final boolean[][] answer;

    /** States with their probabilities; {@code answer} by state and test. */
    public TestSequence(double[] prior, boolean[][] answer) {
        this.prior = prior.clone();
        this.answer = answer.clone();
    }

    private int all() {
        return (1 << prior.length) - 1;
    }

    private double mass(int states) {
        double sum = 0;
        for (int s = 0; s < prior.length; s++) {
            sum += (states & 1 << s) != 0 ? prior[s] : 0;
        }
        return sum;
    }

    private int yes(int states, int test) {
        int yes = 0;
        for (int s = 0; s < prior.length; s++) {
            yes |= answer[s][test] ? states & 1 << s : 0;
        }
        return yes;
    }

    private boolean alone(int states) {
        return Integer.bitCount(states) <= 1;
    }

    /** Tests needed on average by the best plan. */
    public double best() {
        return best(all());
    }

    private double best(int states) {
        if (alone(states)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < answer[0].length; t++) {
            int yes = yes(states, t);
            if (yes != 0 && yes != states) {
                least = Math.min(least, mass(states) + best(yes) + best(states & ~yes));
            }
        }
        return least;
    }

    /** The first test of the best plan, from zero. */
    public int first() {
        int first = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < answer[0].length; t++) {
            int yes = yes(all(), t);
            double cost = yes == 0 || yes == all() ? Double.POSITIVE_INFINITY : best(yes) + best(all() & ~yes);
            first = cost < least - 1e-12 ? t : first;
            least = Math.min(least, cost);
        }
        return first;
    }

    /** Tests needed when each is the one with the least expected entropy after {@code depth} of them. */
    public double byInformation(int depth) {
        return byInformation(all(), depth);
    }

    private double byInformation(int states, int depth) {
        if (alone(states)) {
            return 0;
        }
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < answer[0].length; t++) {
            int yes = yes(states, t);
            if (yes != 0 && yes != states) {
                double ahead = ahead(yes, depth - 1) + ahead(states & ~yes, depth - 1);
                best = ahead < least - 1e-12 ? t : best;
                least = Math.min(least, ahead);
            }
        }
        int yes = yes(states, best);
        return mass(states) + byInformation(yes, depth) + byInformation(states & ~yes, depth);
    }

    /** Tests still to come within the depth, plus the entropy left as an estimate of those beyond. */
    private double ahead(int states, int depth) {
        if (alone(states)) {
            return 0;
        }
        if (depth == 0) {
            return mass(states) * entropy(states);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < answer[0].length; t++) {
            int yes = yes(states, t);
            if (yes != 0 && yes != states) {
                least = Math.min(least, mass(states) + ahead(yes, depth - 1) + ahead(states & ~yes, depth - 1));
            }
        }
        return least;
    }

    private double entropy(int states) {
        double[] shares = new double[prior.length];
        for (int s = 0; s < prior.length; s++) {
            shares[s] = (states & 1 << s) != 0 ? prior[s] / mass(states) : 0;
        }
        return Shares.bits(shares);
    }

    /** Entropy of the states [bit]. */
    public double entropy() {
        return entropy(all());
    }

    /** No plan of yes-or-no tests needs fewer on average than the code that merges the two least likely, again and again. */
    public double lowerBound() {
        PriorityQueue<Double> weights = new PriorityQueue<>();
        Arrays.stream(prior).forEach(weights::add);
        double sum = 0;
        while (weights.size() > 1) {
            double merged = weights.remove() + weights.remove();
            sum += merged;
            weights.add(merged);
        }
        return sum;
    }
}
