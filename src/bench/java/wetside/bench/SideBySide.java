package wetside.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import wetside.plant.PipeNetwork;

/**
 * Our half of the comparisons in {@code src/bench/compare}: prints a line for each case, its name as the other side
 * prints it, a tab, and microseconds of processor time a solve, best of several rounds.
 */
public final class SideBySide {
    private static final int ROUNDS = 9;

    private SideBySide() {}

    /** One solve; {@code i} lets it alternate so that there is something to do. Returns a figure of the solution. */
    interface Case {
        double solve(int i);
    }

    public static void main(String[] args) throws IOException {
        ReferenceNetwork current = new ReferenceNetwork();
        print(
                "resistive network, one relay changed",
                225.8009049169,
                1e-9,
                i -> current.solve(i % 2 == 0 ? 0.03 : 0.04));
        PipeNetwork water = new PipeNetwork(Files.readString(Path.of("src/bench/compare/small-network.inp")));
        water.settle();
        double head = 62.733;
        print("small network, from a cold start", head, 0.01, i -> water.solve(i % 2 == 0 ? 1 : 1.04, true));
        print("small network, from the last solution", head, 0.01, i -> water.solve(i % 2 == 0 ? 1 : 1.04, false));
    }

    /** Times a case after making sure that its solve number 0 gives what is known of it. */
    private static void print(String name, double known, double within, Case one) {
        double first = one.solve(0);
        if (!(Math.abs(first - known) <= within)) {
            throw new IllegalStateException(name + ": " + first + " instead of " + known);
        }
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        double sum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int solves = 50_000;
            long began = clock.getCurrentThreadCpuTime();
            for (int i = 0; i < solves; i++) {
                sum += one.solve(i);
            }
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - began) / 1e3 / solves);
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException(name + ": not a number");
        }
        System.out.printf(Locale.ROOT, "%s\t%.3f%n", name, best);
    }
}
