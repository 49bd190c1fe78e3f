package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.diagnosis.Question;

/**
 * Causes that no question still open tells apart.
 *
 * @param positions positions in the posterior, the likeliest first
 * @param parting a question that would part the first two but is not open to whoever asks; empty when there is none
 */
public record Alike(List<Integer> positions, Optional<Question> parting) {
    private static final int LEADING = 20;
    private static final double WORTH_NAMING = 0.01;

    /**
     * The groups of two or more among the leading causes in play.
     *
     * @param inPlay the causes
     * @param open what can still be asked
     * @param closed what could be asked by somebody else
     */
    public static List<Alike> of(InPlay inPlay, List<Foresight> open, List<Foresight> closed) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int a = 0; a < Math.min(inPlay.size(), LEADING); a++) {
            if (inPlay.known(a) && inPlay.shares()[a] > WORTH_NAMING) {
                int active = a;
                groups.stream()
                        .filter(group -> apart(open, group.get(0), active) < Parting.TOLD_APART)
                        .findFirst()
                        .ifPresentOrElse(
                                group -> group.add(active), () -> groups.add(new ArrayList<>(List.of(active))));
            }
        }
        return groups.stream()
                .filter(group -> group.size() > 1)
                .map(group -> new Alike(
                        group.stream().map(inPlay::position).toList(), parting(closed, group.get(0), group.get(1))))
                .toList();
    }

    private static double apart(List<Foresight> foresight, int one, int other) {
        double most = 0;
        for (Foresight f : foresight) {
            most = Math.max(most, f.apart(one, other));
            if (most >= Parting.TOLD_APART) {
                return most;
            }
        }
        return most;
    }

    private static Optional<Question> parting(List<Foresight> closed, int one, int other) {
        return closed.stream()
                .filter(f -> f.apart(one, other) >= Parting.TOLD_APART)
                .max((a, b) -> Double.compare(a.apart(one, other), b.apart(one, other)))
                .map(Foresight::question);
    }
}
