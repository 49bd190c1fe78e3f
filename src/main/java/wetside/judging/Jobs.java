package wetside.judging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wetside.casework.Casework;
import wetside.casework.TwinFailed;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.kind.Fault;
import wetside.machine.Machine;
import wetside.procedure.Procedures;
import wetside.procedure.Trial;
import wetside.run.Draws;

/** Draws jobs: causes by their rates, machines from a wider world than the library's, answers with all that goes wrong. */
final class Jobs {
    static final String TWO = "two causes";
    static final String HEALTHY = "nothing wrong";

    /** Causes drawn until one is noticed; then any will do. */
    private static final int PATIENCE = 30;

    /** To the number of another machine when one is not used. */
    private static final int FURTHER = 1_000_000;

    private final Casework casework;
    private final Library library;
    private final World world;
    private final long seed;
    private final Draws draws;
    private final Trial trial;
    private final Complaint complaint;

    /** @param library causes by their rates; those without weight are never there */
    Jobs(Casework casework, Library library, Procedures procedures, World world, long seed) {
        this.casework = casework;
        this.library = library;
        this.world = world;
        this.seed = seed;
        draws = new Draws(casework.machine(), seed ^ 0x5DEECE66DL).wider(world.wider());
        trial = new Trial(procedures, casework.machine()).finer(world.fineness());
        complaint = new Complaint(library);
    }

    Job job(int number) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + number);
        Drawn drawn = drawn(number);
        for (int i = 0; ; i++) {
            List<Integer> truth = truth(random, i > 0);
            List<Double> severities =
                    truth.stream().map(c -> random.nextDouble()).toList();
            long telling = random.nextLong();
            SplittableRandom choosing = random.split();
            long luck = random.nextLong();
            if (truth.get(0) == 0) {
                Observation said = complaint.of(drawn.values, choosing);
                Set<Integer> none = Set.of(0);
                return new Job(
                        number, truth, HEALTHY, Map.of(none, said), Map.of(none, answers(drawn.values, telling)), luck);
            }
            Map<Set<Integer>, float[]> states = states(drawn.machine, truth, severities);
            if (i == PATIENCE || isCalledAbout(truth, states, drawn.values)) {
                Map<Set<Integer>, Map<String, Observation>> told = new HashMap<>();
                states.forEach((left, values) -> told.put(left, answers(values, telling)));
                Map<Set<Integer>, Observation> said = new HashMap<>();
                states.forEach((left, values) -> said.put(left, complaint.of(values, drawn.values)));
                return new Job(number, truth, sort(truth), said, told, luck);
            }
        }
    }

    /** A machine with nothing wrong and what it reads. */
    private record Drawn(Machine machine, float[] values) {}

    /** Parts so far out that the machine never worked are a fault, and no machine with one was ever delivered. */
    private Drawn drawn(int number) {
        for (int i = 0; ; i++) {
            int draw = number + i * FURTHER;
            Machine machine = draws.machine(draw);
            float[] values = read(machine, List.of(), "nothing wrong, machine " + draw);
            if (i == PATIENCE || complaint.works(values)) {
                return new Drawn(machine, values);
            }
        }
    }

    /** Whether each of the causes alone would be noticed: what nobody notices makes no job. */
    private boolean isCalledAbout(List<Integer> truth, Map<Set<Integer>, float[]> states, float[] whole) {
        return truth.stream().allMatch(c -> complaint.strikes(states.get(Set.of(c)), whole));
    }

    /** @param broken whether something has to be wrong */
    private List<Integer> truth(SplittableRandom random, boolean broken) {
        List<Integer> truth = new ArrayList<>(List.of(broken ? cause(random, 1) : first(random)));
        boolean two = random.nextDouble() < world.pairs();
        while (two && truth.get(0) != 0 && truth.size() < 2) {
            int second = cause(random, 1);
            if (!library.causes().get(second).component().equals(component(truth.get(0)))) {
                truth.add(second);
            }
        }
        return List.copyOf(truth);
    }

    /** What is read with all of the causes there, and with each alone. */
    private Map<Set<Integer>, float[]> states(Machine whole, List<Integer> truth, List<Double> severities) {
        Map<Set<Integer>, float[]> states = new HashMap<>();
        for (Set<Integer> left : states(truth)) {
            Machine machine = whole;
            for (int i = 0; i < truth.size(); i++) {
                boolean still = left.contains(truth.get(i));
                machine = still ? casework.candidates().get(truth.get(i)).in(machine, severities.get(i)) : machine;
            }
            states.put(left, read(machine, truth, named(truth, severities, left)));
        }
        return states;
    }

    /** What a machine reads. */
    private float[] read(Machine machine, List<Integer> truth, String what) {
        try {
            return kept(trial.values(machine));
        } catch (RuntimeException e) {
            throw new Unplayable(truth, new TwinFailed(what, e));
        }
    }

    private String named(List<Integer> truth, List<Double> severities, Set<Integer> left) {
        return IntStream.range(0, truth.size())
                .filter(i -> left.contains(truth.get(i)))
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "%s, severity %.3f",
                        library.causes().get(truth.get(i)).id(),
                        severities.get(i)))
                .collect(Collectors.joining(" and "));
    }

    /** Answers as they truly are: who lives with a machine has seen more than once what is complained of. */
    private float[] kept(double[] values) {
        float[] kept = new float[values.length];
        for (int q = 0; q < kept.length; q++) {
            kept[q] = casework.askings().get(q).kept(values[q]);
        }
        return kept;
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

    private int first(SplittableRandom random) {
        if (world.healthy().isEmpty()) {
            return cause(random, 0);
        }
        return random.nextDouble() < world.healthy().getAsDouble() ? 0 : cause(random, 1);
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
    private Map<String, Observation> answers(float[] values, long telling) {
        Map<String, Observation> answers = new HashMap<>();
        for (int q = 0; q < values.length; q++) {
            SplittableRandom random = new SplittableRandom(telling + 7919L * q);
            String id = library.questions().get(q).id();
            boolean lost = random.nextDouble() < world.missing();
            Observation told = Float.isNaN(values[q]) ? null : told(q, values[q], telling, random);
            answers.put(id, lost || told == null ? Observation.unknown(id) : told);
        }
        return answers;
    }

    private Observation told(int q, float value, long telling, SplittableRandom random) {
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
        SplittableRandom alike = new SplittableRandom(
                telling ^ library.questions().get(q).reporter().hashCode());
        double off = Math.sqrt(1 - world.common()) * gauss(random) + Math.sqrt(world.common()) * gauss(alike);
        return Observation.number(id, value + own * gauss(random) + twin * off);
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
