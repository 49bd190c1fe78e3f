package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Who;

/** A library of any size, made up: every cause moves one reading in five, half the questions are answered in words. */
final class AdviceCase {
    private static final List<String> PANELS = List.of("top", "back", "left", "right");

    private final Random random = new Random(1);
    private final int questions;
    private final int draws;
    private final float[][] rows;
    private final Library library;

    AdviceCase(int causes, int questions, int draws) {
        this.questions = questions;
        this.draws = draws;
        List<Cause> all = new ArrayList<>();
        for (int c = 0; c < causes; c++) {
            Effort effort =
                    new Effort(10 + random.nextInt(60), random.nextInt(80), panel(2), Hazard.INSIDE, Who.TECHNICIAN);
            all.add(new Cause("c" + c, "", 0.2 + random.nextDouble(), "", new Repair("r" + c, "", effort, 0.95)));
        }
        List<Question> asked = new ArrayList<>();
        for (int q = 0; q < questions; q++) {
            Answering answering = isNumber(q)
                    ? new Answering.Number("bar", 0.2, 0, 0.03)
                    : new Answering.Choice(List.of("yes", "no", "some"), 0.05);
            Effort effort = new Effort(1 + random.nextInt(10), 0, panel(3), Hazard.NONE, Who.OWNER);
            asked.add(new Question("q" + q, "", answering, effort));
        }
        rows = new float[causes][];
        for (int c = 0; c < causes; c++) {
            rows[c] = rows();
        }
        library = new Library(all, asked, Signatures.of(questions, rows));
    }

    private static boolean isNumber(int question) {
        return question % 2 == 0;
    }

    Library library() {
        return library;
    }

    /** Answers of a machine with one of the causes to the first questions. */
    Observations answers(int count) {
        Random noise = new Random(2);
        Observations observations = Observations.none();
        for (int q = 0; q < count; q++) {
            double value = rows[7][3 * questions + q];
            observations = observations.with(
                    isNumber(q)
                            ? Observation.number("q" + q, value + 0.2 * noise.nextGaussian())
                            : Observation.choice("q" + q, (int) value));
        }
        return observations;
    }

    private Set<String> panel(int oneIn) {
        return random.nextInt(oneIn) == 0 ? Set.of(PANELS.get(random.nextInt(4))) : Set.of();
    }

    private float[] rows() {
        double[] shift = new double[questions];
        for (int q = 0; q < questions; q++) {
            shift[q] = random.nextInt(5) == 0 ? 2 * random.nextGaussian() : 0;
        }
        float[] made = new float[draws * questions];
        for (int k = 0; k < draws; k++) {
            double severity = random.nextDouble();
            double common = random.nextGaussian();
            for (int q = 0; q < questions; q++) {
                double read = 9 + 0.4 * common + 0.2 * random.nextGaussian() + shift[q] * (0.3 + severity);
                int option = shift[q] != 0 && random.nextDouble() < severity + 0.3 ? 1 : 0;
                made[k * questions + q] = isNumber(q) ? (float) read : option;
            }
        }
        return made;
    }
}
