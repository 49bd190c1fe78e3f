package wetside.cli;

import java.util.List;
import java.util.stream.Collectors;
import wetside.casework.Answers;
import wetside.casework.Casework;
import wetside.diagnosis.Observation;
import wetside.judging.Belief;
import wetside.judging.NotPlayed;
import wetside.judging.Outcome;
import wetside.judging.Policy;
import wetside.judging.Verdict;

/** How our plan went about jobs that went wrong: to see why. */
final class CourseText {
    private final Console console;
    private final Casework casework;

    CourseText(Console console, Casework casework) {
        this.console = console;
        this.casework = casework;
    }

    /** One line: what was hidden, what stood first instead. */
    static String line(Verdict.Played p, Casework casework) {
        Outcome o = p.outcomes().get(Policy.PLAN);
        Belief b = o.last();
        return "job " + p.job().number() + ": " + truth(p.job().truth(), casework) + " ("
                + FindingText.percent(b.ofTruth())
                + ", place " + b.rank() + "); first stood " + b.told() + " (" + FindingText.percent(b.top()) + ")"
                + (o.wrongParts() > 0 ? "; parts fitted in vain: " + o.wrongParts() : "")
                + (o.handedOver() ? "; handed over" : "");
    }

    /** One line: what was hidden in a job that could not be played, and why. */
    static String line(NotPlayed n, Casework casework) {
        return "job " + n.number() + (n.truth().isEmpty() ? "" : ": " + truth(n.truth(), casework))
                + (n.by().isEmpty() ? "" : ", played by " + n.by()) + "; " + n.reason();
    }

    private static String truth(List<Integer> truth, Casework casework) {
        return truth.stream().map(casework::cause).collect(Collectors.joining(" and "));
    }

    /** That line, and what was asked and done with what was then believed. */
    void print(Verdict.Played p) {
        console.text("  ", line(p, casework));
        for (Outcome.Step step : p.outcomes().get(Policy.PLAN).steps()) {
            console.text(
                    "    ",
                    step.id() + ": " + answer(step, casework) + "  [" + step.told() + " "
                            + FindingText.percent(step.top()) + "; truth " + FindingText.percent(step.ofTruth()) + "]");
        }
    }

    static String answer(Outcome.Step step, Casework casework) {
        return step.answer().map(o -> words(o, casework)).orElse("mended");
    }

    private static String words(Observation o, Casework casework) {
        return casework.asking(o.about()).map(a -> Answers.words(a, o)).orElse("still bad");
    }
}
