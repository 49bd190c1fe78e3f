package wetside.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.units.Display;

/**
 * What the forms of a job offer: every reading and every cause of its machine. Hundreds of lines, the same on every job of
 * the model: written once.
 */
public final class JobLists {
    /** Of a machine whose file is gone. */
    static final Options NONE = new Options("", "", Set.of());

    private final Pages pages;
    private final Kept<Key, Options> kept = new Kept<>(32);

    JobLists(Pages pages) {
        this.pages = pages;
    }

    private record Key(Casework casework, Display units) {}

    /**
     * Ready to stand in a page.
     *
     * @param askings options by the state the machine is in, in the order of doing
     * @param causes  options by their ids
     * @param parts   numbers of the parts that belong into the machine
     */
    public record Options(String askings, String causes, Set<String> parts) {}

    /** What the template is told. */
    public record Lists(Map<String, List<Asking>> askings, List<String> causes, Display units, boolean ofCauses) {
        /** What a procedure is answered with: its unit, or its words. */
        public String answeredBy(Asking a) {
            return a.options().isEmpty() ? units.unit(a.dimension()).symbol() : String.join(" / ", a.options());
        }
    }

    Options of(Casework casework, Display units) {
        return kept.of(new Key(casework, units), () -> {
            Map<String, List<Asking>> askings = askings(casework);
            List<String> causes =
                    casework.candidates().stream().map(x -> x.cause().id()).toList();
            return new Options(
                    pages.markup("joboptions", new Lists(askings, causes, units, false)),
                    pages.markup("joboptions", new Lists(askings, causes, units, true)),
                    numbers(casework));
        });
    }

    private static Set<String> numbers(Casework casework) {
        return casework.machine().components().stream()
                .map(c -> c.place().part())
                .filter(p -> !p.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, List<Asking>> askings(Casework casework) {
        Map<String, List<Asking>> all = new LinkedHashMap<>();
        casework.routines().forEach((name, routine) -> {
            List<Asking> here = casework.askings().stream()
                    .filter(a -> a.procedure().routine().equals(name))
                    .toList();
            if (!here.isEmpty()) {
                all.put(routine.says(), here);
            }
        });
        return all;
    }
}
