package wetside.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.blueprint.Reading;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.plant.Balance;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.run.Run;
import wetside.run.Scenario;
import wetside.run.Trace;
import wetside.units.Display;

/** Runs the twin through a scenario, whole or with something broken. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "Run the twin through a scenario, whole or with parts broken, and show what is seen.")
final class RunCommand implements Callable<Integer> {
    private static final List<String> USUAL = List.of(
            "pump gauge.needle",
            "steam gauge.needle",
            "brew controller.display",
            "steam controller.display",
            "group.temperature",
            "cup.flow",
            "drain tube.flow");

    private final Console console;

    @Mixin
    private MachineChoice choice;

    @Parameters(index = "1", paramLabel = "SCENARIO", description = "a routine by name, or a scenario file")
    private String scenario;

    @Option(
            names = "--break",
            paramLabel = "COMPONENT:FAULT[=SEVERITY]",
            description = "break a part first; severity 0 to 1 (default: 0.8); may be given again")
    private List<String> breaks = List.of();

    @Option(names = "--show", split = ",", paramLabel = "READING", description = "readings to show, e.g. \"cup.flow\"")
    private List<String> shown = List.of();

    @Option(names = "--csv", paramLabel = "FILE", description = "write all readings as CSV; - for the screen")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "draw the shown readings as a chart")
    private Path svg;

    @Option(names = "--rows", paramLabel = "N", description = "rows of the table (default: 24)")
    private int rows = 24;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    RunCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Installed installed = choice.installed();
        Machine machine = installed.machine();
        for (String b : breaks) {
            machine = Installed.broken(machine, b);
        }
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        List<Reading> readings = readings(run);
        Trace trace = new Trace(new ArrayList<>(run.plant().readings().values()), 1);
        List<Scenario> todo = Scenarios.chain(scenario, Procedures.bundled());
        run.watch(trace);
        todo.forEach(run::go);
        trace.end(run.time(), run.plant());
        output(run, trace, readings);
        return 0;
    }

    private List<Reading> readings(Run run) {
        if (!shown.isEmpty()) {
            return shown.stream().map(run::reading).toList();
        }
        List<Reading> found = new ArrayList<>();
        for (String name : USUAL) {
            try {
                found.add(run.reading(name));
            } catch (wetside.run.NoSuchThing e) {
                continue;
            }
        }
        return found;
    }

    private void output(Run run, Trace trace, List<Reading> readings) throws IOException {
        if (csv != null) {
            String text = RunText.csv(trace);
            if (csv.equals("-")) {
                console.printer().print(text);
                return;
            }
            Files.writeString(Path.of(csv), text, StandardCharsets.UTF_8);
        }
        if (svg != null) {
            Files.writeString(svg, RunText.svg(title(run), balance(run), trace, readings), StandardCharsets.UTF_8);
        }
        if (json) {
            console.line(Json.print(json(run, trace, readings)));
            return;
        }
        console.line(title(run));
        RunText.table(trace, readings, rows).print(console, "  ");
        console.line("");
        console.line(balance(run));
        if (run.stepper().unsolved() > 0) {
            console.line("Mind: in " + run.stepper().unsolved()
                    + " steps water and steam found no balance; worst at "
                    + run.plant().worstNode());
        }
    }

    private String title(Run run) {
        String name = run.plant().blueprint().machine().identity().title() + ", " + scenario;
        return breaks.isEmpty() ? name : name + ", with " + String.join(" and ", breaks);
    }

    private static String balance(Run run) {
        Balance b = run.plant().balance();
        return String.format(
                Locale.ROOT,
                "Balance of this run: water %.0e of %.2f kg, air %.0e kg, heat %.0e of %.0f kJ, charge %.0e A;"
                        + " %d steps for %s",
                Math.abs(b.waterResidual()),
                b.waterTaken(),
                Math.abs(b.airResidual()),
                Math.abs(b.energyResidual()) / 1000,
                b.heatTaken() / 1000,
                Math.abs(b.chargeResidual()),
                run.stepper().steps(),
                Display.METRIC.print(run.time(), wetside.units.Dimension.TIME));
    }

    private Map<String, Object> json(Run run, Trace trace, List<Reading> readings) {
        Balance b = run.plant().balance();
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("title", title(run));
        m.put("seconds", Json.number(run.time()));
        m.put("marks", run.marks());
        m.put("readings", RunText.series(trace, readings));
        m.put(
                "balance",
                Map.of(
                        "water kg", Json.number(b.waterResidual()),
                        "air kg", Json.number(b.airResidual()),
                        "energy J", Json.number(b.energyResidual()),
                        "charge A", Json.number(b.chargeResidual())));
        return m;
    }
}
