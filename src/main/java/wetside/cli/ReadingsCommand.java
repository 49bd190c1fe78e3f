package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.diagnosis.Who;
import wetside.procedure.Procedures;

/** What every procedure should find on a machine that works. */
@Command(
        name = "readings",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "What gauges, lamps, tubes and meters should show on this machine where it stands.")
final class ReadingsCommand implements Callable<Integer> {
    private static final int MOST_DRAWS = 4096;

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--who",
            paramLabel = "WHO",
            description = "what this person may look at: owner (if not said), technician or qualified")
    private String who;

    @Option(names = "--all", description = "a line for each reading; otherwise what reads the same shares one")
    private boolean all;

    @Option(names = "--draws", paramLabel = "N", description = "machines simulated, tolerances × 1.3 (default: 64)")
    private int draws = 64;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    ReadingsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < 2 || draws > MOST_DRAWS) {
            throw new BadArgument("--draws is a number from 2 to " + MOST_DRAWS + ", not " + draws);
        }
        Who person = People.of(who, Who.OWNER);
        Installed installed = choice.installed(name);
        Casework casework = installed.casework(Procedures.bundled());
        List<Expected> expected = Expected.healthy(casework, draws);
        List<Expected> allowed = expected.stream()
                .filter(e -> e.asking().question().effort().allowed(person))
                .toList();
        if (json) {
            Map<String, Object> m = Json.machine(installed);
            m.put("draws", draws);
            m.put("readings", allowed.stream().map(ReadingsCommand::json).toList());
            console.result(Json.print(m));
            return 0;
        }
        console.line(FindingText.heading(installed));
        console.line("What a sound machine reads: 5 to 95 % of " + draws
                + " machines, tolerances × 1.3, instrument included.");
        new ReadingsSheet(console, casework.routines(), all).print(allowed);
        more(expected.size() - allowed.size());
        return 0;
    }

    private void more(int hidden) {
        if (hidden > 0) {
            console.line("");
            console.line(hidden + " more may be read by others: --who technician, --who qualified.");
        }
    }

    private static Map<String, Object> json(Expected e) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("reading", e.asking().procedure().id());
        m.put("says", e.asking().procedure().says());
        m.put("who", People.word(e.asking().question().effort().who()));
        m.put("routine", e.asking().procedure().routine());
        if (e.isNumber()) {
            m.put("unit", e.asking().unit().symbol());
            m.put("low", Json.number(e.low()));
            m.put("middle", Json.number(e.middle()));
            m.put("high", Json.number(e.high()));
        } else {
            m.put("words", e.shares());
        }
        return m;
    }
}
