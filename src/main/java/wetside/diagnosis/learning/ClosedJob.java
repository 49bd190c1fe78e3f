package wetside.diagnosis.learning;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.Posterior;

/**
 * What a job that is over says about causes.
 *
 * @param complaint what sort of complaint it was, in the shop's words
 * @param month     when, counted in months from any beginning
 * @param credit    how much of the job each cause takes, by id; adds up to one
 */
public record ClosedJob(String complaint, int month, Map<String, Double> credit) {
    public ClosedJob {
        credit = Map.copyOf(credit);
    }

    /** Closed with the cause seen or proved. */
    public static ClosedJob proved(String complaint, int month, String cause) {
        return new ClosedJob(complaint, month, Map.of(cause, 1.0));
    }

    /**
     * Closed because it works again after some repairs, the cause never seen: the causes these repairs remove share it by
     * what was believed of them; all causes do when none was done.
     */
    public static ClosedJob unproved(String complaint, int month, Posterior believed, Collection<String> repairs) {
        Map<String, Double> credit = new HashMap<>();
        double all = 0;
        for (int c = 0; c < believed.somethingElse(); c++) {
            Cause cause = believed.library().causes().get(c);
            Repair repair = cause.repair();
            boolean done = repairs.isEmpty() || repairs.containsAll(repair.parts());
            double share = done ? believed.share(c) * repair.works() : 0;
            if (share > 0) {
                credit.put(cause.id(), share);
                all += share;
            }
        }
        double sum = all;
        credit.replaceAll((id, share) -> share / sum);
        return new ClosedJob(complaint, month, credit);
    }
}
