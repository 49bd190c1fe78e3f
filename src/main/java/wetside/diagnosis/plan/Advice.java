package wetside.diagnosis.plan;

import java.util.Comparator;
import java.util.List;
import wetside.diagnosis.Effort;
import wetside.diagnosis.inference.Alike;

/**
 * What to do next.
 *
 * @param steps everything that can be done, the least expected cost first
 * @param refused what this person may not do, though it is still open
 * @param alike causes that nothing this person can still ask will tell apart
 */
public record Advice(List<Step> steps, List<Refused> refused, List<Alike> alike) {

    /** A step that is open but not to this person. */
    public record Refused(String id, String words, Effort effort) {}

    /** The step with the least expected cost. */
    public Step best() {
        return steps.get(0);
    }

    /** The questions by what they teach per minute, whatever the repairs cost. */
    public List<Step> byInformation() {
        return steps.stream()
                .filter(step -> step.sort() == Step.Sort.ASK)
                .sorted(Comparator.comparingDouble(Step::bitsPerMinute).reversed())
                .toList();
    }
}
