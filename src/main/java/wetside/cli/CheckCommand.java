package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Casework;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Problem;
import wetside.procedure.Procedures;

/** Reads a machine file and says everything that is wrong with it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Check a machine file: everything wrong with it at once, or what it describes.")
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            description = "machine file, or the name of one that comes with Wetside")
    private String file;

    @Option(names = "--parts", description = "list the parts: what they show, how they are set, how they fail")
    private boolean parts;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        MachineFile read;
        try {
            read = MachineFile.find(file, Kinds.declarations());
        } catch (BadFile e) {
            if (json) {
                Map<String, Object> m = new LinkedHashMap<>();
                m.put("ok", false);
                m.put(
                        "problems",
                        e.problems().stream().map(CheckCommand::problem).toList());
                console.result(Json.print(m));
                return Wetside.BAD_INPUT;
            }
            throw e;
        }
        List<Facts> revisions = read.revisions().stream()
                .flatMap(r -> read.machines().stream()
                        .filter(m -> m.identity().revision().equals(r.name()))
                        .map(m -> Facts.of(r, m)))
                .toList();
        Parts list = new Parts(read.newest());
        if (json) {
            console.result(Json.print(json(read, revisions, list)));
            return 0;
        }
        console.line(read.newest().identity().title() + ": nothing wrong with it");
        revisions.forEach(r -> console.text("  ", r.words()));
        if (parts) {
            list.print(console);
        }
        return 0;
    }

    private Map<String, Object> json(MachineFile read, List<Facts> revisions, Parts list) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("ok", true);
        m.put("title", read.newest().identity().title());
        m.put("revisions", revisions);
        if (parts) {
            m.put("parts", list.json());
        }
        return m;
    }

    /** How much there is of what, in one revision. */
    record Facts(
            String revision,
            String builtFor,
            String from,
            int components,
            int lines,
            int wires,
            int causes,
            int readings) {
        static Facts of(MachineFile.Revision revision, Machine machine) {
            Casework casework = Casework.of(machine, Procedures.bundled());
            return new Facts(
                    revision.name(),
                    machine.identity().supply(),
                    revision.isDated() ? revision.from().toString() : "",
                    machine.components().size(),
                    machine.joins().lines().size(),
                    machine.joins().wires().size(),
                    casework.candidates().size(),
                    casework.askings().size());
        }

        String words() {
            return "revision " + revision + (builtFor.isEmpty() ? "" : " for " + builtFor)
                    + (from.isEmpty() ? "" : ", built from " + from) + ": " + components + " components, " + lines
                    + " lines, " + wires + " wires; " + causes
                    + " causes, " + readings + " readings";
        }
    }

    private static Map<String, Object> problem(Problem p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("file", p.spot().file());
        m.put("line", p.spot().line());
        m.put("column", p.spot().column());
        m.put("where", p.path());
        m.put("what", p.what());
        m.put("maybe", p.maybe());
        return m;
    }
}
