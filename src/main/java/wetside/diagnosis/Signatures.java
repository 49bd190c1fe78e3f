package wetside.diagnosis;

import java.util.Arrays;

/**
 * What every question would read under every cause, draw by draw: one row of all questions per draw, the rows of a
 * cause one after the other. A draw fixes tolerances, settings and severity, so the readings within a row belong
 * together. NaN: not applicable, or not computed. An option is stored as its index.
 *
 * <p>Immutable; {@link #with} shares all rows it does not replace, so a library can sharpen while somebody reads an
 * older state of it.
 */
public final class Signatures {
    private final int questions;
    private final float[][] rows;

    private Signatures(int questions, float[][] rows) {
        this.questions = questions;
        this.rows = rows;
    }

    /** No draws yet. */
    public static Signatures empty(int causes, int questions) {
        float[][] rows = new float[causes][];
        Arrays.fill(rows, new float[0]);
        return new Signatures(questions, rows);
    }

    /** From arrays as {@link #rows(int)} gives them, one per cause. The arrays are not copied. */
    public static Signatures of(int questions, float[][] rows) {
        for (float[] row : rows) {
            if (row.length % Math.max(questions, 1) != 0) {
                throw new IllegalArgumentException("rows of " + questions + " questions, but " + row.length);
            }
        }
        return new Signatures(questions, rows.clone());
    }

    /** With more draws of one cause after those it has; {@code more} holds whole rows. */
    public Signatures with(int cause, float... more) {
        float[] old = rows[cause];
        float[] joined = Arrays.copyOf(old, old.length + more.length);
        System.arraycopy(more, 0, joined, old.length, more.length);
        float[][] next = rows.clone();
        next[cause] = joined;
        return of(questions, next);
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

    public float value(int cause, int draw, int question) {
        return rows[cause][draw * questions + question];
    }

    /** The rows of a cause: read, never write. */
    public float[] rows(int cause) {
        return rows[cause];
    }
}
