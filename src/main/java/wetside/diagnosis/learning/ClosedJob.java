package wetside.diagnosis.learning;

import java.util.HashMap;
import java.util.Map;
import wetside.diagnosis.Cause;

/**
 * What a job that is over says about causes.
 *
 * @param complaint what sort of complaint it was, in the shop's words
 * @param month     when, counted in months from any beginning
 * @param credit    how much of the job each cause takes, by id; adds up to one at most, the rest is nobody's
 */
public record ClosedJob(String complaint, int month, Map<String, Double> credit) {
    public ClosedJob {
        credit = Map.copyOf(credit);
    }

    /** Closed with the cause seen or proved; of two causes at once each takes half. */
    public static ClosedJob proved(String complaint, int month, String cause) {
        return new ClosedJob(complaint, month, shared(Map.of(cause, 1.0)));
    }

    /** Closed without the cause being seen: all causes share it by what was believed of them. */
    public static ClosedJob unproved(String complaint, int month, Map<String, Double> believed) {
        return new ClosedJob(complaint, month, shared(believed));
    }

    private static Map<String, Double> shared(Map<String, Double> among) {
        Map<String, Double> credit = new HashMap<>();
        among.forEach((id, share) -> {
            String[] causes = Cause.each(id);
            for (String cause : causes) {
                credit.merge(cause, share / causes.length, Double::sum);
            }
        });
        return credit;
    }

    /** All the credit it gives. */
    public double whole() {
        return credit.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
