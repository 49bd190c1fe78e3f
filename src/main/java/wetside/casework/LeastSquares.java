package wetside.casework;

/**
 * A line (or any sum of terms) through points by least squares, and how far each point lies from the line through the
 * others: e_i / (1 − h_ii), h the hat matrix.
 *
 * @param factors of the terms
 * @param missed  each point less what the others make of it
 */
record LeastSquares(double[] factors, double[] missed) {
    private static final double ALONE = 0.98;

    /** Null when the terms are not told apart by the points, or a point stands alone with a term. */
    static LeastSquares of(double[][] x, double[] y) {
        int p = x[0].length;
        double[][] normal = new double[p][p];
        for (double[] row : x) {
            for (int i = 0; i < p; i++) {
                for (int j = 0; j < p; j++) {
                    normal[i][j] += row[i] * row[j];
                }
            }
        }
        double[][] inverse = inverse(normal);
        if (inverse == null) {
            return null;
        }
        double[] factors = new double[p];
        for (int k = 0; k < x.length; k++) {
            for (int i = 0; i < p; i++) {
                factors[i] += dot(inverse[i], x[k]) * y[k];
            }
        }
        double[] missed = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            double leverage = 0;
            for (int i = 0; i < p; i++) {
                leverage += x[k][i] * dot(inverse[i], x[k]);
            }
            if (leverage > ALONE) {
                return null;
            }
            missed[k] = (y[k] - dot(factors, x[k])) / (1 - leverage);
        }
        return new LeastSquares(factors, missed);
    }

    /** Value at some terms. */
    double at(double[] x) {
        return dot(factors, x);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Gauss-Jordan with pivots from the diagonal; null when one is nothing beside what it was. */
    private static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] a = new double[n][2 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(matrix[i], 0, a[i], 0, n);
            a[i][n + i] = 1;
        }
        for (int k = 0; k < n; k++) {
            double pivot = a[k][k];
            if (!(pivot > 1e-9 * matrix[k][k])) {
                return null;
            }
            for (int j = 0; j < 2 * n; j++) {
                a[k][j] /= pivot;
            }
            for (int i = 0; i < n; i++) {
                double f = a[i][k];
                for (int j = 0; j < 2 * n && i != k; j++) {
                    a[i][j] -= f * a[k][j];
                }
            }
        }
        double[][] inverse = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(a[i], n, inverse[i], 0, n);
        }
        return inverse;
    }
}
