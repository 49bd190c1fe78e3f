package wetside.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryBuild;
import wetside.casework.Session;
import wetside.casework.Standing;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/**
 * A whole library as it is usually made, how long it takes by the clock and in processor time; with draws to compare, what
 * is believed from it, against the same library with every draw simulated. Cases come from further draws that neither
 * library has: a few readings that feel the cause and a few that may not, with the instruments' errors.
 */
public final class ToldBench {
    private static final int FURTHER = 8;

    private final Library truth;
    private final Library told;
    private final Library all;
    private final int draws;
    private final Random random = new Random(7);

    private ToldBench(Library all, Library told) {
        this.all = all;
        this.told = told;
        draws = told.signatures().draws(0);
        truth = first(all, draws);
    }

    private static Library first(Library library, int draws) {
        Signatures s = library.signatures();
        float[][] rows = new float[s.causes()][];
        for (int c = 0; c < rows.length; c++) {
            rows[c] = Arrays.copyOf(s.rows(c), draws * s.questions());
        }
        return library.with(Signatures.of(s.questions(), rows));
    }

    public static void main(String[] args) {
        int draws = args.length > 1 ? Integer.parseInt(args[1]) : 128;
        String[] names = (args.length > 0 ? args[0] : "twin-boiler-lever").split(",");
        for (String name : names) {
            Casework casework = Installed.of(
                            MachineFile.bundled(name, Kinds.declarations()).newest(), Installation.UNKNOWN)
                    .casework(Procedures.bundled());
            Library told = timed(name, casework, draws);
            if (args.length > 2) {
                int threads = Runtime.getRuntime().availableProcessors();
                Library all =
                        new LibraryBuild(casework, threads, true).upTo(draws + FURTHER, casework.empty(), l -> {});
                new ToldBench(all, told).compare(Integer.parseInt(args[2]));
            }
        }
    }

    private static Library timed(String name, Casework casework, int draws) {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long began = System.nanoTime();
        long busy = system.getProcessCpuTime();
        Library told = new LibraryBuild(casework).upTo(draws, casework.empty(), l -> {});
        System.out.printf(
                "%s: %.1f s, %.1f s of processor time (load %.1f), heap %d MB; %s%n",
                name,
                (System.nanoTime() - began) / 1e9,
                (system.getProcessCpuTime() - busy) / 1e9,
                system.getSystemLoadAverage(),
                Runtime.getRuntime().totalMemory() >> 20,
                Standing.of(told).words());
        return told;
    }

    private void compare(int every) {
        List<Observations> cases = new ArrayList<>();
        List<Integer> causes = new ArrayList<>();
        for (int c = 0; c < all.causes().size(); c += every) {
            for (int k = draws; k < draws + FURTHER; k += 2) {
                cases.add(observed(c, k));
                causes.add(c);
            }
        }
        for (int n = 8; n < draws; n *= 2) {
            print(n + " draws, all simulated", first(all, n), cases, causes, false);
        }
        print("told", told, cases, causes, false);
        print("told, causes in play simulated", told, cases, causes, true);
        print(draws + " draws, all simulated", truth, cases, causes, false);
    }

    private Observations observed(int cause, int k) {
        Signatures s = all.signatures();
        List<Integer> felt = new ArrayList<>();
        for (int q = 0; q < s.questions(); q++) {
            double sd = all.questions().get(q).answering() instanceof Answering.Number n
                    ? Math.sqrt(n.variance(s.value(0, k, q)))
                    : 0;
            if (Math.abs(s.value(cause, k, q) - s.value(0, k, q)) > sd) {
                felt.add(q);
            }
        }
        Collections.shuffle(felt, random);
        Set<Integer> asked = new LinkedHashSet<>(felt.subList(0, Math.min(felt.size(), 1 + random.nextInt(4))));
        for (int more = 1 + random.nextInt(4); more > 0; more--) {
            asked.add(random.nextInt(s.questions()));
        }
        Observations observations = Observations.none();
        for (int q : asked) {
            float y = s.value(cause, k, q);
            if (!Float.isNaN(y)) {
                Question question = all.questions().get(q);
                observations = observations.with(
                        question.answering() instanceof Answering.Number n
                                ? Observation.number(
                                        question.id(), y + random.nextGaussian() * Math.sqrt(n.variance(y)))
                                : Observation.choice(question.id(), (int) y));
            }
        }
        return observations;
    }

    private void print(String what, Library library, List<Observations> cases, List<Integer> causes, boolean closer) {
        Inference reference = Session.inference(truth, Observations.none());
        Inference inference = Session.inference(library, Observations.none());
        double apart = 0;
        int first = 0;
        int three = 0;
        double log = 0;
        for (int i = 0; i < cases.size(); i++) {
            Posterior posterior = inference.posterior(cases.get(i));
            double[] shares = (closer ? closer(library, posterior) : posterior).shares();
            double[] reality = reference.posterior(cases.get(i)).shares();
            for (int c = 0; c < shares.length; c++) {
                apart += Math.abs(shares[c] - reality[c]) / 2;
            }
            double own = shares[causes.get(i)];
            long before = Arrays.stream(shares).filter(share -> share > own).count();
            first += before == 0 ? 1 : 0;
            three += before < 3 ? 1 : 0;
            log += Math.log(Math.max(1e-6, own));
        }
        double n = cases.size();
        System.out.printf(
                "%-32s apart %.3f  true cause first %.3f  of three %.3f  mean log of its share %.3f%n",
                what, apart / n, first / n, three / n, log / n);
    }

    /** With the causes in play simulated. */
    private Posterior closer(Library library, Posterior posterior) {
        Signatures s = library.signatures();
        for (int c : Session.inPlay(posterior, s.causes())) {
            s = s.with(c, truth.signatures().rows(c), draws);
        }
        return Session.inference(library.with(s), Observations.none()).posterior(posterior.observations());
    }
}
