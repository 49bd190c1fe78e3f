package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wetside.diagnosis.inference.InPlay;

/**
 * The same cost with more steps planned out, where one step is blind: tests that tell something only together, a repair
 * that is worth trying once something else is known.
 *
 * <pre>V_0 = what {@link Knowing} expects
 * V_d = min(V_repairs, min_q [C + SUM_k P(k) V_{d-1}(after k)], min_r [C + (1 - p) V_{d-1}(after it was in vain)])</pre>
 *
 * Answers are taken as independent given the cause, and nobody asks twice about the same thing. At every step but the last
 * only what looks best one step ahead is followed up. Few causes are looked through far enough to be exact, many two steps,
 * very many not at all.
 */
final class LookAhead {
    /** Steps looked ahead at most. */
    private static final int FAR = 6;

    private static final int FOLLOWED_UP = 5;
    private static final int REPAIRS = 2;

    /** Causes looked at, if they hold enough. */
    private static final int LEADING = 40;

    private static final double ENOUGH = 0.9;

    /** Questions that may come later. */
    private static final int LATER = 12;

    /** Steps offered that are looked into: so many that look best one step ahead, and so many by what they teach per cost. */
    private static final int OFFERED = 7;

    private static final int TEACHING = 3;

    /** Causes times beliefs gone through for one step offered: a millisecond or two. */
    private static final double WORK = 60_000;

    private static final double NEVER = 1e-9;

    private final RepairPlan plan;
    private final Need need;
    private final Knowing knowing;
    private final double[] shares;
    /** What the causes looked at hold of all. */
    private final double held;

    private final List<Outlook> questions;
    /** Questions about the same thing, as bits, by question. */
    private final long[] same;

    private final double[][] left;
    private final double[][] estimate;
    private final int depth;
    private long asked;

    /**
     * From what is believed.
     *
     * @param questions that may be put later on
     * @param price what knowing costs
     */
    private LookAhead(InPlay all, Situation situation, List<Outlook> questions, Knowing price) {
        InPlay leading = all.leading(LEADING);
        shares = leading.shares();
        held = Arrays.stream(all.shares()).limit(shares.length).sum();
        plan = new RepairPlan(
                leading,
                situation,
                questions.stream().map(q -> q.foresight().question().effort()).toList());
        need = new Need(plan, shares.length);
        knowing = new Knowing(plan, need, price);
        this.questions = questions.stream()
                .map(q -> Outlook.of(q.foresight(), situation, plan, need, shares))
                .toList();
        same = new long[questions.size()];
        for (int q = 0; q < same.length; q++) {
            for (int other = 0; other < same.length; other++) {
                same[q] |= reporter(q).equals(reporter(other)) ? 1L << other : 0;
            }
        }
        depth = depth();
        left = new double[depth + 1][shares.length];
        estimate = new double[depth + 1][questions.size()];
    }

    /**
     * The steps, the best first, with what the best of them cost when more is planned out. The others cost at least as
     * much as the best.
     *
     * @param steps as they look one step ahead, the best first
     * @param open the questions still open
     * @param knowing what V_0 is
     */
    static List<Step> revised(
            List<Step> steps, List<Outlook> open, InPlay inPlay, Situation situation, Knowing knowing) {
        List<Step> teaching = steps.stream()
                .filter(s -> s.sort() == Step.Sort.ASK)
                .sorted(Comparator.comparingDouble((Step s) -> -s.bits() / s.cost()))
                .toList();
        Set<String> looked = new LinkedHashSet<>();
        steps.stream().limit(OFFERED).map(Step::id).forEach(looked::add);
        teaching.stream().limit(TEACHING).map(Step::id).forEach(looked::add);
        Set<String> later = new LinkedHashSet<>(looked);
        teaching.stream().limit(LATER).map(Step::id).forEach(later::add);
        List<Outlook> questions = later.stream()
                .flatMap(id -> open.stream().filter(o -> o.id().equals(id)))
                .limit(LATER)
                .toList();
        LookAhead ahead = new LookAhead(inPlay, situation, questions, knowing);
        return ahead.isBlind() ? steps : ahead.revised(steps, looked);
    }

    private boolean isBlind() {
        return depth == 0 || held < ENOUGH || shares.length < 2;
    }

    private List<Step> revised(List<Step> steps, Set<String> looked) {
        List<Step> revised = new ArrayList<>();
        for (Step step : steps) {
            if (looked.contains(step.id())) {
                revised.add(step.expecting(Math.max(step.cost(), step.expectedCost() + held * more(step))));
            }
        }
        revised.sort(Step.BEST_FIRST);
        double best = revised.get(0).expectedCost();
        steps.stream()
                .filter(step -> !looked.contains(step.id()))
                .map(step -> step.expecting(Math.max(best, step.expectedCost())))
                .forEach(revised::add);
        Step first = revised.get(0);
        revised.sort(Comparator.comparing((Step step) -> step != first).thenComparing(Step.BEST_FIRST));
        return revised;
    }

