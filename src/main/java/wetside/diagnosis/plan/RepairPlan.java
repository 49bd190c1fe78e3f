package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.Foresight;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Shares;

/**
 * Expected cost of mending by repairs alone: one after the other, the best chance per cost first, until it works or
 * handing over is cheaper than what is left.
 *
 * <pre>V_i = min(C_call, C_i + (1 - p_i / r_i) V_{i+1}),   r_i = 1 - SUM_{j<i} p_j</pre>
 *
 * <p>Repairs behind the same panel are judged together: the panel is worth its cost when the best few behind it are.
 * The order is the best one for a single cause with repairs that do not overlap; imperfect repairs leave their rest to
 * the call.
 */
final class RepairPlan {
    private static final double NEGLIGIBLE = 1e-5;

    private final List<Repair> repairs = new ArrayList<>();
    private final int[] repairOf;
    private final double[] works;
    private final double[] cost;
    private final long[] panels;
    private final long[] panelSets;
    private final double[] panelCost;
    private final List<String> panelNames;
    private final double callIn;
    private final double handover;
    private final double[] reliability;

    /** The repairs of the causes in play that this person may do and that were not tried in vain. */
    RepairPlan(InPlay inPlay, Situation situation, List<Effort> others) {
        Map<String, Integer> index = new LinkedHashMap<>();
        repairOf = new int[inPlay.size()];
        works = new double[inPlay.size()];
        Arrays.fill(repairOf, -1);
        for (int a = 0; a < repairOf.length; a++) {
            if (inPlay.known(a)) {
                Repair repair = inPlay.posterior()
                        .library()
                        .causes()
                        .get(inPlay.position(a))
                        .repair();
                boolean tried =
                        inPlay.posterior().observations().about(repair.id()).isPresent();
                if (!tried && repair.effort().allowed(situation.who())) {
                    works[a] = repair.works();
                    repairOf[a] = index.computeIfAbsent(repair.id(), id -> add(repair));
                }
            }
        }
        TreeSet<String> names = new TreeSet<>();
        repairs.forEach(repair -> names.addAll(repair.effort().panels()));
        others.forEach(effort -> names.addAll(effort.panels()));
        names.removeAll(situation.panelsOff());
        panelNames = List.copyOf(names);
        panelCost = panelNames.stream().mapToDouble(situation.rates()::panel).toArray();
        cost = repairs.stream()
                .mapToDouble(repair -> Math.max(1e-9, situation.rates().of(repair.effort())))
                .toArray();
        panels = repairs.stream().mapToLong(repair -> mask(repair.effort())).toArray();
        panelSets = Arrays.stream(panels).filter(set -> set != 0).distinct().toArray();
        callIn = situation.rates().callIn();
        handover = situation.handover();
        reliability = repairs.stream().mapToDouble(Repair::works).toArray();
    }

    private int add(Repair repair) {
        repairs.add(repair);
        return repairs.size() - 1;
    }

    List<Repair> repairs() {
        return repairs;
    }

    /** The panels of an effort that are still on, as bits. */
    long mask(Effort effort) {
        long mask = 0;
        for (int i = 0; i < panelNames.size(); i++) {
            mask |= effort.panels().contains(panelNames.get(i)) ? 1L << i : 0;
        }
        return mask;
    }

    double cost(int repair) {
        return cost[repair] + opening(panels[repair]);
    }

    long panels(int repair) {
        return panels[repair];
    }

    private double opening(long set) {
        double sum = 0;
        for (long left = set; left != 0; left &= left - 1) {
            sum += panelCost[Long.numberOfTrailingZeros(left)];
        }
        return sum;
    }

    /** Probability that a repair mends the machine. */
    double[] chances(double[] shares) {
        double[] chances = new double[repairs.size()];
        for (int a = 0; a < shares.length; a++) {
            if (repairOf[a] >= 0) {
                chances[repairOf[a]] += shares[a] * works[a];
            }
        }
        return chances;
    }

    /** The shares after a repair in vain, not normalised. */
    double[] inVain(double[] shares, int repair) {
        double[] left = shares.clone();
        for (int a = 0; a < left.length; a++) {
            left[a] *= repairOf[a] == repair ? 1 - works[a] : 1;
        }
        return left;
    }

    /** A plan: the repairs in order, up to the call, and what all is expected to cost. */
    record Plan(int[] order, double cost) {}

    /** The plan for these shares, which add up to one, with these panels off beside those of the situation. */
    Plan plan(double[] shares, long off, int except) {
        double[] chance = chances(shares);
        if (except >= 0) {
            chance[except] = 0;
        }
        int[] byWorth = byWorth(chance);
        int n = byWorth.length;
        int[] order = new int[n];
        double[] step = new double[n];
        boolean[] done = new boolean[repairs.size()];
        long open = off;
        Behind behind = behind(byWorth, chance, done, open);
        int at = 0;
        for (int i = 0; i < n; i++) {
            while (at < n && (done[byWorth[at]] || (panels[byWorth[at]] & ~open) != 0)) {
                at++;
            }
            boolean inside = at == n || behind.worth > chance[byWorth[at]] / cost[byWorth[at]];
            order[i] = inside ? behind.first : byWorth[at];
            done[order[i]] = true;
            step[i] = cost[order[i]] + opening(panels[order[i]] & ~open);
            if ((panels[order[i]] & ~open) != 0) {
                open |= panels[order[i]];
                behind = behind(byWorth, chance, done, open);
                at = 0;
            }
        }
        return stopped(order, step, chance, call(shares));
    }

