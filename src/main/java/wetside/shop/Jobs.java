package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Jobs and their timelines. */
public final class Jobs {
    /** Stands for whatever version a job has. */
    public static final long ANY = -1;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private static final String TICKET = "SELECT j.number, j.state, j.complaint, j.technician, j.due, j.moved,"
            + " o.name AS owner, m.serial FROM job j JOIN machine m ON m.id = j.machine_id"
            + " JOIN owner o ON o.id = m.owner_id";

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
                .map(Rows.of(Job.class))
                .findOne());
    }

    /** All that are not done, longest untouched last. */
    public List<Ticket> openTickets() {
        return shop.read(h -> h.createQuery(TICKET + " WHERE j.state IN ('ASKED', 'WAITING_FOR_MACHINE',"
                        + " 'ON_BENCH', 'WAITING_FOR_PART', 'TO_PROVE') ORDER BY j.moved DESC")
                .map(Rows.of(Ticket.class))
                .list());
    }

    /** All of a machine, the newest first. */
    public List<Ticket> ticketsOf(long machineId) {
        return shop.read(h -> h.createQuery("SELECT j.number, j.state, j.complaint, j.technician, j.due, j.moved,"
                        + " o.name AS owner, m.serial FROM job j JOIN machine m ON m.id = j.machine_id"
                        + " JOIN owner o ON o.id = m.owner_id WHERE m.id = :machine ORDER BY j.number DESC")
                .bind("machine", machineId)
                .map(Rows.of(Ticket.class))
                .list());
    }

    /**
     * Moves a job to another state, if nobody else has changed it since {@code version}.
     *
     * @throws Conflict otherwise
     */
    public void move(long number, JobState to, String who, long version) {
        move(number, to, "", who, version);
    }

    /** @param why it goes there although something speaks against it, "" when nothing does */
    public void move(long number, JobState to, String why, String who, long version) {
        String now = now();
        shop.change(h -> {
            long id = touch(h, number, version, now);
            h.createUpdate("UPDATE job SET state = :state WHERE id = :id")
                    .bind("state", to.name())
                    .bind("id", id)
                    .execute();
            add(h, id, now, "state", who, to.words() + (why.isEmpty() ? "" : ". " + why), "{}", null);
            return null;
        });
    }

    /** Says who has a job and until when; either may be "". */
    public void assign(long number, String technician, String due, String who, long version) {
        String now = now();
        shop.change(h -> {
            long id = touch(h, number, version, now);
            h.createUpdate("UPDATE job SET technician = :technician, due = :due WHERE id = :id")
                    .bind("technician", technician)
                    .bind("due", due)
                    .bind("id", id)
                    .execute();
            String words = (technician.isEmpty() ? "nobody has it" : "with " + technician)
                    + (due.isEmpty() ? "" : ", due " + DAY.format(LocalDate.parse(due)));
            add(h, id, now, "assigned", who, words, "{}", null);
            return null;
        });
    }

    /** Says what it was: the cause by its id, and in words what was seen. */
    public void conclude(long number, String cause, String words, String who, long version) {
        String now = now();
        shop.change(h -> {
            long id = touch(h, number, version, now);
            h.createUpdate("UPDATE job SET finding = :cause WHERE id = :id")
                    .bind("cause", cause)
                    .bind("id", id)
                    .execute();
            add(h, id, now, "finding", who, words.isEmpty() ? cause : cause + ". " + words, "{}", null);
            write(h, number);
            return null;
        });
    }

    /** Adds to the timeline whatever others did; {@code corrects} is the entry set right, null for none. */
    public void note(long number, String sort, String who, String words, String detail, Long corrects) {
        note(number, sort, who, words, detail, corrects, ANY);
    }

    /** Adds to the timeline, if nobody else has changed the job since {@code version}. */
    public void note(long number, String sort, String who, String words, String detail, Long corrects, long version) {
        String now = now();
        shop.change(h -> {
            add(h, touch(h, number, version, now), now, sort, who, words, detail, corrects);
            return null;
        });
    }

    /**
     * Marks a job as changed now.
     *
     * @return its id
     * @throws Conflict when somebody else has changed it since {@code version}
     */
    static long touch(Handle h, long number, long version, String now) {
        int changed = h.createUpdate("UPDATE job SET moved = :now, version = version + 1"
                        + " WHERE number = :number AND (version = :version OR :version = " + ANY + ")")
                .bind("now", now)
                .bind("number", number)
                .bind("version", version)
                .execute();
        if (changed == 0) {
            throw new Conflict("job " + number, lastToTouch(h, number));
        }
        return id(h, number);
    }

    private static String lastToTouch(Handle h, long number) {
        return h.createQuery("SELECT who FROM entry WHERE job_id = (SELECT id FROM job WHERE number = :number)"
                        + " ORDER BY id DESC LIMIT 1")
                .bind("number", number)
                .mapTo(String.class)
                .findOne()
                .orElse("somebody else");
    }

    /** What a job is found by. */
    private static void write(Handle h, long number) {
        h.createQuery("SELECT machine_id, complaint, finding FROM job WHERE number = :number")
                .bind("number", number)
                .map((r, c) -> {
                    Words.write(
                            h,
                            "job",
                            number,
                            "" + number,
                            r.getString("complaint") + " " + r.getString("finding") + " "
                                    + ownerAndSerial(h, r.getLong("machine_id")));
                    return number;
                })
                .one();
    }

    /** Done jobs, latest first. */
    public List<Ticket> done(int most, int skip) {
        return shop.read(
                h -> h.createQuery(TICKET + " WHERE j.state = 'DONE' ORDER BY j.moved DESC LIMIT :most OFFSET :skip")
                        .bind("most", most)
                        .bind("skip", skip)
                        .map(Rows.of(Ticket.class))
                        .list());
    }

    /** Some by their numbers, in any order. */
    public List<Ticket> tickets(List<Long> numbers) {
        return numbers.isEmpty()
                ? List.of()
                : shop.read(h -> h.createQuery(TICKET + " WHERE j.number IN (<numbers>)")
                        .bindList("numbers", numbers)
                        .map(Rows.of(Ticket.class))
                        .list());
    }

    /** All of a machine, latest first. */
    public List<Ticket> of(long machineId) {
        return shop.read(h -> h.createQuery(TICKET + " WHERE j.machine_id = :machine ORDER BY j.number DESC LIMIT 50")
                .bind("machine", machineId)
                .map(Rows.of(Ticket.class))
                .list());
    }

    /** Oldest first. */
    public List<Entry> timeline(long jobId) {
        return shop.read(h -> h.createQuery("SELECT * FROM entry WHERE job_id = :job ORDER BY id")
                .bind("job", jobId)
                .map(Rows.of(Entry.class))
                .list());
    }

    static long id(Handle h, long number) {
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
