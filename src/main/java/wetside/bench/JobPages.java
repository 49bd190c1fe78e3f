package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Candidates;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.machine.Wording;
import wetside.shop.Conflict;
import wetside.shop.Job;
import wetside.shop.JobState;
import wetside.shop.RegisteredMachine;
import wetside.shop.ShopTrouble;

/**
 * One job, from complaint to signature: its state, its timeline, what is added to it. Every change names the version it was
 * made on; when somebody else was quicker, or what was typed makes no sense, the page comes back with everything typed.
 */
final class JobPages implements Routes {
    private static final int LONGEST = 4000;
    private static final List<String> SORTS = List.of("said", "work", "note", "yours", "ours");
    /** For a reading just typed: the verdict is kept with it, so it is worth a wait. */
    private static final Duration PATIENCE = Duration.ofSeconds(4);

    private final Workshop workshop;
    private final Pages pages;
    private final JobLists lists;

    JobPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
        lists = new JobLists(pages);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/jobs/{number}", c -> show(c, job(c), JobView.Typed.NOTHING));
        routes.post("/jobs/{number}/state", c -> change(c, "state", this::move));
        routes.post("/jobs/{number}/assigned", c -> change(c, "assigned", this::assign));
        routes.post(
                "/jobs/{number}/entries",
                c -> change(c, c.formParam("corrects") == null ? "entry" : "correct", this::add));
        routes.post("/jobs/{number}/finding", c -> change(c, "finding", this::conclude));
        routes.post("/jobs/{number}/readings", c -> change(c, "reading", this::read));
        routes.post("/jobs/{number}/parts", c -> change(c, "part", this::use));
        routes.post("/jobs/{number}/proof", c -> change(c, "proof", this::prove));
        routes.post("/jobs/{number}/time", c -> change(c, "time", this::spend));
        routes.post("/jobs/{number}/signature", c -> change(c, "signature", this::sign));
        routes.post("/jobs/{number}/photos", c -> change(c, "photo", this::photo));
        routes.get("/jobs/{number}/photos/{photo}", this::picture);
    }

    /** A change of a job, told what was typed and the version it was made on. */
    private interface Change {
        void of(Job job, Form form, long version, Context context);
    }

    private void change(Context context, String name, Change change) {
        Job job = job(context);
        try {
            Form form = new Form(context);
            change.of(job, form, form.number("version"), context);
            context.redirect("/jobs/" + job.number() + "#end", HttpStatus.SEE_OTHER);
        } catch (Conflict e) {
            again(context, job, name, 409, "Not saved: " + e.getMessage() + ". What you typed is still here.");
        } catch (BadForm | Answers.NotAnAnswer e) {
            again(context, job, name, 422, "Not saved: " + e.getMessage());
        } catch (ShopTrouble e) {
            again(context, job, name, 503, "Not saved: " + e.getMessage());
        }
    }

    private void again(Context context, Job job, String form, int status, String trouble) {
        Map<String, String> fields = new HashMap<>();
        context.formParamMap().forEach((field, values) -> fields.put(field, values.isEmpty() ? "" : values.get(0)));
        context.status(status);
        show(context, workshop.jobs().byNumber(job.number()).orElse(job), new JobView.Typed(form, fields, trouble));
    }

    Job job(Context context) {
        return Numbers.job(workshop, context);
    }

    private void show(Context context, Job job, JobView.Typed typed) {
        String said = typed.fields().getOrDefault("person", "");
        pages.show(
                context,
                "job",
                "Job " + job.number(),
                "Jobs",
                JobView.of(
                        workshop,
                        job,
                        Frame.units(context),
                        said.isEmpty() ? Form.person(context) : said,
                        typed,
                        lists));
    }

    private void move(Job job, Form form, long version, Context context) {
        JobState to = form.choice("state", JobState.values(), JobState::words);
        if (to != job.state()) {
            String why = to == JobState.DONE ? unproved(job, form) : "";
            workshop.jobs().move(job.number(), to, why, form.person(), version);
        }
    }

    /** A machine that was at fault goes with all proved, or somebody says why not and it stays written down. */
    private String unproved(Job job, Form form) {
        if (job.finding().isEmpty() || job.finding().equals(Candidates.HEALTHY)) {
            return "";
        }
        Optional<Casework> casework =
                JobView.casework(workshop, workshop.register().machine(job.machineId()));
        List<String> open = Proof.of(casework, job.finding(), workshop.jobs().timeline(job.id()))
                .open();
        String why = form.text("why", 400);
        if (!open.isEmpty() && why.isEmpty()) {
            throw new BadForm(Wording.sentence(String.join(", ", open))
                    + " Prove it first, or say below why the machine goes all the same");
        }
        return open.isEmpty() ? "" : Wording.sentence(String.join(", ", open)) + " " + Wording.sentence(why);
    }

    private void assign(Job job, Form form, long version, Context context) {
        String due = form.text("due", 10);
        try {
            if (!due.isEmpty()) {
                LocalDate.parse(due);
            }
        } catch (DateTimeParseException e) {
            throw new BadForm("Due: '" + due + "' is no date; write it as 2026-03-31");
        }
        workshop.jobs().assign(job.number(), form.text("technician", 60), due, form.person(), version);
    }

    private void add(Job job, Form form, long version, Context context) {
        String sort = form.needed("sort", 20);
        if (!SORTS.contains(sort)) {
            throw new BadForm("Sort: '" + sort + "' is none of " + String.join(", ", SORTS));
        }
        String corrects = form.text("corrects", 20);
        Long corrected = corrects.isEmpty() ? null : Long.valueOf(form.number("corrects"));
        if (corrected != null && workshop.jobs().timeline(job.id()).stream().noneMatch(e -> e.id() == corrected)) {
            throw new BadForm("Corrects: this job has no such entry");
        }
        workshop.jobs()
                .note(job.number(), sort, form.person(), form.needed("words", LONGEST), "{}", corrected, version);
    }

    private void conclude(Job job, Form form, long version, Context context) {
        workshop.jobs()
                .conclude(job.number(), form.needed("cause", 200), form.text("words", LONGEST), form.person(), version);
    }

    private void read(Job job, Form form, long version, Context context) {
        String asked = form.needed("asked", 200);
        String phase = form.needed("phase", 10);
        if (!List.of("found", "left").contains(phase)) {
            throw new BadForm("Phase: found or left");
        }
        RegisteredMachine machine = workshop.register().machine(job.machineId());
        Casework casework = workshop.models().casework(machine);
        Asking asking = casework.asking(asked)
                .orElseThrow(
                        () -> new BadForm("Reading: this machine has no '" + asked + "'; choose one from the list"));
        Expected expected = workshop.models().expected(machine, PATIENCE).get(asked);
        workshop.readings()
                .take(
                        job.number(),
                        Measured.taken(asking, phase, form.needed("said", 60), expected, Frame.units(context)),
                        form.person(),
                        version);
    }

    private void use(Job job, Form form, long version, Context context) {
        String typed = form.needed("part", 40);
        workshop.shelf()
                .use(
                        job.number(),
                        typed,
                        form.text("name", 80),
                        Math.round(form.between("count", 1, 99)),
                        form.person(),
                        version);
    }

    private void prove(Job job, Form form, long version, Context context) {
        String result = form.needed("result", 10);
        if (!List.of("passed", "failed").contains(result)) {
            throw new BadForm("Result: passed or failed");
        }
        String words = Proof.words(form.needed("what", 120), result.equals("passed"), form.text("read", 120));
        workshop.jobs().note(job.number(), "proof", form.person(), words, "{}", null, version);
    }

    private void spend(Job job, Form form, long version, Context context) {
        workshop.closing()
                .spend(job.number(), form.between("minutes", 1, 1440), form.text("what", 200), form.person(), version);
    }

    private void sign(Job job, Form form, long version, Context context) {
        workshop.closing()
                .sign(
                        job.number(),
                        form.needed("name", 80),
                        Strokes.checked(form.text("strokes", 20_000)),
                        form.person(),
                        version);
    }

    private void photo(Job job, Form form, long version, Context context) {
        Upload upload = Upload.of(context.uploadedFile("photo"));
        workshop.photos().add(job.number(), upload.name(), upload.type(), upload.content(), form.person(), version);
    }

    private void picture(Context context) {
        Job job = job(context);
        Optional<wetside.shop.Photos.Content> photo =
                workshop.photos().content(job.id(), Numbers.of(context.pathParam("photo")));
        if (photo.isEmpty()) {
            throw new NotFoundResponse();
        }
        context.header("Cache-Control", "private, max-age=86400");
        context.contentType(photo.get().type()).result(photo.get().content());
    }
}
