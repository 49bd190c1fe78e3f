package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wetside.casework.Installed;
import wetside.diagnosis.Library;
import wetside.drawing.ReliabilityChart;
import wetside.judging.Belief;
import wetside.judging.Calibration;
import wetside.judging.Interval;
import wetside.judging.Policy;
import wetside.judging.Tally;
import wetside.judging.Verdict;

/** An evaluation as people read it. */
final class VerdictText {
    private static final int MOST_MISSES = 12;

    private final Console console;
    private final Verdict verdict;
    private final Library library;

    VerdictText(Console console, Verdict verdict, Library library) {
        this.console = console;
        this.verdict = verdict;
        this.library = library;
    }

    void print(Installed installed, int wanted, int draws, long seed) {
        console.line(FindingText.heading(installed));
        int n = verdict.played().size();
        console.line(n + " jobs" + (n < wanted ? " of " + wanted : "") + ", seed " + seed + ", " + draws
                + " draws of each cause");
        if (n == 0) {
            console.line("No job was played to its end.");
            return;
        }
        policies();
        sorts();
        honesty();
        misses();
    }

    private void policies() {
        Table table = new Table("lrrrrrrrr");
        table.row("", "cost", "ours of it", "min", "asked", "wrong parts", "hazard min", "handed over", "alarm");
        for (Policy p : verdict.policies()) {
            Tally t = verdict.tally(p);
            table.row(
                    p.word(),
                    whole(t.cost()),
                    p == Policy.PLAN ? "" : ratio(verdict.ratio(p)),
                    whole(t.minutes()),
                    tenth(t.questions()),
                    hundredth(t.wrongParts()),
                    tenth(t.hazard()),
                    FindingText.percent(t.handedOver()),
                    percentOrNone(verdict.healthy(p).alarm()));
        }
        section("Until fixed, per job", table);
    }

    private void sorts() {
        Table table = new Table("lrrrrrrrr");
        table.row("", "jobs", "first", "first 3", "told first", "right repair", "cost", "min", "wrong parts");
        verdict.bySort(Policy.PLAN).forEach((sort, t) -> row(table, sort, t));
        row(table, "one cause", verdict.singles(Policy.PLAN));
        row(table, "all", verdict.tally(Policy.PLAN));
        section("Our plan, by what was wrong", table);
    }

    private static void row(Table table, String sort, Tally t) {
        if (t.n() > 0) {
            table.row(
                    sort,
                    "" + t.n(),
                    FindingText.percent(t.first()),
                    FindingText.percent(t.three()),
                    FindingText.percent(t.toldFirst()),
                    FindingText.percent(t.repair()),
                    whole(t.cost()),
                    whole(t.minutes()),
                    hundredth(t.wrongParts()));
        }
    }

    private void section(String title, Table table) {
        console.line("");
        console.line(title);
        table.print(console, "  ");
    }

    private void honesty() {
        Table table = new Table("rrrl");
        table.row("said", "right", "jobs", "95 % interval");
        for (Calibration.Bin b : verdict.calibration(Policy.PLAN).bins()) {
            table.row(
                    FindingText.percent(b.confidence()),
                    FindingText.percent(b.right()),
                    "" + b.n(),
                    FindingText.percent(b.low()) + " to " + FindingText.percent(b.high()));
        }
        section("How honest the shares are, when asking first gives way to doing", table);
        console.text("  ", honest(verdict));
    }

    private static String honest(Verdict verdict) {
        Tally t = verdict.tally(Policy.PLAN);
        double error = verdict.calibration(Policy.PLAN).error();
        double limit = verdict.limit(Policy.PLAN);
        return String.format(
                Locale.ROOT,
                "calibration error %.3f, %s what as many perfect forecasts stay under (%.3f); Brier %.3f; log score %.2f;"
                        + " the causes that hold 90 %% hold the truth in %s",
                error,
                error <= limit ? "within" : "ABOVE",
                limit,
                t.brier(),
                t.log(),
                FindingText.percent(t.covered()));
    }

    /** The jobs whose truth did not stand first in the end: what to mend in the diagnosis. */
    private void misses() {
        List<Verdict.Played> missed = verdict.played().stream()
                .filter(p -> !p.outcomes().get(Policy.PLAN).last().right())
                .toList();
        if (missed.isEmpty()) {
            return;
        }
        console.line("");
        console.line("Not first in the end");
        for (Verdict.Played p : missed.subList(0, Math.min(MOST_MISSES, missed.size()))) {
            Belief b = p.outcomes().get(Policy.PLAN).last();
            String truth = p.job().truth().stream()
                    .map(c -> library.causes().get(c).id())
                    .collect(Collectors.joining(" and "));
            console.text(
                    "  ",
                    "job " + p.job().number() + ": " + truth + " (" + FindingText.percent(b.ofTruth()) + ", place "
                            + b.rank() + "); first stood " + b.told() + " (" + FindingText.percent(b.top()) + ")");
        }
        if (missed.size() > MOST_MISSES) {
            console.line("  and " + (missed.size() - MOST_MISSES) + " more; --json has them all");
        }
    }

    static String chart(Verdict verdict, Installed installed) {
        List<ReliabilityChart.Point> points = verdict.played().isEmpty()
                ? List.of()
                : verdict.calibration(Policy.PLAN).bins().stream()
                        .map(b -> new ReliabilityChart.Point(b.n(), b.confidence(), b.right(), b.low(), b.high()))
                        .toList();
        List<String> notes = new ArrayList<>();
        notes.add(FindingText.heading(installed) + "; " + verdict.played().size() + " jobs");
        if (!verdict.played().isEmpty()) {
            Tally one = verdict.singles(Policy.PLAN);
            notes.add("one cause: first in the end " + FindingText.percent(one.first()) + ", among the first three "
                    + FindingText.percent(one.three()));
            for (Policy p : verdict.policies()) {
                notes.add(p.word() + ": " + whole(verdict.tally(p).cost()) + " a job"
                        + (p == Policy.PLAN ? "" : "; ours costs " + ratio(verdict.ratio(p)) + " of that"));
            }
            notes.add(honest(verdict));
        }
        return ReliabilityChart.svg("How honest the shares are", points, notes);
    }

    private static String ratio(Interval r) {
        return String.format(Locale.ROOT, "%.2f (%.2f-%.2f)", r.value(), r.low(), r.high());
    }

    private static String percentOrNone(double share) {
        return Double.isNaN(share) ? "-" : FindingText.percent(share);
    }

    private static String whole(double v) {
        return String.format(Locale.ROOT, "%.0f", v);
    }

    private static String tenth(double v) {
        return String.format(Locale.ROOT, "%.1f", v);
    }

    private static String hundredth(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }
}
