package wetside.bench;

import com.hummeling.if97.IF97;
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
import wetside.physics.Liquid;
import wetside.physics.Saturation;
import wetside.physics.Water;

/** Properties of water: what the plant asks for at every step, the formulation itself, and a library's. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WaterBench {
    private final double[] saturation = new double[Saturation.SIZE];
    private final IF97 library = new IF97(IF97.UnitSystem.SI);
    private double temperature = 360;

    /** Walks through 360..400 K, so that no call repeats the one before. */
    private double next() {
        temperature += 0.37;
        if (temperature > 400) {
            temperature -= 40;
        }
        return temperature;
    }

    @Benchmark
    public double[] boilingLineFit() {
        Saturation.at(next(), saturation);
        return saturation;
    }

    @Benchmark
    public double saturationPressure() {
        return Water.saturationPressure(next());
    }

    @Benchmark
    public Object liquidState() {
        return Liquid.state(1e6, next());
    }

    @Benchmark
    public double librarySaturationPressure() {
        return library.saturationPressureT(next());
    }

    @Benchmark
    public double libraryLiquidEnthalpy() {
        return library.specificEnthalpyPT(1e6, next());
    }
}
