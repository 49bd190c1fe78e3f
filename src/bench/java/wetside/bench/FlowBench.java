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
import wetside.plant.Flash;
import wetside.plant.TwinNetwork;

/**
 * The flow network of a machine with two boilers: one step from the last one's pressures, as in a run, and one after
 * somebody moved a valve.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FlowBench {
    @Param({"rest", "brewing", "filling", "steaming"})
    public String doing;

    private final TwinNetwork net = new TwinNetwork(null);
    private final Flash flash = new Flash(2e-3, 1.2e9);
    private double[] x;
    private double energy;
    private int turn;

    @Setup
    public void machine() {
        x = net.rest();
        boolean pump = doing.equals("brewing") || doing.equals("filling");
        x[net.speed] = pump ? 23 : 0;
        x[net.lever] = doing.equals("brewing") ? 1 : 0;
        x[net.fill] = doing.equals("filling") ? 1 : 0;
        x[net.tap] = doing.equals("steaming") ? 1 : 0;
        energy = flash.at(1.1, 1e-6, 397);
        for (int k = 0; k < 100; k++) {
            step();
        }
    }

    private void rows(double change) {
        net.rows[0].at(0.72 * (1 + 1e-6 * change), 1e-5, 366, 3500);
        net.rows[1].at(1.1, 1e-6, 397 + 0.01 * change, 6500);
    }

    /** From the pressures of the step before; what the vessels hold moves a little. */
    @Benchmark
    public boolean step() {
        turn++;
        rows(turn % 2 == 0 ? 1 : -1);
        return net.hydraulics.solve(x, 0.5, net.rows);
    }

    /** After a valve was moved. */
    @Benchmark
    public boolean valve() {
        turn++;
        x[net.lever] = turn % 2;
        rows(0);
        return net.hydraulics.solve(x, 0.05, net.rows);
    }

    @Benchmark
    public boolean flashOfAVessel() {
        turn++;
        return flash.solve(1.1, energy * (1 + 1e-5 * (turn % 2)), 1e-6, 397);
    }
}
