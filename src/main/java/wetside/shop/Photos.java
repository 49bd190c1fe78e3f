package wetside.shop;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Photos of a job. */
public final class Photos {
    private final Shop shop;
    private final Clock clock;

    public Photos(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** A photo without its content. */
    public record Photo(long id, String name, String type, Instant at) {}

    /** A photo to be shown. */
    public record Content(String type, byte[] content) {}

    public void add(long number, String name, String type, byte[] content, String who, long version) {
        String now = clock.instant().toString();
        shop.change(h -> {
            long job = Jobs.touch(h, number, version, now);
            long id = h.createUpdate("INSERT INTO photo (job_id, name, type, content, at)"
                            + " VALUES (:job, :name, :type, :content, :now)")
                    .bind("job", job)
                    .bind("name", name)
                    .bind("type", type)
                    .bind("content", content)
                    .bind("now", now)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            Jobs.add(h, job, now, "photo", who, name, "{\"photo\":" + id + "}", null);
            return null;
        });
    }

    /** All of a job, in order. */
    public List<Photo> of(long jobId) {
        return shop.read(h -> h.createQuery("SELECT id, name, type, at FROM photo WHERE job_id = :job ORDER BY id")
                .bind("job", jobId)
                .map(Rows.of(Photo.class))
                .list());
    }

    /** One of a job. */
    public Optional<Content> content(long jobId, long id) {
        return shop.read(h -> h.createQuery("SELECT type, content FROM photo WHERE job_id = :job AND id = :id")
                .bind("job", jobId)
                .bind("id", id)
                .map((r, c) -> new Content(r.getString(1), r.getBytes(2)))
                .findOne());
    }
}
