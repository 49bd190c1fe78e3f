package wetside.bench;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wetside.department.Counted;
import wetside.department.Course;
import wetside.department.Exposure;
import wetside.department.Failures.Failure;
import wetside.department.Failures.Interval;
import wetside.department.Figures;
import wetside.department.Model;
import wetside.department.Practice;
import wetside.drawing.RateRails;
import wetside.machine.Wording;

/** Puts the page of the department together. */
final class DepartmentFigures {
    private static final int DRAWN = 12;
    private static final int LISTED = 20;
    private static final int ROWS = 10;
    private static final int UNDATED = 20;
    private static final double HUNDRED_YEARS = 100 * 8766;

    private final Workshop workshop;
    private final Map<String, Long> models;
    private final String file;
    private final Instant now;

    DepartmentFigures(Workshop workshop, Map<String, Long> models, String file) {
        this.workshop = workshop;
        this.models = models;
        this.file = file;
        now = workshop.clock().instant();
    }

    DepartmentView view(int page, String person, String trouble) {
        Figures figures = workshop.ledger().figures(file, now);
        Practice practice = figures.practice();
        List<Failure> all = figures.failures().all();
        List<Failure> faults = all.stream().filter(f -> !f.isNone()).toList();
        List<Counted> jobs = figures.newestFirst();
        int from = Math.min((page - 1) * ROWS, jobs.size());
        int to = Math.min(from + ROWS, jobs.size());
        boolean byTime = faults.stream().anyMatch(f -> f.perHour() != null);
        return new DepartmentView(
                chips(),
                file,
                practice.model().map(Model::title).orElse(file),
                lead(practice, figures.weight()),
                faults.isEmpty() ? DepartmentView.Drawing.NONE : drawing(faults),
                rest(faults),
                goes(figures.course(), all),
                times(figures.course()),
                table(all),
                byTime,
                time(figures.exposure()),
                undated(),
                jobs.subList(from, to).stream().map(j -> row(practice, j)).toList(),
                page,
                to < jobs.size() ? page + 1 : 0,
                person,
                trouble);
    }

    /** The likeliest, and all that a job tells of. */
    private List<DepartmentView.Line> table(List<Failure> all) {
        List<DepartmentView.Line> table = new ArrayList<>();
        for (Failure f : all) {
            if (f.jobs() > 0.005
                    || table.size() < LISTED && !Double.isNaN(f.share().low())) {
                table.add(line(f));
            }
        }
        return table;
    }

    private List<DepartmentView.Chip> chips() {
        List<DepartmentView.Chip> chips = new ArrayList<>();
        models.forEach((f, n) -> chips.add(new DepartmentView.Chip(
                workshop.ledger().title(f),
                FaultCase.linked("/department", List.of(new FaultCase.Field("machine", f))),
                Long.toString(n),
                f.equals(file))));
        return chips;
    }

    private static String lead(Practice practice, double weight) {
        int out = practice.jobs().size() - practice.counting();
        return practice.counting() + (practice.counting() == 1 ? " job counts" : " jobs count") + " as "
                + Spoken.number(weight, 0.1) + ", shipped rates as "
                + Math.round(practice.experience().strength())
                + (out == 0 ? "" : "; " + out + " left out") + ".";
    }

    private static DepartmentView.Drawing drawing(List<Failure> faults) {
        RateRails rails = new RateRails(
                faults.stream()
                        .limit(DRAWN)
                        .map(f -> rail(Wording.capital(f.words()), f.share(), f.shipped(), note(f)))
                        .toList(),
                "of 100 jobs");
        return new DepartmentView.Drawing(rails.wide(), rails.narrow());
    }

    private static String note(Failure f) {
        String mean = Spoken.number(100 * f.share().mean(), 0.1);
        return f.jobs() < 0.05 ? mean : mean + ", " + Spoken.number(f.jobs(), 0.1) + " here";
    }

    private static RateRails.Row rail(String name, Interval i, double before, String note) {
        return new RateRails.Row(
                name,
                100 * i.low(),
                100 * i.core(),
                100 * i.mean(),
                100 * i.coreTo(),
                100 * i.high(),
                100 * before,
                note);
    }

