package wetside.department;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wetside.casework.Candidates;
import wetside.diagnosis.Cause;
import wetside.diagnosis.learning.Counts;
import wetside.diagnosis.learning.Rate;

/**
 * What fails how often on one model: as shipped, and with what the shop has closed.
 *
 * @param all the likeliest first, that nothing is wrong among them
 */
public record Failures(List<Failure> all) {
    /** Causes rarer than this, and without a job, get no interval. */
    private static final double WORTH = 0.003;

    /**
     * One cause.
     *
     * @param shipped share of jobs as shipped
     * @param share   as believed now
     * @param jobs    how many of the shop's jobs tell of it, old and unproved ones in part
     * @param perHour how often in an hour of ownership; null where no machine's date of purchase is known
     */
    public record Failure(String id, String words, double shipped, Interval share, double jobs, Interval perHour) {
        public boolean isNone() {
            return id.equals(Candidates.HEALTHY);
        }
    }

    /**
     * Something not known exactly: 95 % of the belief lie from low to high, half of it from core to coreTo; NaN where that
     * was not worked out.
     */
    public record Interval(double low, double core, double mean, double coreTo, double high) {
        static Interval of(Counts counts, int place) {
            return new Interval(
                    counts.quantile(place, 0.025),
                    counts.quantile(place, 0.25),
                    counts.mean(place),
                    counts.quantile(place, 0.75),
                    counts.quantile(place, 0.975));
        }

        /** For what is not worth the work: only about where it lies. */
        static Interval about(double mean) {
            return new Interval(Double.NaN, Double.NaN, mean, Double.NaN, Double.NaN);
        }

        static Interval of(Rate rate) {
            return new Interval(rate.quantile(0.025), Double.NaN, rate.mean(), Double.NaN, rate.quantile(0.975));
        }
    }

    /** Empty when the model's file is gone. */
    static Failures of(Practice practice, Exposure exposure, Instant now) {
        List<Failure> all = new ArrayList<>();
        practice.model().ifPresent(model -> {
            List<Cause> causes = model.causes();
            double strength = practice.experience().strength();
            double sum = causes.stream().mapToDouble(Cause::weight).sum();
            double faulty = causes.stream()
                    .filter(c -> !c.id().equals(Candidates.HEALTHY))
                    .mapToDouble(Cause::weight)
                    .sum();
            Counts counts = practice.experience().shares(causes, Counting.month(now));
            for (int c = 0; c < causes.size(); c++) {
                Cause cause = causes.get(c);
                double shipped = cause.weight() / sum;
                double jobs = Math.max(0, counts.count(c) - strength * shipped);
                boolean worth = jobs > 0 || counts.mean(c) > WORTH;
                Interval perHour = worth && exposure.hours() > 0 && !cause.id().equals(Candidates.HEALTHY)
                        ? Interval.of(rate(cause, cause.weight() / faulty, model.rate(), practice, exposure))
                        : null;
                all.add(new Failure(
                        cause.id(),
                        cause.words(),
                        shipped,
                        worth ? Interval.of(counts, c) : Interval.about(counts.mean(c)),
                        jobs,
                        perHour));
            }
        });
        all.sort(Comparator.comparingDouble((Failure f) -> -f.share().mean()));
        return new Failures(List.copyOf(all));
    }

    /** The shipped rates as so many jobs again: that many failures in the time they take by those rates. */
    private static Rate rate(Cause cause, double share, double all, Practice practice, Exposure exposure) {
        double strength = practice.experience().strength();
        double events = practice.jobs().stream()
                .filter(exposure::holds)
                .mapToDouble(j -> j.closed().credit().getOrDefault(cause.id(), 0.0))
                .sum();
        return new Rate(strength * share, strength / all).with(events, exposure.hours());
    }
}
