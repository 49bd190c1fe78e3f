package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wetside.drawing.ReliabilityChart;
import wetside.judging.Calibration;
import wetside.judging.Interval;
import wetside.judging.NotPlayed;
import wetside.judging.Policy;
import wetside.judging.Tally;
import wetside.judging.Verdict;

/** An evaluation as people read it. */
final class VerdictText {
    private static final int MOST_MISSES = 12;

    private final Console console;
    private final Judged judged;
    private final Verdict verdict;
    private final boolean courses;

    /** @param courses whether jobs gone wrong are told step by step */
    VerdictText(Console console, Judged judged, boolean courses) {
        this.console = console;
        this.judged = judged;
        this.courses = courses;
        verdict = judged.verdict();
    }

    void print() {
        console.line(FindingText.heading(judged.installed()));
        int n = judged.jobs();
        console.line(n + " jobs" + (judged.isIncomplete() ? " of " + judged.wanted() : "") + ", seed " + judged.seed()
                + ", " + judged.draws() + " draws of each cause");
        notPlayed();
        if (n == 0) {
            console.line("No job was played to its end.");
            return;
        }
        policies();
        sorts();
        honesty();
        misses();
    }

    /** A fault of ours, in the twin or after it: said before any figure, as these jobs are missing from all of them. */
    private void notPlayed() {
        List<NotPlayed> all = verdict.notPlayed();
        if (all.isEmpty()) {
            return;
        }
        console.text(
                "",
                "NOT PLAYED: " + all.size() + (all.size() == 1 ? " job" : " jobs")
                        + ", left out for every policy alike, because something of ours failed");
        for (NotPlayed n : all) {
            console.text("  ", CourseText.line(n, judged.casework()));
        }
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
                    VerdictSummary.alarms(verdict.healthy(p)));
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
        Calibration end = verdict.calibrationAtEnd(Policy.PLAN);
        console.text(
                "  ",
                String.format(
                        Locale.ROOT,
                        "in the end, before the last thing done: calibration error %.3f, as many perfect forecasts stay"
                                + " under %.3f",
                        end.error(),
                        verdict.limitAtEnd(Policy.PLAN)));
        two();
    }

    /** Of no use where every job has one cause: whoever thinks of two at all thinks of them too often then. */
    private void two() {
        Verdict.Two two = verdict.two(Policy.PLAN);
        if (two.were() > 0) {
            console.text(
                    "  ",
                    "two causes at once: held to be in " + FindingText.percent(two.said())
                            + " of jobs when asking first gave way to doing, were in "
                            + FindingText.percent(two.were()));
        }
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

    /** What to mend in the diagnosis. */
    private void misses() {
        List<Verdict.Played> missed = verdict.goneWrong();
        if (missed.isEmpty()) {
            return;
        }
        console.line("");
        console.line("Gone wrong: not first in the end, or a false alarm");
        CourseText text = new CourseText(console, judged.casework());
        for (Verdict.Played p : courses ? missed : missed.subList(0, Math.min(MOST_MISSES, missed.size()))) {
            if (courses) {
                text.print(p);
            } else {
                console.text("  ", CourseText.line(p, judged.casework()));
            }
        }
        if (!courses && missed.size() > MOST_MISSES) {
            console.line("  and " + (missed.size() - MOST_MISSES) + " more; --courses tells them all, step by step");
        }
    }

    static String chart(Judged judged) {
        Verdict verdict = judged.verdict();
        List<ReliabilityChart.Point> points = verdict.played().isEmpty()
                ? List.of()
                : verdict.calibration(Policy.PLAN).bins().stream()
                        .map(b -> new ReliabilityChart.Point(b.n(), b.confidence(), b.right(), b.low(), b.high()))
                        .toList();
        List<String> notes = new ArrayList<>();
        notes.add(FindingText.heading(judged.installed()) + "; "
                + verdict.played().size() + " jobs, seed " + judged.seed()
                + (judged.isFailed() ? ", NOT PLAYED: " + verdict.notPlayed().size() : ""));
        if (!verdict.played().isEmpty()) {
            Tally one = verdict.singles(Policy.PLAN);
            notes.add("one cause: first in the end " + FindingText.percent(one.first()) + ", among the first three "
                    + FindingText.percent(one.three()));
            for (Policy p : verdict.policies()) {
                notes.add(p.word() + ": " + whole(verdict.tally(p).cost()) + " a job"
                        + (p == Policy.PLAN ? "" : ", ours " + ratio(verdict.ratio(p)) + " of it"));
            }
            notes.add(honest(verdict));
        }
        return ReliabilityChart.svg("How honest the shares are", points, notes);
    }

    static String ratio(Interval r) {
        return String.format(Locale.ROOT, "%.2f (%.2f-%.2f)", r.value(), r.low(), r.high());
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
