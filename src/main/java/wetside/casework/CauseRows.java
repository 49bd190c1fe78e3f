package wetside.casework;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wetside.diagnosis.Question;
import wetside.machine.Machine;
import wetside.run.Draws;

/**
 * The rows of one cause: a severe draw run whole to find where it is felt, a few others of the first block only there, further
 * ones only in routines some reading of which those cannot tell ({@link EstimatedDraws}); or as many as are wanted wherever it
 * is felt.
 */
final class CauseRows {
    /** So many draws are simulated at least. */
    static final int LEAST = 5;
    /** From so many simulated draws the others are told, sound or not. */
    private static final int MOST_FOR_SOUNDNESS = 16;
    /** From a block on, share of the questions felt that may be told badly. */
    private static final double BADLY = 0.3;
    /** Draws of a block by rank of severity, the severest 0, in the order they are simulated: the first span them all. */
    private static final int[] SPREAD = {0, 4, 7, 2, 6, 1, 5, 3};

    private final Casework casework;
    private final int cause;
    private final Candidate candidate;
    private final List<Machine> drawn;
    private final float[] whole;
    private final List<Question> questions;
    private final int width;
    private final BooleanSupplier stopped;

    private final float[] rows;
    private final int[] severestFirst;
    private int simulated;
    private boolean[] felt;
    /** For each question in how many draws it was simulated before its routine was left out; 0 while it is not. */
    private final int[] left;

    private boolean told;
    private Casework spared;

    /**
     * @param cause     position of it
     * @param drawn     the machines of all draws wanted
     * @param whole     what they read when nothing is wrong; of the first block before {@link #scout}, of all before {@link
     *     #tell}
     * @param have      rows there are
     * @param simulated how many of them were, in {@link #order}
     * @param stopped   whether to leave off
     */
    CauseRows(
            Casework casework,
            int cause,
            List<Machine> drawn,
            float[] whole,
            float[] have,
            int simulated,
            BooleanSupplier stopped) {
        this.casework = casework;
        this.cause = cause;
        candidate = casework.candidates().get(cause);
        this.drawn = drawn;
        this.whole = whole;
        this.stopped = stopped;
        questions = casework.askings().stream().map(Asking::question).toList();
        width = questions.size();
        this.simulated = Math.min(simulated, drawn.size());
        left = new int[width];
        severestFirst = severestFirst();
        rows = whole.clone();
        for (int k : run(this.simulated)) {
            System.arraycopy(have, k * width, rows, k * width, width);
        }
    }

    int cause() {
        return cause;
    }

    List<Machine> drawn() {
        return drawn;
    }

    /** Whether all draws are there. */
    boolean isTold() {
        return told;
    }

    /** Draws wanted. */
    int draws() {
        return drawn.size();
    }

    float[] rows() {
        return rows;
    }

    /** How many draws are simulated wherever the cause is felt: the first of {@link #order}. */
    int simulated() {
        return Arrays.stream(left).filter(n -> n > 0).min().orElse(simulated);
    }

    /** Simulates what it takes to tell the draws that are not simulated, and tells them. */
    void tell(int wanted) {
        scout();
        EstimatedDraws others = new EstimatedDraws(questions, whole, severities());
        while (!stopped.getAsBoolean()) {
            felt();
            int[][] runs = runs();
            boolean[] badly = others.badlyTold(rows, runs, felt);
            if (simulated >= drawn.size() || simulated >= Math.max(wanted, LEAST) && isEnough(badly)) {
                others.fill(rows, runs, felt);
                told = true;
                return;
            }
            if (simulated >= Math.max(wanted, LEAST)) {
                leaveOut(badly);
            }
            upTo(simulated < LEAST ? LEAST : simulated < Draws.BLOCK ? Draws.BLOCK : simulated + Draws.BLOCK);
        }
    }

    private boolean isEnough(boolean[] badly) {
        long bad =
                IntStream.range(0, width).filter(q -> badly[q] && left[q] == 0).count();
        long asked = IntStream.range(0, width).filter(q -> felt[q]).count();
        return bad <= (simulated < Draws.BLOCK ? 0 : Math.max(1, BADLY * asked)) || simulated >= MOST_FOR_SOUNDNESS;
    }

    /** From now on leaves out routines of which the draws there are tell every reading felt. */
    private void leaveOut(boolean[] badly) {
        Set<String> on = routines(q -> badly[q] && left[q] == 0);
        for (int q = 0; q < width; q++) {
            if (felt[q] && left[q] == 0 && !on.contains(routine(q))) {
                left[q] = simulated;
            }
        }
        spare();
    }

    /** For each question the draws in which it was simulated. */
    private int[][] runs() {
        int[][] runs = new int[width][];
        int[] all = run(simulated);
        for (int q = 0; q < width; q++) {
            runs[q] = left[q] == 0 ? all : run(left[q]);
        }
        return runs;
    }

