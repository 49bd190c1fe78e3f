package wetside.shop;

import java.time.Instant;

/**
 * An answer of fault finding, in the words it was given in.
 *
 * @param asked     the reading, or what was done
 * @param takenBack when it was taken back or answered anew, "" while it stands
 */
public record Answer(long id, long jobId, String asked, String said, String who, Instant at, String takenBack) {}
