package wetside.casework;

import java.util.Arrays;
import java.util.List;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Question;

/**
 * Draws of a cause that were not run, told from those that were: draw k means the same parts with and without the fault, so
 * what the whole machine of a draw reads is known, and only what the fault makes of it has to be told.
 *
 * <pre>
 * number   {@link Told}, what it leaves at the donor draw added
 * word     the donor's where the fault changed it there, else that of the whole machine of the draw
 * </pre>
 *
 * The donor is the simulated draw nearest in severity; its leftovers travel together, so that readings which stray
 * together still do. Where readings of simulated draws cannot be told from the other simulated draws, {@link
 * #badlyTold} says so and more has to be simulated.
 */
final class EstimatedDraws {
    /** Miss of a number that matters: in standard deviations of its instrument, and as a share of how far readings spread. */
    private static final double SHARPNESS = 1.5;

    private static final double OF_SPREAD = 0.6;
    /** Share of simulated draws whose word may be missed. */
    private static final double MISTAKEN = 0.4;

    private final List<Question> questions;
    private final float[] healthy;
    private final double[] severity;
    private final int width;

    /**
     * @param healthy  rows of the whole machine, for every draw wanted
     * @param severity of every draw wanted
     */
    EstimatedDraws(List<Question> questions, float[] healthy, double[] severity) {
        this.questions = questions;
        this.healthy = healthy;
        this.severity = severity;
        width = questions.size();
    }

    /**
     * Which of the questions felt cannot be told from the draws simulated of each.
     *
     * @param simulated for each question the draws in which it was
     */
    boolean[] badlyTold(float[] rows, int[][] simulated, boolean[] felt) {
        boolean[] badly = new boolean[width];
        for (int q = 0; q < width; q++) {
            badly[q] = felt[q] && !isSound(rows, simulated[q], q);
        }
        return badly;
    }

    private boolean isSound(float[] rows, int[] simulated, int q) {
        Told told = questions.get(q).answering() instanceof Answering.Number ? told(rows, simulated, q) : null;
        if (told == null) {
            return missedWords(rows, simulated, q) <= MISTAKEN * simulated.length;
        }
        double instrument = Math.sqrt(((Answering.Number) questions.get(q).answering()).variance(told.size()));
        return told.miss() <= Math.max(SHARPNESS * instrument, OF_SPREAD * told.spread());
    }

    /** How many simulated draws the nearest other simulated draw gives another word, or none where there is one. */
    private int missedWords(float[] rows, int[] simulated, int q) {
        int missed = 0;
        for (int k : simulated) {
            int donor = nearest(k, simulated, k);
            float told = word(rows, donor, k, q);
            float here = rows[k * width + q];
            boolean number = questions.get(q).answering() instanceof Answering.Number;
            boolean same = Float.isNaN(told) == Float.isNaN(here) && (number || Float.isNaN(told) || told == here);
            missed += same ? 0 : 1;
        }
        return missed;
    }

    private float word(float[] rows, int donor, int k, int q) {
        float there = rows[donor * width + q];
        boolean changed = Float.compare(there, healthy[donor * width + q]) != 0;
        return changed ? there : healthy[k * width + q];
    }

    /** Without a form: a number changes as much as the donor's, a word is the donor's. */
    private float plainly(float[] rows, int donor, int k, int q) {
        float moved = healthy[k * width + q] + rows[donor * width + q] - healthy[donor * width + q];
        return questions.get(q).answering() instanceof Answering.Number && !Float.isNaN(moved)
                ? moved
                : word(rows, donor, k, q);
    }

    /** The simulated draw nearest in severity to draw {@code k}, other than {@code not}. */
    private int nearest(int k, int[] simulated, int not) {
        int best = -1;
        for (int j : simulated) {
            if (j != not
                    && (best < 0 || Math.abs(severity[j] - severity[k]) < Math.abs(severity[best] - severity[k]))) {
                best = j;
            }
        }
        return best;
    }

    /** Writes every reading that is not simulated; where nothing is felt it reads as on the whole machine. */
    void fill(float[] rows, int[][] simulated, boolean[] felt) {
        for (int q = 0; q < width; q++) {
            boolean number = questions.get(q).answering() instanceof Answering.Number;
            Told told = felt[q] && number ? told(rows, simulated[q], q) : null;
            boolean[] known = new boolean[severity.length];
            for (int j : simulated[q]) {
                known[j] = true;
            }
            for (int k = 0; k < severity.length; k++) {
                if (!known[k]) {
                    rows[k * width + q] = felt[q] ? told(rows, simulated[q], told, k, q) : healthy[k * width + q];
                }
            }
        }
    }

    private float told(float[] rows, int[] simulated, Told told, int k, int q) {
        float whole = healthy[k * width + q];
        int donor = nearest(k, simulated, -1);
        boolean plain = told == null || Float.isNaN(whole) || !told.knows(donor);
        return plain ? plainly(rows, donor, k, q) : told.at(severity[k], whole, donor);
    }

    /** How a number follows severity; null when too few draws have one. */
    private Told told(float[] rows, int[] simulated, int q) {
        int[] valued = Arrays.stream(simulated)
                .filter(k -> !Float.isNaN(rows[k * width + q]) && !Float.isNaN(healthy[k * width + q]))
                .toArray();
        return valued.length < Told.LEAST
                ? null
                : new Told(
                        valued,
                        Arrays.stream(valued).mapToDouble(k -> severity[k]).toArray(),
                        Arrays.stream(valued)
                                .mapToDouble(k -> healthy[k * width + q])
                                .toArray(),
                        Arrays.stream(valued)
                                .mapToDouble(k -> rows[k * width + q])
                                .toArray());
    }
}
