package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wetside.diagnosis.Question;

/**
 * What would part two causes.
 *
 * @param question not asked yet
 * @param apart    how differently the two let one expect its answer: 0 not at all, 1 entirely
 */
public record Parting(Question question, double apart) {
    /** Two causes are told apart by a question whose outcomes they share less than this far. */
    static final double TOLD_APART = 0.3;

    /** The questions still open that part two causes of the library, what parts them best first. */
    public static List<Parting> of(Posterior posterior, int one, int other) {
        InPlay two = InPlay.between(posterior, one, other);
        List<Parting> found = new ArrayList<>();
        List<Question> questions = posterior.library().questions();
        for (int q = 0; q < questions.size(); q++) {
            if (posterior.observations().about(questions.get(q).id()).isEmpty()) {
                double apart = two.foresee(q).apart(0, 1);
                if (apart >= TOLD_APART) {
                    found.add(new Parting(questions.get(q), apart));
                }
            }
        }
        found.sort(Comparator.comparingDouble((Parting p) -> -p.apart)
                .thenComparingDouble(p -> p.question.effort().minutes()));
        return found;
    }
}
