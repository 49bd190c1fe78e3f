package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.casework.Expected;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.units.Display;
import wetside.units.Unit;

/** What to expect on one machine where it stands: to print and fill in by pen, or to fill in here. */
public final class ReadingsPages implements Routes {
    /** A word all machines are this sure to show needs no line of its own. */
    private static final double SURE = 0.995;

    private static final List<String> WHO = List.of("owner", "technician", "qualified");

    private final Workshop workshop;
    private final Pages pages;
    private final Subjects subjects;

    ReadingsPages(Workshop workshop, Pages pages, Subjects subjects) {
        this.workshop = workshop;
        this.pages = pages;
        this.subjects = subjects;
    }

    /**
     * @param done    machines simulated so far, of {@code draws}
     * @param trouble why there is nothing, "" otherwise
     * @param jobs    open ones of this machine, to keep what was read in
     */
    public record View(
            Subject subject,
            Plate plate,
            String date,
            int done,
            int draws,
            boolean ready,
            String trouble,
            String who,
            List<String> people,
            List<State> states,
            int more,
            List<Jobs.Ticket> jobs,
            String person) {}

    /** Readings in one state of the machine; {@code alike} are those that share a word. */
    public record State(String says, List<Row> rows, List<Alike> alike) {}

    /**
     * @param says  how it is taken
     * @param low   in the unit shown, NaN for words
     * @param said  what was filled in
     * @param flag  "", "fine", "low", "high", "other"
     * @param words to choose from; empty for a number
     */
    public record Row(
            String id,
            String name,
            String says,
            Level level,
            String reads,
            double low,
            double high,
            String rail,
            String unit,
            List<String> words,
            String usual,
            String said,
            String flag) {}

    public record Alike(String word, List<String> names) {}

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

    private void show(Context context, Map<String, String> said) {
        Subject s = subjects.of(context);
        pages.show(context, "readings", "Readings to expect", "Readings", view(context, s, said, Frame.units(context)));
    }

    private View view(Context context, Subject s, Map<String, String> said, Display units) {
        Expectations.Sheet sheet = sheet(s);
        String asked = context.queryParam("who");
        String who = asked != null && WHO.contains(asked) ? asked : "technician";
        Who person = Who.values()[WHO.indexOf(who)];
        List<Expected> allowed = sheet.expected().stream()
                .filter(e -> e.asking().question().effort().allowed(person))
                .toList();
        return new View(
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
                states(sheet, allowed, units, said),
                sheet.expected().size() - allowed.size(),
                jobs(s),
                Form.person(context));
    }

    private List<Jobs.Ticket> jobs(Subject s) {
        return s.onRegister() == null
                ? List.of()
                : workshop.jobs().ticketsOf(s.onRegister().id()).stream()
                        .filter(t -> t.state() != JobState.DONE)
                        .toList();
    }

    private static List<State> states(
            Expectations.Sheet sheet, List<Expected> allowed, Display units, Map<String, String> said) {
        List<State> states = new ArrayList<>();
        sheet.routines().forEach((name, routine) -> {
            List<Expected> here = allowed.stream()
                    .filter(e -> e.asking().procedure().routine().equals(name))
                    .toList();
            if (!here.isEmpty()) {
                states.add(state(Wording.capital(routine.says()), here, units, said));
            }
        });
        return states;
    }

    /** Twenty places that must be dry are one thing to look at. */
    private static State state(String says, List<Expected> here, Display units, Map<String, String> said) {
        Map<String, List<Expected>> same = new LinkedHashMap<>();
        for (Expected e : here) {
            if (!e.isNumber() && e.shares().values().stream().anyMatch(x -> x > SURE)) {
                same.computeIfAbsent(e.words(), w -> new ArrayList<>()).add(e);
            }
        }
        same.values().removeIf(l -> l.size() < 3);
        List<Row> rows = here.stream()
                .filter(e -> same.values().stream().noneMatch(l -> l.contains(e)))
                .map(e -> row(e, units, said))
                .toList();
        List<Alike> alike = new ArrayList<>();
        same.forEach((word, list) -> alike.add(new Alike(
                word, list.stream().map(e -> e.asking().question().id()).toList())));
        return new State(says, rows, alike);
    }

