package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
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
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Situation;

/** An answer to the next step: 90 causes, 60 questions, 64 draws, after none, three and twelve observations. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AdviceBench {
    private static final int CAUSES = 90;
    private static final int QUESTIONS = 60;
    private static final int DRAWS = 64;
    private static final List<String> PANELS = List.of("top", "back", "left", "right");

    @Param({"0", "3", "12"})
    private int observed;

    private Inference inference;
    private Observations observations = Observations.none();

    @Setup
    public void fill() {
        Random random = new Random(1);
        List<Cause> causes = new ArrayList<>();
        for (int c = 0; c < CAUSES; c++) {
            Effort effort = new Effort(
                    10 + random.nextInt(60), random.nextInt(80), panel(random, 2), Hazard.INSIDE, Who.TECHNICIAN);
            causes.add(new Cause("c" + c, "", 0.2 + random.nextDouble(), "", new Repair("r" + c, "", effort, 0.95)));
        }
        List<Question> questions = new ArrayList<>();
        for (int q = 0; q < QUESTIONS; q++) {
            Answering answering = q % 2 == 0
                    ? new Answering.Number("bar", 0.2, 0, 0.03)
                    : new Answering.Choice(List.of("yes", "no", "some"), 0.05);
            Effort effort = new Effort(1 + random.nextInt(10), 0, panel(random, 3), Hazard.NONE, Who.OWNER);
            questions.add(new Question("q" + q, "", answering, effort));
        }
        float[][] rows = new float[CAUSES][];
        for (int c = 0; c < CAUSES; c++) {
            rows[c] = rows(random);
        }
        inference = Inference.of(new Library(causes, questions, Signatures.of(QUESTIONS, rows)));
        for (int q = 0; q < observed; q++) {
            double value = rows[7][3 * QUESTIONS + q];
            observations = observations.with(
                    q % 2 == 0
                            ? Observation.number("q" + q, value + 0.2 * random.nextGaussian())
                            : Observation.choice("q" + q, (int) value));
        }
    }

    private static Set<String> panel(Random random, int oneIn) {
        return random.nextInt(oneIn) == 0 ? Set.of(PANELS.get(random.nextInt(4))) : Set.of();
    }

    private static float[] rows(Random random) {
        double[] shift = new double[QUESTIONS];
        for (int q = 0; q < QUESTIONS; q++) {
            shift[q] = random.nextInt(5) == 0 ? 2 * random.nextGaussian() : 0;
        }
        float[] rows = new float[DRAWS * QUESTIONS];
        for (int k = 0; k < DRAWS; k++) {
            double severity = random.nextDouble();
            double common = random.nextGaussian();
            for (int q = 0; q < QUESTIONS; q++) {
                double read = 9 + 0.4 * common + 0.2 * random.nextGaussian() + shift[q] * (0.3 + severity);
                int option = shift[q] != 0 && random.nextDouble() < severity + 0.3 ? 1 : 0;
                rows[k * QUESTIONS + q] = q % 2 == 0 ? (float) read : option;
            }
        }
        return rows;
    }

    @Benchmark
    public Posterior posterior() {
        return inference.posterior(observations);
    }

    @Benchmark
    public Advice advice() {
        return NextStep.advise(inference.posterior(observations), Situation.of(Who.TECHNICIAN));
    }
}
