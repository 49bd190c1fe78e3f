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
 * The flow network of a machine with two boilers: a step from where the last one ended, as in a run, and a step in which
 * the group is opened or shut.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FlowBench {
    @Param({"rest", "brewing"})
    public String doing;

    private final TwinNetwork net = new TwinNetwork(null);
    private final Flash flash = new Flash(2e-3, 1.2e9);
    private double[] x;
    private double energy;
    private int turn;

    @Setup
    public void machine() {
        x = net.rest();
        x[net.speed] = doing.equals("brewing") ? 23 : 0;
        x[net.lever] = doing.equals("brewing") ? 1 : 0;
        energy = flash.at(1.1, 1e-6, 397);
        net.warm();
        for (int k = 0; k < 200; k++) {
            step();
        }
    }

    /** The mains go up and down by 0.1 mbar, so that there is something to do. */
    @Benchmark
    public boolean step() {
        turn++;
        x[net.mains] = 4e5 + (turn % 2 == 0 ? 10 : -10);
        return net.step(x, 0.5);
    }

    @Benchmark
    public boolean groupMoved() {
        turn++;
        x[net.lever] = turn % 2;
        return net.step(x, 0.05);
    }

    @Benchmark
    public boolean flashOfAVessel() {
        turn++;
        return flash.solve(1.1, energy * (1 + 1e-5 * (turn % 2)), 1e-6, 397);
    }
}
