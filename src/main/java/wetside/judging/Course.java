package wetside.judging;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.casework.Candidates;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Situation;
import wetside.diagnosis.plan.Step;

/** One job gone through by one policy, from the complaint until the machine is fixed or handed over. */
final class Course {
    /** Nobody goes on for longer than this. */
    private static final int MOST_STEPS = 80;

    private final Job job;
    private final Policy policy;
    private final Situation beginning;
    private final List<String> chart;
    private final SplittableRandom random;
    private final Set<Integer> left;
    private Posterior posterior;
    private Belief first;
    private double minutes;
    private double cost;
    private double hazard;
    private int questions;
    private int wrongParts;
    private boolean alarm;

    Course(Job job, Policy policy, Posterior nothingKnown, Situation beginning, List<String> chart) {
        this.job = job;
        this.policy = policy;
        this.beginning = beginning;
        this.chart = chart;
        random = new SplittableRandom(job.luck());
        left = new HashSet<>(job.truth());
        posterior = nothingKnown.given(Observations.of(job.complaint()));
    }

    Outcome run() {
        for (int i = 0; i < MOST_STEPS; i++) {
            Situation now = beginning.after(library(), posterior.observations());
            Move move = new Decision(posterior, now).of(policy, chart, random);
            if (move.sort() == Step.Sort.CALL_IN) {
                break;
            }
            if (move.sort() == Step.Sort.ASK) {
                spend(library().questions().get(library().question(move.id())).effort(), now);
                questions++;
                learn(job.answers().get(move.id()));
            } else {
                Belief before = belief();
                if (repaired(move.id(), now)) {
                    return outcome(before, false);
                }
            }
        }
        alarm = true;
        Belief last = belief();
        double bits = wetside.diagnosis.inference.Shares.bits(posterior.shares());
        cost += beginning.rates().callIn() + beginning.handover() * bits;
        return outcome(last, true);
    }

    private Library library() {
        return posterior.library();
    }

    private void learn(Observation observation) {
        posterior = posterior.given(posterior.observations().with(observation));
    }

    private Belief belief() {
        Belief now = Belief.of(posterior, job.truth());
        first = first == null ? now : first;
        return now;
    }

    private Outcome outcome(Belief last, boolean handedOver) {
        return new Outcome(minutes, cost, questions, wrongParts, hazard, handedOver, alarm, first, last);
    }

    private void spend(Effort effort, Situation now) {
        minutes += now.minutes(effort);
        cost += now.cost(effort);
        hazard += effort.hazard().compareTo(Hazard.INSIDE) >= 0 ? effort.minutes() : 0;
    }

    /** Does a repair; true when nothing is left to mend. */
    private boolean repaired(String id, Situation now) {
        List<Cause> causes = library().causes();
        Cause named = causes.stream().filter(c -> c.repair().id().equals(id)).findFirst().orElseThrow();
        spend(named.repair().effort(), now);
        boolean explains = id.equals(Candidates.EXPLAIN);
        alarm |= !explains;
        boolean needed = left.stream().anyMatch(c -> causes.get(c).repair().id().equals(id));
        wrongParts += !needed && !explains && named.repair().effort().money() > 0 ? 1 : 0;
        left.removeIf(c -> causes.get(c).repair().id().equals(id) && job.holds(id, causes.get(c).repair().works()));
        if (left.isEmpty()) {
            return true;
        }
        learn(Observation.stillBad(id));
        return false;
    }
}
