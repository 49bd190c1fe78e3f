package wetside.diagnosis.inference;

import java.util.Arrays;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;

/**
 * Parts scatter wider than their makers promise, nobody knows by how much. A draw number means the same parts under every
 * cause, so what parts a little further from the middle would do is read off the whole machine, the first cause:
 *
 * <pre>x'_k = x_k + (wider - 1) min(1, sd / sd_whole) (whole_k - mean of whole)</pre>
 *
 * A reading the cause pins down (nothing runs any more) stays pinned down; how bad a cause is does not spread further; what
 * never falls below nothing does not do so here.
 */
final class Scatter {
    private static final double SAME = 1e-9;

    private final double further;
    private final int width;
    private final float[] whole;
    private final double[] mean;
    private final double[] sd;
    private final boolean[] signed;
    private final boolean[] number;

    Scatter(Library library, double wider) {
        further = wider - 1;
        Signatures s = library.signatures();
        width = s.questions();
        whole = s.causes() == 0 ? new float[0] : s.rows(0);
        mean = new double[width];
        sd = new double[width];
        signed = new boolean[width];
        number = new boolean[width];
        for (int q = 0; q < width; q++) {
            number[q] = library.questions().get(q).answering() instanceof Answering.Number;
            double[] moments = moments(whole, q);
            mean[q] = moments[0];
            sd[q] = moments[1];
        }
        for (int c = 0; c < s.causes(); c++) {
            findBelowNothing(s.rows(c));
        }
    }

    /** Whether both make the same of the same rows. */
    boolean isSame(Scatter other) {
        return whole == other.whole
                && further == other.further
                && Arrays.equals(signed, other.signed)
                && Arrays.equals(number, other.number);
    }

    private void findBelowNothing(float[] rows) {
        for (int row = 0; row < rows.length; row += width) {
            for (int q = 0; q < width; q++) {
                if (rows[row + q] < 0) {
                    signed[q] = number[q];
                }
            }
        }
    }

    private double[] moments(float[] rows, int q) {
        int n = 0;
        double sum = 0;
        double squares = 0;
        for (int at = q; at < rows.length; at += width) {
            if (!Float.isNaN(rows[at])) {
                n++;
                double step = rows[at] - sum;
                sum += step / n;
                squares += step * (rows[at] - sum);
            }
        }
        return new double[] {sum, n > 1 ? Math.sqrt(squares / (n - 1)) : 0};
    }

    /** Rows of a cause, its draws further apart; the same array when nothing is to be done. */
    float[] of(float[] rows) {
        if (further == 0 || width == 0) {
            return rows;
        }
        float[] wide = rows.clone();
        int draws = Math.min(rows.length, whole.length) / width;
        for (int q = 0; q < width; q++) {
            if (number[q] && sd[q] > SAME * Math.abs(mean[q])) {
                double by = further * Math.min(1, moments(rows, q)[1] / sd[q]);
                for (int k = 0; k < draws; k++) {
                    int at = k * width + q;
                    double moved = rows[at] + by * (whole[at] - mean[q]);
                    if (!Double.isNaN(moved)) {
                        wide[at] = (float) (signed[q] ? moved : Math.max(0, moved));
                    }
                }
            }
        }
        return wide;
    }
}
