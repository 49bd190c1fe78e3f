package wetside.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;
import wetside.run.Run;
import wetside.run.Scenario;

/** The first machine, from its file: made runnable, and run for two hours. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RunBench {
    private Machine machine;
    private Scenario morning;
    private Plant plant;
    private Plant.Snapshot cold;
    private Run last;

    @Setup
    public void read() {
        machine = MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).newest();
        morning = Scenario.read(Path.of("src/bench/two-hours.yaml"));
        plant = Plant.of(Kinds.blueprint(machine));
        cold = plant.save();
    }

    @Benchmark
    public Run twoHours() {
        plant.restore(cold);
        last = new Run(plant);
        last.go(morning);
        return last;
    }

    @Benchmark
    public Plant machineMadeRunnable() {
        return Plant.of(Kinds.blueprint(machine));
    }

    /** How it went, beside the time it took. */
    @TearDown
    public void tell() {
        if (last != null) {
            System.out.printf(
                    "%n# %.0f s in %d steps, %d redone, %d unsolved; %s%n",
                    last.time(),
                    last.stepper().steps(),
                    last.stepper().rejected(),
                    last.stepper().unsolved(),
                    last.plant().balance());
        }
    }
}
