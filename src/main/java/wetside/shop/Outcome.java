package wetside.shop;

import java.time.Instant;
import java.util.Map;
import java.util.Set;

/**
 * How a job that is done ended, as far as its timeline stands uncorrected.
 *
 * @param complaint the first sign kept at intake, "" for none
 * @param finding   the cause agreed on, by id
 * @param found     when that was put on the job
 * @param closed    when it was moved to done
 * @param passed    what was passed in proof after the finding and has not failed since
 * @param believed  what fault finding believed of each cause when it was closed, by the shipped rates; empty where the
 *                  finding is somebody's word
 * @param leftOut   why it shall teach nothing, "" where it may
 */
public record Outcome(
        long jobId,
        long number,
        long machineId,
        String complaint,
        String finding,
        Instant opened,
        Instant found,
        Instant closed,
        Set<String> passed,
        Map<String, Double> believed,
        String leftOut) {
    public Outcome {
        passed = Set.copyOf(passed);
        believed = Map.copyOf(believed);
    }
}
