package wetside.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.casework.Session;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;

/** What can be done now, numbered, the best first. */
final class OpenList {
    private static final int SHOWN = 15;

    private final Console console;
    private final Session session;
    private final Advice advice;
    private final List<Step> steps;

    OpenList(Console console, Session session, Advice advice) {
        this.console = console;
        this.session = session;
        this.advice = advice;
        steps = advice.steps().stream()
                .filter(s -> s.sort() != Step.Sort.CALL_IN)
                .toList();
    }

    /** @param word in the name of what is wanted; empty for all */
    void print(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        List<Step> wanted = steps.stream()
                .filter(s -> s.id().toLowerCase(Locale.ROOT).contains(lower))
                .toList();
        Table table = new Table("rlrll").most(1, 64);
        table.row("", "reading or repair", "min", "", "tells");
        wanted.stream()
                .limit(SHOWN)
                .forEach(s -> table.row(
                        String.valueOf(steps.indexOf(s) + 1),
                        s.id(),
                        String.valueOf(Math.max(1, Math.round(s.minutes()))),
                        People.mark(s.effort().who()),
                        s.sort() == Step.Sort.REPAIR ? "repair" : tells(s.bits())));
        table.print(console, "  ");
        if (wanted.size() > SHOWN) {
            console.line("  … and " + (wanted.size() - SHOWN) + " more; list WORD shows those with the word in them");
        }
        List<String> refused = advice.refused().stream()
                .map(Advice.Refused::id)
                .filter(id -> id.toLowerCase(Locale.ROOT).contains(lower))
                .toList();
        if (!refused.isEmpty()) {
            console.text(
                    "  ",
                    refused.size() + " more, but not for " + (session.who() == Who.OWNER ? "an owner" : "a technician")
                            + ": " + String.join("; ", refused.stream().limit(3).toList())
                            + (refused.size() > 3 ? " …" : ""));
        }
    }

    private static String tells(double bits) {
        return bits >= 0.5 ? "much" : bits >= 0.15 ? "some" : bits >= 0.02 ? "little" : "nothing";
    }

    Optional<Step> numbered(String number) {
        int i = number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0;
        return i >= 1 && i <= steps.size() ? Optional.of(steps.get(i - 1)) : Optional.empty();
    }

    Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** Why a step, in words and in numbers. */
    void why(Step step) {
        String reason = step.reason().isEmpty() ? "you asked for it" : step.reason();
        console.text("  ", reason + (step.sort() == Step.Sort.ASK ? "; it tells " + tells(step.bits()) : ""));
        console.text("  ", numbers(step));
        advice.steps().stream()
                .filter(s -> s != step)
                .findFirst()
                .ifPresent(
                        s -> console.text("  Instead: ", (s.id().isEmpty() ? s.words() : s.id()) + ". " + numbers(s)));
    }

    private static String numbers(Step s) {
        return String.format(
                Locale.ROOT,
                "%.2f bits in %.0f min; then the whole repair is expected to cost %.0f (a minute counts as 1).",
                s.bits(),
                Math.max(1, s.minutes()),
                s.expectedCost());
    }
}
