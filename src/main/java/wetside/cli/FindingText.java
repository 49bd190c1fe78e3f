package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Candidate;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.casework.Session;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Alike;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Plausibility;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.units.Display;

/** A finding as text for people. */
final class FindingText {
    /** From this share on the best cause is treated as found. */
    private static final double FOUND = 0.8;
    /** Causes below this share are gathered. */
    private static final double LISTED = 0.03;

    private static final int MOST_LISTED = 5;
    private static final int REASONS = 3;

    private final Console console;
    private final Session session;

    FindingText(Console console, Session session) {
        this.console = console;
        this.session = session;
    }

    void whole(Installed installed, String complaint) {
        console.line(installed.machine().identity().title() + ", revision "
                + installed.machine().identity().revision() + ", fed from the "
                + installed.feed().word());
        if (!complaint.isEmpty()) {
            console.line("“" + complaint + "”");
        }
        known();
        causes();
        Advice advice = session.advice();
        apart(advice);
        finding();
        next(advice);
    }

    private void known() {
        console.line("");
        console.line("Known");
        if (session.observations().size() == 0) {
            console.line("  nothing yet");
            return;
        }
        Table table = new Table("lll");
        for (Observation o : session.observations().entered()) {
            session.casework()
                    .asking(o.about())
                    .ifPresentOrElse(
                            a -> table.row(a.question().id(), Answers.words(a, o), normal(a, o)),
                            () -> table.row(o.about(), "done, still there", ""));
        }
        table.print(console, "  ");
    }

    /** Beside what a whole machine reads. */
    private String normal(Asking a, Observation o) {
        if (o.kind() == Observation.Kind.UNKNOWN) {
            return "";
        }
        int q = session.library().question(a.question().id());
        int draws = session.library().signatures().draws(0);
        double[] values = new double[draws];
        for (int k = 0; k < draws; k++) {
            values[k] = session.library().signatures().value(0, k, q);
        }
        return "normal: " + Expected.of(a, values).words();
    }

    void causes() {
        Posterior posterior = session.posterior();
        Evidence evidence = session.evidence();
        console.line("");
        console.line("Causes" + " ".repeat(46) + "share  range");
        double rest = 0;
        int others = 0;
        int listed = 0;
        for (Posterior.Ranked r : posterior.ranking()) {
            boolean show = listed < MOST_LISTED && (r.share() >= LISTED || listed == 0);
            if (!show) {
                rest += r.share();
                others++;
                continue;
            }
            listed++;
            var range = posterior.range(r.position());
            console.line(String.format(
                    Locale.ROOT,
                    "  %-48s %4s   %2.0f–%.0f %%",
                    cut(listed + " " + r.words(), 48),
                    percent(r.share()),
                    100 * range.low(),
                    100 * range.high()));
            reasons(evidence, r.position());
        }
        console.line("  " + others + " others, together " + percent(rest));
        odd();
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "…";
    }

    private void reasons(Evidence evidence, int cause) {
        evidence.of(cause).stream()
                .filter(w -> w.strength() != Evidence.Strength.NONE)
                .limit(REASONS)
                .forEach(w -> console.line("      " + (w.speaksFor() ? "+ " : "− ") + said(w.observation()) + "  ("
                        + w.strength().name().toLowerCase(Locale.ROOT) + ")"));
    }

    private String said(Observation o) {
        return session.casework()
                .asking(o.about())
                .map(a -> a.question().id() + ": " + Answers.words(a, o))
                .orElse(o.about() + " did not help");
    }

    /** Says so when even the best cause explains it badly. */
    private void odd() {
        Plausibility p = session.plausibility();
        Posterior posterior = session.posterior();
        boolean none = posterior.ranking().get(0).position() == posterior.somethingElse();
        if (session.observations().size() > 0 && (none || !p.plausible())) {
            console.line("");
            console.line("  None of the causes I know explains all of this well.");
            p.odd().stream()
                    .limit(2)
                    .forEach(o -> console.line("  Odd beside the best of them: " + said(o.observation())
                            + ". Check that reading again, or think of two faults at once."));
        }
    }

    private void apart(Advice advice) {
        List<Alike> groups = advice.alike().stream()
                .filter(a -> session.posterior().share(a.positions().get(1)) >= LISTED)
                .toList();
        for (Alike a : groups) {
            List<String> names = a.positions().stream()
                    .filter(p -> session.posterior().share(p) >= LISTED)
                    .map(p -> session.posterior().words(p))
                    .toList();
            console.line("");
            console.line("  Cannot tell apart" + (session.who() == Who.OWNER ? " on the phone" : "") + ": "
                    + String.join("; ", names) + ".");
            a.parting().ifPresent(q -> console.line("  What would: " + q.words() + "."));
        }
    }

