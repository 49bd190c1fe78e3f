package wetside.diagnosis.plan;

import java.util.List;

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
    private final Need need;
    private final double handover;
    private final Price price;
    private final double[] needed;

    /** With the questions still open, from these shares. */
    Knowing(RepairPlan plan, Need need, Situation situation, double[] shares, List<Outlook> questions) {
        this.plan = plan;
        this.need = need;
        handover = situation.handover();
        needed = new double[plan.repairs().size() + 1];
        need.of(shares, needed);
        double mending = mending(plan.mending(0), -1);
        double otherwise = handover > 0 ? Math.min(mending, handover) : mending;
        Outlook.Doubt doubt = need.doubt(shares);
        double[] cost = questions.stream().mapToDouble(Outlook::cost).toArray();
        double[] ofRepair = questions.stream().mapToDouble(Outlook::bitsOfRepair).toArray();
        double[] ofCause = questions.stream().mapToDouble(Outlook::bits).toArray();
        price = new Price(
                Price.perBit(cost, ofRepair, doubt.repair(), otherwise),
                Price.perBit(cost, ofCause, doubt.cause(), otherwise));
    }

    /** Expected cost from shares that add up to one, with these panels off beside those of the situation. */
    double value(double[] shares, Outlook.Doubt doubt, long off, int except) {
        need.of(shares, needed);
        double handedOver = handover > 0 ? handover * need.handedOver(shares) : 0;
        double knowing = Math.min(price.ofRepair() * doubt.repair() + handedOver, price.ofCause() * doubt.cause());
        double asking = mending(plan.mending(off), except) + knowing;
        return Math.min(asking, plan.cost(needed, plan.call(doubt.cause()), off, except, asking));
    }

    /** Expected cost of the repair needed once it is known. */
    private double mending(double[] costs, int except) {
        double sum = 0;
        for (int r = 0; r < needed.length; r++) {
            sum += needed[r] * (r == except ? costs[need.none()] : costs[r]);
        }
        return sum;
    }
}