    /** By how much a step is expected to cost more than it looks one step ahead; less when negative. */
    private double more(Step step) {
        if (step.sort() == Step.Sort.ASK) {
            int q = 0;
            while (!questions.get(q).id().equals(step.id())) {
                q++;
            }
            double never = Double.POSITIVE_INFINITY;
            return ask(q, shares, 0, depth, never) - ask(q, shares, 0, 0, never);
        }
        for (int r = 0; r < plan.repairs().size(); r++) {
            if (step.sort() == Step.Sort.REPAIR && plan.repairs().get(r).id().equals(step.id())) {
                return mend(r, shares, 0, depth) - mend(r, shares, 0, 0);
            }
        }
        return 0;
    }

    private String reporter(int q) {
        return questions.get(q).foresight().question().reporter();
    }

    /** Steps that can be planned out after one that is offered, so that the work stays within bounds. */
    private int depth() {
        double outcomes = questions.stream()
                .mapToInt(q -> q.foresight().outcomes())
                .average()
                .orElse(1);
        double last = questions.size() * outcomes;
        double each = Math.min(FOLLOWED_UP, questions.size()) * outcomes + REPAIRS;
        double work = shares.length * outcomes * last;
        int steps = 0;
        while (steps + 1 < FAR && work <= WORK) {
            steps++;
            work *= each;
        }
        return steps;
    }

    private double value(double[] from, long off, int steps) {
        Outlook.Doubt doubt = need.doubt(from);
        if (steps == 0) {
            return knowing.value(from, doubt, off);
        }
        double least = knowing.repairs(from, doubt, off);
        double known = knowing.known(from, -1);
        double[] cost = estimate[steps];
        for (int q = 0; q < cost.length; q++) {
            boolean open = (asked & 1L << q) == 0 && cost(q, off) + known < least;
            double enough = steps == 1 ? least : Double.POSITIVE_INFINITY;
            cost[q] = open ? ask(q, from, off, 0, enough) : Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < FOLLOWED_UP; i++) {
            int q = least(cost);
            if (q < 0) {
                break;
            }
            least = Math.min(least, steps == 1 ? cost[q] : ask(q, from, off, steps - 1, least));
            cost[q] = Double.POSITIVE_INFINITY;
        }
        return Math.min(least, mending(from, off, steps - 1));
    }

    private static int least(double[] cost) {
        int least = -1;
        for (int q = 0; q < cost.length; q++) {
            least = cost[q] < Double.POSITIVE_INFINITY && (least < 0 || cost[q] < cost[least]) ? q : least;
        }
        return least;
    }

    private double cost(int q, long off) {
        return questions.get(q).cost(plan.opening(questions.get(q).panels() & ~off));
    }

    /** The best of the few repairs most worth trying. */
    private double mending(double[] from, long off, int steps) {
        double least = Double.POSITIVE_INFINITY;
        int first = -1;
        for (int i = 0; i < REPAIRS; i++) {
            int best = -1;
            double most = 0;
            for (int r = 0; r < plan.repairs().size(); r++) {
                double worth = plan.isTried(r) || r == first ? 0 : worth(plan.chance(from, r), r, off);
                best = worth > most ? r : best;
                most = Math.max(most, worth);
            }
            if (best >= 0) {
                least = Math.min(least, mend(best, from, off, steps));
                first = best;
            }
        }
        return least;
    }

    private double worth(double chance, int r, long off) {
        return chance / plan.attempt(r, 0, off);
    }

    /** Expected cost of a question and {@code steps} more; at least {@code enough} when it is not less. */
    private double ask(int q, double[] from, long off, int steps, double enough) {
        Outlook question = questions.get(q);
        long before = asked;
        asked |= same[q];
        double sum = cost(q, off);
        for (int k = 0; k < question.foresight().outcomes() && sum < enough; k++) {
            double[] after = left[steps];
            double chance = Outlook.shares(question.foresight(), from, k, after);
            sum += chance > NEVER ? chance * value(after, off | question.panels(), steps) : 0;
        }
        asked = before;
        return sum;
    }

    /** Expected cost of a repair and {@code steps} more. */
    private double mend(int r, double[] from, long off, int steps) {
        double chance = plan.chance(from, r);
        double cost = plan.attempt(r, chance, off);
        if (chance > 1 - NEVER) {
            return cost;
        }
        plan.inVain(from, r, 1 / (1 - chance), left[steps]);
        plan.tried(r, true);
        double rest = (1 - chance) * value(left[steps], off | plan.panels(r), steps);
        plan.tried(r, false);
        return cost + rest;
    }
}
