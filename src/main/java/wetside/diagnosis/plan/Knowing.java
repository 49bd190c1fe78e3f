package wetside.diagnosis.plan;

import java.util.List;
import wetside.diagnosis.inference.Foresight;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Shares;

/**
 * What is expected to be spent from some beliefs on: by repairs alone, or by asking until the cause is known and then
 * mending that, whichever is less.
 *
 * <pre>V = min(V_repairs, SUM_r p_r C_r + price of H)</pre>
 *
 * H is the entropy over the repairs needed or over the causes [bit], its price what the questions still open charge for
 * it; the cheaper way of knowing counts.
 */
final class Knowing {
    private final RepairPlan plan;
    private final int repairs;
    private final double handover;
    private final Price price;

    /** With the questions still open and what each costs now. */
    Knowing(RepairPlan plan, Situation situation, InPlay inPlay, List<Foresight> questions, double[] cost) {
        this.plan = plan;
        repairs = plan.repairs().size();
        handover = situation.handover();
        double[] shares = inPlay.shares();
        double[] need = need(shares);
        double mending = mending(need, 0, -1);
        double otherwise = handover > 0 ? Math.min(mending, handover) : mending;
        double[] ofRepair = questions.stream().mapToDouble(f -> bits(inPlay, f)).toArray();
        double[] ofCause = questions.stream().mapToDouble(f -> f.bits(inPlay)).toArray();
        price = new Price(
                Price.perBit(cost, ofRepair, Shares.bits(need), otherwise),
                Price.perBit(cost, ofCause, Shares.bits(shares), otherwise));
    }

    /** Expected cost from shares that add up to one, with these panels off beside those of the situation. */
    double value(double[] shares, long off, int except) {
        double[] need = need(shares);
        double repairKnown = price.ofRepair() * Shares.bits(need) + handover * bitsHandedOver(shares, need);
        double causeKnown = price.ofCause() * Shares.bits(shares);
        double asking = mending(need, off, except) + Math.min(repairKnown, causeKnown);
        return Math.min(plan.plan(shares, off, except).cost(), asking);
    }

    /** Expected cost of the repair needed once it is known. */
    private double mending(double[] need, long off, int except) {
        double sum = need[repairs] * plan.callKnown();
        for (int r = 0; r < repairs; r++) {
            sum += need[r] * (r == except ? plan.callKnown() : plan.mending(r, off));
        }
        return sum;
    }

    /** Bits about the cause that are left to whoever takes over, when only the repair needed is known. */
    private double bitsHandedOver(double[] shares, double[] need) {
        if (handover == 0) {
            return 0;
        }
        double nats = need[repairs] > 0 ? need[repairs] * Math.log(need[repairs]) : 0;
        for (int a = 0; a < shares.length; a++) {
            nats -= plan.repairOf(a) < 0 && shares[a] > 0 ? shares[a] * Math.log(shares[a]) : 0;
        }
        return Math.max(0, nats / Math.log(2));
    }

    /** Probability that each repair is the one needed; last, that none of them is. */
    private double[] need(double[] shares) {
        double[] need = new double[repairs + 1];
        for (int a = 0; a < shares.length; a++) {
            need[plan.repairOf(a) < 0 ? repairs : plan.repairOf(a)] += shares[a];
        }
        return need;
    }

    /** Expected loss of entropy over the repairs needed [bit]. */
    private double bits(InPlay inPlay, Foresight foresight) {
        double before = Shares.bits(need(inPlay.shares()));
        double after = 0;
        for (int k = 0; k < foresight.outcomes(); k++) {
            if (foresight.chance(k) > 0) {
                after += foresight.chance(k) * Shares.bits(need(Outcomes.after(inPlay, foresight, k)));
            }
        }
        return Math.max(0, before - after);
    }
}
