package wetside.plant;

/**
 * Varying resistances as loads on the ports of a network that was solved with other values for them.
 *
 * <p>With Z the transfer resistances between the ports, Δg what each resistance conducts more than the network assumed
 * and V the ports' voltages without the change, the extra currents c solve (1 + Δg Z) c = Δg V.
 */
final class Loads {
    private final double[][] z;
    private final double[][] matrix;

    /** @param z transfer resistances [Ω], row by row; kept, not copied */
    Loads(double[][] z) {
        this.z = z;
        matrix = new double[z.length][z.length];
    }

    /**
     * @param more  Δg of each port [S]
     * @param volts V of each port [V]
     * @param extra receives c [A]
     */
    void solve(double[] more, double[] volts, double[] extra) {
        int n = z.length;
        for (int i = 0; i < n; i++) {
            extra[i] = more[i] * volts[i];
            for (int j = 0; j < n; j++) {
                matrix[i][j] = more[i] * z[i][j];
            }
            matrix[i][i] += 1;
        }
        // Every part of such a network conducts in one direction only, so no pivot can vanish.
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double f = matrix[i][k] / matrix[k][k];
                for (int j = k + 1; j < n; j++) {
                    matrix[i][j] -= f * matrix[k][j];
                }
                extra[i] -= f * extra[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j < n; j++) {
                extra[k] -= matrix[k][j] * extra[j];
            }
            extra[k] /= matrix[k][k];
        }
    }
}
