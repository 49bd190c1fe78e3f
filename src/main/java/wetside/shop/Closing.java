package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;

/** What a job ends with: the time it took, and a signature. */
public final class Closing {
    private final Shop shop;
    private final Clock clock;

    public Closing(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** @param strokes as drawn: points "x,y" with blanks between, strokes parted by ";"; "" when the name was typed only */
    public record Signature(String name, String strokes, Instant at) {}

    /** Books minutes of somebody's work. */
    public void spend(long number, double minutes, String what, String who, long version) {
        String now = clock.instant().toString();
        shop.change(h -> {
            long job = Jobs.touch(h, number, version, now);
            h.createUpdate(
                            "INSERT INTO work (job_id, who, minutes, what, at) VALUES (:job, :who, :minutes, :what, :now)")
                    .bind("job", job)
                    .bind("who", who)
                    .bind("minutes", minutes)
                    .bind("what", what)
                    .bind("now", now)
                    .execute();
            String words = Math.round(minutes) + " min" + (what.isEmpty() ? "" : ": " + what);
            Jobs.add(h, job, now, "time", who, words, "{}", null);
            return null;
        });
    }

    /** Minutes booked on a job. */
    public double minutes(long jobId) {
        return shop.read(h -> h.createQuery("SELECT COALESCE(SUM(minutes), 0) FROM work WHERE job_id = :job")
                .bind("job", jobId)
                .mapTo(Double.class)
                .one());
    }

    /**
     * Signs a job; one signature, once.
     *
     * @throws Conflict when it is signed already
     */
    public void sign(long number, String name, String strokes, String who, long version) {
        String now = clock.instant().toString();
        shop.change(h -> {
            long job = Jobs.touch(h, number, version, now);
            int signed = h.createUpdate(
                            "INSERT INTO signature (job_id, name, strokes, at) VALUES (:job, :name, :strokes, :now)"
                                    + " ON CONFLICT (job_id) DO NOTHING")
                    .bind("job", job)
                    .bind("name", name)
                    .bind("strokes", strokes)
                    .bind("now", now)
                    .execute();
            if (signed == 0) {
                throw new Conflict("the signature of job " + number);
            }
            Jobs.add(h, job, now, "signed", who, "Signed by " + name, "{}", null);
            return null;
        });
    }

    public Optional<Signature> signature(long jobId) {
        return shop.read(h -> h.createQuery("SELECT name, strokes, at FROM signature WHERE job_id = :job")
                .bind("job", jobId)
                .map(Rows.of(Signature.class))
                .findOne());
    }
}
