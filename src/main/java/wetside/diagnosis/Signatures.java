package wetside.diagnosis;

import java.util.Arrays;

/**
 * What every question would read under every cause, draw by draw: one row of all questions per draw, the rows of a
 * cause one after the other. A draw fixes tolerances, settings and severity, so the readings within a row belong
 * together. NaN: not applicable, or not computed. An option is stored as its index. Some draws of a cause were
 * simulated; the others may have been told from them ({@link #simulated}).
 *
 * <p>Immutable; {@link #with} shares all rows it does not replace, so a library can sharpen while somebody reads an
 * older state of it.
 */
public final class Signatures {
    private final int questions;
    private final float[][] rows;
    private final int[] simulated;

    private Signatures(int questions, float[][] rows, int[] simulated) {
        this.questions = questions;
        this.rows = rows;
        this.simulated = simulated;
    }

    /** No draws yet. */
    public static Signatures empty(int causes, int questions) {
        float[][] rows = new float[causes][];
        Arrays.fill(rows, new float[0]);
        return new Signatures(questions, rows, new int[causes]);
    }

    /** From arrays as {@link #rows(int)} gives them, one per cause, all simulated. The arrays are not copied. */
    public static Signatures of(int questions, float[][] rows) {
        return of(
                questions,
                rows,
                Arrays.stream(rows)
                        .mapToInt(row -> questions == 0 ? 0 : row.length / questions)
                        .toArray());
    }

    /**
     * The same.
     *
     * @param simulated how many draws of each cause were simulated
     */
    public static Signatures of(int questions, float[][] rows, int[] simulated) {
        for (float[] row : rows) {
            if (row.length % Math.max(questions, 1) != 0) {
                throw new IllegalArgumentException("rows of " + questions + " questions, but " + row.length);
            }
        }
        return new Signatures(questions, rows.clone(), simulated.clone());
    }

    /** With more simulated draws of one cause after those it has; {@code more} holds whole rows. */
    public Signatures with(int cause, float... more) {
        float[] old = rows[cause];
        float[] joined = Arrays.copyOf(old, old.length + more.length);
        System.arraycopy(more, 0, joined, old.length, more.length);
        return with(cause, joined, joined.length / Math.max(1, questions));
    }

    /** With other rows of one cause, {@code simulated} of them simulated. The array is not copied. */
    public Signatures with(int cause, float[] instead, int simulated) {
        float[][] next = rows.clone();
        next[cause] = instead;
        int[] counts = this.simulated.clone();
        counts[cause] = simulated;
        return of(questions, next, counts);
    }

    public int causes() {
        return rows.length;
    }

    public int questions() {
        return questions;
    }

    /** How many draws a cause has. */
    public int draws(int cause) {
        return questions == 0 ? 0 : rows[cause].length / questions;
    }

    /** How many draws of a cause were simulated, in whatever it is felt; the others were told from them. */
    public int simulated(int cause) {
        return simulated[cause];
    }

    public float value(int cause, int draw, int question) {
        return rows[cause][draw * questions + question];
    }

    /** The rows of a cause: read, never write. */
    public float[] rows(int cause) {
        return rows[cause];
    }
}
