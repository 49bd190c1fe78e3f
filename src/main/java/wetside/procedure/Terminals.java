package wetside.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import wetside.machine.Component;
import wetside.machine.Medium;
import wetside.run.Names;
import wetside.run.Run;

/** Where the tips of an ohm-meter go: "brew element.1", or several held together with "+". */
final class Terminals {
    private Terminals() {}

    /** The parts a tip touches, as named. */
    static List<String> parts(String tip) {
        return Arrays.stream(tip.split("\\+"))
                .map(one -> one.substring(0, Math.max(0, one.lastIndexOf('.'))).trim())
                .toList();
    }

    /** The same tip in the names of the machine's parts. */
    static String resolved(String tip, Names names) {
        return Arrays.stream(tip.split("\\+"))
                .map(one -> names.resolve(one.trim()).orElseThrow())
                .collect(Collectors.joining(" + "));
    }

    static boolean known(String tip, Names names) {
        for (String one : tip.split("\\+")) {
            int dot = one.lastIndexOf('.');
            boolean there = dot > 0
                    && names.component(one.substring(0, dot).trim())
                            .flatMap(c -> c.kind().port(one.substring(dot + 1).trim()))
                            .filter(p -> p.medium() == Medium.CURRENT)
                            .isPresent();
            if (!there) {
                return false;
            }
        }
        return true;
    }

    static double ohms(Procedure.Taking taking, Run run) {
        List<String> tips = taking.ohmsBetween();
        int[] red = terminals(tips.get(0), run);
        int[] black = terminals(tips.get(1), run);
        return taking.alone()
                ? run.plant().ohms(part(tips.get(1), run), red, black[0])
                : run.plant().ohms(red, black[0]);
    }

    private static String part(String tip, Run run) {
        return new Names(run.plant().blueprint().machine())
                .component(tip.substring(0, tip.lastIndexOf('.')).trim())
                .orElseThrow()
                .id();
    }

    private static int[] terminals(String tip, Run run) {
        Names names = new Names(run.plant().blueprint().machine());
        List<Integer> found = new ArrayList<>();
        for (String one : tip.split("\\+")) {
            int dot = one.lastIndexOf('.');
            Component c = names.component(one.substring(0, dot).trim()).orElseThrow();
            found.add(run.plant().blueprint().terminal(c, one.substring(dot + 1).trim()));
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }
}
