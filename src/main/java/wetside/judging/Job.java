package wetside.judging;

import java.util.List;
import java.util.Map;
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
 * @param answers   to every question, "don't know" where nobody could tell
 * @param luck      seeds which repairs hold
 */
public record Job(
        int number,
        List<Integer> truth,
        String sort,
        Observation complaint,
        Map<String, Observation> answers,
        long luck) {

    /** Whether a repair that would remove its cause holds this time. */
    boolean holds(String repair, double works) {
        return new SplittableRandom(luck + repair.hashCode()).nextDouble() < works;
    }
}
