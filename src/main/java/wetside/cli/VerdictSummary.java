package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.judging.Policy;
import wetside.judging.Tally;
import wetside.judging.Verdict;

/** Several machines side by side: a line each. */
final class VerdictSummary {
    private final Console console;

    VerdictSummary(Console console) {
        this.console = console;
    }

    void print(List<Judged> judged) {
        console.line("");
        console.line("All machines, our plan; first and first 3 of jobs with one cause");
        Table table = new Table("lrrrrrrrr");
        table.row("", "jobs", "first", "first 3", "false alarms", "covered", "calibration", "cost", "min");
        judged.stream().filter(j -> j.jobs() > 0).forEach(j -> row(table, j));
        table.print(console, "  ");
        long missing =
                judged.stream().mapToLong(j -> j.verdict().notPlayed().size()).sum();
        if (missing > 0) {
            console.line("  NOT PLAYED: " + missing + (missing == 1 ? " job" : " jobs") + ", named above");
        }
        Table ratios = new Table("ll");
        judged.stream()
                .filter(j -> j.jobs() > 0 && j.verdict().policies().size() > 1)
                .forEach(j -> ratios.row(j.title(), ratios(j.verdict())));
        if (judged.stream().anyMatch(j -> j.verdict().policies().size() > 1)) {
            console.line("");
            console.line("Our cost, of that of others");
            ratios.print(console, "  ");
        }
    }

    private static void row(Table table, Judged j) {
        Verdict v = j.verdict();
        Tally one = v.singles(Policy.PLAN);
        Tally all = v.tally(Policy.PLAN);
        table.row(
                j.title(),
                j.jobs() + (j.isIncomplete() ? " of " + j.wanted() : ""),
                percent(one.first()),
                percent(one.three()),
                alarms(v.healthy(Policy.PLAN)),
                percent(all.covered()),
                String.format(
                                Locale.ROOT,
                                "%.3f < %.3f",
                                v.calibration(Policy.PLAN).error(),
                                v.limit(Policy.PLAN))
                        .replace("<", v.calibration(Policy.PLAN).error() <= v.limit(Policy.PLAN) ? "<" : ">"),
                String.format(Locale.ROOT, "%.0f", all.cost()),
                String.format(Locale.ROOT, "%.0f", all.minutes()));
    }

    private static String percent(double share) {
        return Double.isNaN(share) ? "-" : FindingText.percent(share);
    }

    /** Counted, as there are few. */
    static String alarms(Tally healthy) {
        return healthy.n() == 0 ? "-" : Math.round(healthy.alarm() * healthy.n()) + " of " + healthy.n();
    }

    private static String ratios(Verdict v) {
        return v.policies().stream()
                .filter(p -> p != Policy.PLAN)
                .map(p -> p.word() + " " + VerdictText.ratio(v.ratio(p)))
                .collect(java.util.stream.Collectors.joining(", "));
    }

    /** The same for programs, one machine under its title after the other. */
    static Map<String, Object> json(List<Judged> judged) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("incomplete", judged.stream().anyMatch(Judged::isIncomplete));
        m.put("machines", judged.stream().map(j -> new VerdictJson(j).whole()).toList());
        return m;
    }
}
