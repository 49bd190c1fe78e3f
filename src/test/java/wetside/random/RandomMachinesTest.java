package wetside.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Declaration;
import wetside.machine.Machine;

/**
 * Whatever a valid file says, the twin runs it: a day of careless use without a step that found no solution, with books that
 * close, twice the same. More machines: {@code -Drandom.machines=500}; other ones: {@code -Drandom.first=1000}.
 */
class RandomMachinesTest {
    private static final long FIRST = Long.getLong("random.first", 1);
    private static final int COUNT = Integer.getInteger("random.machines", 40);

    @Test
    void runADayAndKeepTheirBooks() {
        List<String> failures = new ArrayList<>();
        for (long seed = FIRST; seed < FIRST + COUNT; seed++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            List<String> wrong = tried(seed);
            if (Boolean.getBoolean("random.verbose")) {
                System.err.printf(
                        "seed %d: %.1f s %s%n",
                        seed, (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9, wrong);
            }
            if (!wrong.isEmpty()) {
                failures.add("seed " + seed + " (" + kept(seed) + "): " + String.join("; ", wrong));
            }
        }
        assertThat(failures).isEmpty();
    }

    private static List<String> tried(long seed) {
        try {
            Machine machine = Day.worn(RandomMachine.file(seed).newest(), seed);
            Day day = new Day(machine, seed);
            double[] early = day.live(2);
            boolean same = Day.same(early, new Day(machine, seed).live(2));
            day.live(24);
            day.books();
            if (!same) {
                day.wrong.add("two runs of two hours differ");
            }
            return day.wrong;
        } catch (RuntimeException e) {
            StringWriter trace = new StringWriter();
            e.printStackTrace(new PrintWriter(trace));
            return List.of(trace.toString()
                    .lines()
                    .limit(12)
                    .reduce((a, b) -> a + "\n" + b)
                    .orElse(""));
        }
    }

    /** The file, to run by hand: {@code ./wetside check target/random/seed-7.yaml}. */
    private static Path kept(long seed) {
        try {
            Path file = Files.createDirectories(Path.of("target", "random")).resolve("seed-" + seed + ".yaml");
            return Files.writeString(file, RandomMachine.text(seed));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyKindHasItsTurn() {
        TreeSet<String> left = new TreeSet<>();
        Kinds.declarations().stream().map(Declaration::name).forEach(left::add);
        for (long seed = FIRST; seed < FIRST + RandomMachine.seedsForAll(); seed++) {
            RandomMachine.file(seed)
                    .newest()
                    .components()
                    .forEach(c -> left.remove(c.kind().name()));
        }
        assertThat(left).isEmpty();
    }

    @Test
    void aSeedMakesOneMachine() {
        assertThat(RandomMachine.text(5)).isEqualTo(RandomMachine.text(5));
    }
}
