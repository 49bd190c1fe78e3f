package wetside.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import wetside.plant.Circuit;

/** Current: the reference network by itself, and the wiring of a machine with two boilers. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CurrentBench {
    private final ReferenceNetwork reference = new ReferenceNetwork();
    private final TwinBoilerWiring wiring = new TwinBoilerWiring();
    private final Circuit circuit = Circuit.of(wiring.plan, wiring.terminals);
    private final double[] x = wiring.slots.firstValues();
    private int i;

    /** A new value of one relay: eliminate and solve. */
    @Benchmark
    public double referenceNetwork() {
        return reference.solve(++i % 2 == 0 ? 0.03 : 0.04);
    }

    /** Other sources, same resistances. */
    @Benchmark
    public double referenceNetworkSourcesOnly() {
        return reference.solveAgain(++i % 2 == 0 ? 230 : 207);
    }

    /** From the plan to something that can be solved. */
    @Benchmark
    public Circuit circuitCompiled() {
        return Circuit.of(wiring.plan, wiring.terminals);
    }

    /** Everything of one step on a known state: two pulsed outputs, two sensors, one probe, all of them moving. */
    @Benchmark
    public double circuitKnownState() {
        next();
        circuit.solve(x);
        return x[wiring.brewPower];
    }

    /** A mains voltage never met before makes all four combinations of pulses new. */
    @Benchmark
    public double circuitFourNewStates() {
        next();
        x[wiring.mains] = 230 + 1e-9 * ++i;
        circuit.solve(x);
        return x[wiring.brewPower];
    }

    private void next() {
        double shift = 1e-3 * (++i % 100);
        x[wiring.brewDuty] = 0.1 + shift;
        x[wiring.steamDuty] = 0.2 + shift;
        x[wiring.brewSensor] = 800 + shift;
        x[wiring.steamSensor] = 400 + shift;
        x[wiring.water] = 8000 + shift;
    }
}
