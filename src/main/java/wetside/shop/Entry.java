package wetside.shop;

import java.time.Instant;

/**
 * Something that happened on a job. Never changed: a correction is another entry.
 *
 * @param sort     what kind of thing: said, state, reading, work, part, photo, finding, proof, note
 * @param detail   JSON
 * @param corrects the entry this one corrects, null for none
 */
public record Entry(
        long id, long jobId, Instant at, String sort, String who, String words, String detail, Long corrects) {}
