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
 * @param complaint what the owner says first
 * @param states    answers to every question, "don't know" where nobody could tell, by which hidden causes are left
 * @param luck      seeds which repairs hold
 */
public record Job(
        int number,
        List<Integer> truth,
        String sort,
        Observation complaint,
        Map<Set<Integer>, Map<String, Observation>> states,
        long luck) {

    /** What a question is answered while these causes are left. */
    Observation answer(Set<Integer> left, String question) {
        return states.get(left).get(question);
    }

    /** Whether a repair that would remove its cause holds at this try, the first being 0. */
    boolean holds(String repair, long tries, double works) {
        return new SplittableRandom(luck + repair.hashCode() + 104_729 * tries).nextDouble() < works;
    }
}
