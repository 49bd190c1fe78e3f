package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.procedure.Procedures;

/** What every procedure should find on a machine that works. */
@Command(
        name = "readings",
        mixinStandardHelpOptions = true,
        description = "What gauges, lamps, tubes and meters should show on this machine where it stands.")
final class ReadingsCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private MachineChoice choice;

    @Option(names = "--draws", paramLabel = "N", description = "machines simulated within tolerances (default: 64)")
    private int draws = 64;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    ReadingsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < 2 || draws > 4096) {
            throw new BadArgument("--draws is a number from 2 to 4096, not " + draws);
        }
        Installed installed = choice.installed();
        Procedures procedures = Procedures.bundled();
        Casework casework = installed.casework(procedures);
        List<Expected> expected = Expected.healthy(casework, draws);
        if (json) {
            console.line(Json.print(expected.stream().map(ReadingsCommand::json).toList()));
            return 0;
        }
        console.line(installed.machine().identity().title() + ", revision "
                + installed.machine().identity().revision() + ", fed from the "
                + installed.feed().word());
        console.line("Range: 5 to 95 % of " + draws + " machines within tolerances, instrument included.");
        Map<String, List<Expected>> byRoutine = new LinkedHashMap<>();
        expected.forEach(e -> byRoutine
                .computeIfAbsent(e.asking().procedure().routine(), r -> new ArrayList<>())
                .add(e));
        byRoutine.forEach((routine, list) -> {
            console.line("");
            console.line(procedures.routine(routine).orElseThrow().says());
            Table table = new Table("lll");
            list.forEach(e -> table.row(e.asking().procedure().says(), e.words(), who(e.asking())));
            table.print(console, "  ");
        });
        return 0;
    }

    private static String who(Asking a) {
        return switch (a.procedure().who()) {
            case OWNER -> "owner";
            case TECHNICIAN -> "technician";
            case QUALIFIED -> "qualified electrician";
        };
    }

    private static Map<String, Object> json(Expected e) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("procedure", e.asking().procedure().id());
        m.put("says", e.asking().procedure().says());
        m.put("who", who(e.asking()));
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
