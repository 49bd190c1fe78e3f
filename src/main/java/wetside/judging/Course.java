package wetside.judging;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.casework.Candidates;
import wetside.casework.Pairs;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.PairSearch;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Situation;
import wetside.diagnosis.plan.Step;

/** One job gone through by one policy, from the complaint until the machine is fixed or handed over. */
final class Course {
    /** Nobody goes on for longer than this. */
    private static final int MOST_STEPS = 80;

    /** From this share on a cause counts as named. */
    private static final double FOUND = 0.8;

    private final Job job;
    private final Policy policy;
    private final Situation beginning;
    private final List<String> chart;
    private final SplittableRandom random;
    private final Set<Integer> left;
    private final List<Outcome.Step> steps = new ArrayList<>();
    private final Posterior nothingKnown;
    private final Pairs pairs;
    private Observations known;
    private Posterior posterior;
    private Belief first;
    private double minutes;
    private double cost;
    private double hazard;
    private int questions;
    private int wrongParts;
    private boolean touched;

    Course(Job job, Policy policy, Posterior nothingKnown, Pairs pairs, Situation beginning, List<String> chart) {
        this.job = job;
        this.policy = policy;
        this.beginning = beginning;
        this.chart = chart;
        random = new SplittableRandom(job.luck());
        left = new HashSet<>(job.truth());
        this.nothingKnown = nothingKnown;
        this.pairs = pairs;
        known = Observations.of(job.complaint().complaint());
        believe();
        steps.add(step(job.complaint().about(), Optional.of(job.complaint())));
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
                learn(move.id(), job.answer(left, move.id()));
            } else {
                Belief before = belief();
                if (repaired(move.id(), now)) {
                    return outcome(before, false);
                }
            }
        }
        Belief last = belief();
        double bits = wetside.diagnosis.inference.Shares.bits(posterior.shares());
        cost += beginning.rates().callIn() + beginning.handover() * bits;
        return outcome(last, true);
    }

    private Library library() {
        return posterior.library();
    }

    private void learn(String id, Observation observation) {
        known = known.learning(observation);
        believe();
        steps.add(step(id, Optional.of(observation)));
    }

    private Outcome.Step step(String id, Optional<Observation> answer) {
        Belief now = Belief.of(posterior, job.truth());
        return new Outcome.Step(id, answer, now.told(), now.top(), now.ofTruth());
    }

    /** From single causes; where they leave something odd, from pairs as well. */
    private void believe() {
        posterior = nothingKnown.after(Overtaken.observed(nothingKnown.library(), known));
        List<PairSearch.Pair> worth = pairs.tried(posterior);
        if (!worth.isEmpty()) {
            posterior = posterior.beside(pairs.with(posterior, worth));
        }
    }

    private Belief belief() {
        Belief now = Belief.of(posterior, job.truth());
        first = first == null ? now : first;
        return now;
    }

    private Outcome outcome(Belief last, boolean handedOver) {
        boolean named = !first.told().equals(Candidates.HEALTHY) && first.top() >= FOUND;
        boolean alarm = named || wrongParts > 0 || handedOver;
        return new Outcome(
                minutes,
                cost,
                questions,
                wrongParts,
                hazard,
                handedOver,
                touched || handedOver,
                alarm,
                first,
                last,
                List.copyOf(steps));
    }

    private void spend(Effort effort, Situation now) {
        minutes += now.minutes(effort);
        cost += now.cost(effort);
        hazard += effort.hazard().compareTo(Hazard.INSIDE) >= 0 ? effort.minutes() : 0;
    }

    /** Does a repair; true when nothing is left to mend. */
    private boolean repaired(String id, Situation now) {
        List<Cause> causes = library().causes();
        Repair repair = alone(id);
        spend(repair.effort(), now);
        boolean explains = id.equals(Candidates.EXPLAIN);
        touched |= !explains;
        for (String part : repair.parts()) {
            if (!isNeeded(part)) {
                cost += alone(part).needless();
                wrongParts += alone(part).effort().money() > 0 ? 1 : 0;
            }
            long tries = posterior.observations().stream()
                    .filter(o -> o.kind() == Observation.Kind.STILL_BAD)
                    .filter(o -> Repair.parts(o.about()).contains(part))
                    .count();
            left.removeIf(c -> mends(part, c)
                    && job.holds(part, tries, causes.get(c).repair().works()));
        }
        if (left.isEmpty()) {
            steps.add(step(id, Optional.empty()));
            return true;
        }
        Observation stillBad = Observation.stillBad(id);
        known = known.with(stillBad);
        believe();
        steps.add(step(id, Optional.of(stillBad)));
        Observation trial = job.complaint(left);
        learn(trial.about(), trial);
        return false;
    }

    private boolean isNeeded(String repair) {
        return left.stream().anyMatch(c -> mends(repair, c));
    }

    private boolean mends(String repair, int cause) {
        return library().causes().get(cause).repair().id().equals(repair);
    }

    private Repair alone(String id) {
        return library().causes().stream()
                .map(Cause::repair)
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
