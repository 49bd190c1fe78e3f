package wetside.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wetside.casework.Candidate;
import wetside.casework.Candidates;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.procedure.Trial;
import wetside.run.Draws;

/**
 * Processor time of a piece of a library: every so many causes of a machine, a block of draws each, on one thread, over
 * and over, so that two versions of the program can be measured in turns while other work keeps the machine busy. Prints
 * a sum over all readings as well: equal sums, equal readings.
 */
public final class LibraryBench {
    private static final long SEED = 20_161_125;

    private LibraryBench() {}

    public static void main(String[] args) {
        String name = args.length > 0 ? args[0] : "twin-boiler-lever";
        int every = args.length > 1 ? Integer.parseInt(args[1]) : 13;
        int draws = args.length > 2 ? Integer.parseInt(args[2]) : Draws.BLOCK;
        int rounds = args.length > 3 ? Integer.parseInt(args[3]) : 3;
        Machine machine = Installed.of(
                        MachineFile.bundled(name, Kinds.declarations()).newest(), Installation.UNKNOWN)
                .machine();
        Trial trial = new Trial(Procedures.bundled(), machine);
        List<Candidate> some = new ArrayList<>();
        List<Candidate> all = Candidates.of(machine);
        for (int c = 0; c < all.size(); c += every) {
            some.add(all.get(c));
        }
        System.out.printf(
                "%s: %d of %d causes, %d draws, %d readings in %d routines%n",
                name,
                some.size(),
                all.size(),
                draws,
                trial.procedures().size(),
                trial.repertoire().routines().size());
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        Draws drawn = new Draws(machine, SEED);
        for (int round = 0; round < rounds; round++) {
            long began = clock.getCurrentThreadCpuTime();
            long sum = 0;
            for (Candidate c : some) {
                for (int k = 0; k < draws; k++) {
                    double severity = drawn.severity(c.cause().id(), k);
                    sum = 31 * sum + Arrays.hashCode(trial.values(c.in(drawn.machine(k), severity)));
                }
            }
            double ms = (clock.getCurrentThreadCpuTime() - began) / 1e6;
            System.out.printf("%.2f ms a run, %.0f ms, sum %016x%n", ms / (some.size() * draws), ms, sum);
        }
    }
}
