package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import wetside.judging.Evaluation;

/**
 * Tells verdicts once each, whoever comes first: the work when it is done, or the signal that ends it with what there is by
 * then. Jobs at hand get a moment to end, lest only short ones count; nothing else is waited for.
 */
final class VerdictOutlet {
    private static final long MOMENT = 5_000;

    private final Console console;
    private final boolean several;
    private final boolean json;
    private final boolean courses;
    private final OutputFile drawn;
    private final List<Judged> judged = new ArrayList<>();
    private Supplier<Judged> atHand;
    private Evaluation playing;
    private boolean over;

    /** @param drawn where to draw to, or null */
    VerdictOutlet(Console console, boolean several, boolean json, boolean courses, OutputFile drawn) {
        this.console = console;
        this.several = several;
        this.json = json;
        this.courses = courses;
        this.drawn = drawn;
    }

    /** From here on this is what there is; {@code evaluation} is what plays, null before there is any. */
    synchronized void begin(Supplier<Judged> sofar, Evaluation evaluation) {
        atHand = sofar;
        playing = evaluation;
    }

    synchronized void done(Judged one) {
        if (over) {
            return;
        }
        atHand = null;
        notifyAll();
        judged.add(one);
        if (!json) {
            if (judged.size() > 1) {
                console.line("");
            }
            new VerdictText(console, one, courses).print();
            console.printer().flush();
        }
    }

    /** A signal has come. */
    synchronized void interrupted() {
        if (playing != null) {
            playing.stop();
            waitAMoment();
        }
        if (!over && atHand != null) {
            done(atHand.get());
        }
        end();
    }

    private void waitAMoment() {
        long until = System.nanoTime() + MOMENT * 1_000_000;
        try {
            for (long left = MOMENT;
                    !over && atHand != null && left > 0;
                    left = (until - System.nanoTime()) / 1_000_000) {
                wait(left);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether some job could not be played. */
    synchronized boolean isFailed() {
        return judged.stream().anyMatch(Judged::isFailed);
    }

    synchronized void end() {
        if (over) {
            return;
        }
        over = true;
        if (json) {
            console.result(Json.print(several ? VerdictSummary.json(judged) : new VerdictJson(judged.get(0)).whole()));
        } else if (several) {
            new VerdictSummary(console).print(judged);
        }
        if (drawn != null) {
            drawn.write(VerdictText.chart(judged.get(0)));
        }
        console.printer().flush();
    }
}
