package wetside.cli;

import java.util.List;
import java.util.Optional;
import wetside.casework.Asking;
import wetside.casework.Candidate;
import wetside.casework.Session;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Step;
import wetside.procedure.Procedure;
import wetside.units.Display;

/** A step to take: who may, how, and what each answer would leave. */
final class StepText {
    private static final double RARE = 0.01;

    private final Console console;
    private final Session session;
    private final boolean menu;

    /** @param menu with a number before every answer, to be typed */
    StepText(Console console, Session session, boolean menu) {
        this.console = console;
        this.session = session;
        this.menu = menu;
    }

    /** @param told a repair that has just been told in full */
    void print(Step step, Optional<String> told) {
        console.line("");
        switch (step.sort()) {
            case CALL_IN -> console.text("Next: ", callIn());
            case REPAIR -> repair(step, told.filter(step.id()::equals).isPresent());
            case ASK -> ask(session.casework().asking(step.id()).orElseThrow(), Optional.of(step));
        }
    }

    private void repair(Step step, boolean told) {
        console.text("Next: ", step.words());
        boolean again = session.observations().about(step.id()).isPresent();
        if (again) {
            console.text(
                    "  ",
                    "Done once already, and not every repair holds: check that work, then once more with another part.");
        }
        if (!told) {
            console.text("  ", effort(step.effort(), step.minutes(), ""));
            for (String part : Repair.parts(step.id())) {
                session.mending(part)
                        .flatMap(Candidate::words)
                        .ifPresent(w -> new RemedyText(console, session)
                                .safety(w.remedy(), step.effort().panels()));
            }
        }
        Table table = new Table("rlrl");
        step.outcomes().stream()
                .filter(o -> !o.leaves().isEmpty() && o.chance() >= RARE)
                .forEach(o -> row(table, "", o.option(), o));
        table.print(console, "  ");
        why(step);
        if (menu) {
            console.line("  1  fixed");
            console.line("  2  still bad");
        }
    }

    private String callIn() {
        return session.who() == Who.OWNER
                ? "have the machine brought in, or send a technician; there is nothing more for an owner to do safely"
                : "hand it to somebody who may do more";
    }

    /** A question to the machine; {@code step} when the advice has one for it. */
    void ask(Asking asking, Optional<Step> step) {
        Procedure p = asking.procedure();
        Effort effort = asking.question().effort();
        console.text("Next: ", p.says());
        console.text("  ", effort(effort, step.map(Step::minutes).orElse(effort.minutes()), p.tool()));
        if (!asking.caution().isEmpty()) {
            console.text("  Caution      ", asking.caution());
        }
        if (session.who() == Who.OWNER && effort.allowed(Who.OWNER)) {
            console.text("  Say          ", "“" + p.ask() + "”");
        }
        for (int i = 0; i < p.how().size(); i++) {
            console.text(
                    (i == 0 ? "  How          " : "               ") + (i + 1) + "  ",
                    p.how().get(i));
        }
        answers(asking, step.map(Step::outcomes).orElse(List.of()));
        step.ifPresent(this::why);
    }

    /** Steps far down the list come without a reason. */
    private void why(Step step) {
        if (!step.reason().isEmpty()) {
            console.text("  Why          ", step.reason());
        }
    }

    private String effort(Effort effort, double minutes, String tool) {
        String panels = effort.panels().isEmpty()
                ? "case stays shut"
                : String.join(" and ", RemedyText.panels(session, effort.panels())) + " off";
        return People.allowed(effort.who()) + " · " + Math.max(1, Math.round(minutes)) + " min · " + panels
                + (tool.isEmpty() ? "" : " · " + tool);
    }

    private void answers(Asking asking, List<Step.Outcome> outcomes) {
        Table table = new Table("rlrl");
        List<String> options = asking.options();
        if (options.isEmpty()) {
            outcomes.stream().filter(o -> o.chance() >= RARE).forEach(o -> row(table, "", between(asking, o), o));
        }
        for (int i = 0; i < options.size(); i++) {
            String option = options.get(i);
            Optional<Step.Outcome> outcome =
                    outcomes.stream().filter(o -> o.option().equals(option)).findFirst();
            String number = menu ? String.valueOf(i + 1) : "";
            if (outcome.isPresent() && (menu || outcome.get().chance() >= RARE)) {
                row(table, number, option, outcome.get());
            } else if (menu) {
                table.row(number, option, "", "");
            }
        }
        table.print(console, "  ");
    }

    private static void row(Table table, String number, String answer, Step.Outcome o) {
        String leaves = o.leaves().isEmpty() || o.chance() < RARE
                ? ""
                : "leaves " + o.leaves().get(0).words() + " "
                        + FindingText.percent(o.leaves().get(0).share());
        table.row(number, answer, FindingText.percent(o.chance()), leaves);
    }

    private static String between(Asking a, Step.Outcome o) {
        if (Double.isInfinite(o.low()) && Double.isInfinite(o.high())) {
            return "any reading";
        }
        if (Double.isInfinite(o.low())) {
            return "below " + Display.METRIC.print(a.si(o.high()), a.dimension());
        }
        return Double.isInfinite(o.high())
                ? "above " + Display.METRIC.print(a.si(o.low()), a.dimension())
                : Display.METRIC.range(a.si(o.low()), a.si(o.high()), a.dimension());
    }
}
