package wetside.diagnosis.inference;

/** A symmetric positive definite matrix in factored form, for densities of a handful of readings. */
final class Cholesky {
    private final int n;
    private final double[] lower;

    /** Factors {@code matrix}, row by row, of {@code n} rows. */
    Cholesky(double[] matrix, int n) {
        this.n = n;
        lower = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i * n + k] * lower[j * n + k];
                }
                if (i == j && !(sum > 0)) {
                    throw new IllegalStateException("a covariance of readings is not positive definite");
                }
                lower[i * n + j] = i == j ? Math.sqrt(sum) : sum / lower[j * n + j];
            }
        }
    }

    /** Solves for one right-hand side. */
    double[] solve(double[] right) {
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i * n + k] * x[k];
            }
            x[i] /= lower[i * n + i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= lower[k * n + i] * x[k];
            }
            x[i] /= lower[i * n + i];
        }
        return x;
    }

    double[] inverse() {
        double[] inverse = new double[n * n];
        double[] unit = new double[n];
        for (int j = 0; j < n; j++) {
            unit[j] = 1;
            double[] column = solve(unit);
            unit[j] = 0;
            for (int i = 0; i < n; i++) {
                inverse[i * n + j] = column[i];
            }
        }
        return inverse;
    }

    double logDeterminant() {
        double log = 0;
        for (int i = 0; i < n; i++) {
            log += 2 * Math.log(lower[i * n + i]);
        }
        return log;
    }
}
