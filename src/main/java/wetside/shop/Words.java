package wetside.shop;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Search across jobs, machines and owners. */
public final class Words {
    private final Shop shop;

    public Words(Shop shop) {
        this.shop = shop;
    }

    /** Something found: what it is, and by what it is called there (a job's number, a machine's serial, an owner's id). */
    public record Hit(String sort, String ref, String title, String body) {}

    /** Best first. Every word typed must begin a word of what is found. */
    public List<Hit> find(String typed, int most) {
        String query = query(typed);
        return query.isEmpty() ? List.of() : hits("WHERE words MATCH :query ORDER BY rank", query, most);
    }

    /** Numbers of jobs, latest first: of thousands that fit, the ranking of all would take its time and tell nobody more. */
    public List<Long> findJobs(String typed, int most) {
        String query = query(typed);
        return query.isEmpty()
                ? List.of()
                : shop.read(h -> h.createQuery("SELECT rowid / 4 FROM words WHERE words MATCH :query AND rowid % 4 = 0"
                                + " ORDER BY rowid DESC LIMIT :most")
                        .bind("query", query)
                        .bind("most", most)
                        .mapTo(Long.class)
                        .list());
    }

    /** Machines, owners and parts, those entered last first. */
    public List<Hit> findThings(String typed, int most) {
        String query = query(typed);
        // Their rows come before those of nearly all jobs; without the bound every job that fits would be looked at.
        String last =
                "(SELECT 4 * MAX(COALESCE((SELECT MAX(id) FROM machine), 0), COALESCE((SELECT MAX(id) FROM owner), 0),"
                        + " COALESCE((SELECT MAX(id) FROM part), 0)) + 3)";
        return query.isEmpty()
                ? List.of()
                : hits(
                        "WHERE words MATCH :query AND rowid <= " + last + " AND rowid % 4 <> 0 ORDER BY rowid DESC",
                        query,
                        most);
    }

    private List<Hit> hits(String where, String query, int most) {
        return shop.read(h -> h.createQuery("SELECT sort, ref, title, body FROM words " + where + " LIMIT :most")
                .bind("query", query)
                .bind("most", most)
                .map(Rows.of(Hit.class))
                .list());
    }

    private static String query(String typed) {
        return Stream.of(typed.replaceAll("[^\\p{L}\\p{N}\\s-]", " ")
                        .replace('-', ' ')
                        .strip()
                        .split("\\s+"))
                .filter(w -> !w.isEmpty())
                .limit(8)
                .map(w -> "\"" + w + "\"*")
                .collect(Collectors.joining(" "));
    }

    static void write(Handle h, String sort, long ref, String title, String body) {
        write(h, sort, Long.toString(ref), title, body);
    }

    /** In the place of what was written of it before; the row's number is that of the thing, so this stays quick. */
    static void write(Handle h, String sort, String ref, String title, String body) {
        h.createUpdate("DELETE FROM words WHERE rowid = :row")
                .bind("row", row(sort, ref))
                .execute();
        h.createUpdate("INSERT INTO words (rowid, sort, ref, title, body) VALUES (:row, :sort, :ref, :title, :body)")
                .bind("row", row(sort, ref))
                .bind("sort", sort)
                .bind("ref", ref)
                .bind("title", title)
                .bind("body", body)
                .execute();
    }

    private static long row(String sort, String ref) {
        long number = Long.parseLong(ref);
        return number * 4
                + switch (sort) {
                    case "job" -> 0;
                    case "machine" -> 1;
                    case "owner" -> 2;
                    case "part" -> 3;
                    default -> throw new IllegalArgumentException(sort);
                };
    }
}
