package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.blueprint.Reading;
import wetside.casework.Installed;
import wetside.machine.Machine;
import wetside.procedure.Procedures;
import wetside.run.Names;
import wetside.run.Scenario;

/** Runs the twin through a scenario, whole or with something broken. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
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
    private static final String SCREEN = "-";
    private static final int MOST_ROWS = 1000;

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Parameters(index = "1", paramLabel = "SCENARIO", description = "a routine by name, or a scenario file")
    private String scenario;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--break",
            paramLabel = "COMPONENT:FAULT[=SEVERITY]",
            description = "break a part first; severity 0 to 1 (default: 0.8); may be given again")
    private List<String> breaks = List.of();

    @Option(
            names = "--show",
            split = ",",
            paramLabel = "READING",
            description = "readings to show, e.g. cup.flow; wetside check MACHINE --parts lists them")
    private List<String> shown = List.of();

    @Option(names = "--whole", description = "from the cold machine on, not only the scenario itself")
    private boolean whole;

    @Option(names = "--rows", paramLabel = "N", description = "rows of the table (default: 24)")
    private int rows = 24;

    @Option(names = "--csv", paramLabel = "FILE", description = "write all readings as CSV; - for the screen")
    private String csv;

    @Option(names = "--svg", paramLabel = "FILE", description = "draw the shown readings as a chart; - for the screen")
    private String svg;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    RunCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        oneThingOnTheScreen();
        if (rows < 2 || rows > MOST_ROWS) {
            throw new BadArgument("--rows is a number from 2 to " + MOST_ROWS + ", not " + rows);
        }
        OutputFile csvFile = file("--csv", csv);
        OutputFile svgFile = file("--svg", svg);
        if (csvFile != null && svgFile != null && csvFile.path().equals(svgFile.path())) {
            throw new BadArgument("--csv and --svg name the same file");
        }
        Installed installed = choice.installed(name);
        Machine machine = installed.machine();
        for (String b : breaks) {
            machine = Installed.broken(machine, b);
        }
        List<Reading> readings = Recording.readings(machine, shown.isEmpty() ? usual(machine) : shown);
        List<Scenario> chain = Scenarios.chain(scenario, machine, Procedures.bundled());
        Recording recording = Recording.of(machine, chain, whole);
        Recording without = svg == null || breaks.isEmpty() ? null : Recording.of(installed.machine(), chain, whole);
        RunOutput output = new RunOutput(installed, chain.get(chain.size() - 1).name(), breaks, recording, readings);
        write(csvFile, csv, () -> output.csv());
        write(svgFile, svg, () -> output.svg(without));
        if (json) {
            console.result(Json.print(output.json()));
        } else if (!SCREEN.equals(csv) && !SCREEN.equals(svg)) {
            output.text(console, rows);
        }
        return 0;
    }

    private void oneThingOnTheScreen() {
        List<String> wanted = new ArrayList<>();
        if (SCREEN.equals(csv)) {
            wanted.add("--csv -");
        }
        if (SCREEN.equals(svg)) {
            wanted.add("--svg -");
        }
        if (json) {
            wanted.add("--json");
        }
        if (wanted.size() > 1) {
            throw new BadArgument(String.join(" and ", wanted) + " cannot share the screen; write one to a file");
        }
    }

    private static OutputFile file(String option, String name) {
        return name == null || name.equals(SCREEN) ? null : OutputFile.of(option, name);
    }

    private void write(OutputFile file, String name, Supplier<String> text) {
        if (file != null) {
            file.write(text.get());
        } else if (name != null) {
            console.printer().print(text.get());
        }
    }

    /** Those of the usual readings this machine has. */
    private static List<String> usual(Machine machine) {
        Names names = new Names(machine);
        return USUAL.stream().filter(n -> names.resolve(n).isPresent()).toList();
    }
}
