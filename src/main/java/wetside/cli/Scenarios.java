package wetside.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wetside.machine.Wording;
import wetside.procedure.Procedures;
import wetside.run.Scenario;

/** Finds what SCENARIO names: a routine, or a file; with everything it begins from. */
final class Scenarios {
    private Scenarios() {}

    static List<Scenario> chain(String name, Procedures procedures) {
        List<Scenario> chain = new ArrayList<>();
        Scenario last = procedures.routine(name).orElseGet(() -> file(name, procedures));
        chain.add(last);
        while (last.from().isPresent()) {
            String before = last.from().get();
            last = procedures.routine(before).orElseThrow(() -> unknown(before, procedures));
            chain.add(0, last);
        }
        return chain;
    }

    private static Scenario file(String name, Procedures procedures) {
        Path path = Path.of(name);
        if (!Files.exists(path)) {
            throw unknown(name, procedures);
        }
        return Scenario.read(path);
    }

    private static BadArgument unknown(String name, Procedures procedures) {
        String near = Wording.nearest(name, procedures.routines().keySet());
        return new BadArgument("no routine and no file '" + name + "'"
                + (near.isEmpty()
                        ? "; the routines are "
                                + String.join(", ", procedures.routines().keySet())
                        : ". Maybe " + near + "."));
    }
}
