package wetside.casework;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wetside.diagnosis.Question;
import wetside.machine.Machine;
import wetside.run.Draws;

/**
 * The rows of one cause: a severe draw run whole to find where it is felt, further ones only there, until those simulated
 * tell the others ({@link EstimatedDraws}) or as many are simulated as are wanted.
 */
final class CauseRows {
    /** From so many simulated draws the others are told, sound or not. */
    private static final int MOST_FOR_SOUNDNESS = 16;

    private final Casework casework;
    private final int cause;
    private final Candidate candidate;
    private final List<Machine> drawn;
    private final float[] whole;
    private final List<Question> questions;
    private final int width;
    private final BooleanSupplier stopped;

    private final float[] rows;
    private int simulated;
    private int[] scouts = {};
    private boolean[] felt;
    private boolean told;
    private Casework spared;

    /**
     * @param cause     position of it
     * @param drawn     the machines of all draws wanted
     * @param whole     what they read when nothing is wrong; of the first block before {@link #scout}, of all before {@link
     *     #tell}
     * @param have      rows there are, the first {@code simulated} of them simulated
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
        rows = whole.clone();
        System.arraycopy(have, 0, rows, 0, this.simulated * width);
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

    /** How many draws are simulated: the first ones. */
    int simulated() {
        return simulated;
    }

    /** Simulates what it takes to tell the draws that are not simulated, and tells them. */
    void tell(int wanted) {
        if (simulated < Draws.BLOCK) {
            firstBlock();
        }
        EstimatedDraws others = new EstimatedDraws(questions, whole, severities());
        while (!stopped.getAsBoolean()) {
            int[] run = IntStream.range(0, simulated).toArray();
            boolean[] felt = felt(simulated);
            boolean enough =
                    simulated >= wanted && (simulated >= MOST_FOR_SOUNDNESS || others.isSound(rows, run, felt));
            if (enough || simulated >= drawn.size()) {
                others.fill(rows, run, felt);
                told = true;
                return;
            }
            upTo(simulated + Draws.BLOCK);
        }
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
        if (simulated == 0 && scouts.length == 0) {
            int[] severestFirst = severestFirst();
            int block = severestFirst.length;
            run(casework, severestFirst[0]);
            spare(block);
            int middling = severestFirst[block / 2];
            if (isFelt()) {
                sparingly(middling, block);
            } else {
                run(casework, middling);
                spare(block);
            }
            scouts = stopped.getAsBoolean() ? scouts : new int[] {severestFirst[0], middling};
        }
    }

    /** Runs the severest draw of the first block, and where the cause is felt in it a middling one. */
    void glance() {
        int[] severestFirst = severestFirst();
        run(casework, severestFirst[0]);
        spare(severestFirst.length);
        scouts = new int[] {severestFirst[0]};
        if (isFelt()) {
            int middling = severestFirst[severestFirst.length / 2];
            run(spared, middling);
            scouts = new int[] {severestFirst[0], middling};
        }
    }

    private boolean isFelt() {
        return IntStream.range(0, width).anyMatch(q -> felt[q]);
    }

    private int[] severestFirst() {
        return IntStream.range(0, Math.min(Draws.BLOCK, drawn.size()))
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -severity(k)))
                .mapToInt(k -> k)
                .toArray();
    }

    /** The first block, as far as it can be told from the scouts. */
    float[] early() {
        float[] block = Arrays.copyOf(rows, Math.min(Draws.BLOCK, drawn.size()) * width);
        if (simulated < Draws.BLOCK) {
            double[] severities = Arrays.copyOf(severities(), block.length / width);
            new EstimatedDraws(questions, whole, severities)
                    .fill(block, Arrays.stream(scouts).sorted().toArray(), felt(block.length / width));
        }
        return block;
    }

    private void firstBlock() {
        scout();
        if (stopped.getAsBoolean()) {
            return;
        }
        int block = Math.min(Draws.BLOCK, drawn.size());
        spare(block);
        for (int k = simulated; k < block; k++) {
            int draw = k;
            if (Arrays.stream(scouts).noneMatch(s -> s == draw)) {
                sparingly(k, block);
            }
        }
        simulated = stopped.getAsBoolean() ? simulated : block;
    }

    /** Simulates further draws where the cause is felt. */
    void upTo(int draws) {
        if (spared == null) {
            spare(simulated);
        }
        int end = Math.min(draws, drawn.size());
        for (int k = simulated; k < end; k++) {
            sparingly(k, k);
        }
        simulated = stopped.getAsBoolean() ? simulated : end;
    }

    /** From now on runs only what leads to where some of the first draws feel the cause. */
    private void spare(int draws) {
        felt = felt(draws);
        spared = casework.reading(readings(felt));
    }

    /**
     * A draw that feels the cause in a routine where none did before, or plainly in a reading that did not, is looked at
     * whole: it may be felt anywhere.
     */
    private void sparingly(int k, int draws) {
        run(spared, k);
        Set<String> known = routines();
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
            run(casework, k);
            spare(Math.max(draws, k + 1));
        }
    }

    /** The routines in which the cause is felt, as far as is known. */
    private Set<String> routines() {
        return IntStream.range(0, width)
                .filter(q -> felt[q])
                .mapToObj(this::routine)
                .collect(Collectors.toSet());
    }

    private String routine(int q) {
        return casework.askings().get(q).procedure().routine();
    }

    private void run(Casework trial, int k) {
        if (stopped.getAsBoolean()) {
            return;
        }
        float[] row = trial.row(drawn.get(k), candidate, k);
        for (int q = 0; q < width; q++) {
            rows[k * width + q] = trial.simulates(q) ? row[q] : whole[k * width + q];
        }
    }

    /** Questions some of the first draws answer otherwise than the same machine does when nothing is wrong. */
    private boolean[] felt(int draws) {
        boolean[] felt = new boolean[width];
        for (int q = 0; q < width; q++) {
            for (int k = 0; k < draws && !felt[q]; k++) {
                felt[q] = Footprint.differs(questions.get(q), whole[k * width + q], rows[k * width + q]);
            }
        }
        return felt;
    }

    /** The readings of every routine a felt question belongs to, and of the routines that lead there. */
    private Collection<String> readings(boolean[] felt) {
        List<Integer> some = new ArrayList<>();
        for (int q = 0; q < width; q++) {
            if (felt[q]) {
                some.add(q);
            }
        }
        return Footprint.readings(casework, some);
    }
}
