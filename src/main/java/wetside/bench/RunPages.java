package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import wetside.blueprint.Handle;
import wetside.casework.Installed;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.map.MachineMap;
import wetside.map.Measured;
import wetside.procedure.Repertoire;
import wetside.run.Scenario;
import wetside.units.Dimension;
import wetside.units.Display;

/** The twin of one machine, running: touched as the machine is, looked at as it is, and broken as it never should be. */
public final class RunPages implements Routes {
    private static final String TEXT = "text/plain; charset=utf-8";

    private final Workshop workshop;
    private final Pages pages;
    private final Subjects subjects;
    private final Drawings drawings;
    private final Kept<String, RunPanel> panels = new Kept<>(32);
    private final LiveRuns runs = new LiveRuns();

    RunPages(Workshop workshop, Pages pages, Subjects subjects, Drawings drawings) {
        this.workshop = workshop;
        this.pages = pages;
        this.subjects = subjects;
        this.drawings = drawings;
    }

    /**
     * @param dials    trusted markup of our own, in the order of the gauges
     * @param map      likewise
     * @param routines what it can be brought to: name, and what that is
     */
    public record View(
            Subject subject,
            Plate plate,
            RunPanel panel,
            List<String> dials,
            String map,
            Map<String, String> routines,
            Display units) {
        /** The unit a number is shown in. */
        public String unit(Dimension dimension) {
            return units.unit(dimension).symbol();
        }

        public double shown(double si, Dimension dimension) {
            return units.unit(dimension).fromSi(si);
        }

        /** How many sound machines make the band. */
        public int siblings() {
            return Siblings.MANY;
        }

        /** How high the charts will be, as the script draws them: nothing moves when they come. */
        public int chartsHeight() {
            Map<String, Long> lines = panel.channels().stream()
                    .filter(RunPanel.Channel::usual)
                    .collect(Collectors.groupingBy(c -> unit(c.dimension()), Collectors.counting()));
            long strips = lines.values().stream().mapToLong(n -> (n + 2) / 3).sum();
            return (int) Math.max(1, strips) * 106 + 26;
        }

        public String number(double value) {
            return String.format(Locale.ROOT, "%.4g", value);
        }
    }

    @Override
    public void routes(RoutesConfig routes) {
        for (String a : Subjects.ADDRESSES) {
            routes.get(a + "/run", this::show);
            routes.post(a + "/run", this::start);
        }
        routes.get("/runs/{run}/pictures", this::watch);
        routes.post("/runs/{run}/handle", this::handle);
        routes.post("/runs/{run}/speed", c -> done(c, run(c).speed(new Form(c).between("times", 1, 200))));
        routes.post("/runs/{run}/pause", c -> done(c, run(c).pause("yes".equals(new Form(c).needed("pause", 5)))));
        routes.post("/runs/{run}/break", this::breakPart);
        routes.post("/runs/{run}/mend", c -> done(c, run(c).mend()));
        routes.post("/runs/{run}/cold", c -> done(c, run(c).coldAgain()));
        routes.post("/runs/{run}/bring", this::bring);
        routes.post("/runs/{run}/end", c -> {
            run(c).end();
            c.status(204);
        });
        routes.get("/runs/{run}/scenario.yaml", this::save);
    }

    private LiveRun run(Context context) {
        return runs.of(context.pathParam("run"));
    }

    private RunPanel panel(Subject s) {
        return panels.of(s.key(), () -> {
            Machine machine = s.installed().machine();
            return RunPanel.of(machine, Measured.cold(machine).run().plant());
        });
    }

    private MachineMap map(Subject s) {
        return drawings.map(s, MachineMap.WET, Drawings.By.MEDIUM);
    }

