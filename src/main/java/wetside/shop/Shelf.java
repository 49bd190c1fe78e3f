package wetside.shop;

import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The parts a workshop keeps, and which went into which job. */
public final class Shelf {
    private final Shop shop;
    private final Clock clock;

    public Shelf(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** A part that went into a job. */
    public record Use(String number, String name, long count, Double price) {}

    /** Enters a part (its id and version are not looked at). */
    public long add(Part part) {
        return shop.change(h -> {
            long id = h.createUpdate("INSERT INTO part (number, name, kind, shelf, on_hand, minimum, on_order, price)"
                            + " VALUES (:number, :name, :kind, :shelf, :onHand, :minimum, :onOrder, :price)")
                    .bindMethods(part)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            Words.write(h, "part", id, part.number(), part.name() + " " + part.kind() + " " + part.shelf());
            return id;
        });
    }

    public Optional<Part> byNumber(String number) {
        return shop.read(h -> byNumber(h, number));
    }

    private static Optional<Part> byNumber(Handle h, String number) {
        return h.createQuery("SELECT * FROM part WHERE number = :number")
                .bind("number", number)
                .map(Rows.of(Part.class))
                .findOne();
    }

    public Optional<Part> part(long id) {
        return shop.read(h -> h.createQuery("SELECT * FROM part WHERE id = :id")
                .bind("id", id)
                .map(Rows.of(Part.class))
                .findOne());
    }

    /** Those with one of these numbers, by number. */
    public List<Part> among(Collection<String> numbers) {
        return numbers.isEmpty()
                ? List.of()
                : shop.read(h -> h.createQuery("SELECT * FROM part WHERE number IN (<numbers>) ORDER BY number")
                        .bindList("numbers", List.copyOf(numbers))
                        .map(Rows.of(Part.class))
                        .list());
    }

    /**
     * Puts a part into a job; the shelf has that many fewer, never fewer than none.
     *
     * @param name for a part the shelf does not know yet
     */
    public void use(long number, String part, String name, long count, String who, long version) {
        String now = clock.instant().toString();
        shop.change(h -> {
            long job = Jobs.touch(h, number, version, now);
            Part there = byNumber(h, part).orElseGet(() -> unknown(h, part, name));
            h.createUpdate("UPDATE part SET on_hand = MAX(0, on_hand - :count), version = version + 1 WHERE id = :id")
                    .bind("count", count)
                    .bind("id", there.id())
                    .execute();
            h.createUpdate("INSERT INTO part_use (job_id, part_id, count, at) VALUES (:job, :part, :count, :now)")
                    .bind("job", job)
                    .bind("part", there.id())
                    .bind("count", count)
                    .bind("now", now)
                    .execute();
            Jobs.add(h, job, now, "part", who, words(there, count), "{}", null);
            return null;
        });
    }

    private static Part unknown(Handle h, String number, String name) {
        h.createUpdate("INSERT INTO part (number, name) VALUES (:number, :name)")
                .bind("number", number)
                .bind("name", name.isEmpty() ? number : name)
                .execute();
        Part part = byNumber(h, number).orElseThrow();
        Words.write(h, "part", part.id(), number, name);
        return part;
    }

    private static String words(Part part, long count) {
        String used = (count == 1 ? "" : count + " × ") + part.name() + " " + part.number() + ". ";
        if (part.onHand() < count) {
            return used + "The shelf had " + (part.onHand() == 0 ? "none" : "only " + part.onHand())
                    + " on record: count it.";
        }
        long left = part.onHand() - count;
        return used + "Shelf now " + left + ", minimum " + part.minimum()
                + (left < part.minimum() ? ": to order." : ".");
    }

    /** What went into a job, in order. */
    public List<Use> used(long jobId) {
        return shop.read(h -> h.createQuery("SELECT p.number, p.name, u.count, p.price FROM part_use u"
                        + " JOIN part p ON p.id = u.part_id WHERE u.job_id = :job ORDER BY u.id")
                .bind("job", jobId)
                .map(Rows.of(Use.class))
                .list());
    }
}