    /** Cost of handing over now. */
    double call(double[] shares) {
        return callIn + (handover > 0 ? handover * Shares.bits(shares) : 0);
    }

    /**
     * What is expected to be spent from here: by repairs alone, or by asking on until the cause is known and mending
     * that, whichever is less.
     *
     * <pre>V = min(V_repairs, SUM_r p_r C_r + price of H)</pre>
     *
     * H is the entropy over the repairs needed or over the causes [bit], its price what the questions still open charge
     * for it; the cheaper way of knowing counts.
     */
    double value(double[] shares, long off, int except, Price price) {
        return Math.min(plan(shares, off, except).cost, identified(shares, off, except, price));
    }

    private double identified(double[] shares, long off, int except, Price price) {
        double[] need = need(shares);
        double repairKnown = price.ofRepair() * Shares.bits(need) + handover * bitsHandedOver(shares, need);
        double causeKnown = price.ofCause() * Shares.bits(shares);
        return mending(need, off, except) + Math.min(repairKnown, causeKnown);
    }

    /** Bits about the cause that are left to whoever takes over, when only the repair needed is known. */
    private double bitsHandedOver(double[] shares, double[] need) {
        if (handover == 0) {
            return 0;
        }
        double all = need[repairs.size()];
        double nats = all > 0 ? all * Math.log(all) : 0;
        for (int a = 0; a < shares.length; a++) {
            nats -= repairOf[a] < 0 && shares[a] > 0 ? shares[a] * Math.log(shares[a]) : 0;
        }
        return Math.max(0, nats / Math.log(2));
    }

    /** Expected cost of the repair needed once it is known. */
    private double mending(double[] need, long off, int except) {
        double sum = need[repairs.size()] * callIn;
        for (int r = 0; r < repairs.size(); r++) {
            double mend = cost[r] + opening(panels[r] & ~off) + (1 - reliability[r]) * callIn;
            sum += need[r] * (r == except ? callIn : Math.min(callIn, mend));
        }
        return sum;
    }

    /** What a bit costs by these questions. */
    Price price(InPlay inPlay, List<Foresight> questions, double[] cost) {
        double[] shares = inPlay.shares();
        double[] need = need(shares);
        double mending = mending(need, 0, -1);
        double otherwise = handover > 0 ? Math.min(mending, handover) : mending;
        double[] ofRepair = questions.stream().mapToDouble(f -> bits(inPlay, f)).toArray();
        double[] ofCause = questions.stream().mapToDouble(f -> f.bits(inPlay)).toArray();
        return new Price(
                Price.perBit(cost, ofRepair, Shares.bits(need), otherwise),
                Price.perBit(cost, ofCause, Shares.bits(shares), otherwise));
    }

    /** Probability that each repair is the one needed; last, that none of them is. */
    private double[] need(double[] shares) {
        double[] need = new double[repairs.size() + 1];
        for (int a = 0; a < shares.length; a++) {
            need[repairOf[a] < 0 ? repairs.size() : repairOf[a]] += shares[a];
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

    private Plan stopped(int[] order, double[] step, double[] chance, double call) {
        double[] left = new double[order.length + 1];
        left[0] = 1;
        for (int i = 0; i < order.length; i++) {
            left[i + 1] = Math.max(0, left[i] - chance[order[i]]);
        }
        double value = call;
        int stop = order.length;
        for (int i = order.length - 1; i >= 0; i--) {
            double going = step[i] + left[i + 1] / Math.max(left[i], 1e-12) * value;
            stop = going < call ? stop : i;
            value = Math.min(call, going);
        }
        return new Plan(Arrays.copyOf(order, stop), value);
    }

    /** Repairs that may help, the best chance per cost first: sorted as numbers, as this runs for every outcome. */
    private int[] byWorth(double[] chance) {
        long[] keys = new long[chance.length];
        int n = 0;
        for (int r = 0; r < chance.length; r++) {
            if (chance[r] > NEGLIGIBLE) {
                long worth = Float.floatToIntBits((float) (chance[r] / cost[r]));
                keys[n++] = worth << 32 | (0xFFFF_FFFFL - r);
            }
        }
        Arrays.sort(keys, 0, n);
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = (int) (0xFFFF_FFFFL - (keys[n - 1 - i] & 0xFFFF_FFFFL));
        }
        return order;
    }

    /** What lies behind panels still on: the repair to start with, and chance per cost of the best few there. */
    private record Behind(int first, double worth) {}

    private Behind behind(int[] byWorth, double[] chance, boolean[] done, long open) {
        Behind best = new Behind(-1, -1);
        for (long set : panelSets) {
            double sum = 0;
            double spent = opening(set & ~open);
            int first = -1;
            for (int r : byWorth) {
                if (!done[r] && (panels[r] & ~open & ~set) == 0 && (panels[r] & ~open) != 0) {
                    first = first < 0 ? r : first;
                    sum += chance[r];
                    spent += cost[r];
                    best = sum / spent > best.worth ? new Behind(first, sum / spent) : best;
                }
            }
        }
        return best;
    }
}
