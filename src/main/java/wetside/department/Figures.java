package wetside.department;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import wetside.shop.Outcomes;

/**
 * What is worked out of one model's jobs.
 *
 * @param exposure    how long its machines have been owned, as far as that is known
 * @param failures    what fails how often, with what that follows from
 * @param course      how its jobs go
 * @param weight      how much its jobs count together
 * @param newestFirst its jobs, the one closed last first
 */
public record Figures(
        Practice practice,
        Exposure exposure,
        Failures failures,
        Course course,
        double weight,
        List<Counted> newestFirst) {
    static Figures of(Practice practice, Exposure exposure, Outcomes outcomes, Instant at) {
        String file = practice.file();
        return new Figures(
                practice,
                exposure,
                Failures.of(practice, exposure, at),
                Course.of(practice.jobs(), outcomes.taken(file), outcomes.minutes(file), at),
                practice.weight(at),
                practice.jobs().stream()
                        .sorted(Comparator.comparing((Counted j) -> j.outcome().closed())
                                .reversed())
                        .toList());
    }
}