    /** The first draws that are simulated, sorted. */
    private int[] run(int draws) {
        return IntStream.range(0, draws).map(this::order).sorted().toArray();
    }

    /** Which draw is simulated at a place: those of the first block so that the first few span the severities, then as they come. */
    private int order(int place) {
        return severestFirst.length == Draws.BLOCK && place < Draws.BLOCK ? severestFirst[SPREAD[place]] : place;
    }

    private double[] severities() {
        return IntStream.range(0, drawn.size()).mapToDouble(this::severity).toArray();
    }

    private double severity(int k) {
        return casework.draws().severity(candidate.cause().id(), k);
    }

    /**
     * Runs the severest draw of the first block whole and a middling one where the cause is felt in the severest, or whole
     * when it is felt nowhere.
     */
    void scout() {
        if (simulated > 0) {
            return;
        }
        glance();
        if (simulated == 1) {
            run(casework, order(1));
            simulated = 2;
            spare();
        }
        simulated = stopped.getAsBoolean() ? 0 : simulated;
    }

    /** Runs the severest draw of the first block, and where the cause is felt in it a middling one. */
    void glance() {
        run(casework, order(0));
        simulated = 1;
        spare();
        if (IntStream.range(0, width).anyMatch(q -> felt[q])) {
            sparingly(order(1));
            simulated = 2;
        }
    }

    private int[] severestFirst() {
        return IntStream.range(0, Math.min(Draws.BLOCK, drawn.size()))
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -severity(k)))
                .mapToInt(k -> k)
                .toArray();
    }

    /** The first block, as far as it can be told from what is simulated. */
    float[] early() {
        int draws = Math.min(Draws.BLOCK, drawn.size());
        float[] block = Arrays.copyOf(rows, draws * width);
        if (simulated < draws) {
            new EstimatedDraws(questions, whole, Arrays.copyOf(severities(), draws)).fill(block, runs(), felt());
        }
        return block;
    }

    /** Simulates further draws where the cause is felt. */
    void upTo(int draws) {
        if (spared == null) {
            spare();
        }
        int end = Math.min(draws, drawn.size());
        while (simulated < end && !stopped.getAsBoolean()) {
            sparingly(order(simulated));
            simulated += stopped.getAsBoolean() ? 0 : 1;
        }
    }

    /** From now on runs only what leads to where some of the simulated draws feel the cause, less what is left out. */
    private void spare() {
        felt();
        spareFelt();
    }

    private void spareFelt() {
        List<Integer> on = IntStream.range(0, width)
                .filter(q -> felt[q] && left[q] == 0)
                .boxed()
                .toList();
        spared = casework.reading(Footprint.readings(casework, on));
    }

    /**
     * A draw that feels the cause in a routine where none did before, or plainly in a reading that did not, is run
     * in the rest as well: it may be felt anywhere.
     */
    private void sparingly(int k) {
        run(spared, k);
        Set<String> known = routines(q -> felt[q]);
        boolean elsewhere = false;
        for (int q = 0; q < width; q++) {
            float here = rows[k * width + q];
            if (!felt[q] && Footprint.differs(questions.get(q), whole[k * width + q], here)) {
                felt[q] = true;
                elsewhere |= !known.contains(routine(q))
                        || Footprint.differsPlainly(questions.get(q), whole[k * width + q], here);
            }
        }
        if (elsewhere) {
            add(casework.reading(unread(spared)), k);
            feel(k);
            spareFelt();
        }
    }

    private Set<String> routines(IntPredicate which) {
        return IntStream.range(0, width).filter(which).mapToObj(this::routine).collect(Collectors.toSet());
    }

    private String routine(int q) {
        return casework.askings().get(q).procedure().routine();
    }

    /** Readings that some of the work does not simulate. */
    private Set<String> unread(Casework some) {
        return IntStream.range(0, width)
                .filter(q -> !some.simulates(q))
                .mapToObj(q -> questions.get(q).id())
                .collect(Collectors.toSet());
    }

    private void run(Casework trial, int k) {
        if (!stopped.getAsBoolean()) {
            System.arraycopy(whole, k * width, rows, k * width, width);
            add(trial, k);
        }
    }

    /** Runs more of a draw: what is simulated takes its place, what is not stays. */
    private void add(Casework trial, int k) {
        if (stopped.getAsBoolean()) {
            return;
        }
        float[] row = trial.row(drawn.get(k), candidate, k);
        for (int q = 0; q < width; q++) {
            if (trial.simulates(q)) {
                rows[k * width + q] = row[q];
            }
        }
    }

    /** Questions some simulated draw answers otherwise than the same machine does when nothing is wrong. */
    private boolean[] felt() {
        felt = new boolean[width];
        for (int k : run(simulated)) {
            feel(k);
        }
        return felt;
    }

    private void feel(int k) {
        for (int q = 0; q < width; q++) {
            felt[q] |= Footprint.differs(questions.get(q), whole[k * width + q], rows[k * width + q]);
        }
    }
}
