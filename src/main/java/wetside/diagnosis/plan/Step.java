package wetside.diagnosis.plan;

import java.util.Comparator;
import java.util.List;
import wetside.diagnosis.Effort;
import wetside.diagnosis.inference.Posterior;

/**
 * Something that can be done next.
 *
 * @param sort what sort of step
 * @param id of the question or repair; empty for the call
 * @param words for people
 * @param effort what it takes
 * @param cost what the step itself costs now, panels still on included
 * @param expectedCost expected cost until mended when this is done next and the best plan follows
 * @param bits what is expected to be learnt about the cause [bit]
 * @param minutes time of the step now, panels still on included [min]
 * @param outcomes what each outcome would leave
 * @param reason why, in one line
 */
public record Step(
        Sort sort,
        String id,
        String words,
        Effort effort,
        double cost,
        double expectedCost,
        double bits,
        double minutes,
        List<Outcome> outcomes,
        String reason) {

    static final Comparator<Step> BEST_FIRST = Comparator.comparingDouble(Step::expectedCost)
            .thenComparing(Comparator.comparingDouble(Step::bitsPerMinute).reversed())
            .thenComparing(Step::id);

    /** Asking or measuring, repairing and seeing, handing over. */
    public enum Sort {
        ASK,
        REPAIR,
        CALL_IN
    }

    /**
     * One outcome.
     *
     * @param option the answer, or what became of the repair; empty for a range of numbers
     * @param low lower end of a range
     * @param high upper end of a range
     * @param chance probability of this outcome
     * @param leaves the likeliest causes afterwards
     */
    public record Outcome(String option, double low, double high, double chance, List<Posterior.Ranked> leaves) {}

    public double bitsPerMinute() {
        return bits / Math.max(minutes, 0.1);
    }

    Step expecting(double other) {
        return new Step(sort, id, words, effort, cost, other, bits, minutes, outcomes, reason);
    }
}
