package wetside.bench;

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
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Situation;

/** From an answer to the next step: 250 causes, 120 questions, 128 draws, after none, three and twelve observations. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AdviceBench {
    @Param({"0", "3", "12"})
    private int observed;

    private Inference inference;
    private Observations observations;

    @Setup
    public void fill() {
        AdviceCase made = new AdviceCase(250, 120, 128);
        inference = Inference.of(made.library());
        observations = made.answers(observed);
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
