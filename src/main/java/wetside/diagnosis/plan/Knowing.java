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
        double mending = sum(plan.trying());
        double otherwise = handover > 0 ? Math.min(mending, handover) : mending;
        Outlook.Doubt doubt = need.doubt(shares);
        double[] cost = questions.stream()
                .mapToDouble(q -> q.cost(plan.opening(q.panels())))
                .toArray();
        double[] ofRepair =
                questions.stream().mapToDouble(Outlook::bitsOfRepair).toArray();
        double[] ofCause = questions.stream().mapToDouble(Outlook::bits).toArray();
        price = new Price(
                Price.perBit(cost, ofRepair, doubt.repair(), otherwise),
                Price.perBit(cost, ofCause, doubt.cause(), otherwise));
    }

    /** At the prices of another, for some of its causes. */
    Knowing(RepairPlan plan, Need need, Knowing other) {
        this.plan = plan;
        this.need = need;
        handover = other.handover;
        price = other.price;
        needed = new double[plan.repairs().size() + 1];
    }

    /** Expected cost from shares that add up to one, with these panels off beside those of the situation. */
    double value(double[] shares, Outlook.Doubt doubt, long off) {
        double handedOver = handover > 0 ? handover * need.handedOver(shares) : 0;
        double knowing = Math.min(price.ofRepair() * doubt.repair() + handedOver, price.ofCause() * doubt.cause());
        double asking = known(shares, off) + knowing;
        return Math.min(asking, plan.cost(needed, plan.call(doubt.cause()), off, asking));
    }

    /** The same by repairs alone. */
    double repairs(double[] shares, Outlook.Doubt doubt, long off) {
        need.of(shares, needed);
        return plan.cost(needed, plan.call(doubt.cause()), off, Double.POSITIVE_INFINITY);
    }

    /** Expected cost of the repair needed when somebody tells which it is. */
    double known(double[] shares, long off) {
        need.of(shares, needed);
        return sum(plan.mending(off));
    }

    private double sum(double[] costs) {
        double sum = needed[need.none()] * costs[need.none()];
        for (int r = 0; r < need.none(); r++) {
            sum += needed[r] * costs[plan.isTried(r) ? need.none() : r];
        }
        return sum;
    }
}
