package wetside.shop;

import java.time.Clock;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * What is known on a job: answers are given, changed and taken back, never erased. A repair in vain is an answer as well,
 * {@link #STILL_BAD}; what was answered before it stands beside what is answered after it, as it was another machine then.
 */
public final class Answered {
    /** What is said of a repair that has not put everything right. */
    public static final String STILL_BAD = "still bad";

    private static final String LAST_REPAIR = "COALESCE((SELECT MAX(id) FROM answer WHERE job_id = :job AND said = '"
            + STILL_BAD + "' AND taken_back = ''), 0)";

    private static final String LAST_OF_IT =
            "id = (SELECT MAX(id) FROM answer WHERE job_id = :job AND asked = :asked AND taken_back = '')";

    private final Shop shop;
    private final Clock clock;

    public Answered(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** Those that stand, in the order they were given. */
    public List<Answer> standing(long jobId) {
        return shop.read(h -> h.createQuery("SELECT * FROM answer WHERE job_id = :job AND taken_back = '' ORDER BY id")
                .bind("job", jobId)
                .map(Rows.of(Answer.class))
                .list());
    }

    /** All there ever were, those taken back too. */
    public List<Answer> all(long jobId) {
        return shop.read(h -> h.createQuery("SELECT * FROM answer WHERE job_id = :job ORDER BY id")
                .bind("job", jobId)
                .map(Rows.of(Answer.class))
                .list());
    }

    /** Gives an answer in the place of the one there was to the same since the last repair. */
    public void give(long jobId, String asked, String said, String who) {
        shop.change(h -> {
            takeBack(h, jobId, asked, "id > " + LAST_REPAIR);
            h.createUpdate("INSERT INTO answer (job_id, asked, said, who, at) VALUES (:job, :asked, :said, :who, :now)")
                    .bind("job", jobId)
                    .bind("asked", asked)
                    .bind("said", said)
                    .bind("who", who)
                    .bind("now", now())
                    .execute();
            moved(h, jobId);
            return null;
        });
    }

    /** Takes the last answer to something back; nothing happens when none stands. */
    public void takeBack(long jobId, String asked) {
        shop.change(h -> {
            takeBack(h, jobId, asked, LAST_OF_IT);
            moved(h, jobId);
            return null;
        });
    }

    private void takeBack(Handle h, long jobId, String asked, String which) {
        h.createUpdate("UPDATE answer SET taken_back = :now WHERE job_id = :job AND asked = :asked AND taken_back = ''"
                        + " AND " + which)
                .bind("now", now())
                .bind("job", jobId)
                .bind("asked", asked)
                .execute();
    }

    /** Puts a finding on the job and its timeline. */
    public void found(long jobId, String finding, String who, String words, String detail) {
        shop.change(h -> {
            Jobs.add(h, jobId, now(), "finding", who, words, detail, null);
            h.createUpdate("UPDATE job SET finding = :finding, moved = :now, version = version + 1 WHERE id = :job")
                    .bind("finding", finding)
                    .bind("now", now())
                    .bind("job", jobId)
                    .execute();
            return null;
        });
    }

    private void moved(Handle h, long jobId) {
        h.createUpdate("UPDATE job SET moved = :now WHERE id = :job")
                .bind("now", now())
                .bind("job", jobId)
                .execute();
    }

    private String now() {
        return clock.instant().toString();
    }
}
