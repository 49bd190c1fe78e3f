package wetside.judging;

import java.util.List;
import wetside.diagnosis.Cause;
import wetside.diagnosis.inference.Posterior;

/**
 * What was believed at some moment of a job, held against the truth.
 *
 * @param told     what stood first
 * @param top      its share
 * @param right    whether it was a hidden cause
 * @param rank     place of the best placed hidden cause, from 1
 * @param repair   whether what stood first is mended by the repair of a hidden cause
 * @param ofTruth  share of the best placed hidden cause
 * @param brier    sum over causes of (share - 1 if true)², 0 to 2
 * @param covered  whether the causes that together hold 90 % contain it
 */
public record Belief(
        String told, double top, boolean right, int rank, boolean repair, double ofTruth, double brier, boolean covered) {
    private static final double CREDIBLE = 0.9;

    static Belief of(Posterior posterior, List<Integer> truth) {
        List<Posterior.Ranked> ranking = posterior.ranking();
        int rank = 0;
        while (!truth.contains(ranking.get(rank).position())) {
            rank++;
        }
        Posterior.Ranked best = ranking.get(0);
        Posterior.Ranked hidden = ranking.get(rank);
        double brier = 0;
        for (Posterior.Ranked r : ranking) {
            double off = r.share() - (r == hidden ? 1 : 0);
            brier += off * off;
        }
        double before = ranking.stream().limit(rank).mapToDouble(Posterior.Ranked::share).sum();
        return new Belief(
                best.id(),
                best.share(),
                rank == 0,
                rank + 1,
                best.position() < posterior.somethingElse()
                        && mends(posterior.library().causes().get(best.position()), posterior, truth),
                hidden.share(),
                brier,
                before < CREDIBLE);
    }

    private static boolean mends(Cause first, Posterior posterior, List<Integer> truth) {
        return truth.stream()
                .anyMatch(t -> posterior.library().causes().get(t).repair().id().equals(first.repair().id()));
    }
}
