package wetside.shop;

import java.time.Instant;

/**
 * A job, from complaint to signature.
 *
 * @param number     what people call it
 * @param complaint  in the owner's words
 * @param technician who has it, "" when nobody
 * @param due        ISO date, "" when none
 * @param moved      when it last changed state or got an entry
 * @param finding    the cause agreed on, "" before
 */
public record Job(
        long id,
        long number,
        long machineId,
        JobState state,
        String complaint,
        String technician,
        String due,
        Instant opened,
        Instant moved,
        String finding,
        long version) {}
