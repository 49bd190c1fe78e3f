package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * How jobs ended, told by their timelines. Nothing is added up here: a job moved out of done, or whose finding or proof was
 * corrected, is read as what it is now.
 */
public final class Outcomes {
    private static final String FROM = " FROM job j JOIN machine m ON m.id = j.machine_id";
    private static final String DONE = " WHERE m.file = :file AND j.state = 'DONE' AND j.finding <> ''";
    /** Few jobs are looked up by their own ids; joined to nothing, the file does not tempt the planner to go by models. */
    private static final String THESE =
            " WHERE j.id IN (<jobs>) AND (m.file || '') = :file AND j.state = 'DONE' AND j.finding <> ''";

    private static final String TELLING =
            "(e.sort IN ('signs', 'state', 'finding', 'proof', 'counts') OR e.corrects IS NOT NULL)";

    private static final String SHOP = "Fault finding by this shop's rates again";
    private static final String SHIPPED = "Fault finding by shipped rates only";
    private static final String LEFT_OUT = "Left out of the learnt rates: ";

    private final Shop shop;
    private final Clock clock;

    public Outcomes(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** A job that is done, before its timeline is read. */
    record Done(long id, long number, long machineId, String finding, Instant opened) {}

    /** An entry that tells how a job ended. */
    record Told(long id, long jobId, Instant at, String sort, String words, String detail, Long corrects) {}

    /** Machines a model's file is said of on the register, and when each was bought, "" where nobody has said. */
    public record Bought(long machineId, String bought) {}

    /** A stamp that moves with everything that happens on any job. */
    public long stamp() {
        return shop.read(h -> h.createQuery("SELECT COALESCE(MAX(id), 0) FROM entry")
                .mapTo(Long.class)
                .one());
    }

    /** Jobs on which something has happened since a stamp. */
    public Set<Long> since(long stamp) {
        // Without DISTINCT, which would be answered from the index of all entries by job, read from end to end.
        return shop.read(h -> h.createQuery("SELECT job_id FROM entry WHERE id > :stamp")
                .bind("stamp", stamp)
                .mapTo(Long.class)
                .collect(Collectors.toSet()));
    }

    /** Jobs done by the machine file they are of, the most first. */
    public Map<String, Long> models() {
        return shop.read(h -> {
            Map<String, Long> models = new LinkedHashMap<>();
            h.createQuery("SELECT m.file, COUNT(*) AS jobs" + FROM
                            + " WHERE j.state = 'DONE' AND j.finding <> '' GROUP BY m.file ORDER BY jobs DESC, m.file")
                    .map((r, c) -> models.put(r.getString(1), r.getLong(2)))
                    .list();
            return models;
        });
    }

    /** All of a model, in the order they were taken in. */
    public List<Outcome> of(String file) {
        return read(file, DONE, List.of());
    }

    /** Of these jobs those of a model that are done. */
    public List<Outcome> of(String file, Collection<Long> jobs) {
        return jobs.isEmpty() ? List.of() : read(file, THESE, List.copyOf(jobs));
    }

    private List<Outcome> read(String file, String which, List<Long> jobs) {
        return shop.read(h -> {
            List<Done> done = bound(
                            h,
                            "SELECT j.id, j.number, j.machine_id, j.finding, j.opened" + FROM + which
                                    + " ORDER BY j.id",
                            file,
                            jobs)
                    .map(Rows.of(Done.class))
                    .list();
            Map<Long, List<Told>> told = new HashMap<>();
            bound(
                            h,
                            "SELECT e.id, e.job_id, e.at, e.sort, e.words, e.detail, e.corrects" + FROM
                                    + " JOIN entry e ON e.job_id = j.id" + which + " AND " + TELLING
                                    + " ORDER BY e.job_id, e.id",
                            file,
                            jobs)
                    .map((r, c) -> {
                        long corrects = r.getLong(7);
                        Told t = new Told(
                                r.getLong(1),
                                r.getLong(2),
                                Instant.parse(r.getString(3)),
                                r.getString(4),
                                r.getString(5),
                                r.getString(6),
                                r.wasNull() ? null : corrects);
                        told.computeIfAbsent(t.jobId(), id -> new ArrayList<>()).add(t);
                        return t;
                    })
                    .list();
            Map<Long, Map<String, Double>> believed = believed(h, which, file, jobs);
            return done.stream()
                    .flatMap(d -> new Ending(d, told.getOrDefault(d.id(), List.of()), believed).outcome().stream())
                    .toList();
        });
    }

    private static Query bound(Handle h, String sql, String file, List<Long> jobs) {
        Query query = h.createQuery(sql).bind("file", file);
        return jobs.isEmpty() ? query : query.bindList("jobs", jobs);
    }

    /** Beliefs kept with findings, by entry. */
    private static Map<Long, Map<String, Double>> believed(Handle h, String which, String file, List<Long> jobs) {
        Map<Long, Map<String, Double>> all = new HashMap<>();
        bound(
                        h,
                        "SELECT e.id, b.key, b.value" + FROM + " JOIN entry e ON e.job_id = j.id, json_each(e.detail,"
                                + " '$.believed') b" + which + " AND e.sort = 'finding' AND " + TELLING,
                        file,
                        jobs)
                .map((r, c) ->
                        all.computeIfAbsent(r.getLong(1), id -> new HashMap<>()).put(r.getString(2), r.getDouble(3)))
                .list();
        return all;
    }

    /** When machines of a model were bought. */
    public List<Bought> bought(String file) {
        return shop.read(
                h -> h.createQuery("SELECT id AS machine_id, bought FROM machine WHERE file = :file ORDER BY id")
                        .bind("file", file)
                        .map(Rows.of(Bought.class))
                        .list());
    }

    /** When jobs on machines of a model were taken in, by machine, in order. */
    public Map<Long, List<Instant>> taken(String file) {
        return shop.read(h -> {
            Map<Long, List<Instant>> all = new HashMap<>();
            h.createQuery("SELECT j.machine_id, j.opened" + FROM + " WHERE m.file = :file ORDER BY j.opened")
                    .bind("file", file)
                    .map((r, c) -> all.computeIfAbsent(r.getLong(1), id -> new ArrayList<>())
                            .add(Instant.parse(r.getString(2))))
                    .list();
            return all;
        });
    }

    /** Minutes booked on jobs of a model that are done, by job. */
    public Map<Long, Double> minutes(String file) {
        return shop.read(h -> {
            Map<Long, Double> all = new HashMap<>();
            h.createQuery("SELECT w.job_id, SUM(w.minutes)" + FROM + " JOIN work w ON w.job_id = j.id" + DONE
                            + " GROUP BY w.job_id")
                    .bind("file", file)
                    .map((r, c) -> all.put(r.getLong(1), r.getDouble(2)))
                    .list();
            return all;
        });
    }

    /** Lets a job teach nothing, or, without a reason, teach again; its timeline keeps both. */
    public void leaveOut(long number, String reason, String who) {
        String now = clock.instant().toString();
        shop.change(h -> {
            String words = reason.isEmpty() ? "Counts in the learnt rates again" : LEFT_OUT + reason;
            Jobs.add(h, Jobs.id(h, number), now, "counts", who, words, "{}", null);
            return null;
        });
    }

    /**
     * What a job's timeline says of the rates its own fault finding shall begin with.
     *
     * @param complaint the first sign kept at intake, "" for none
     * @param shopRates whether the shop's own are wanted
     */
    public record Wanted(String complaint, boolean shopRates) {}

    public Wanted wanted(long jobId) {
        return shop.read(h -> {
            String last = "SELECT words FROM entry WHERE job_id = :job AND sort = :sort ORDER BY id DESC LIMIT 1";
            Optional<String> signs = h.createQuery(last)
                    .bind("job", jobId)
                    .bind("sort", "signs")
                    .mapTo(String.class)
                    .findOne();
            Optional<String> rates = h.createQuery(last)
                    .bind("job", jobId)
                    .bind("sort", "rates")
                    .mapTo(String.class)
                    .findOne();
            return new Wanted(signs.map(Ending::sign).orElse(""), !rates.equals(Optional.of(SHIPPED)));
        });
    }

    /** Has a job's fault finding begin with the shop's rates, or with those that come with the program only. */
    public void want(long number, boolean shopRates, String who) {
        String now = clock.instant().toString();
        shop.change(h -> {
            Jobs.add(h, Jobs.id(h, number), now, "rates", who, shopRates ? SHOP : SHIPPED, "{}", null);
            return null;
        });
    }

    /** Why a job is left out as its entry says. */
    static Optional<String> reason(String words) {
        return words.startsWith(LEFT_OUT) ? Optional.of(words.substring(LEFT_OUT.length())) : Optional.empty();
    }
}
