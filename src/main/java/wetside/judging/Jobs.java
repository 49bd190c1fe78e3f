package wetside.judging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.kind.Fault;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Spread;
import wetside.procedure.Procedures;
import wetside.procedure.Trial;
import wetside.run.Draws;

/** Draws jobs: causes by their rates, machines from a wider world than the library's, answers with all that goes wrong. */
final class Jobs {
    static final String TWO = "two causes";
    static final String HEALTHY = "nothing wrong";

    private final Casework casework;
    private final Library library;
    private final World world;
    private final long seed;
    private final Draws draws;
    private final Trial trial;
    private final Complaint complaint;

    /** @param library as believed in: causes nothing here would show have no weight, and nobody calls about them */
    Jobs(Casework casework, Library library, Procedures procedures, World world, long seed) {
        this.casework = casework;
        this.library = library;
        this.world = world;
        this.seed = seed;
        draws = new Draws(widened(casework.machine(), world.wider()), seed ^ 0x5DEECE66DL);
        trial = new Trial(procedures, casework.machine()).finer(world.fineness());
        complaint = new Complaint(library);
    }

    private static Machine widened(Machine machine, double factor) {
        List<Component> wide = new ArrayList<>();
        for (Component c : machine.components()) {
            Component w = c;
            for (int i = 0; i < c.values().length; i++) {
                w = c.spread(i).kind() == Spread.Law.EXACT
                        ? w
                        : w.withSpread(i, c.spread(i).wider(factor));
            }
            wide.add(w);
        }
        return machine.withAll(wide);
    }

    Job job(int number) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
        List<Integer> truth = new ArrayList<>(List.of(cause(random, 0)));
        boolean two = random.nextDouble() < world.pairs();
        while (two && truth.get(0) != 0 && truth.size() < 2) {
            int second = cause(random, 1);
            if (!library.causes().get(second).component().equals(component(truth.get(0)))) {
                truth.add(second);
            }
        }
        List<Double> severities = truth.stream().map(c -> random.nextDouble()).toList();
        long telling = random.nextLong();
        Map<Set<Integer>, Map<String, Observation>> states = new HashMap<>();
        Observation first = null;
        for (Set<Integer> left : states(truth)) {
            Machine machine = draws.machine(number);
            for (int i = 0; i < truth.size(); i++) {
                boolean still = left.contains(truth.get(i));
                machine = still ? casework.candidates().get(truth.get(i)).in(machine, severities.get(i)) : machine;
            }
            double[] values = trial.values(machine);
            states.put(left, answers(values, telling));
            first = first == null ? complaint.of(seen(values), random.split()) : first;
        }
        return new Job(number, List.copyOf(truth), sort(truth), first, states, random.nextLong());
    }

    /** Answers as they truly are: who lives with a machine has seen more than once what is complained of. */
    private Map<String, Observation> seen(double[] values) {
        Map<String, Observation> seen = new HashMap<>();
        for (int q = 0; q < values.length; q++) {
            Asking asking = casework.askings().get(q);
            String id = asking.question().id();
            if (!Double.isNaN(values[q])) {
                float value = asking.kept(values[q]);
                boolean number = asking.question().answering() instanceof Answering.Number;
                seen.put(id, number ? Observation.number(id, value) : Observation.choice(id, (int) value));
            }
        }
        return seen;
    }

    /** All of the causes first, then each alone. */
    private static List<Set<Integer>> states(List<Integer> truth) {
        return truth.size() == 1
                ? List.of(Set.copyOf(truth))
                : List.of(Set.copyOf(truth), Set.of(truth.get(0)), Set.of(truth.get(1)));
    }

    private String component(int cause) {
        return library.causes().get(cause).component();
    }

    /** A cause by its weight, from position {@code from} on. */
    private int cause(SplittableRandom random, int from) {
        double all = 0;
        for (int c = from; c < library.causes().size(); c++) {
            all += library.causes().get(c).weight();
        }
        double left = random.nextDouble() * all;
        int last = from;
        for (int c = from; c < library.causes().size(); c++) {
            double weight = library.causes().get(c).weight();
            last = weight > 0 ? c : last;
            left -= weight;
            if (left < 0 && weight > 0) {
                return c;
            }
        }
        return last;
    }

    private String sort(List<Integer> truth) {
        if (truth.size() > 1) {
            return TWO;
        }
        return casework.candidates()
                .get(truth.get(0))
                .fault()
                .map(Fault::sort)
                .map(Jobs::words)
                .orElse(HEALTHY);
    }

    private static String words(Fault.Sort sort) {
        return switch (sort) {
            case FAULT -> "a part at fault";
            case WRONG_SETTING -> "a wrong setting";
            case WRONG_INSTALLATION -> "wrongly installed";
        };
    }

    /** Luck belongs to the question, so that what a repair does not touch is answered as before. */
    private Map<String, Observation> answers(double[] values, long telling) {
        Map<String, Observation> answers = new HashMap<>();
        for (int q = 0; q < values.length; q++) {
            SplittableRandom random = new SplittableRandom(telling + 7919L * q);
            Asking asking = casework.askings().get(q);
            String id = asking.question().id();
            boolean lost = random.nextDouble() < world.missing();
            Observation told = Double.isNaN(values[q]) ? null : told(q, asking.kept(values[q]), random);
            answers.put(id, lost || told == null ? Observation.unknown(id) : told);
        }
        return answers;
    }

    private Observation told(int q, float value, SplittableRandom random) {
        String id = library.questions().get(q).id();
        if (library.questions().get(q).answering() instanceof Answering.Choice choice) {
            int others = choice.options().size() - 1;
            boolean wrong = random.nextDouble() < choice.errorRate() * world.mistakes();
            int option = (int) value;
            return Observation.choice(id, wrong ? (option + 1 + random.nextInt(others)) % (others + 1) : option);
        }
        Answering.Number number = (Answering.Number) library.questions().get(q).answering();
        if (random.nextDouble() < world.slips()) {
            return Observation.number(id, anything(q, value, random));
        }
        double own = Math.hypot(number.sd(), number.relative() * value);
        double twin = world.offset() * number.discrepancy() * value;
        return Observation.number(id, value + own * gauss(random) + twin * gauss(random));
    }

    /** A number that some cause would read. */
    private double anything(int q, double value, SplittableRandom random) {
        int cause = random.nextInt(library.causes().size());
        int draw = random.nextInt(Math.max(1, library.signatures().draws(cause)));
        double other = library.signatures().value(cause, draw, q);
        return Double.isNaN(other) ? value : other;
    }

    private static double gauss(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
