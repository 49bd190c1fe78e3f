package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.JobState;

/** One job, from complaint to signature: its state, its timeline, what is added to it. */
public final class JobPages implements Routes {
    private static final int LONGEST = 4000;
    private static final List<String> SORTS = List.of("said", "work", "note");

    private final Workshop workshop;
    private final Pages pages;

    JobPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /** @param person who is at the screen */
    public record View(Job job, Plate plate, List<Step> rail, List<Day> days, String person) {}

    /** A state on the rail. */
    public record Step(JobState state, boolean passed, boolean here) {}

    public record Day(String date, List<Line> lines) {}

    /** @param struck set right by a later entry */
    public record Line(Entry entry, String time, String heading, boolean struck) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/jobs/{number}", this::show);
        routes.post("/jobs/{number}/state", this::move);
        routes.post("/jobs/{number}/entries", this::add);
    }

    private Job job(Context context) {
        String number = context.pathParam("number");
        if (!number.matches("\\d{1,15}")) {
            throw new NotFoundResponse();
        }
        return workshop.jobs().byNumber(Long.parseLong(number)).orElseThrow(NotFoundResponse::new);
    }

    private void show(Context context) {
        Job job = job(context);
        pages.show(
                context,
                "job",
                "Job " + job.number(),
                "Jobs",
                new View(
                        job,
                        Plate.of(workshop, job, Frame.units(context)),
                        rail(job.state()),
                        days(
                                workshop.jobs().timeline(job.id()),
                                workshop.clock().getZone()),
                        Form.person(context)));
    }

    private static List<Step> rail(JobState state) {
        List<Step> rail = new ArrayList<>();
        for (JobState s : JobState.values()) {
            rail.add(new Step(s, s.ordinal() < state.ordinal(), s == state));
        }
        return rail;
    }

    private static List<Day> days(List<Entry> entries, ZoneId zone) {
        Map<Long, Entry> setRight = new HashMap<>();
        entries.stream().filter(e -> e.corrects() != null).forEach(e -> setRight.put(e.corrects(), e));
        DateTimeFormatter date = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
        DateTimeFormatter time = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);
        List<Day> days = new ArrayList<>();
        for (Entry e : entries) {
            ZonedDateTime at = e.at().atZone(zone);
            String day = date.format(at);
            if (days.isEmpty() || !days.get(days.size() - 1).date().equals(day)) {
                days.add(new Day(day, new ArrayList<>()));
            }
            days.get(days.size() - 1)
                    .lines()
                    .add(new Line(e, time.format(at), heading(e, entries), setRight.containsKey(e.id())));
        }
        return days;
    }

    private static String heading(Entry e, List<Entry> all) {
        if (e.corrects() != null) {
            return "Correction to “"
                    + all.stream()
                            .filter(other -> other.id() == e.corrects())
                            .map(Entry::words)
                            .findFirst()
                            .orElse("")
                    + "”";
        }
        return switch (e.sort()) {
            case "said" -> "Owner said";
            case "state" -> "Moved to";
            case "work" -> "Work done";
            case "finding" -> "Finding";
            case "part" -> "Part used";
            case "reading" -> "Reading";
            case "proof" -> "Proof";
            case "photo" -> "Photo";
            default -> "Note";
        };
    }

    private void move(Context context) {
        Job job = job(context);
        Form form = new Form(context);
        JobState to = form.choice("state", JobState.values(), JobState::words);
        if (to != job.state()) {
            workshop.jobs().move(job.number(), to, form.person(), form.number("version"));
        }
        context.redirect("/jobs/" + job.number(), HttpStatus.SEE_OTHER);
    }

    private void add(Context context) {
        Job job = job(context);
        Form form = new Form(context);
        String sort = form.needed("sort", 20);
        if (!SORTS.contains(sort)) {
            throw new BadForm("Sort: '" + sort + "' is none of " + String.join(", ", SORTS));
        }
        String corrects = form.text("corrects", 20);
        workshop.jobs()
                .note(
                        job.number(),
                        sort,
                        form.person(),
                        form.needed("words", LONGEST),
                        "{}",
                        corrects.isEmpty() ? null : Long.valueOf(form.number("corrects")));
        context.redirect("/jobs/" + job.number() + "#end", HttpStatus.SEE_OTHER);
    }
}
