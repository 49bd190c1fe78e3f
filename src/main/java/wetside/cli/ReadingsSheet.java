package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.casework.Expected;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.run.Scenario;

/**
 * Expected readings by the state the machine is in, in the order of doing. Within a state, readings that are sure to be the
 * same word share a line: twenty places that must be dry are one thing to look at.
 */
final class ReadingsSheet {
    private static final double SURE = 0.995;
    private static final int SAYS = 66;
    private static final int READS = 22;

    private final Console console;
    private final Map<String, Scenario> routines;
    private final boolean all;

    /** @param all a line for each, nothing shared */
    ReadingsSheet(Console console, Map<String, Scenario> routines, boolean all) {
        this.console = console;
        this.routines = routines;
        this.all = all;
    }

    void print(List<Expected> expected) {
        routines.forEach((name, routine) -> {
            List<Expected> here = expected.stream()
                    .filter(e -> e.asking().procedure().routine().equals(name))
                    .toList();
            if (!here.isEmpty()) {
                console.line("");
                console.text("", Wording.capital(routine.says()));
                state(here);
            }
        });
    }

    private void state(List<Expected> here) {
        Map<String, List<Expected>> same = new LinkedHashMap<>();
        List<Expected> single = new ArrayList<>();
        for (Expected e : here) {
            if (all || e.isNumber() || e.shares().values().stream().noneMatch(s -> s > SURE)) {
                single.add(e);
            } else {
                same.computeIfAbsent(e.words(), w -> new ArrayList<>()).add(e);
            }
        }
        same.values().stream().filter(l -> l.size() == 1).forEach(single::addAll);
        Table table = new Table("lll").most(0, SAYS).most(1, READS);
        here.stream().filter(single::contains).forEach(e -> table.row(says(e), e.words(), mark(e)));
        table.print(console, "  ");
        same.forEach((word, list) -> {
            if (list.size() > 1) {
                console.text(
                        "  " + word + ": ",
                        String.join("; ", list.stream().map(ReadingsSheet::name).toList()));
            }
        });
    }

    private static String says(Expected e) {
        return e.asking().procedure().says();
    }

    /** Short, with the mark of who may, unless everybody may. */
    private static String name(Expected e) {
        String mark = mark(e);
        return e.asking().procedure().id() + (mark.isEmpty() ? "" : " " + mark);
    }

    private static String mark(Expected e) {
        Who who = e.asking().question().effort().who();
        return who == Who.OWNER ? "" : People.mark(who);
    }
}
