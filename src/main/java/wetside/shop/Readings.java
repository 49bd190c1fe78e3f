package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Readings as found and as left. */
public final class Readings {
    private final Shop shop;
    private final Clock clock;

    public Readings(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** Keeps a reading and its entry in the timeline, with what was expected of it then. */
    public void take(long number, Reading.Taken taken, String who, long version) {
        String now = clock.instant().toString();
        shop.change(h -> {
            long job = Jobs.touch(h, number, version, now);
            long id = h.createUpdate("INSERT INTO reading (job_id, phase, asked, said, verdict, who, at)"
                            + " VALUES (:job, :phase, :asked, :said, :verdict, :who, :now)")
                    .bind("job", job)
                    .bindMethods(taken)
                    .bind("who", who)
                    .bind("now", now)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            String verdict = taken.verdict().isEmpty() ? "" : ", " + taken.verdict();
            String words = taken.asked() + ": " + taken.said() + verdict;
            Jobs.add(h, job, now, "reading", who, words, detail(h, id, taken), null);
            return null;
        });
    }

    private static String detail(Handle h, long id, Reading.Taken taken) {
        return h.createQuery("SELECT json_object('reading', :id, 'expected', :expected, 'value', :value,"
                        + " 'low', :low, 'high', :high)")
                .bind("id", id)
                .bindMethods(taken)
                .mapTo(String.class)
                .one();
    }

    /** All of a job that no correction has set aside, in order. */
    public List<Reading> of(long jobId) {
        return shop.read(h -> h.createQuery("SELECT r.id, r.phase, r.asked, r.said, r.verdict, r.who, r.at,"
                        + " e.id AS entry_id, json_extract(e.detail, '$.expected') AS expected,"
                        + " json_extract(e.detail, '$.value') AS value, json_extract(e.detail, '$.low') AS low,"
                        + " json_extract(e.detail, '$.high') AS high FROM entry e JOIN reading r ON r.id = json_extract(e.detail, '$.reading')"
                        + " WHERE e.job_id = :job AND e.sort = 'reading'"
                        + " AND NOT EXISTS (SELECT 1 FROM entry c WHERE c.job_id = e.job_id AND c.corrects = e.id)"
                        + " ORDER BY e.id")
                .bind("job", jobId)
                .map(Rows.of(Reading.class))
                .list());
    }

    /**
     * What a machine read when it left here well: as left on jobs that are done, nothing odd about them, and nothing found
     * or fitted since; the newest of each.
     *
     * @param exceptJob the job somebody works on now
     * @param since     older ones say nothing of today any more
     */
    public List<Reading> whenWell(long machineId, long exceptJob, Instant since) {
        List<Reading> all =
                shop.read(h -> h.createQuery("SELECT r.id, r.phase, r.asked, r.said, r.verdict, r.who, r.at,"
                                + " e.id AS entry_id, json_extract(e.detail, '$.expected') AS expected,"
                                + " json_extract(e.detail, '$.value') AS value, json_extract(e.detail, '$.low') AS low,"
                                + " json_extract(e.detail, '$.high') AS high FROM job j"
                                + " JOIN entry e ON e.job_id = j.id AND e.sort = 'reading'"
                                + " JOIN reading r ON r.id = json_extract(e.detail, '$.reading')"
                                + " WHERE j.machine_id = :machine AND j.id <> :job AND j.state = 'DONE'"
                                + " AND r.phase = 'left' AND r.verdict IN ('', 'as expected') AND r.at >= :since"
                                + " AND NOT EXISTS (SELECT 1 FROM entry c WHERE c.job_id = e.job_id AND c.corrects = e.id)"
                                + " AND NOT EXISTS (SELECT 1 FROM job k JOIN entry f ON f.job_id = k.id"
                                + " WHERE k.machine_id = j.machine_id AND f.sort IN ('finding', 'part') AND f.at > r.at"
                                + " AND (k.id <> :job OR f.sort = 'part')) ORDER BY r.at")
                        .bind("machine", machineId)
                        .bind("job", exceptJob)
                        .bind("since", since.toString())
                        .map(Rows.of(Reading.class))
                        .list());
        Map<String, Reading> newest = new LinkedHashMap<>();
        all.forEach(r -> newest.put(r.asked(), r));
        return List.copyOf(newest.values());
    }
}
