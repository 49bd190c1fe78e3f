package wetside.department;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import wetside.casework.Candidates;
import wetside.diagnosis.learning.Counts;

/**
 * How jobs on one model go, those left out of the rates too: they were jobs all the same.
 *
 * @param jobs     done
 * @param nothing  of them with nothing wrong
 * @param settled  done long enough ago that the machine would be back by now, or back already
 * @param back     of those settled, taken in again within {@link #BACK}
 * @param toFind   hours from taking in to the finding
 * @param minutes  booked on a job, of those on which any are
 */
public record Course(int jobs, int nothing, int settled, int back, Spread toFind, Spread minutes) {
    /** A machine that is here again so soon is a come-back. */
    public static final Duration BACK = Duration.ofDays(90);

    /** Quarter, half, three quarters of jobs stay below these; NaN when there are none. */
    public record Spread(int jobs, double quarter, double half, double threeQuarters) {
        static Spread of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Spread(sorted.length, at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75));
        }

        private static double at(double[] sorted, double share) {
            if (sorted.length == 0) {
                return Double.NaN;
            }
            double place = share * (sorted.length - 1);
            int low = (int) Math.floor(place);
            int high = Math.min(sorted.length - 1, low + 1);
            return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
        }
    }

    static Course of(List<Counted> jobs, Map<Long, List<Instant>> taken, Map<Long, Double> minutes, Instant now) {
        int nothing = 0;
        int settled = 0;
        int back = 0;
        for (Counted job : jobs) {
            Instant closed = job.outcome().closed();
            nothing += job.outcome().finding().equals(Candidates.HEALTHY) ? 1 : 0;
            boolean again = taken.getOrDefault(job.outcome().machineId(), List.of()).stream()
                    .anyMatch(t -> t.isAfter(closed) && t.isBefore(closed.plus(BACK)));
            back += again ? 1 : 0;
            settled += again || closed.plus(BACK).isBefore(now) ? 1 : 0;
        }
        return new Course(
                jobs.size(),
                nothing,
                settled,
                back,
                spread(jobs, j -> hours(j.outcome().opened(), j.outcome().found())),
                spread(jobs, j -> minutes.getOrDefault(j.outcome().jobId(), Double.NaN)));
    }

    private static double hours(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / 60.0;
    }

    private static Spread spread(List<Counted> jobs, ToDoubleFunction<Counted> value) {
        return Spread.of(
                jobs.stream().mapToDouble(value).filter(v -> !Double.isNaN(v)).toArray());
    }

    /** Share of jobs with nothing wrong, nothing known before. */
    public Failures.Interval nothingShare() {
        return share(nothing, jobs);
    }

    /** Share of come-backs. */
    public Failures.Interval backShare() {
        return share(back, settled);
    }

    private static Failures.Interval share(int of, int all) {
        return Failures.Interval.of(Counts.of(1, 1).with(of, all - of), 0);
    }
}
