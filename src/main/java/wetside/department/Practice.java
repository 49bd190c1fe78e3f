package wetside.department;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wetside.diagnosis.Library;
import wetside.diagnosis.learning.ClosedJob;
import wetside.diagnosis.learning.Experience;

/**
 * All a shop has closed on one model.
 *
 * @param edition    another whenever anything of it has changed
 * @param jobs       in the order they were taken in, those left out too
 * @param experience what those that count add up to
 */
public record Practice(String file, long edition, Optional<Model> model, List<Counted> jobs, Experience experience) {
    static Practice of(String file, long edition, Optional<Model> model, List<Counted> jobs) {
        List<ClosedJob> counting =
                jobs.stream().filter(Counted::counts).map(Counted::closed).toList();
        return new Practice(
                file,
                edition,
                model,
                jobs,
                new Experience(counting, Experience.NONE.strength(), Experience.NONE.keeps()));
    }

    /** The month of a moment, as experience counts them. */
    public static int month(Instant at) {
        return Counting.month(at);
    }

    /** Jobs that count, in whole or in part. */
    public int counting() {
        return experience.jobs().size();
    }

    /**
     * The library with this shop's rates; the very same one where no job counts.
     *
     * @param complaint the sign kept at intake while it is not among the answers, "" for none
     */
    public Library on(Library library, String complaint, Instant now) {
        int month = Counting.month(now);
        return complaint.isEmpty() ? experience.applied(library, month) : experience.applied(library, month, complaint);
    }

    /** How much all jobs count at a time. */
    public double weight(Instant now) {
        int month = Counting.month(now);
        return jobs.stream().mapToDouble(j -> weight(j, month)).sum();
    }

    /** How much a job counts at a time, from 0 to 1. */
    public double weight(Counted job, Instant now) {
        return weight(job, Counting.month(now));
    }

    private double weight(Counted job, int month) {
        return job.closed().whole() * experience.left(job.closed(), month);
    }
}
