package wetside.judging;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.diagnosis.Observation;

/**
 * One machine with something hidden in it. What it answers and which repairs will hold is settled beforehand, so that every
 * policy meets the very same job.
 *
 * @param number    of the job
 * @param truth     positions of the hidden causes; the position of "works as it should" when nothing is wrong
 * @param sort      what sort of job, for tables
 * @param complaints what the owner says, by which hidden causes are left
 * @param states    answers to every question, "don't know" where nobody could tell, by which hidden causes are left
 * @param luck      seeds which repairs hold
 */
public record Job(
        int number,
        List<Integer> truth,
        String sort,
        Map<Set<Integer>, Observation> complaints,
        Map<Set<Integer>, Map<String, Observation>> states,
        long luck) {

    /** What the owner calls about. */
    public Observation complaint() {
        return complaint(Set.copyOf(truth));
    }

    /** What is complained of, or seen at the trial after a repair, while these causes are left. */
    Observation complaint(Set<Integer> left) {
        return complaints.get(left);
    }

    /** What a question is answered while these causes are left. */
    Observation answer(Set<Integer> left, String question) {
        return states.get(left).get(question);
    }

    /** Whether a repair that would remove its cause holds at this try, the first being 0. */
    boolean holds(String repair, long tries, double works) {
        return new SplittableRandom(luck + repair.hashCode() + 104_729 * tries).nextDouble() < works;
    }
}
