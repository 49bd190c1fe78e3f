package wetside.diagnosis.plan;

import wetside.diagnosis.Effort;
import wetside.diagnosis.inference.Foresight;

/**
 * A question as the plan sees it: what asking costs, the panels it needs off, and how uncertain each outcome would leave
 * the cause and the repair needed.
 *
 * @param foresight the question and its outcomes
 * @param own cost of asking, its panels left out
 * @param least what asking anything costs
 * @param panels that come off for it
 * @param chance of each outcome
 * @param after entropies after each outcome
 * @param bits expected loss of entropy of the causes [bit]
 * @param bitsOfRepair the same of the repairs needed
 */
record Outlook(
        Foresight foresight,
        double own,
        double least,
        long panels,
        double[] chance,
        Doubt[] after,
        double bits,
        double bitsOfRepair) {

    /** How much there is still to know [bit]: of the cause, and of the repair needed. */
    record Doubt(double cause, double repair) {}

    static Outlook of(Foresight foresight, Situation situation, RepairPlan plan, Need need, double[] shares) {
        Effort effort = foresight.question().effort();
        double own = situation.rates().of(effort);
        double least = situation.rates().perMinute();
        int outcomes = foresight.outcomes();
        double[] chance = new double[outcomes];
        Doubt[] after = new Doubt[outcomes];
        double[] left = new double[shares.length];
        Doubt before = need.doubt(shares);
        double cause = before.cause;
        double repair = before.repair;
        for (int k = 0; k < outcomes; k++) {
            chance[k] = shares(foresight, shares, k, left);
            after[k] = chance[k] > 0 ? need.doubt(left) : new Doubt(0, 0);
            cause -= chance[k] * after[k].cause;
            repair -= chance[k] * after[k].repair;
        }
        return new Outlook(
                foresight, own, least, plan.mask(effort), chance, after, Math.max(0, cause), Math.max(0, repair));
    }

    String id() {
        return foresight.question().id();
    }

    /** Cost of asking when the panels still to come off cost so much. */
    double cost(double opening) {
        return Math.max(least, own + opening);
    }

    /** The shares after an outcome, adding up to one; returns the chance of the outcome. */
    static double shares(Foresight foresight, double[] before, int outcome, double[] into) {
        double chance = foresight.joint(before, outcome, into);
        double scale = chance > 0 ? 1 / chance : 0;
        for (int a = 0; a < into.length; a++) {
            into[a] *= scale;
        }
        return chance;
    }
}
