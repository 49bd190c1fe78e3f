package wetside.plant;

import java.util.Arrays;

/**
 * Solves a small linear system whose pattern of zeros never changes, without pivoting. Safe for the matrices of flow
 * networks: every row or column is dominated by its diagonal.
 */
final class SparseLu {
    final double[] a;
    private final int n;
    private final int[] position;
    private final int[][] later;
    /** Places in {@link #a} that may hold something. */
    private final int[] used;

    private final double[] b;

    /**
     * @param n     unknowns
     * @param pairs unknowns that are coupled, two by two
     */
    SparseLu(int n, int[][] pairs) {
        this.n = n;
        a = new double[n * n + 1];
        b = new double[n];
        position = new int[n];
        later = new int[n][];
        boolean[][] coupled = new boolean[n][n];
        for (int[] pair : pairs) {
            coupled[pair[0]][pair[1]] = true;
            coupled[pair[1]][pair[0]] = true;
        }
        order(coupled);
        used = used();
    }

    private int[] used() {
        int[] places = new int[n * n];
        int count = 0;
        for (int k = 0; k < n; k++) {
            places[count++] = k * n + k;
            for (int j : later[k]) {
                places[count++] = k * n + j;
                places[count++] = j * n + k;
            }
        }
        return Arrays.copyOf(places, count);
    }

    /** Fewest neighbours first; what is eliminated couples its neighbours. */
    private void order(boolean[][] coupled) {
        int[][] neighbours = new int[n][];
        boolean[] done = new boolean[n];
        for (int step = 0; step < n; step++) {
            int best = -1;
            for (int i = 0; i < n; i++) {
                if (!done[i]
                        && (best < 0 || open(coupled[i], done, i).length < open(coupled[best], done, best).length)) {
                    best = i;
                }
            }
            done[best] = true;
            position[best] = step;
            neighbours[step] = open(coupled[best], done, best);
            for (int i : neighbours[step]) {
                for (int j : neighbours[step]) {
                    coupled[i][j] = true;
                }
            }
        }
        for (int step = 0; step < n; step++) {
            later[step] = Arrays.stream(neighbours[step])
                    .map(i -> position[i])
                    .sorted()
                    .toArray();
        }
    }

    private static int[] open(boolean[] row, boolean[] done, int self) {
        int[] found = new int[row.length];
        int count = 0;
        for (int i = 0; i < row.length; i++) {
            if (row[i] && !done[i] && i != self) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Where element (row, column) lies in {@link #a}. */
    int at(int row, int column) {
        return position[row] * n + position[column];
    }

    /** A place in {@link #a} that is never read. */
    int nowhere() {
        return n * n;
    }

    void clear() {
        for (int place : used) {
            a[place] = 0;
        }
    }

    /** Solves a x = −f; destroys a. False when a pivot is not positive. */
    boolean solve(double[] f, double[] x) {
        for (int i = 0; i < n; i++) {
            b[position[i]] = -f[i];
        }
        boolean sound = true;
        for (int k = 0; k < n; k++) {
            int row = k * n;
            double pivot = a[row + k];
            sound &= pivot > 0;
            double inverse = 1 / pivot;
            a[row + k] = inverse;
            int[] rest = later[k];
            double bk = b[k];
            for (int i : rest) {
                double factor = a[i * n + k] * inverse;
                if (factor != 0) {
                    for (int j : rest) {
                        a[i * n + j] -= factor * a[row + j];
                    }
                    b[i] -= factor * bk;
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j : later[k]) {
                sum -= a[k * n + j] * b[j];
            }
            b[k] = sum * a[k * n + k];
        }
        for (int i = 0; i < n; i++) {
            x[i] = b[position[i]];
        }
        return sound;
    }
}
