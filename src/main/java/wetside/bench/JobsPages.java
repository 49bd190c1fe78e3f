package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.RegisteredMachine;

/** The rack of open jobs, rows are states, across is days since anything moved; and beside it the intake of new ones. */
public final class JobsPages implements Routes {
    /** Days at which a column ends, the last without end. */
    private static final int[] ENDS = {1, 2, 3, 5, 8, 15, Integer.MAX_VALUE};

    private static final List<String> COLUMNS = List.of("today", "1", "2", "3–4", "5–7", "8–14", "15 +");

    private final Workshop workshop;
    private final Pages pages;

    JobsPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /** The rack. */
    public record Rack(int open, List<String> columns, List<Row> rows, Intake intake) {}

    /** @param cells tickets by column */
    public record Row(JobState state, int count, List<List<Slip>> cells) {}

    /** @param flag who has it or when it is due */
    public record Slip(Jobs.Ticket ticket, String flag, boolean late) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/", c -> c.redirect("/jobs"));
        routes.get("/jobs", c -> rack(c, Intake.of(workshop, typed(c), "")));
        routes.get("/intake", c -> pages.piece(c, "intakefound", Intake.of(workshop, typed(c), "")));
        routes.post("/jobs", this::take);
    }

    private void rack(Context context, Intake intake) {
        List<Jobs.Ticket> open = workshop.jobs().openTickets();
        List<Row> rows = Stream.of(JobState.values())
                .filter(s -> s != JobState.DONE)
                .map(s -> row(s, open))
                .toList();
        pages.show(context, "jobs", "Open jobs", "Jobs", new Rack(open.size(), COLUMNS, rows, intake));
    }

    private Row row(JobState state, List<Jobs.Ticket> open) {
        Instant now = workshop.clock().instant();
        List<List<Slip>> cells = new ArrayList<>();
        for (int i = 0; i < ENDS.length; i++) {
            cells.add(new ArrayList<>());
        }
        int count = 0;
        for (Jobs.Ticket t : open) {
            if (t.state() == state) {
                cells.get(column(Duration.between(t.moved(), now).toDays())).add(slip(t));
                count++;
            }
        }
        return new Row(state, count, cells);
    }

    private Slip slip(Jobs.Ticket t) {
        if (t.due().isEmpty()) {
            return new Slip(t, t.technician(), false);
        }
        long left = ChronoUnit.DAYS.between(LocalDate.now(workshop.clock()), LocalDate.parse(t.due()));
        if (left < 0) {
            return new Slip(t, "▲ " + -left + (left == -1 ? " day late" : " days late"), true);
        }
        String due = left == 0 ? "due today" : left == 1 ? "tomorrow" : "in " + left + " days";
        return new Slip(t, t.technician().isEmpty() ? due : t.technician() + ", " + due, false);
    }

    private static int column(long days) {
        int i = 0;
        while (days >= ENDS[i]) {
            i++;
        }
        return i;
    }

    /** From the address or the form, whichever it came by; too long is cut where it is only looked at. */
    private static Intake.Typed typed(Context c) {
        boolean post = c.method().name().equals("POST");
        List<String> signs = (post ? c.formParams("sign") : c.queryParams("sign"))
                .stream()
                        .filter(s -> !s.isBlank())
                        .map(s -> cut(s, 200))
                        .distinct()
                        .limit(12)
                        .toList();
        return new Intake.Typed(
                one(c, post, "who"),
                one(c, post, "complaint"),
                signs,
                one(c, post, "when"),
                one(c, post, "making"),
                one(c, post, "fed"),
                one(c, post, "owner"),
                one(c, post, "phone"),
                one(c, post, "person").isEmpty() ? Form.person(c) : one(c, post, "person"));
    }

    private static String one(Context c, boolean post, String field) {
        String said = post ? c.formParam(field) : c.queryParam(field);
        return said == null ? "" : cut(said.strip(), 4000);
    }

    private static String cut(String text, int longest) {
        return text.length() > longest ? text.substring(0, longest) : text;
    }

    private void take(Context context) {
        Intake.Typed typed = typed(context);
        Form form = new Form(context);
        try {
            form.text("complaint", 4000);
            if (typed.complaint().isEmpty()) {
                throw new BadForm("In the owner's words: what is the matter? A few words do.");
            }
            long machine = machine(typed, form);
            String person = form.person();
            long number = workshop.jobs().open(machine, typed.complaint(), person);
            if (!typed.signs().isEmpty() || !typed.when().isEmpty()) {
                String kept = String.join("; ", typed.signs());
                String when = typed.when().isEmpty() ? "" : (kept.isEmpty() ? "" : ". ") + "When: " + typed.when();
                workshop.jobs().note(number, "signs", person, kept + when, "{}", null);
            }
            boolean fault = "fault".equals(form.text("then", 10));
            context.redirect("/jobs/" + number + (fault ? "/fault" : ""), HttpStatus.SEE_OTHER);
        } catch (BadForm e) {
            context.status(422);
            rack(context, Intake.of(workshop, typed, "Not saved: " + e.getMessage()));
        }
    }

    /** The machine meant, entered when it is new. */
    private long machine(Intake.Typed typed, Form form) {
        if (form.needed("who", 60).isEmpty()) {
            throw new BadForm("Serial or owner is missing");
        }
        Optional<RegisteredMachine> known = Intake.machine(workshop, typed.who());
        if (known.isPresent()) {
            return known.get().id();
        }
        String[] making = typed.making().split("\\|", -1);
        if (making.length != 3) {
            throw new BadForm("'" + typed.who() + "' is no serial on the register and no owner of one machine only."
                    + " Choose a machine above, or enter it as new.");
        }
        String name = form.needed("owner", 80);
        long owner = workshop.register()
                .ownerCalled(name)
                .map(o -> o.id())
                .orElseGet(() -> workshop.register().owner(name, form.text("phone", 40), "", ""));
        String fed = "mains".equals(typed.fed()) ? "mains" : "tank";
        RegisteredMachine m = new RegisteredMachine(
                0, typed.who(), making[0], making[1], making[2], owner, fed, null, null, null, null, null, "", "", 0);
        Models.installed(m);
        return workshop.register().machine(m);
    }
}
