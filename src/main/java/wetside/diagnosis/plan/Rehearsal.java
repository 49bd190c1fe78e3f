package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Inference;

/**
 * The way from an answer to the next step gone a few times over a made-up library, so that whoever comes first does not
 * wait until Java has compiled it. For a thread that nobody waits for.
 */
public final class Rehearsal {
    private static final AtomicBoolean DONE = new AtomicBoolean();
    private static final int CAUSES = 60;
    private static final int QUESTIONS = 30;
    private static final int DRAWS = 32;
    private static final int ROUNDS = 12;

    private Rehearsal() {}

    /** Takes a quarter of a second of processor time, once in a process. */
    public static void run() {
        if (DONE.getAndSet(true)) {
            return;
        }
        Inference inference = Inference.of(library());
        Observations known = Observations.none();
        for (int round = 0; round < ROUNDS; round++) {
            NextStep.advise(inference.posterior(known), Situation.of(Who.values()[round % 2]));
            known = known.with(
                    round % 2 == 0
                            ? Observation.number("q" + round, 9 + 0.2 * round)
                            : Observation.choice("q" + round, 0));
        }
    }

    private static Library library() {
        SplittableRandom random = new SplittableRandom(1);
        List<Cause> causes = new ArrayList<>();
        float[][] rows = new float[CAUSES][DRAWS * QUESTIONS];
        for (int c = 0; c < CAUSES; c++) {
            Repair repair = new Repair("r" + c / 2, "", Effort.minutes(10 + c), 0.95);
            causes.add(new Cause("c" + c, "", 1, "", repair));
            for (int at = 0; at < rows[c].length; at++) {
                boolean number = at % QUESTIONS % 2 == 0;
                boolean moved = (at % QUESTIONS + c) % 5 == 0;
                double value = number ? 9 + random.nextDouble() + (moved ? 2 : 0) : moved ? 1 : 0;
                rows[c][at] = (float) value;
            }
        }
        List<Question> questions = new ArrayList<>();
        for (int q = 0; q < QUESTIONS; q++) {
            Answering answering =
                    q % 2 == 0 ? new Answering.Number("", 0.2, 0, 0.03) : new Answering.Choice(List.of("a", "b"), 0.05);
            questions.add(new Question("q" + q, "", answering, Effort.minutes(2)));
        }
        return new Library(causes, questions, Signatures.of(QUESTIONS, rows));
    }
}
