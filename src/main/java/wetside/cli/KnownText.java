package wetside.cli;

import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Expected;
import wetside.casework.Session;
import wetside.diagnosis.Observation;

/** What was found, beside what a machine without fault reads. */
final class KnownText {
    private static final double UNUSUAL = 0.02;

    private final Console console;
    private final Session session;

    KnownText(Console console, Session session) {
        this.console = console;
        this.session = session;
    }

    void print() {
        if (session.observations().size() == 0) {
            console.line("Known: nothing yet");
            return;
        }
        Table table = new Table("llll").most(0, 48).most(2, 28);
        table.row("Known", "", "found", "without fault");
        for (Observation o : session.observations().entered()) {
            session.casework()
                    .asking(o.about())
                    .ifPresentOrElse(
                            a -> row(table, a, o),
                            () -> table.row("  " + o.about(), "", "done, and it is still there", ""));
        }
        table.print(console, "");
    }

    private void row(Table table, Asking a, Observation o) {
        Expected normal = session.normal(a);
        table.row("  " + a.question().id(), mark(normal, o), Answers.words(a, o), normal.words());
    }

    /** Whether something is known, and all of it what a machine without fault shows too. */
    boolean isOrdinary() {
        var found = session.observations().entered().stream()
                .filter(o -> o.kind() == Observation.Kind.NUMBER || o.kind() == Observation.Kind.CHOICE)
                .toList();
        return !found.isEmpty()
                && found.stream()
                        .allMatch(o -> session.casework()
                                .asking(o.about())
                                .map(a -> mark(session.normal(a), o).isEmpty())
                                .orElse(true));
    }

    /** Above, below, or another word. */
    private static String mark(Expected normal, Observation o) {
        return switch (o.kind()) {
            case NUMBER -> o.value() > normal.high() ? "▲" : o.value() < normal.low() ? "▼" : "";
            case CHOICE -> {
                var options = normal.asking().options();
                yield normal.shares().getOrDefault(options.get(o.option()), 0.0) < UNUSUAL ? "≠" : "";
            }
            case UNKNOWN, STILL_BAD -> "";
        };
    }
}
