package wetside.plant;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Elimination without pivoting, for a matrix whose diagonal outweighs its columns and whose pattern of zeros never changes:
 * nothing is reckoned with what is always zero.
 */
final class Gauss {
    /** Rows of the matrix; only coupled places may be written. */
    final double[][] a;

    private final int n;
    /** For each row the columns after the diagonal that may hold something once those before are eliminated. */
    private final int[][] right;
    /** For each column the rows below the diagonal that may. */
    private final int[][] below;

    private final int[][] used;

    /** @param coupled for every row the columns that may be written; the diagonal always may */
    Gauss(BitSet[] coupled) {
        n = coupled.length;
        a = new double[n][n];
        BitSet[] rows = Arrays.stream(coupled).map(row -> (BitSet) row.clone()).toArray(BitSet[]::new);
        right = new int[n][];
        below = new int[n][];
        used = new int[n][];
        for (int k = 0; k < n; k++) {
            rows[k].set(k);
            BitSet after = rows[k].get(0, n);
            after.clear(0, k + 1);
            right[k] = after.stream().toArray();
            int[] found = new int[n];
            int count = 0;
            for (int i = k + 1; i < n; i++) {
                if (rows[i].get(k)) {
                    found[count++] = i;
                    rows[i].or(after);
                }
            }
            below[k] = Arrays.copyOf(found, count);
        }
        for (int i = 0; i < n; i++) {
            used[i] = rows[i].stream().toArray();
        }
    }

    void clear() {
        for (int i = 0; i < n; i++) {
            double[] row = a[i];
            for (int j : used[i]) {
                row[j] = 0;
            }
        }
    }

    /** Solves a·into = b; both are overwritten. */
    void solve(double[] b, double[] into) {
        for (int k = 0; k < n; k++) {
            double[] row = a[k];
            double pivot = 1 / row[k];
            int[] columns = right[k];
            for (int i : below[k]) {
                double[] under = a[i];
                if (under[k] != 0) {
                    double f = under[k] * pivot;
                    for (int j : columns) {
                        under[j] -= f * row[j];
                    }
                    b[i] -= f * b[k];
                }
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            double[] row = a[i];
            double sum = b[i];
            for (int j : right[i]) {
                sum -= row[j] * into[j];
            }
            into[i] = sum / row[i];
        }
    }
}
