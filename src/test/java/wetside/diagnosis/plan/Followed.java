package wetside.diagnosis.plan;

import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.inference.Posterior;

/** The advice followed to the end, every outcome weighed by its chance: what the planner really costs. */
final class Followed {
    private static final double NEVER = 1e-9;

    private final Situation beginning;
    private int advices;

    Followed(Situation beginning) {
        this.beginning = beginning;
    }

    /** Expected cost until mended or handed over; the weights of the outcomes are the library's own. */
    double cost(Posterior posterior) {
        advices++;
        Step step = NextStep.advise(posterior, beginning.after(posterior.library(), posterior.observations()))
                .best();
        double sum = step.cost();
        if (step.sort() == Step.Sort.REPAIR) {
            double chance = step.outcomes().get(0).chance();
            return chance > 1 - NEVER ? sum : sum + (1 - chance) * after(posterior, Observation.stillBad(step.id()));
        }
        for (int k = 0; k < step.outcomes().size(); k++) {
            double chance = step.outcomes().get(k).chance();
            sum += chance > NEVER ? chance * after(posterior, Observation.choice(step.id(), k)) : 0;
        }
        return sum;
    }

    private double after(Posterior posterior, Observation observation) {
        Observations more = posterior.observations().with(observation);
        return cost(posterior.given(more));
    }

    /** How many steps were advised on all ways together. */
    int advices() {
        return advices;
    }
}
