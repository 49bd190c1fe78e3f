package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;

/** Jobs and their timelines. */
public final class Jobs {
    private final Shop shop;
    private final Clock clock;

    public Jobs(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** A job as the board shows it. */
    public record Ticket(
            long number,
            JobState state,
            String complaint,
            String technician,
            String due,
            Instant moved,
            String owner,
            String serial) {}

    /** Takes a job in and says its number. */
    public long open(long machineId, String complaint, String who) {
        String now = now();
        return shop.change(h -> {
            long number = h.createQuery("SELECT COALESCE(MAX(number), 2000) + 1 FROM job")
                    .mapTo(Long.class)
                    .one();
            long id = h.createUpdate("INSERT INTO job (number, machine_id, state, complaint, opened, moved)"
                            + " VALUES (:number, :machine, :state, :complaint, :now, :now)")
                    .bind("number", number)
                    .bind("machine", machineId)
                    .bind("state", JobState.ASKED.name())
                    .bind("complaint", complaint)
                    .bind("now", now)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            add(h, id, now, "said", who, complaint, "{}", null);
            Words.write(h, "job", number, "" + number, complaint + " " + ownerAndSerial(h, machineId));
            return number;
        });
    }

    private static String ownerAndSerial(Handle h, long machineId) {
        return h.createQuery("SELECT o.name || ' ' || m.serial FROM machine m JOIN owner o ON o.id = m.owner_id"
                        + " WHERE m.id = :id")
                .bind("id", machineId)
                .mapTo(String.class)
                .one();
    }

    public Optional<Job> byNumber(long number) {
        return shop.read(h -> h.createQuery("SELECT * FROM job WHERE number = :number")
                .bind("number", number)
                .map(ConstructorMapper.of(Job.class))
                .findOne());
    }

    /** All that are not done, longest untouched last. */
    public List<Ticket> openTickets() {
        return shop.read(h -> h.createQuery("SELECT j.number, j.state, j.complaint, j.technician, j.due, j.moved,"
                        + " o.name AS owner, m.serial FROM job j JOIN machine m ON m.id = j.machine_id"
                        + " JOIN owner o ON o.id = m.owner_id WHERE j.state IN ('ASKED', 'WAITING_FOR_MACHINE',"
                        + " 'ON_BENCH', 'WAITING_FOR_PART', 'TO_PROVE') ORDER BY j.moved DESC")
                .map(ConstructorMapper.of(Ticket.class))
                .list());
    }

    /**
     * Moves a job to another state, if nobody else has changed it since {@code version}.
     *
     * @throws Conflict otherwise
     */
    public void move(long number, JobState to, String who, long version) {
        String now = now();
        shop.change(h -> {
            int changed = h.createUpdate("UPDATE job SET state = :state, moved = :now, version = version + 1"
                            + " WHERE number = :number AND version = :version")
                    .bind("state", to.name())
                    .bind("now", now)
                    .bind("number", number)
                    .bind("version", version)
                    .execute();
            if (changed == 0) {
                throw new Conflict("job " + number);
            }
            add(h, id(h, number), now, "state", who, to.words(), "{}", null);
            return null;
        });
    }

    /** Adds to the timeline; {@code corrects} is the entry set right, null for none. */
    public void note(long number, String sort, String who, String words, String detail, Long corrects) {
        String now = now();
        shop.change(h -> {
            add(h, id(h, number), now, sort, who, words, detail, corrects);
            h.createUpdate("UPDATE job SET moved = :now WHERE number = :number")
                    .bind("now", now)
                    .bind("number", number)
                    .execute();
            return null;
        });
    }

    /** Oldest first. */
    public List<Entry> timeline(long jobId) {
        return shop.read(h -> h.createQuery("SELECT * FROM entry WHERE job_id = :job ORDER BY id")
                .bind("job", jobId)
                .map(ConstructorMapper.of(Entry.class))
                .list());
    }

    private static long id(Handle h, long number) {
        return h.createQuery("SELECT id FROM job WHERE number = :number")
                .bind("number", number)
                .mapTo(Long.class)
                .one();
    }

    static void add(
            Handle h, long jobId, String at, String sort, String who, String words, String detail, Long corrects) {
        h.createUpdate("INSERT INTO entry (job_id, at, sort, who, words, detail, corrects)"
                        + " VALUES (:job, :at, :sort, :who, :words, :detail, :corrects)")
                .bind("job", jobId)
                .bind("at", at)
                .bind("sort", sort)
                .bind("who", who)
                .bind("words", words)
                .bind("detail", detail)
                .bind("corrects", corrects)
                .execute();
    }

    private String now() {
        return clock.instant().toString();
    }
}
