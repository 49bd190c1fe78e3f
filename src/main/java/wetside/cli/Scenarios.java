package wetside.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Scenario;

/** Finds what SCENARIO names: a routine of the machine, or a file; with everything it begins from. */
final class Scenarios {
    private Scenarios() {}

    static List<Scenario> chain(String name, Machine machine, Procedures procedures) {
        Repertoire repertoire = Repertoire.of(procedures, machine);
        if (repertoire.routines().containsKey(name)) {
            return repertoire.leadingTo(name);
        }
        if (!Files.exists(Path.of(name))) {
            throw unknown(name, procedures, repertoire);
        }
        Scenario own = Scenario.read(Path.of(name));
        List<Scenario> chain = new ArrayList<>();
        own.from().ifPresent(before -> {
            if (!repertoire.routines().containsKey(before)) {
                throw unknown(before, procedures, repertoire);
            }
            chain.addAll(repertoire.leadingTo(before));
        });
        chain.add(own);
        return chain;
    }

    private static BadArgument unknown(String name, Procedures procedures, Repertoire repertoire) {
        Set<String> routines = repertoire.routines().keySet();
        List<String> stationed =
                routines.stream().filter(r -> r.startsWith(name + ", ")).toList();
        if (!stationed.isEmpty()) {
            return new BadArgument("this machine has '" + String.join("' and '", stationed) + "': say which");
        }
        if (procedures.said().containsKey(name)) {
            Set<String> lacking = repertoire.lacking(name);
            return new BadArgument("this machine cannot be taken through '" + name + "'"
                    + (lacking.isEmpty() ? "" : ": it has no " + Wording.inWords(lacking)));
        }
        String near = Wording.nearest(name, routines);
        return new BadArgument("no routine and no file '" + name + "'"
                + (near.isEmpty() ? "; the routines are " + String.join(", ", routines) : ". Maybe " + near + "."));
    }
}
