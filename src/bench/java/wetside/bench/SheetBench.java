package wetside.bench;

import java.util.SplittableRandom;
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
import wetside.analysis.BrewingRange;
import wetside.analysis.Use;
import wetside.analysis.WaterSheet;
import wetside.analysis.Waters;
import wetside.feedwater.Advice;
import wetside.feedwater.MachineFacts;
import wetside.water.BoilDown;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;
import wetside.water.Precipitation;

/** Waters: one speciation, what falls, a whole sheet of one water, a sheet with its ranges, boiling down. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SheetBench {
    private static final String TWO_DROP_TESTS = "wetside water: 1\nmeasured: {hardness: 9 drops of 1 °dH, "
            + "alkalinity: 8 drops of 1 °dH, conductivity: 390 µS/cm}\n";

    private final SplittableRandom random = new SplittableRandom(4);
    private final Equilibrium room = Equilibrium.at(ConstantSet.STANDARD, 298.15);
    private final Equilibrium hot = Equilibrium.at(ConstantSet.STANDARD, 397.15);
    private final Waters waters = WaterSheet.of("bench", TWO_DROP_TESTS).waters();

    /** No water twice. */
    private Composition next() {
        double ca = random.nextDouble(0.2e-3, 2.5e-3);
        double mg = ca * random.nextDouble(0.1, 0.6);
        double alkalinity = 2 * (ca + mg) * random.nextDouble(0.3, 0.95);
        double na = random.nextDouble(0.1e-3, 2e-3);
        double cl = 2 * (ca + mg) + na - alkalinity;
        return room.sampled(
                new Composition(ca, mg, na, 0, cl * 0.6, cl * 0.2, 0, 1e-4, alkalinity, 0),
                random.nextDouble(6.8, 8.2));
    }

    @Benchmark
    public double forms() {
        return hot.of(next()).ph();
    }

    @Benchmark
    public double falls() {
        return Precipitation.calcite(hot, next());
    }

    @Benchmark
    public Object wholeSheetOfOneWater() {
        return Advice.treated(
                Waters.exactly(next()), BrewingRange.STANDARD, Use.HOUSEHOLD, MachineFacts.NONE, ConstantSet.STANDARD);
    }

    @Benchmark
    public Object sheetWithRanges() {
        return Advice.treated(waters, BrewingRange.STANDARD, Use.HOUSEHOLD, MachineFacts.NONE, ConstantSet.STANDARD);
    }

    @Benchmark
    public Object readAndCompleted() {
        return WaterSheet.of("bench", TWO_DROP_TESTS);
    }

    @Benchmark
    public Object boiledDownFourTimesCarbonLost() {
        return new BoilDown(hot, true, true).by(next(), 4);
    }
}
