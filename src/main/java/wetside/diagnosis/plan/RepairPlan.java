package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Posterior;

/**
 * Expected cost of mending by repairs alone: one after the other, the best chance per cost first, until it works or
 * handing over is cheaper than what is left.
 *
 * <pre>V = min over n of SUM_{i<=n} r_i C_i + r_{n+1} C_call,   r_i = 1 - SUM_{j<i} p_j</pre>
 *
 * <p>Repairs behind the same panel are judged together: the panel is worth its cost when the best few behind it are.
 * The order is the best one for a single cause with repairs that do not overlap; imperfect repairs leave their rest to
 * the call.
 */
final class RepairPlan {
    private static final double NEGLIGIBLE = 1e-5;

    /** Up to so many panels every set of them has its price at hand. */
    private static final int FEW_PANELS = 12;

    private final List<Repair> repairs = new ArrayList<>();
    private final int[] repairOf;
    private final double[] works;
    /** With what each costs when it is not needed: the best order goes by that. */
    private final double[] cost;

    private final double[] needless;
    private final long[] panels;
    private final long[] panelSets;
    private final double[] panelCost;
    private final double[] openingOf;
    private final List<String> panelNames;
    private final double callIn;
    private final double handover;
    private final Map<Long, double[]> mending = new HashMap<>();
    private final ByWorth byWorth;
    private final double[] chance;
    private final boolean[] done;
    private final boolean[] tried;