    private void show(Context context) {
        Subject s = subjects.of(context);
        Display units = Frame.units(context);
        RunPanel panel = panel(s);
        Map<String, String> routines = new java.util.LinkedHashMap<>();
        drawings.repertoire(s)
                .routines()
                .forEach((name, scenario) -> routines.put(name, Wording.capital(scenario.says())));
        pages.show(
                context,
                "run",
                "Run " + s.title(),
                "Run",
                new View(
                        s,
                        s.plate(workshop, units),
                        panel,
                        panel.gauges().stream().map(g -> Dial.of(g, units)).toList(),
                        drawings.mapText(s, MachineMap.WET, Drawings.By.MEDIUM, s.address() + "?", false),
                        routines,
                        units));
    }

    /** A run for the page that asks, called by a name nobody can guess. */
    private void start(Context context) {
        Subject s = subjects.of(context);
        runs.start(s, map(s))
                .ifPresentOrElse(
                        name -> context.contentType(TEXT).result(name),
                        () -> context.status(503)
                                .contentType(TEXT)
                                .result(
                                        LiveRuns.MOST
                                                + " runs are going already: close a page that runs a machine, then try again."));
    }

    /** Holds the thread of the request until the page goes; a run has room for few. */
    private void watch(Context context) throws IOException, InterruptedException {
        LiveRun run = run(context);
        List<Integer> charted = new ArrayList<>();
        String wanted = context.queryParam("show");
        for (String w : (wanted == null ? "" : wanted).split(",")) {
            if (w.matches("\\d{1,4}")
                    && run.course().history().column(Integer.parseInt(w)) >= 0
                    && charted.size() < 24) {
                charted.add(Integer.parseInt(w));
            }
        }
        context.contentType("text/event-stream; charset=utf-8");
        Feed feed = new Feed(run, context.res().getOutputStream(), Frame.units(context), charted);
        run.watch(feed);
        feed.send();
    }

    private static void done(Context context, boolean taken) {
        context.status(taken ? 204 : 429);
    }

    private void handle(Context context) {
        LiveRun run = run(context);
        Form form = new Form(context);
        String name = form.needed("handle", 120);
        Handle handle = run.course().handles().stream()
                .filter(h -> h.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new BadForm("Handle: this machine has no '" + name + "'"));
        if (handle.options().isEmpty()) {
            double value = form.between("value", handle.least(), handle.most());
            String said = handle.least() > 200
                    ? String.format(Locale.ROOT, "%.1f °C", value - 273.15)
                    : String.format(Locale.ROOT, "%.1f %%", 100 * value);
            done(context, run.move(handle, said));
            return;
        }
        String value = form.needed("value", 60);
        if (!handle.options().contains(value)) {
            throw new BadForm("Value: '" + value + "' is none of " + String.join(", ", handle.options()));
        }
        done(context, run.move(handle, value));
    }

    private void breakPart(Context context) {
        LiveRun run = run(context);
        Form form = new Form(context);
        String part = form.needed("part", 80);
        String fault = form.needed("fault", 120);
        double far = form.between("far", 0, 1);
        String words = String.format(Locale.ROOT, "%s:%s=%.2f", part, fault, far);
        Machine machine = run.subject().installed().machine();
        Installed.broken(machine, words);
        String said = String.format(
                Locale.ROOT,
                "%s %s, %.0f %%",
                Wording.capital(machine.component(part).name()),
                fault,
                100 * far);
        done(context, run.breakPart(words, said, "yes".equals(form.text("compare", 5))));
    }

    private void bring(Context context) {
        LiveRun run = run(context);
        String name = new Form(context).needed("routine", 120);
        Repertoire repertoire = drawings.repertoire(run.subject());
        if (!repertoire.routines().containsKey(name)) {
            throw new BadForm("Routine: this machine cannot be taken through '" + name + "'");
        }
        List<Scenario> chain = repertoire.leadingTo(name);
        done(context, run.bring(name, chain));
    }

    private void save(Context context) {
        LiveRun run = run(context);
        context.header("Content-Disposition", "attachment; filename=\"scenario.yaml\"");
        context.contentType("application/yaml; charset=utf-8").result(run.scenario());
    }

    /** Ends all runs when the bench closes. */
    void close() {
        runs.endAll();
    }
}