    /** Part, order of work and proof, once a cause stands out. */
    void finding() {
        Posterior.Ranked best = session.posterior().ranking().get(0);
        if (best.share() < FOUND) {
            return;
        }
        Candidate candidate = session.candidate(best.position()).orElse(null);
        if (candidate == null) {
            return;
        }
        console.line("");
        console.line("Finding: " + best.words() + " (" + percent(best.share()) + ")");
        if (candidate.words().isEmpty()) {
            console.line("  Nothing is wrong with the machine. Tell the owner what is normal and why.");
            return;
        }
        Words.OfFault words = candidate.words().get();
        Component part =
                session.casework().machine().component(candidate.component().orElseThrow());
        console.line("  What it is   " + words.says());
        if (!part.place().part().isEmpty()) {
            console.line("  Part         " + part.place().part() + ", " + part.name() + ", for revision "
                    + session.casework().machine().identity().revision());
        }
        if (!part.place().mark().isEmpty()) {
            console.line("  Know it      " + part.place().mark());
        }
        if (!part.place().behind().isEmpty()) {
            console.line("  Behind       "
                    + String.join(", then ", panels(part.place().behind())));
        }
        Words.Remedy r = words.remedy();
        console.line("  Do           " + r.does() + "  (" + allowed(r.who()) + ", about " + Math.round(r.minutes())
                + " min)");
        if (!r.who().equals("owner")) {
            console.line("  Before       switch off, unplug, shut the cock, let cool, open steam and water tap until");
            console.line("               nothing comes; mind the motor's capacitor and sharp sheet edges");
        }
        if (!r.caution().isEmpty()) {
            console.line("  Caution      " + r.caution());
        }
        if (!words.prove().isEmpty()) {
            console.line("  Prove it     " + String.join("; ", words.prove()));
        }
        console.line("  Local codes and licensed practice come first.");
    }

    private static String allowed(String who) {
        return switch (who) {
            case "owner" -> "owner may do this";
            case "technician" -> "technician";
            default -> "qualified electrician";
        };
    }

    private List<String> panels(Iterable<String> ids) {
        List<String> names = new ArrayList<>();
        ids.forEach(id -> names.add(session.casework().machine().identity().panels().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .map(wetside.machine.Machine.Panel::name)
                .orElse(id)));
        return names;
    }

    void next(Advice advice) {
        step(advice.best());
    }

    /** A step to take now, and how. */
    void step(Step step) {
        console.line("");
        if (step.sort() == Step.Sort.CALL_IN) {
            console.line("Next: " + callIn());
            return;
        }
        if (step.sort() == Step.Sort.REPAIR) {
            console.line("Next: " + step.words());
            console.line("  " + who(step.effort()) + ", " + effort(step));
            console.line("  Why: " + step.reason());
            return;
        }
        Asking asking = session.casework().asking(step.id()).orElseThrow();
        console.line("Next: " + asking.procedure().says());
        how(asking, step);
        outcomes(asking, step);
        console.line("  Why: " + step.reason());
    }

    private String callIn() {
        return session.who() == Who.OWNER
                ? "have the machine brought in, or send a technician; there is nothing more for an owner to do safely"
                : "hand it to somebody who may do more";
    }

    private void how(Asking asking, Step step) {
        console.line("  " + who(step.effort()) + ", " + effort(step)
                + (asking.procedure().tool().isEmpty()
                        ? ""
                        : ", " + asking.procedure().tool()));
        if (session.who() == Who.OWNER) {
            console.line("  Say: “" + asking.procedure().ask() + "”");
        }
        int n = 1;
        for (String line : asking.procedure().how()) {
            console.line("  " + n++ + "  " + line);
        }
        if (!asking.procedure().caution().isEmpty()) {
            console.line("  Caution: " + asking.procedure().caution());
        }
    }

    private static String who(Effort e) {
        return switch (e.who()) {
            case OWNER -> "owner may do this";
            case TECHNICIAN -> "technician";
            case ELECTRICIAN -> "qualified electrician only";
        };
    }

    private String effort(Step step) {
        String panels = step.effort().panels().isEmpty()
                ? "case stays shut"
                : String.join(" and ", panels(step.effort().panels())) + " off";
        return Math.max(1, Math.round(step.minutes())) + " min, " + panels;
    }

    private void outcomes(Asking asking, Step step) {
        Table table = new Table("lrl");
        for (Step.Outcome o : step.outcomes()) {
            if (o.chance() < 0.01) {
                continue;
            }
            String answer = o.option().isEmpty() ? between(asking, o) : o.option();
            String leaves = o.leaves().isEmpty()
                    ? ""
                    : "leaves " + o.leaves().get(0).words() + " "
                            + percent(o.leaves().get(0).share());
            table.row(answer, percent(o.chance()), leaves);
        }
        table.print(console, "     ");
    }

    private static String between(Asking a, Step.Outcome o) {
        boolean low = Double.isInfinite(o.low());
        boolean high = Double.isInfinite(o.high());
        String from = low ? "" : Display.METRIC.print(a.si(o.low()), a.dimension());
        String to = high ? "" : Display.METRIC.print(a.si(o.high()), a.dimension());
        return low ? "below " + to : high ? "above " + from : from + " to " + to;
    }

    static String percent(double share) {
        return share > 0 && share < 0.005 ? "<1 %" : Math.round(100 * share) + " %";
    }
}
