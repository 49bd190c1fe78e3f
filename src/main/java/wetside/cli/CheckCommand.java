package wetside.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Candidates;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Problem;
import wetside.plant.Plant;

/** Reads a machine file and says everything that is wrong with it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Check a machine file: everything wrong with it at once, or what it describes.")
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            description = "machine file, or the name of one that comes with Wetside")
    private String file;

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
            if (!json) {
                throw e;
            }
            console.line(Json.print(Map.of(
                    "ok",
                    false,
                    "problems",
                    e.problems().stream().map(CheckCommand::problem).toList())));
            return Wetside.BAD_INPUT;
        }
        Map<String, Object> revisions = new LinkedHashMap<>();
        for (MachineFile.Revision r : read.revisions()) {
            Machine m = read.machine(r.name());
            Plant.of(Kinds.blueprint(m));
            Map<String, Object> facts = new LinkedHashMap<>();
            facts.put("from", r.from().toString());
            facts.put("components", m.components().size());
            facts.put("lines", m.joins().lines().size());
            facts.put("wires", m.joins().wires().size());
            facts.put("causes", Candidates.of(m).size());
            revisions.put(r.name(), facts);
        }
        if (json) {
            console.line(Json.print(
                    Map.of("ok", true, "title", read.newest().identity().title(), "revisions", revisions)));
            return 0;
        }
        console.line(read.newest().identity().title() + ": nothing wrong with it");
        revisions.forEach((name, facts) -> console.line("  revision " + name + ": " + words(facts)));
        return 0;
    }

    private static String words(Object facts) {
        StringBuilder s = new StringBuilder();
        ((Map<?, ?>) facts)
                .forEach((k, v) -> s.append(s.length() == 0 ? "" : ", ")
                        .append(k)
                        .append(' ')
                        .append(v));
        return s.toString();
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
