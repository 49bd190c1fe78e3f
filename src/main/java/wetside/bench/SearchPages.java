package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import wetside.shop.Jobs;
import wetside.shop.Owner;
import wetside.shop.Part;
import wetside.shop.RegisteredMachine;
import wetside.shop.Words;

/** Search across jobs, machines, owners and parts; and the jobs that are done. */
public final class SearchPages implements Routes {
    private static final int JOBS = 40;
    private static final int THINGS = 12;

    private final Workshop workshop;
    private final Pages pages;

    SearchPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /** What was found. */
    public record Found(
            String typed, List<Line> jobs, List<Thing> machines, List<Thing> owners, List<Part> parts, boolean more) {
        public boolean nothing() {
            return jobs.isEmpty() && machines.isEmpty() && owners.isEmpty() && parts.isEmpty();
        }
    }

    /** @param moved the day it last moved */
    public record Line(Jobs.Ticket ticket, String moved) {}

    /** @param jobs latest first */
    public record Thing(String name, String more, List<Jobs.Ticket> jobs) {}

    /** @param next the page after this one, 0 for none */
    public record Done(List<Line> jobs, int page, int next) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/search", this::search);
        routes.get("/done", this::done);
    }

    private void search(Context context) {
        String said = context.queryParam("q");
        String typed = said == null
                ? ""
                : said.strip().substring(0, Math.min(200, said.strip().length()));
        List<Long> numbers = workshop.words().findJobs(typed, JOBS + 1);
        List<Line> jobs = workshop.jobs().tickets(numbers.subList(0, Math.min(JOBS, numbers.size()))).stream()
                .sorted((a, b) -> Long.compare(b.number(), a.number()))
                .map(this::line)
                .toList();
        List<Words.Hit> things = workshop.words().findThings(typed, THINGS);
        pages.show(
                context,
                "search",
                typed.isEmpty() ? "Search" : "Search: " + typed,
                "Jobs",
                new Found(
                        typed,
                        jobs,
                        of(things, "machine").stream().map(this::machine).toList(),
                        of(things, "owner").stream().map(this::owner).toList(),
                        of(things, "part").stream()
                                .flatMap(id -> workshop.shelf().part(id).stream())
                                .toList(),
                        numbers.size() > JOBS));
    }

    private static List<Long> of(List<Words.Hit> hits, String sort) {
        return hits.stream()
                .filter(h -> h.sort().equals(sort))
                .map(h -> Long.valueOf(h.ref()))
                .toList();
    }

    private Thing machine(long id) {
        RegisteredMachine m = workshop.register().machine(id);
        String owner = workshop.register().owner(m.ownerId()).name();
        return new Thing(m.serial(), workshop.models().title(m) + ", " + owner, few(m));
    }

    private Thing owner(long id) {
        Owner o = workshop.register().owner(id);
        List<RegisteredMachine> machines = workshop.register().ofOwner(id);
        String more = String.join(
                ", ", machines.stream().map(RegisteredMachine::serial).toList());
        return new Thing(
                o.name(),
                more,
                machines.stream().flatMap(m -> few(m).stream()).limit(5).toList());
    }

    private List<Jobs.Ticket> few(RegisteredMachine m) {
        return workshop.jobs().of(m.id()).stream().limit(5).toList();
    }

    private Line line(Jobs.Ticket t) {
        return new Line(
                t, Spoken.day(t.moved().atZone(workshop.clock().getZone()).toLocalDate()));
    }

    private void done(Context context) {
        String said = context.queryParam("page");
        int page = said == null || !said.matches("[1-9]\\d{0,5}") ? 1 : Integer.parseInt(said);
        List<Line> jobs = workshop.jobs().done(JOBS + 1, (page - 1) * JOBS).stream()
                .map(this::line)
                .toList();
        boolean more = jobs.size() > JOBS;
        pages.show(
                context,
                "done",
                "Done jobs",
                "Jobs",
                new Done(jobs.subList(0, Math.min(JOBS, jobs.size())), page, more ? page + 1 : 0));
    }
}
