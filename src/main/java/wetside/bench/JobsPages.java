package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wetside.shop.JobState;
import wetside.shop.Jobs;

/** The rack of open jobs: rows are states, across is days since anything moved. */
public final class JobsPages implements Routes {
    /** Days at which a column ends, the last without end. */
    private static final int[] ENDS = {1, 2, 3, 5, 8, 15, Integer.MAX_VALUE};

    private final Workshop workshop;
    private final Pages pages;

    JobsPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /** The rack. */
    public record Rack(int open, List<String> columns, List<Row> rows) {}

    /** @param cells tickets by column */
    public record Row(JobState state, int count, List<List<Jobs.Ticket>> cells) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/", c -> c.redirect("/jobs"));
        routes.get("/jobs", this::rack);
    }

    private void rack(Context context) {
        List<Jobs.Ticket> open = workshop.jobs().openTickets();
        Instant now = workshop.clock().instant();
        List<Row> rows = Stream.of(JobState.values())
                .filter(s -> s != JobState.DONE)
                .map(s -> row(s, open, now))
                .toList();
        pages.show(
                context,
                "jobs",
                "Open jobs",
                "Jobs",
                new Rack(open.size(), List.of("today", "1", "2", "3–4", "5–7", "8–14", "15 +"), rows));
    }

    private static Row row(JobState state, List<Jobs.Ticket> open, Instant now) {
        List<List<Jobs.Ticket>> cells = new ArrayList<>();
        for (int i = 0; i < ENDS.length; i++) {
            cells.add(new ArrayList<>());
        }
        int count = 0;
        for (Jobs.Ticket t : open) {
            if (t.state() == state) {
                cells.get(column(Duration.between(t.moved(), now).toDays())).add(t);
                count++;
            }
        }
        return new Row(state, count, cells);
    }

    private static int column(long days) {
        int i = 0;
        while (days >= ENDS[i]) {
            i++;
        }
        return i;
    }
}
