package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.casework.Expected;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.units.Display;

/** What to expect on one machine where it stands: to print and fill in by pen, or to fill in here. */
public final class ReadingsPages implements Routes {
    private static final List<String> WHO = List.of("owner", "technician", "qualified");

    private final Workshop workshop;
    private final Pages pages;
    private final Subjects subjects;

    ReadingsPages(Workshop workshop, Pages pages, Subjects subjects) {
        this.workshop = workshop;
        this.pages = pages;
        this.subjects = subjects;
    }

    @Override
    public void routes(RoutesConfig routes) {
        for (String a : Subjects.ADDRESSES) {
            routes.get(a + "/readings", c -> show(c, Map.of()));
            routes.get(a + "/readings/progress", this::progress);
            routes.post(a + "/readings", this::fillIn);
        }
    }

    private Expectations.Sheet sheet(Subject s) {
        String key = s.onRegister() == null
                ? s.key()
                : Libraries.Place.of(s.onRegister()).key();
        return workshop.models().expectations().of(key, s::installed);
    }

    private void progress(Context context) {
        Expectations.Sheet sheet = sheet(subjects.of(context));
        boolean over = sheet.isReady() || !sheet.trouble().isEmpty();
        context.contentType("text/plain; charset=utf-8").result(over ? "ready" : "" + sheet.done());
    }

    private static String who(Context context) {
        String posted = context.formParam("who");
        String asked = posted == null ? context.queryParam("who") : posted;
        return asked != null && WHO.contains(asked) ? asked : "technician";
    }

    /** @param said by the id of a question */
    private void show(Context context, Map<String, Typed> said) {
        Subject s = subjects.of(context);
        Display units = Frame.units(context);
        Expectations.Sheet sheet = sheet(s);
        String who = who(context);
        Who person = Who.values()[WHO.indexOf(who)];
        List<Expected> allowed = sheet.expected().stream()
                .filter(e -> e.asking().question().effort().allowed(person))
                .toList();
        ReadingsView view = new ReadingsView(
                s,
                s.plate(workshop, units),
                DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH)
                        .format(workshop.clock()
                                .instant()
                                .atZone(workshop.clock().getZone())),
                sheet.done(),
                Expectations.DRAWS,
                sheet.isReady(),
                sheet.trouble(),
                who,
                WHO,
                ReadingsView.states(sheet.routines(), allowed, units, said),
                ReadingsView.elsewhere(sheet.expected(), allowed, units, said),
                sheet.expected().size() - allowed.size(),
                jobs(s),
                context.formParam("job"),
                context.formParam("person") == null ? Form.person(context) : context.formParam("person"),
                Units.code(context));
        pages.show(context, "readings", "Readings to expect", "Readings", view, "sheet");
    }

    private List<Jobs.Ticket> jobs(Subject s) {
        return s.onRegister() == null
                ? List.of()
                : workshop.jobs().ticketsOf(s.onRegister().id()).stream()
                        .filter(t -> t.state() != JobState.DONE)
                        .toList();
    }

    /** Shows the sheet with what was typed and its flags; keeps it in a job when that was asked for and one was chosen. */
    private void fillIn(Context context) {
        Form form = new Form(context);
        String typedIn = form.text("typed-in", 8);
        String units = typedIn.isEmpty() ? Units.code(context) : typedIn;
        boolean turned = Units.take(context) || context.formParam("show") != null;
        Subject s = subjects.of(context);
        Map<String, Typed> said = said(form, sheet(s), units, !turned);
        if (turned && said.isEmpty()) {
            context.redirect(context.path() + "?who=" + who(context), HttpStatus.SEE_OTHER);
        } else if (turned || form.text("job", 20).isEmpty()) {
            show(context, said);
        } else {
            keep(s, said, form);
            context.redirect("/jobs/" + form.number("job") + "#end", HttpStatus.SEE_OTHER);
        }
    }

    private static Map<String, Typed> said(Form form, Expectations.Sheet sheet, String units, boolean strict) {
        Map<String, Typed> said = new LinkedHashMap<>();
        for (Expected e : sheet.expected()) {
            String id = e.asking().question().id();
            Typed typed = Typed.of(form, id, units);
            if (!typed.text().isEmpty()) {
                if (strict) {
                    mustFit(e, typed.text());
                }
                said.put(id, typed);
            }
        }
        return said;
    }

    /** In the units of the trade, whoever typed it. */
    private void keep(Subject s, Map<String, Typed> said, Form form) {
        long number = form.number("job");
        if (jobs(s).stream().noneMatch(t -> t.number() == number)) {
            throw new BadForm("Job: " + number + " is no open job of this machine");
        }
        if (said.isEmpty()) {
            throw new BadForm("No reading is filled in");
        }
        Expectations.Sheet sheet = sheet(s);
        String words =
                ReadingsView.words(ReadingsView.states(sheet.routines(), sheet.expected(), Display.METRIC, said));
        workshop.jobs().note(number, "reading", form.person(), words, "{}", null);
    }

    private static void mustFit(Expected e, String typed) {
        boolean fits = e.isNumber()
                ? !Double.isNaN(ReadingsView.parsed(typed))
                : e.asking().options().contains(typed);
        if (!fits) {
            throw new BadForm(Wording.capital(e.asking().procedure().says()) + ": '" + typed + "' is no "
                    + (e.isNumber()
                            ? "number"
                            : "answer; there are "
                                    + String.join(", ", e.asking().options())));
        }
    }
}
