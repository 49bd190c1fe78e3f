package wetside.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.casework.Expected;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.run.Scenario;
import wetside.shop.Jobs;
import wetside.units.Display;
import wetside.units.Unit;

/**
 * The sheet of what to expect as its template shows it.
 *
 * @param done    machines simulated so far, of {@code draws}
 * @param trouble why there is nothing, "" otherwise
 * @param others  what was filled in on lines this person does not see, by field
 * @param more    how many lines that are
 * @param jobs    open ones of this machine, to keep what was read in
 * @param job     the one of them that was chosen, null for none
 * @param typedIn the units of what stands in the fields
 */
public record ReadingsView(
        Subject subject,
        Plate plate,
        String date,
        int done,
        int draws,
        boolean ready,
        String trouble,
        String who,
        List<String> people,
        List<State> states,
        Map<String, String> others,
        int more,
        List<Jobs.Ticket> jobs,
        String job,
        String person,
        String typedIn) {
    /** A word all machines are this sure to show needs no line of its own. */
    private static final double SURE = 0.995;

    /** Readings in one state of the machine; {@code alike} are those that share a word. */
    public record State(String says, List<Row> rows, List<Alike> alike) {}

    /**
     * @param says  how it is taken
     * @param low   in the unit shown, NaN for words
     * @param said  what was filled in, in the unit shown
     * @param kept  how it was typed, where it was typed in another
     * @param flag  "", "fine", "low", "high", "other"
     * @param words to choose from; empty for a number
     */
    public record Row(
            String id,
            String name,
            String says,
            Level level,
            String reads,
            double low,
            double high,
            String rail,
            String unit,
            List<String> words,
            String usual,
            String said,
            String kept,
            String flag) {}

    public record Alike(String word, List<String> names) {}

    static List<State> states(
            Map<String, Scenario> routines, List<Expected> allowed, Display units, Map<String, Typed> said) {
        List<State> states = new ArrayList<>();
        routines.forEach((name, routine) -> {
            List<Expected> here = allowed.stream()
                    .filter(e -> e.asking().procedure().routine().equals(name))
                    .toList();
            if (!here.isEmpty()) {
                states.add(state(Wording.capital(routine.says()), here, units, said));
            }
        });
        return states;
    }

    /** Twenty places that must be dry are one thing to look at. */
    private static State state(String says, List<Expected> here, Display units, Map<String, Typed> said) {
        Map<String, List<Expected>> same = new LinkedHashMap<>();
        for (Expected e : here) {
            if (!e.isNumber() && e.shares().values().stream().anyMatch(x -> x > SURE)) {
                same.computeIfAbsent(e.words(), w -> new ArrayList<>()).add(e);
            }
        }
        same.values().removeIf(l -> l.size() < 3);
        List<Row> rows = here.stream()
                .filter(e -> same.values().stream().noneMatch(l -> l.contains(e)))
                .map(e -> row(e, units, said))
                .toList();
        List<Alike> alike = new ArrayList<>();
        same.forEach((word, list) -> alike.add(new Alike(
                word, list.stream().map(e -> e.asking().question().id()).toList())));
        return new State(says, rows, alike);
    }

    private static Row row(Expected e, Display units, Map<String, Typed> said) {
        Unit unit = units.unit(e.asking().dimension());
        double low = unit.fromSi(e.asking().si(e.low()));
        double high = unit.fromSi(e.asking().si(e.high()));
        Typed typed = said.getOrDefault(e.asking().question().id(), new Typed("", ""));
        String shown = typed.in(units, e.asking().dimension());
        boolean number = e.isNumber() && !Double.isNaN(e.middle());
        String usual = e.shares().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
        String reads = number
                ? units.range(
                        e.asking().si(e.low()),
                        e.asking().si(e.high()),
                        e.asking().dimension())
                : e.isNumber() ? "–" : e.words().replace(" %", "\u00a0%");
        Row row = new Row(
                e.asking().question().id(),
                Wording.capital(units.prose(e.asking().question().id())),
                Wording.capital(units.prose(e.asking().procedure().says())) + ".",
                Level.values()[e.asking().question().effort().who().ordinal()],
                reads,
                low,
                high,
                number ? Band.of(low, high, parsed(shown)) : "",
                unit.symbol(),
                e.asking().options(),
                usual,
                shown,
                typed.kept(shown),
                "");
        return flagged(row, e);
    }

    /** Fields and what to send back in them for lines that are not shown. */
    static Map<String, String> elsewhere(
            List<Expected> all, List<Expected> allowed, Display units, Map<String, Typed> said) {
        Map<String, String> others = new LinkedHashMap<>();
        for (Expected e : all) {
            String id = e.asking().question().id();
            Typed typed = said.get(id);
            if (typed != null && !allowed.contains(e)) {
                String shown = typed.in(units, e.asking().dimension());
                others.put(id, shown);
                others.put(Typed.was(id), typed.kept(shown));
            }
        }
        return others;
    }

    private static Row flagged(Row r, Expected e) {
        String flag = "";
        if (!r.said().isEmpty()) {
            double v = parsed(r.said());
            if (r.words().isEmpty()) {
                flag = Double.isNaN(v) || Double.isNaN(r.low())
                        ? ""
                        : v < r.low() ? "low" : v > r.high() ? "high" : "fine";
            } else {
                flag = e.shares().getOrDefault(r.said(), 0.0) >= 0.02 ? "fine" : "other";
            }
        }
        return new Row(
                r.id(), r.name(), r.says(), r.level(), r.reads(), r.low(), r.high(), r.rail(), r.unit(), r.words(),
                r.usual(), r.said(), r.kept(), flag);
    }

    static double parsed(String typed) {
        try {
            return Double.parseDouble(typed.replace(',', '.').replace('−', '-'));
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** What was read, as a timeline keeps it. */
    static String words(List<State> states) {
        List<String> lines = new ArrayList<>();
        for (State state : states) {
            for (Row r : state.rows()) {
                if (!r.said().isEmpty()) {
                    String mark = switch (r.flag()) {
                        case "low" -> " ▼ low";
                        case "high" -> " ▲ high";
                        case "other" -> " ▲ not as expected";
                        default -> "";
                    };
                    String unit = r.words().isEmpty() && !r.unit().isEmpty() ? " " + r.unit() : "";
                    lines.add(r.name() + ": " + r.said() + unit + mark + " (expected " + r.reads() + ")");
                }
            }
        }
        return String.join("\n", lines);
    }
}
