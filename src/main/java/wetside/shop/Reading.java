package wetside.shop;

import java.time.Instant;

/**
 * What somebody read on a job.
 *
 * @param phase    found (as it came), left (as it leaves)
 * @param asked    id of the procedure
 * @param said     as the procedure is answered, in its own words or unit
 * @param verdict  "as expected", "low", "high", "not as expected"; "" when nothing was expected
 * @param entryId  its entry in the timeline
 * @param expected what was expected when it was read, in words; null when nothing was
 * @param value    the number read, in the unit of the procedure; null for words
 * @param low      where the expected range began; null for words
 * @param high     where it ended
 */
public record Reading(
        long id,
        String phase,
        String asked,
        String said,
        String verdict,
        String who,
        Instant at,
        long entryId,
        String expected,
        Double value,
        Double low,
        Double high) {
    /** What somebody read, before it is kept. */
    public record Taken(
            String phase,
            String asked,
            String said,
            String verdict,
            String expected,
            Double value,
            Double low,
            Double high) {
        /** Without anything expected. */
        public Taken(String phase, String asked, String said) {
            this(phase, asked, said, "", null, null, null, null);
        }
    }
}