    private static Row row(Expected e, Display units, Map<String, String> said) {
        Unit unit = units.unit(e.asking().dimension());
        double low = unit.fromSi(e.asking().si(e.low()));
        double high = unit.fromSi(e.asking().si(e.high()));
        String typed = said.getOrDefault(e.asking().question().id(), "");
        boolean number = e.isNumber() && !Double.isNaN(e.middle());
        String usual = e.shares().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
        String reads = number
                ? units.range(
                        e.asking().si(e.low()),
                        e.asking().si(e.high()),
                        e.asking().dimension())
                : e.isNumber() ? "–" : e.words();
        Row row = new Row(
                e.asking().question().id(),
                Wording.capital(units.prose(e.asking().question().id())),
                Wording.capital(units.prose(e.asking().procedure().says())) + ".",
                Level.values()[e.asking().question().effort().who().ordinal()],
                reads,
                low,
                high,
                number ? Band.of(low, high, parsed(typed)) : "",
                unit.symbol(),
                e.asking().options(),
                usual,
                typed,
                "");
        return flagged(row, e);
    }

    private static Row flagged(Row r, Expected e) {
        String flag = "";
        if (!r.said().isEmpty()) {
            double v = parsed(r.said());
            if (r.words().isEmpty()) {
                flag = Double.isNaN(v) || Double.isNaN(r.low())
                        ? ""
                        : v < r.low() ? "low" : v > r.high() ? "high" : "fine";
            } else {
                flag = e.shares().getOrDefault(r.said(), 0.0) >= 0.02 ? "fine" : "other";
            }
        }
        return new Row(
                r.id(), r.name(), r.says(), r.level(), r.reads(), r.low(), r.high(), r.rail(), r.unit(), r.words(),
                r.usual(), r.said(), flag);
    }

    static double parsed(String typed) {
        try {
            return Double.parseDouble(typed.replace(',', '.').replace('−', '-'));
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** Shows the sheet with what was typed and its flags; keeps it in a job when one was chosen. */
    private void fillIn(Context context) {
        Subject s = subjects.of(context);
        Form form = new Form(context);
        Map<String, String> said = new LinkedHashMap<>();
        for (Expected e : sheet(s).expected()) {
            String id = e.asking().question().id();
            String typed = form.text(id, 40);
            if (typed.isEmpty()) {
                continue;
            }
            boolean fits = e.isNumber()
                    ? !Double.isNaN(parsed(typed))
                    : e.asking().options().contains(typed);
            if (!fits) {
                throw new BadForm(Wording.capital(e.asking().procedure().says()) + ": '" + typed + "' is no "
                        + (e.isNumber()
                                ? "number"
                                : "answer; there are "
                                        + String.join(", ", e.asking().options())));
            }
            said.put(id, typed);
        }
        String job = form.text("job", 20);
        if (job.isEmpty()) {
            show(context, said);
            return;
        }
        long number = form.number("job");
        if (jobs(s).stream().noneMatch(t -> t.number() == number)) {
            throw new BadForm("Job: " + number + " is no open job of this machine");
        }
        if (said.isEmpty()) {
            throw new BadForm("No reading is filled in");
        }
        Map<String, String> kept = metric(sheet(s).expected(), said, Frame.units(context));
        workshop.jobs()
                .note(number, "reading", form.person(), words(view(context, s, kept, Display.METRIC)), "{}", null);
        context.redirect("/jobs/" + number + "#end", HttpStatus.SEE_OTHER);
    }

    /** What is kept is kept in the units of the trade, whoever typed it. */
    private static Map<String, String> metric(List<Expected> expected, Map<String, String> said, Display units) {
        Map<String, String> kept = new LinkedHashMap<>(said);
        for (Expected e : expected) {
            Unit typed = units.unit(e.asking().dimension());
            Unit unit = Display.METRIC.unit(e.asking().dimension());
            if (e.isNumber() && !typed.equals(unit)) {
                kept.computeIfPresent(
                        e.asking().question().id(),
                        (id, text) -> Spoken.figures(unit.fromSi(typed.toSi(parsed(text)))));
            }
        }
        return kept;
    }

    private static String words(View view) {
        List<String> lines = new ArrayList<>();
        for (State state : view.states()) {
            for (Row r : state.rows()) {
                if (!r.said().isEmpty()) {
                    String mark = switch (r.flag()) {
                        case "low" -> " ▼ low";
                        case "high" -> " ▲ high";
                        case "other" -> " ▲ not as expected";
                        default -> "";
                    };
                    String unit = r.words().isEmpty() && !r.unit().isEmpty() ? " " + r.unit() : "";
                    lines.add(r.name() + ": " + r.said() + unit + mark + " (expected " + r.reads() + ")");
                }
            }
        }
        return String.join("\n", lines);
    }
}
