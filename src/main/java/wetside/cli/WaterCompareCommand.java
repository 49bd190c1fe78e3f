package wetside.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.analysis.Blend;
import wetside.analysis.Ranged;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Comparison;
import wetside.feedwater.MachineFacts;
import wetside.feedwater.Said;
import wetside.feedwater.Verdict;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;

/** One or several waters under treatments, side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Waters as they come and treated, side by side: taste, scale, corrosion, probe, cost a year.")
final class WaterCompareCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SHEET", arity = "1..*", description = "water sheets")
    private List<String> sheets;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "the machine they are for")
    private String machine;

    @Mixin
    private MachineChoice choice;

    @Option(names = "--constants", paramLabel = "SET", description = "standard (if not said) or high-temperature")
    private String constants = "standard";

    @Option(names = "--json", description = "for programs")
    private boolean json;

    WaterCompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        ConstantSet set = WaterCommand.set(constants);
        List<WaterSheet> read =
                sheets.stream().map(s -> WaterSheet.read(Path.of(s))).toList();
        MachineFacts facts = WaterCommand.facts(machine, choice);
        List<Comparison> all =
                read.stream().map(s -> Comparison.of(s, facts, set)).toList();
        if (json) {
            console.result(Json.print(all.stream().map(this::json).toList()));
        } else {
            all.forEach(c -> print(c, facts));
        }
        return 0;
    }

    private void print(Comparison c, MachineFacts facts) {
        console.line(c.sheet().title());
        console.text(
                "",
                c.sheet().use().words() + ". Prices are "
                        + (c.sheet().prices().said()
                                ? "those of the sheet."
                                : "assumed; a sheet may say its own (prices:)."));
        console.line("");
        Table table = new Table("lrrrrrrlrr");
        List<String> head = new ArrayList<>(List.of("", "hardness", "alkal.", "pH", "µS/cm"));
        head.add("falls");
        head.add("falls");
        head.addAll(List.of("taste", "act/", "cost"));
        table.row(head.toArray(String[]::new));
        table.row(
                "",
                "°dH",
                "°dH",
                "25 °C",
                "25 °C",
                Said.celsius(facts.hot().get(0).kelvin()),
                Said.celsius(facts.hot().get(facts.hot().size() - 1).kelvin()),
                "",
                "watch",
                "/year");
        for (Comparison.Entry e : c.entries()) {
            Composition w = e.advice().waters().middle();
            double ph = Equilibrium.at(e.advice().set(), 298.15).of(w).ph();
            int heats = e.advice().heated().size();
            boolean inside = Blend.outside(w, c.sheet().range()).isEmpty();
            table.row(
                    e.conditioning().name(),
                    Said.number(w.hardness() * 56.0774e2, 1),
                    Said.number(w.alkalinity() * 28.0387e2, 1),
                    Said.number(ph, 1),
                    Said.number(e.advice().conductivity().middle() * 1e4, 0),
                    falls(e.advice().heated().get(0).potential()),
                    falls(e.advice().heated().get(heats - 1).potential()),
                    inside ? "in range" : "outside",
                    count(e, Verdict.Grade.ACT) + "/" + count(e, Verdict.Grade.WATCH),
                    Said.number(e.expense().total(), 0));
        }
        table.print(console, "  ");
        console.line("");
        for (Comparison.Entry e : c.entries()) {
            told(e);
        }
        console.line("");
        console.text(
                "",
                "falls: calcium carbonate in mg/l it can drop at that temperature in a closed vessel, with what it may be.");
        console.line("");
    }

    private void told(Comparison.Entry e) {
        String note = e.conditioning().note();
        console.text(
                "  " + e.conditioning().name() + ": ",
                e.conditioning().how() + (note.isEmpty() ? "" : "; " + note) + cost(e));
        e.advice().verdicts().stream()
                .filter(v -> v.grade() == Verdict.Grade.ACT)
                .forEach(v -> console.text("    act on ", v.concern() + ": " + v.value() + "; " + v.reason()));
    }

    private static String cost(Comparison.Entry e) {
        if (e.expense().items().isEmpty()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        e.expense().items().forEach((what, money) -> parts.add(what + " " + Said.number(money, 0)));
        return ". A year: " + String.join(", ", parts);
    }

    private static long count(Comparison.Entry e, Verdict.Grade grade) {
        return e.advice().verdicts().stream().filter(v -> v.grade() == grade).count();
    }

    private static String falls(Ranged r) {
        if (r.middle() <= 0) {
            return "none";
        }
        String low = Said.number(Math.max(0, r.low()), 0);
        String high = Said.number(r.high(), 0);
        return low.equals(high) ? high : Said.number(r.middle(), 0) + " (" + low + "–" + high + ")";
    }

    private Map<String, Object> json(Comparison c) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("title", c.sheet().title());
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Comparison.Entry e : c.entries()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("treatment", e.conditioning().name());
            row.put("how", e.conditioning().how());
            row.put("note", e.conditioning().note());
            Map<String, Object> money = new LinkedHashMap<>();
            e.expense().items().forEach((what, cost) -> money.put(what, Json.number(cost)));
            row.put("costPerYear", money);
            row.putAll(WaterJson.results(e.advice()));
            rows.add(row);
        }
        m.put("treatments", rows);
        return m;
    }
}
