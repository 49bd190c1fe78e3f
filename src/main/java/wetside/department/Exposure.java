package wetside.department;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.shop.Outcomes;

/**
 * How long machines of a model have been owned, as far as the register says when they were bought.
 *
 * @param hours    of all of them together
 * @param since    when each was bought, by machine
 * @param machines on the register, those without a date too
 */
public record Exposure(double hours, Map<Long, Instant> since, int machines) {
    private static final double SECONDS = 3600;

    static Exposure of(List<Outcomes.Bought> register, Instant now) {
        Map<Long, Instant> since = new HashMap<>();
        double hours = 0;
        for (Outcomes.Bought m : register) {
            Instant bought = date(m.bought()).orElse(now);
            if (bought.isBefore(now)) {
                since.put(m.machineId(), bought);
                hours += (now.getEpochSecond() - bought.getEpochSecond()) / SECONDS;
            }
        }
        return new Exposure(hours, Map.copyOf(since), register.size());
    }

    /** "2021", "2021-05" or "2021-05-17"; the middle of what is not said. */
    static Optional<Instant> date(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        String whole = text.length() == 4 ? text + "-07-01" : text.length() == 7 ? text + "-15" : text;
        try {
            return Optional.of(
                    LocalDate.parse(whole).atStartOfDay(ZoneOffset.UTC).toInstant());
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Whether a job tells of time that is counted here. */
    boolean holds(Counted job) {
        Instant bought = since.get(job.outcome().machineId());
        return bought != null && !job.outcome().opened().isBefore(bought);
    }
}
