package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wetside.diagnosis.Answering;
import wetside.diagnosis.inference.Foresight;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Posterior;

/** What the outcomes of a step would leave, and between which causes it decides. */
final class Outcomes {
    private static final int NAMED = 3;

    private final InPlay inPlay;

    Outcomes(InPlay inPlay) {
        this.inPlay = inPlay;
    }

    /** The outcomes of a question; neighbouring ranges that leave the same cause in front are one. */
    List<Step.Outcome> of(Foresight foresight) {
        List<Step.Outcome> outcomes = new ArrayList<>();
        boolean ranges = foresight.question().answering() instanceof Answering.Number;
        int from = 0;
        double[] joint = new double[inPlay.size()];
        for (int k = 0; k < foresight.outcomes(); k++) {
            for (int a = 0; a < joint.length; a++) {
                joint[a] += inPlay.shares()[a] * foresight.chance(a, k);
            }
            boolean last = k + 1 == foresight.outcomes();
            if (!ranges || last || leader(foresight, k) != leader(foresight, k + 1)) {
                double low = ranges ? foresight.low(from) : Double.NaN;
                double high = ranges ? foresight.high(k) : Double.NaN;
                outcomes.add(outcome(foresight.option(k), low, high, joint));
                from = k + 1;
                joint = new double[inPlay.size()];
            }
        }
        return outcomes;
    }

    /** What a repair leaves when it was in vain; when it worked there is nothing left to find. */
    List<Step.Outcome> of(double[] inVain, double chance) {
        return List.of(
                new Step.Outcome("mended", Double.NaN, Double.NaN, chance, List.of()),
                outcome("still bad", Double.NaN, Double.NaN, inVain));
    }

    private Step.Outcome outcome(String option, double low, double high, double[] joint) {
        double chance =
                IntStream.range(0, joint.length).mapToDouble(a -> joint[a]).sum();
        List<Posterior.Ranked> leaves = IntStream.range(0, joint.length)
                .filter(a -> joint[a] > 0)
                .mapToObj(a -> ranked(a, joint[a] / chance))
                .sorted(Comparator.comparingDouble(Posterior.Ranked::share).reversed())
                .limit(NAMED)
                .toList();
        return new Step.Outcome(option, low, high, chance, leaves);
    }

    private Posterior.Ranked ranked(int a, double share) {
        int position = inPlay.position(a);
        return new Posterior.Ranked(
                position, inPlay.posterior().id(position), inPlay.posterior().words(position), share);
    }

    private int leader(Foresight foresight, int outcome) {
        double[] shares = inPlay.shares();
        int best = 0;
        for (int a = 1; a < shares.length; a++) {
            if (shares[a] * foresight.chance(a, outcome) > shares[best] * foresight.chance(best, outcome)) {
                best = a;
            }
        }
        return best;
    }

    /** The two causes a question does most to tell apart. */
    String reason(Foresight foresight) {
        double[] shares = inPlay.shares();
        double most = 0;
        int one = -1;
        int other = -1;
        for (int a = 0; a < Math.min(shares.length, 12); a++) {
            for (int b = a + 1; b < Math.min(shares.length, 12); b++) {
                double worth = inPlay.known(a) && inPlay.known(b) ? shares[a] * shares[b] * foresight.apart(a, b) : 0;
                one = worth > most ? a : one;
                other = worth > most ? b : other;
                most = Math.max(most, worth);
            }
        }
        return one < 0 ? "tells nothing of the causes left" : "tells " + words(one) + " from " + words(other);
    }

    private String words(int a) {
        return inPlay.posterior().words(inPlay.position(a));
    }
}
