package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import wetside.department.JobsFile;
import wetside.shop.Job;

/** The department: what fails how often, how jobs go, which of them count. */
public final class DepartmentPages implements Routes {
    private static final int LONGEST = 200;

    private final Workshop workshop;
    private final Pages pages;

    DepartmentPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/department", c -> show(c, ""));
        routes.get("/department/jobs.yaml", this::file);
        routes.post("/department/jobs/{number}", this::count);
        routes.post("/department/bought", this::bought);
    }

    private void show(Context context, String trouble) {
        Map<String, Long> models = workshop.ledger().models();
        String asked = given(context, "machine");
        String file = models.containsKey(asked)
                ? asked
                : models.keySet().stream().findFirst().orElse("");
        String page = given(context, "page");
        DepartmentView view = new DepartmentFigures(workshop, models, file)
                .view(page.matches("[1-9]\\d{0,4}") ? Integer.parseInt(page) : 1, Form.person(context), trouble);
        pages.show(context, "department", "Department", "Department", view);
    }

    /** The jobs of a model that count, for another bench or the command line. */
    private void file(Context context) {
        String file = given(context, "machine");
        if (!workshop.ledger().models().containsKey(file)) {
            throw new NotFoundResponse();
        }
        String name = JobsFile.id(file).replaceAll("[^\\w.-]", "-");
        context.header("Content-Disposition", "attachment; filename=\"jobs-" + name + ".yaml\"");
        context.contentType("application/yaml; charset=utf-8")
                .result(JobsFile.of(workshop.ledger().of(file)).write());
    }

    private static String given(Context context, String field) {
        String form = context.formParam(field);
        String query = context.queryParam(field);
        return form != null ? form.strip() : query == null ? "" : query.strip();
    }

    /** Leaves a job out with a reason, or takes it in again. */
    private void count(Context context) {
        Job job = Numbers.job(workshop, context);
        Form form = new Form(context);
        try {
            boolean out = form.needed("do", 10).equals("out");
            String reason = out ? form.needed("reason", LONGEST) : "";
            workshop.outcomes().leaveOut(job.number(), reason, form.person());
            back(context);
        } catch (BadForm e) {
            context.status(422);
            show(context, "Not saved: job " + job.number() + ". " + e.getMessage());
        }
    }

    private void bought(Context context) {
        Form form = new Form(context);
        try {
            long id = form.number("id");
            String date = form.needed("bought", 10);
            LocalDate day = LocalDate.parse(date.length() == 7 ? date + "-15" : date);
            if (day.isAfter(LocalDate.now(workshop.clock()))) {
                throw new BadForm("Bought: " + date + " is still to come");
            }
            workshop.register().bought(id, date);
            back(context);
        } catch (DateTimeParseException e) {
            context.status(422);
            show(context, "Not saved: a month is written as 2021-05");
        } catch (BadForm e) {
            context.status(422);
            show(context, "Not saved: " + e.getMessage());
        }
    }

    private static void back(Context context) {
        String page = given(context, "page");
        context.redirect(
                FaultCase.linked(
                        "/department",
                        List.of(
                                new FaultCase.Field("machine", given(context, "machine")),
                                new FaultCase.Field("page", page.isEmpty() ? "1" : page))),
                HttpStatus.SEE_OTHER);
    }
}
