package wetside.diagnosis.inference;

/**
 * The numbers read, held against one centre of a normal distribution. Any of them may have been misread, which puts a
 * floor under its density:
 *
 * <pre>L = SUM over sets S of misread readings  PROD_{i in S} f_i  N(y without S),   f_i = peak density / most odds</pre>
 *
 * The sum is taken over the sets found by dropping the worst reading again and again, and their neighbours one reading
 * larger; the rest are products of further floors and too small to matter.
 */
final class Centre {
    private static final double NEGLIGIBLE = -12;
    private static final double MOST = 600;
    /** Factors below the exponential of this multiply without trouble. */
    private static final double LARGE = 200;

    /** The inverse of a covariance, with the logarithms of its diagonal and of the covariance's determinant. */
    record Precision(double[] matrix, double[] logDiagonal, double logDeterminant) {
        static Precision of(double[] covariance, int n) {
            Cholesky factor = new Cholesky(covariance, n);
            double[] matrix = factor.inverse();
            double[] logs = new double[n];
            for (int i = 0; i < n; i++) {
                logs[i] = Math.log(matrix[i * n + i]);
            }
            return new Precision(matrix, logs, factor.logDeterminant());
        }
    }

    final double logDensity;
    /** Precision times residual; zero for readings dropped. */
    final double[] pull;

    final boolean[] dropped;

    private final int n;
    private final double[] logPrecision;
    private double[] precision;
    private boolean own;

    /**
     * Weighs residuals.
     *
     * @param precision inverse of the covariance, shared, never changed
     * @param residual readings minus centre
     * @param logFloor of each reading
     */
    Centre(Precision precision, double[] residual, double[] logFloor) {
        n = residual.length;
        this.precision = precision.matrix();
        logPrecision = precision.logDiagonal();
        pull = new double[n];
        dropped = new boolean[n];
        double square = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                pull[i] += this.precision[i * n + j] * residual[j];
            }
            square += pull[i] * residual[i];
        }
        logDensity = dropWorst(logFloor, -n * Normal.LOG_ROOT_TWO_PI - 0.5 * (precision.logDeterminant() + square));
    }

    private double dropWorst(double[] logFloor, double logNormal) {
        double current = logNormal;
        // the sum is exp(base) times the factor: one logarithm at the end is cheaper than one for every set
        double base = logNormal;
        double factor = 1;
        for (int left = n; left > 0; left--) {
            int worst = -1;
            double most = Double.NEGATIVE_INFINITY;
            double singles = 0;
            for (int i = 0; i < n; i++) {
                if (!dropped[i]) {
                    double gain = logFloor[i] - logGivenOthers(i);
                    singles += gain > NEGLIGIBLE ? Math.exp(Math.min(gain, MOST)) : 0;
                    worst = gain > most ? i : worst;
                    most = Math.max(most, gain);
                }
            }
            if (most > LARGE || !(current - base <= LARGE)) {
                base = Shares.logAdd(base + Math.log(factor), current + (most > MOST ? most : Math.log(singles)));
                factor = 1;
            } else {
                factor += Math.exp(current - base) * singles;
            }
            if (!(most > 0)) {
                break;
            }
            current += most;
            drop(worst);
        }
        return base + Math.log(factor);
    }

    /** Log density of a reading given the others believed: variance 1/P_ii, residual (P r)_i / P_ii. */
    private double logGivenOthers(int i) {
        double p = precision[i * n + i];
        double logP = own ? Math.log(p) : logPrecision[i];
        return 0.5 * (logP - pull[i] * pull[i] / p) - Normal.LOG_ROOT_TWO_PI;
    }

    /** How many standard deviations a reading lies from what the others believed make of it. */
    double surprise(int i) {
        return pull[i] / Math.sqrt(precision[i * n + i]);
    }

    /** The marginal of the others: Schur complement of the precision. */
    private void drop(int i) {
        precision = own ? precision : precision.clone();
        own = true;
        double p = precision[i * n + i];
        for (int a = 0; a < n; a++) {
            if (a != i && precision[a * n + i] != 0) {
                double share = precision[a * n + i] / p;
                pull[a] -= share * pull[i];
                for (int b = 0; b < n; b++) {
                    precision[a * n + b] -= b == i ? 0 : share * precision[i * n + b];
                }
            }
        }
        for (int a = 0; a < n; a++) {
            precision[a * n + i] = 0;
            precision[i * n + a] = 0;
        }
        pull[i] = 0;
        dropped[i] = true;
    }

    /** The square form of the precision of the readings believed: variance they explain. */
    double explained(double[] cross) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sum += cross[i] * precision[i * n + j] * cross[j];
            }
        }
        return sum;
    }
}