    private static String rest(List<Failure> faults) {
        double rest =
                faults.stream().skip(DRAWN).mapToDouble(f -> f.share().mean()).sum();
        return faults.size() <= DRAWN
                ? ""
                : (faults.size() - DRAWN) + " other causes, together " + Math.round(100 * rest) + " of 100 jobs.";
    }

    private static DepartmentView.Drawing goes(Course course, List<Failure> all) {
        List<RateRails.Row> rows = new ArrayList<>();
        double shipped = all.stream()
                .filter(Failure::isNone)
                .mapToDouble(Failure::shipped)
                .findFirst()
                .orElse(Double.NaN);
        rows.add(rail("Nothing was wrong", course.nothingShare(), shipped, of(course.nothing(), course.jobs())));
        rows.add(rail(
                "Came back within " + Course.BACK.toDays() + " days",
                course.backShare(),
                Double.NaN,
                of(course.back(), course.settled())));
        RateRails rails = new RateRails(rows, "of 100 jobs");
        return new DepartmentView.Drawing(rails.wide(), rails.narrow());
    }

    private static String of(int some, int all) {
        return some + " of " + all;
    }

    private static List<FaultView.Fact> times(Course course) {
        List<FaultView.Fact> times = new ArrayList<>();
        if (course.toFind().jobs() > 0) {
            times.add(new FaultView.Fact("Taken in to finding", spread(course.toFind(), DepartmentFigures::hours)));
        }
        if (course.minutes().jobs() > 0) {
            times.add(new FaultView.Fact("Booked on a job", spread(course.minutes(), m -> Math.round(m) + " min")));
        }
        return times;
    }

    private interface Measure {
        String words(double value);
    }

    private static String spread(Course.Spread s, Measure measure) {
        return measure.words(s.half())
                + (s.jobs() < 4
                        ? ""
                        : ", half of them " + measure.words(s.quarter()) + " to " + measure.words(s.threeQuarters()));
    }

    private static String hours(double hours) {
        return hours < 1
                ? Math.round(60 * hours) + " min"
                : hours < 48
                        ? Spoken.number(hours, hours < 10 ? 0.1 : 1) + " h"
                        : Spoken.number(hours / 24, 0.1) + " days";
    }

    private DepartmentView.Line line(Failure f) {
        Interval time = f.perHour();
        return new DepartmentView.Line(
                Wording.capital(f.words()),
                Spoken.number(100 * f.shipped(), 0.1),
                Spoken.number(100 * f.share().mean(), 0.1),
                Spoken.number(100 * f.share().low(), 0.1) + "–"
                        + Spoken.number(100 * f.share().high(), 0.1),
                f.jobs() < 0.05 ? "–" : Spoken.number(f.jobs(), 0.1),
                time == null
                        ? ""
                        : String.format(
                                Locale.ROOT,
                                "%.1f, %.1f–%.1f",
                                HUNDRED_YEARS * time.mean(),
                                HUNDRED_YEARS * time.low(),
                                HUNDRED_YEARS * time.high()));
    }

    private static String time(Exposure exposure) {
        return exposure.since().isEmpty()
                ? "No rates by time: of no machine of this model the register says when it was bought."
                : exposure.since().size() + " of " + exposure.machines()
                        + " machines on the register say when they were"
                        + " bought: " + Spoken.number(exposure.hours() / 8766, 0.1)
                        + " years together. Machines that never came are not among them, so these rates are rather too high.";
    }

    private List<DepartmentView.Undated> undated() {
        return workshop.register().undated(file, UNDATED).stream()
                .map(m -> new DepartmentView.Undated(m.id(), m.serial()))
                .toList();
    }

    private DepartmentView.Row row(Practice practice, Counted job) {
        double weight = practice.weight(job, now);
        ZoneId zone = workshop.clock().getZone();
        Optional<String> words =
                practice.model().map(m -> m.words().get(job.outcome().finding()));
        return new DepartmentView.Row(
                job,
                Wording.capital(words.orElse(job.outcome().finding())),
                Spoken.day(job.outcome().closed().atZone(zone).toLocalDate()),
                Spoken.number(weight, 0.01),
                100 * weight);
    }
}
