package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;

/**
 * What each observation says for and against each cause. Two gauges that say the same share their weight, so an
 * observation is weighed twice: as the first thing learnt, and as the last after all others.
 */
public final class Evidence {
    /** Weight of an observation after which nothing can be said for a cause any more [nat]. */
    private static final double CERTAIN = 50;

    private final Posterior before;
    private final Posterior all;
    private final List<Observation> observations;
    private final List<Posterior> only;
    private final List<Posterior> without;

    private Evidence(Posterior all) {
        this.all = all;
        before = all.given(Observations.none());
        observations = all.observations().entered();
        // on all processors: nothing of one depends on another
        only = observations.parallelStream()
                .map(o -> all.given(Observations.of(o)))
                .toList();
        without = observations.parallelStream()
                .map(o -> all.given(all.observations().without(o)))
                .toList();
    }

    public static Evidence of(Posterior posterior) {
        return new Evidence(posterior);
    }

    /** How loudly an observation speaks. */
    public enum Strength {
        NONE,
        SLIGHT,
        SOME,
        STRONG
    }

    /**
     * The weight of one observation.
     *
     * @param observation the observation
     * @param first log odds it adds when it comes first
     * @param last log odds it adds when it comes last
     */
    public record Weight(Observation observation, double first, double last) {
        /** Mean of first and last [nat], positive for, negative against. */
        public double nats() {
            return 0.5 * (first + last);
        }

        public double decibans() {
            return 10 / Math.log(10) * nats();
        }

        /** In words: odds moved by ten are strong, by three some, by a quarter slight. */
        public Strength strength() {
            double odds = Math.exp(Math.abs(nats()));
            return odds >= 10
                    ? Strength.STRONG
                    : odds >= 3 ? Strength.SOME : odds >= 1.25 ? Strength.SLIGHT : Strength.NONE;
        }

        public boolean speaksFor() {
            return nats() > 0;
        }
    }

    /** Weights for a cause against all others together, the loudest first. */
    public List<Weight> of(int cause) {
        List<Weight> weights = new ArrayList<>();
        for (int i = 0; i < observations.size(); i++) {
            weights.add(weight(
                    i,
                    only.get(i).logOdds(cause) - before.logOdds(cause),
                    all.logOdds(cause) - without.get(i).logOdds(cause)));
        }
        return loudestFirst(weights);
    }

    /** Weights for a cause against one rival, the loudest first. */
    public List<Weight> of(int cause, int rival) {
        List<Weight> weights = new ArrayList<>();
        for (int i = 0; i < observations.size(); i++) {
            weights.add(weight(
                    i,
                    between(only.get(i), cause, rival) - between(before, cause, rival),
                    between(all, cause, rival) - between(without.get(i), cause, rival)));
        }
        return loudestFirst(weights);
    }

    /** Why not this cause: the observation that speaks most against it and for the best one, if any speaks at all. */
    public Optional<Weight> whyNot(int cause) {
        int best = all.best().position();
        return of(cause, best).stream()
                .filter(w -> w.nats() < 0 && w.strength() != Strength.NONE)
                .min(Comparator.comparingDouble(Weight::nats));
    }

    /** A cause ruled out for certain, or never believed in, has no finite odds to move. */
    private Weight weight(int i, double first, double last) {
        return new Weight(observations.get(i), bounded(first), bounded(last));
    }

    private static double bounded(double nats) {
        return Double.isNaN(nats) ? 0 : Math.max(-CERTAIN, Math.min(CERTAIN, nats));
    }

    private static double between(Posterior posterior, int cause, int rival) {
        return posterior.logWeight(cause) - posterior.logWeight(rival);
    }

    private static List<Weight> loudestFirst(List<Weight> weights) {
        weights.sort(Comparator.comparingDouble((Weight w) -> -Math.abs(w.nats())));
        return List.copyOf(weights);
    }
}
