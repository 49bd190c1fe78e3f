package wetside.diagnosis.exact;

import java.util.Arrays;
import java.util.Set;

/**
 * Something that can be done in a troubleshooting problem, state by state.
 *
 * @param id its name
 * @param cost by state, as inspecting may be followed by a repair in one state only
 * @param panels that must be opened for it
 * @param chance probability of each outcome, by state; empty for a repair
 * @param works probability that a repair does its work, by state; empty for a question
 * @param leadsTo the state a repair leads to when it works, -1 for mended; empty for a question
 */
public record Action(String id, double[] cost, Set<String> panels, double[][] chance, double[] works, int[] leadsTo) {

    /** A question of one cost; {@code chance} by state and outcome. */
    public static Action question(String id, double cost, double[][] chance) {
        double[] costs = new double[chance.length];
        Arrays.fill(costs, cost);
        return new Action(id, costs, Set.of(), chance, new double[0], new int[0]);
    }

    /** A repair of one cost that mends with a probability by state. */
    public static Action repair(String id, double cost, double... works) {
        double[] costs = new double[works.length];
        Arrays.fill(costs, cost);
        int[] mended = new int[works.length];
        Arrays.fill(mended, -1);
        return new Action(id, costs, Set.of(), new double[0][], works, mended);
    }

    /** Inspecting the part of one state, and mending it if it is found bad. */
    public static Action inspection(String id, double inspect, double mend, int state, int states) {
        double[] works = new double[states];
        works[state] = 1;
        Action repair = repair(id, inspect, works);
        repair.cost[state] += mend;
        return repair;
    }

    public Action behind(String... names) {
        return new Action(id, cost, Set.of(names), chance, works, leadsTo);
    }

    /** A repair that, where it works, leads to these states instead of a mended machine. */
    public Action leadingTo(int... states) {
        return new Action(id, cost, panels, chance, works, states);
    }

    public boolean isQuestion() {
        return chance.length > 0;
    }

    /** Chance of mending from these beliefs. */
    double mends(double[] belief) {
        double sum = 0;
        for (int s = 0; s < belief.length && !isQuestion(); s++) {
            sum += leadsTo[s] < 0 ? belief[s] * works[s] : 0;
        }
        return sum;
    }

    double expectedCost(double[] belief) {
        double sum = 0;
        for (int s = 0; s < belief.length; s++) {
            sum += belief[s] * cost[s];
        }
        return sum;
    }

    /** Beliefs, not normalised, with which an outcome leaves the machine still bad. */
    double[] after(double[] belief, int outcome) {
        double[] after = new double[belief.length];
        for (int s = 0; s < belief.length; s++) {
            if (isQuestion()) {
                after[s] += belief[s] * chance[s][outcome];
            } else {
                after[s] += belief[s] * (1 - works[s]);
                if (leadsTo[s] >= 0) {
                    after[leadsTo[s]] += belief[s] * works[s];
                }
            }
        }
        return after;
    }

    int outcomes() {
        return isQuestion() ? chance[0].length : 1;
    }
}
