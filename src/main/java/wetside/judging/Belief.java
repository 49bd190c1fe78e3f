package wetside.judging;

import java.util.List;
import wetside.diagnosis.Cause;
import wetside.diagnosis.inference.Posterior;

/**
 * What was believed at some moment of a job, held against the truth.
 *
 * @param told     what stood first
 * @param top      its share
 * @param right    whether it was the truth
 * @param rank     place of the truth, from 1; two hidden causes are one truth
 * @param repair   whether what stood first is mended by the repair of a hidden cause
 * @param ofTruth  share of the truth
 * @param brier    sum over causes of (share - 1 if true)², 0 to 2
 * @param covered  whether the causes that together hold 90 % contain it
 * @param two      share of all pairs of causes together
 */
public record Belief(
        String told,
        double top,
        boolean right,
        int rank,
        boolean repair,
        double ofTruth,
        double brier,
        boolean covered,
        double two) {
    private static final double CREDIBLE = 0.9;

    /** A pair that was not among those run. */
    private static final Posterior.Ranked NOT_THOUGHT_OF = new Posterior.Ranked(-1, "", "", 0);

    static Belief of(Posterior posterior, List<Integer> truth) {
        List<Posterior.Ranked> ranking = posterior.ranking();
        String id = id(posterior, truth);
        int rank = 0;
        while (rank < ranking.size() && !ranking.get(rank).id().equals(id)) {
            rank++;
        }
        Posterior.Ranked best = ranking.get(0);
        Posterior.Ranked hidden = rank < ranking.size() ? ranking.get(rank) : NOT_THOUGHT_OF;
        double brier = 0;
        for (Posterior.Ranked r : ranking) {
            double off = r.share() - (r == hidden ? 1 : 0);
            brier += off * off;
        }
        brier += hidden == NOT_THOUGHT_OF ? 1 : 0;
        double before = ranking.stream()
                .limit(rank)
                .mapToDouble(Posterior.Ranked::share)
                .sum();
        return new Belief(
                best.id(),
                best.share(),
                rank == 0,
                rank + 1,
                best.position() < posterior.somethingElse()
                        && mends(posterior.library().causes().get(best.position()), posterior, truth),
                hidden.share(),
                brier,
                before < CREDIBLE,
                two(ranking));
    }

    private static double two(List<Posterior.Ranked> ranking) {
        return ranking.stream()
                .filter(r -> Cause.each(r.id()).length > 1)
                .mapToDouble(Posterior.Ranked::share)
                .sum();
    }

    private static String id(Posterior posterior, List<Integer> truth) {
        String first = posterior.id(truth.get(0));
        return truth.size() == 1 ? first : Cause.pair(first, posterior.id(truth.get(1)));
    }

    private static boolean mends(Cause first, Posterior posterior, List<Integer> truth) {
        return truth.stream()
                .map(t -> posterior.library().causes().get(t).repair().id())
                .anyMatch(first.repair().parts()::contains);
    }
}
