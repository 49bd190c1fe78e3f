package wetside.diagnosis.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;

/**
 * A shop's closed jobs, and the weights of causes they make of the shipped ones: Dirichlet, old jobs discounted, never
 * below what was shipped.
 *
 * <pre>weight_c = (A prior_c + SUM_jobs d^age credit_c) / (A + SUM_jobs d^age)</pre>
 *
 * By complaint the same again, with the weights of all jobs as its prior. Jobs are kept, not sums, so one taken back leaves
 * no trace and a batch comes to the same as one after the other.
 *
 * @param jobs     closed
 * @param strength A: how many jobs the shipped weights count as
 * @param keeps    d: share of a job's weight that is left after a month
 */
public record Experience(List<ClosedJob> jobs, double strength, double keeps) {
    /** Fifty jobs outweigh what was shipped; a job counts half after nearly four years. */
    public static final Experience NONE = new Experience(List.of(), 50, 0.985);

    public Experience {
        jobs = List.copyOf(jobs);
        if (!(strength > 0) || !(keeps > 0 && keeps <= 1)) {
            throw new IllegalArgumentException("experience needs a strength above 0 and keeps 0 to 1 a month");
        }
    }

    public Experience with(ClosedJob job) {
        List<ClosedJob> more = new ArrayList<>(jobs);
        more.add(job);
        return new Experience(more, strength, keeps);
    }

    /** As if this job had never been. */
    public Experience without(ClosedJob job) {
        List<ClosedJob> fewer = new ArrayList<>(jobs);
        if (!fewer.remove(job)) {
            throw new IllegalArgumentException("was never closed here: " + job);
        }
        return new Experience(fewer, strength, keeps);
    }

    /** The library with weights from all jobs: for finding causes where the complaint is among the observations. */
    public Library applied(Library library, int month) {
        return weighted(library, month, job -> true, false);
    }

    /**
     * The library with weights from jobs with this complaint: where the complaint is known in words only and is not among
     * the observations, or it would count twice.
     */
    public Library applied(Library library, int month, String complaint) {
        return weighted(library, month, job -> job.complaint().equals(complaint), true);
    }

    /** Shares of causes as believed of this shop now, as a distribution. */
    public Counts shares(List<Cause> causes, int month) {
        double[] shipped = shipped(causes);
        double[] counts = counts(shipped, causes, month, job -> true);
        return Counts.of(counts);
    }

    /** What is left of a job's weight in a month. */
    public double left(ClosedJob job, int month) {
        return Math.pow(keeps, Math.max(0, month - job.month()));
    }

    /** A shop without jobs gets the very library it came with. */
    private Library weighted(Library library, int month, Predicate<ClosedJob> counts, boolean byComplaint) {
        if (jobs.isEmpty()) {
            return library;
        }
        List<Cause> causes = library.causes();
        double[] weights = normal(counts(shipped(causes), causes, month, job -> true));
        if (byComplaint) {
            weights = normal(counts(weights, causes, month, counts));
        }
        return library.weighted(weights);
    }

    private static double[] shipped(List<Cause> causes) {
        return normal(causes.stream().mapToDouble(Cause::weight).toArray());
    }

    private static double[] normal(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(w -> w / sum).toArray();
    }

    /** Prior counts and the jobs' together; what was thought impossible here stays so, and its jobs are not of here. */
    private double[] counts(double[] prior, List<Cause> causes, int month, Predicate<ClosedJob> which) {
        Map<String, Integer> place = new HashMap<>();
        double[] counts = new double[prior.length];
        for (int c = 0; c < counts.length; c++) {
            counts[c] = strength * prior[c];
            if (prior[c] > 0) {
                place.put(causes.get(c).id(), c);
            }
        }
        for (ClosedJob job : jobs) {
            if (which.test(job)) {
                double left = left(job, month);
                job.credit().forEach((cause, credit) -> {
                    Integer c = place.get(cause);
                    if (c != null) {
                        counts[c] += left * credit;
                    }
                });
            }
        }
        return counts;
    }
}
