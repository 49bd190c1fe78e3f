package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Posterior;
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
                Posterior posterior = inPlay.posterior();
                Repair repair = Left.of(posterior.library(), inPlay.position(a), posterior.observations())
                        .filter(r -> r.effort().allowed(situation.who()))
                        .orElse(null);
                if (repair != null) {
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

    /** Cost of handing over when the cause is known. */
    double callKnown() {
        return callIn;
    }

    /** The repair of a cause in play, -1 when this person cannot do it or did it in vain. */
    int repairOf(int active) {
        return repairOf[active];
    }

    /** Cost of mending by a repair known to be the right one, with what follows when it fails; never above the call. */
    double mending(int repair, long off) {
        double mend = cost[repair] + opening(panels[repair] & ~off) + (1 - reliability[repair]) * callIn;
        return Math.min(callIn, mend);
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