    /** The repairs of the causes in play that this person may do and that were not tried in vain. */
    RepairPlan(InPlay inPlay, Situation situation, List<Effort> others) {
        Map<String, Integer> index = new LinkedHashMap<>();
        repairOf = new int[inPlay.size()];
        Arrays.fill(repairOf, -1);
        for (int a = 0; a < repairOf.length; a++) {
            if (inPlay.known(a)) {
                Posterior posterior = inPlay.posterior();
                Repair repair = Left.of(posterior.library(), inPlay.position(a), posterior.observations())
                        .filter(r -> r.effort().allowed(situation.who()))
                        .orElse(null);
                if (repair != null) {
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
        openingOf = new double[panelCost.length <= FEW_PANELS ? 1 << panelCost.length : 0];
        for (int set = 0; set < openingOf.length; set++) {
            openingOf[set] = sum(set);
        }
        needless = repairs.stream().mapToDouble(Repair::needless).toArray();
        cost = repairs.stream()
                .mapToDouble(repair -> Math.max(1e-9, situation.rates().of(repair.effort())) + repair.needless())
                .toArray();
        panels = repairs.stream().mapToLong(repair -> mask(repair.effort())).toArray();
        panelSets = Arrays.stream(panels).filter(set -> set != 0).distinct().toArray();
        callIn = situation.rates().callIn();
        handover = situation.handover();
        works = repairs.stream().mapToDouble(Repair::works).toArray();
        byWorth = new ByWorth(repairs.size());
        chance = new double[repairs.size()];
        done = new boolean[repairs.size()];
        tried = new boolean[repairs.size()];
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

    /** Cost of a repair that is needed, with these panels off beside those of the situation. */
    double cost(int repair, long off) {
        return cost[repair] - needless[repair] + opening(panels[repair] & ~off);
    }

    /** Expected cost of trying a repair that mends the machine with this chance. */
    double attempt(int repair, double chance, long off) {
        return cost[repair] - chance / works[repair] * needless[repair] + opening(panels[repair] & ~off);
    }

    double works(int repair) {
        return works[repair];
    }

    /** From now on, and until this is taken back, a repair counts as done in vain. */
    void tried(int repair, boolean inVain) {
        tried[repair] = inVain;
    }

    boolean isTried(int repair) {
        return tried[repair];
    }

    long panels(int repair) {
        return panels[repair];
    }

    /** Cost of getting these panels off and on again. */
    double opening(long set) {
        return openingOf.length > 0 ? openingOf[(int) set] : sum(set);
    }

    private double sum(long set) {
        double sum = 0;
        for (long left = set; left != 0; left &= left - 1) {
            sum += panelCost[Long.numberOfTrailingZeros(left)];
        }
        return sum;
    }

    /** Probability that a repair mends the machine. */
    double chance(double[] shares, int repair) {
        double sum = 0;
        for (int a = 0; a < shares.length; a++) {
            sum += repairOf[a] == repair ? shares[a] * works[repair] : 0;
        }
        return sum;
    }

    /** The shares after a repair in vain, not normalised. */
    double[] inVain(double[] shares, int repair) {
        double[] left = new double[shares.length];
        inVain(shares, repair, 1, left);
        return left;
    }

    /** The same, multiplied by a factor. */
    void inVain(double[] shares, int repair, double factor, double[] into) {
        for (int a = 0; a < shares.length; a++) {
            into[a] = shares[a] * (repairOf[a] == repair ? factor * (1 - works[repair]) : factor);
        }
    }

    /** Cost of handing over when the causes are spread over so many bits. */
    double call(double bits) {
        return callIn + handover * bits;
    }

    /** The repair of a cause in play, -1 when this person cannot do it or did it in vain. */
    int repairOf(int active) {
        return repairOf[active];
    }

    /**
     * Cost of mending by each repair known to be the right one, with what follows when it fails; never above the call. Last
     * the call itself, for what none of them mends. Read, never write.
     */
    double[] mending(long off) {
        return mending.computeIfAbsent(off, this::mendingAfter);
    }

    /** The same for repairs nobody knows to be the right ones, panels as they are. */
    double[] trying() {
        double[] costs = mendingAfter(0);
        for (int r = 0; r < repairs.size(); r++) {
            costs[r] = Math.min(callIn, costs[r] + needless[r]);
        }
        return costs;
    }

    private double[] mendingAfter(long off) {
        double[] costs = new double[repairs.size() + 1];
        for (int r = 0; r < repairs.size(); r++) {
            double mend = cost[r] - needless[r] + opening(panels[r] & ~off) + (1 - works[r]) * callIn;
            costs[r] = Math.min(callIn, mend);
        }
        costs[repairs.size()] = callIn;
        return costs;
    }

    /**
     * Expected cost of the plan.
     *
     * @param need probability that each repair is the one needed
     * @param call cost of handing over
     * @param off panels off beside those of the situation
     * @param enough from this on it does not matter how much: whatever is returned then is at least this
     */
    double cost(double[] need, double call, long off, double enough) {
        byWorth.clear();
        for (int r = 0; r < chance.length; r++) {
            chance[r] = tried[r] ? 0 : need[r] * works[r];
            done[r] = false;
            if (chance[r] > NEGLIGIBLE) {
                byWorth.add(r, chance[r] / cost[r]);
            }
        }
        long open = off;
        double left = 1;
        double spent = 0;
        double least = call;
        Behind behind = behind(open);
        int at = 0;
        while (spent < Math.min(least, enough)) {
            while (byWorth.has(at) && (done[byWorth.get(at)] || (panels[byWorth.get(at)] & ~open) != 0)) {
                at++;
            }
            boolean outside = byWorth.has(at) && !(behind.worth > chance[byWorth.get(at)] / cost[byWorth.get(at)]);
            int next = outside ? byWorth.get(at) : behind.first;
            if (next < 0) {
                break;
            }
            done[next] = true;
            spent += left * (cost[next] + opening(panels[next] & ~open)) - need[next] * needless[next];
            left = Math.max(0, left - chance[next]);
            least = Math.min(least, spent + left * call);
            if ((panels[next] & ~open) != 0) {
                open |= panels[next];
                behind = behind(open);
                at = 0;
            }
        }
        return least;
    }

    /** What lies behind panels still on: the repair to start with, and chance per cost of the best few there. */
    private record Behind(int first, double worth) {}

    private Behind behind(long open) {
        Behind best = new Behind(-1, -1);
        for (long set : panelSets) {
            double sum = 0;
            double spent = opening(set & ~open);
            int first = -1;
            for (int i = 0; byWorth.has(i); i++) {
                int r = byWorth.get(i);
                if (chance[r] <= best.worth * cost[r]) {
                    break;
                }
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
