package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Alike;
import wetside.diagnosis.inference.Foresight;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.inference.Shares;

/**
 * Expected cost of repair, first with one step of look-ahead:
 *
 * <pre>E(question) = C + SUM_k P(k) V(shares after k, panels then off)
 * E(repair)   = C + (1 - p) V(shares after it was in vain)
 * E(call)     = C_call</pre>
 *
 * where V is what repairs alone would cost, or asking on and then mending what was found ({@link Knowing}). The best of
 * these are then planned further out ({@link LookAhead}). Only what this person may do is offered; what has been answered,
 * or tried in vain, is not offered again.
 */
public final class NextStep {
    private static final int EXPLAINED = 8;

    /** Nobody mends what is less likely broken than this, however cheap it is to try. */
    private static final double WORTH_TRYING = 0.03;

    /** Bits below which an answer is not worth anybody's patience, however cheap it is to ask. */
    private static final double WORTH_ASKING = 0.1;

    /** Bits about the repair below which an answer by itself changes nothing in what is done. */
    private static final double TELLS_THE_REPAIR = 0.02;

    private final InPlay inPlay;
    private final Situation situation;
    private final RepairPlan plan;
    private final Need need;
    private final List<Outlook> open = new ArrayList<>();
    private final List<Foresight> closed = new ArrayList<>();

    private NextStep(Posterior posterior, Situation situation) {
        inPlay = InPlay.of(posterior);
        this.situation = situation;
        List<Question> questions = posterior.library().questions();
        plan = new RepairPlan(
                inPlay, situation, questions.stream().map(Question::effort).toList());
        need = new Need(plan, inPlay.size());
        for (int q = 0; q < questions.size(); q++) {
            Effort effort = questions.get(q).effort();
            if (posterior.observations().about(questions.get(q).id()).isEmpty()) {
                Foresight foresight = inPlay.foresee(q);
                if (effort.allowed(situation.who())) {
                    open.add(Outlook.of(foresight, situation, plan, need, inPlay.shares()));
                } else {
                    closed.add(foresight);
                }
            }
        }
    }

    /** What to do next, after what is believed, in this situation. */
    public static Advice advise(Posterior posterior, Situation situation) {
        return new NextStep(posterior, situation).advice();
    }

    private Advice advice() {
        Knowing knowing = new Knowing(plan, need, situation, inPlay.shares(), open);
        List<Step> steps = new ArrayList<>(LookAhead.revised(oneAhead(knowing), open, inPlay, situation, knowing));
        Outcomes outcomes = new Outcomes(inPlay);
        for (int i = 0; i < Math.min(EXPLAINED, steps.size()); i++) {
            steps.set(i, explained(steps.get(i), outcomes));
        }
        List<Foresight> asked = open.stream().map(Outlook::foresight).toList();
        return new Advice(List.copyOf(steps), refused(), Alike.of(inPlay, asked, closed));
    }

    private List<Step> oneAhead(Knowing knowing) {
        List<Step> steps = new ArrayList<>();
        open.stream().filter(o -> o.bits() >= WORTH_ASKING).forEach(o -> steps.add(ask(o, knowing)));
        for (int r = 0; r < plan.repairs().size(); r++) {
            if (plan.chance(inPlay.shares(), r) >= WORTH_TRYING) {
                steps.add(repair(r, knowing));
            }
        }
        steps.add(callIn());
        steps.sort(Step.BEST_FIRST);
        return steps;
    }

    private Step ask(Outlook outlook, Knowing knowing) {
        Foresight foresight = outlook.foresight();
        double cost = outlook.cost(plan.opening(outlook.panels()));
        double after = 0;
        double[] left = new double[inPlay.size()];
        for (int k = 0; k < foresight.outcomes(); k++) {
            if (outlook.chance()[k] > 0) {
                Outlook.shares(foresight, inPlay.shares(), k, left);
                after += outlook.chance()[k] * knowing.value(left, outlook.after()[k], outlook.panels());
            }
        }
        return step(
                Step.Sort.ASK,
                foresight.question().id(),
                foresight.question().words(),
                foresight.question().effort(),
                cost,
                cost + after,
                outlook.bits());
    }

    private Step repair(int r, Knowing knowing) {
        Repair repair = plan.repairs().get(r);
        double chance = plan.chance(inPlay.shares(), r);
        double[] left = new double[inPlay.size()];
        double rest = 0;
        if (chance < 1 - 1e-9) {
            plan.inVain(inPlay.shares(), r, 1 / (1 - chance), left);
            plan.tried(r, true);
            rest = (1 - chance) * knowing.value(left, need.doubt(left), plan.panels(r));
            plan.tried(r, false);
        }
        double bits = Shares.bits(chance, 1 - chance);
        double cost = plan.cost(r, 0);
        double expected = plan.attempt(r, chance, 0) + rest;
        return step(Step.Sort.REPAIR, repair.id(), repair.words(), repair.effort(), cost, expected, bits);
    }

    private Step callIn() {
        double cost = plan.call(need.doubt(inPlay.shares()).cause());
        Effort effort = new Effort(0, cost, Set.of(), Hazard.NONE, Who.OWNER);
        return step(Step.Sort.CALL_IN, "", "hand the job over", effort, cost, cost, 0);
    }

    private Step step(
            Step.Sort sort, String id, String words, Effort effort, double cost, double expected, double bits) {
        return new Step(sort, id, words, effort, cost, expected, bits, situation.minutes(effort), List.of(), "");
    }

    private Step explained(Step step, Outcomes outcomes) {
        List<Step.Outcome> leaves = List.of();
        String reason = "nothing else is expected to cost less";
        if (step.sort() == Step.Sort.ASK) {
            Outlook outlook = open.stream()
                    .filter(o -> o.id().equals(step.id()))
                    .findFirst()
                    .orElseThrow();
            leaves = outcomes.of(outlook.foresight());
            boolean alone = situation.handover() > 0 || outlook.bitsOfRepair() >= TELLS_THE_REPAIR;
            reason = outcomes.reason(outlook.foresight())
                    + (alone ? "" : "; what to mend it tells only together with what comes next");
        } else if (step.sort() == Step.Sort.REPAIR) {
            int r = plan.repairs().stream().map(Repair::id).toList().indexOf(step.id());
            double chance = plan.chance(inPlay.shares(), r);
            leaves = outcomes.of(plan.inVain(inPlay.shares(), r), chance);
            reason = Math.round(100 * chance) + " % that this mends it; if it does not, that narrows it down too";
        }
        return new Step(
                step.sort(),
                step.id(),
                step.words(),
                step.effort(),
                step.cost(),
                step.expectedCost(),
                step.bits(),
                step.minutes(),
                leaves,
                reason);
    }

    private List<Advice.Refused> refused() {
        List<Advice.Refused> refused = new ArrayList<>();
        for (Foresight foresight : closed) {
            Question question = foresight.question();
            refused.add(new Advice.Refused(question.id(), question.words(), question.effort()));
        }
        for (int a = 0; a < inPlay.size(); a++) {
            if (inPlay.known(a)) {
                Repair repair = inPlay.posterior()
                        .library()
                        .causes()
                        .get(inPlay.position(a))
                        .repair();
                boolean named = refused.stream().anyMatch(r -> r.id().equals(repair.id()));
                if (!named && !repair.effort().allowed(situation.who())) {
                    refused.add(new Advice.Refused(repair.id(), repair.words(), repair.effort()));
                }
            }
        }
        return List.copyOf(refused);
    }
}
