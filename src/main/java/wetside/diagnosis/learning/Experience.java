package wetside.diagnosis.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        return weighted(library, learnt(shipped(library), library, month, job -> true));
    }

    /**
     * The library with weights from jobs with this complaint: where the complaint is known in words only and is not among
     * the observations, or it would count twice.
     */
    public Library applied(Library library, int month, String complaint) {
        double[] all = learnt(shipped(library), library, month, job -> true);
        return weighted(
                library, learnt(all, library, month, job -> job.complaint().equals(complaint)));
    }

    private static double[] shipped(Library library) {
        double sum = library.causes().stream().mapToDouble(Cause::weight).sum();
        return library.causes().stream().mapToDouble(c -> c.weight() / sum).toArray();
    }

    private double[] learnt(double[] prior, Library library, int month, Predicate<ClosedJob> counts) {
        double[] weight = new double[prior.length];
        double all = strength;
        for (int c = 0; c < weight.length; c++) {
            weight[c] = strength * prior[c];
        }
        for (ClosedJob job : jobs) {
            if (counts.test(job)) {
                double left = Math.pow(keeps, Math.max(0, month - job.month()));
                for (int c = 0; c < weight.length; c++) {
                    double credit = Optional.ofNullable(
                                    job.credit().get(library.causes().get(c).id()))
                            .orElse(0.0);
                    weight[c] += left * credit;
                    all += left * credit;
                }
            }
        }
        for (int c = 0; c < weight.length; c++) {
            weight[c] /= all;
        }
        return weight;
    }

    private static Library weighted(Library library, double[] weights) {
        List<Cause> causes = new ArrayList<>();
        for (int c = 0; c < weights.length; c++) {
            Cause cause = library.causes().get(c);
            causes.add(new Cause(cause.id(), cause.words(), weights[c], cause.component(), cause.repair()));
        }
        return new Library(causes, library.questions(), library.signatures());
    }
}
