package wetside.plant;

/** Dense elimination without pivoting, for matrices whose diagonal outweighs their columns. */
final class Gauss {
    private Gauss() {}

    /** Solves a·into = b; both are overwritten. Zero entries below the diagonal cost nothing. */
    static void solve(double[][] a, double[] b, double[] into, int n) {
        for (int k = 0; k < n; k++) {
            double[] row = a[k];
            double pivot = 1 / row[k];
            for (int i = k + 1; i < n; i++) {
                double[] below = a[i];
                if (below[k] != 0) {
                    double f = below[k] * pivot;
                    for (int j = k + 1; j < n; j++) {
                        below[j] -= f * row[j];
                    }
                    b[i] -= f * b[k];
                }
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            double[] row = a[i];
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= row[j] * into[j];
            }
            into[i] = sum / row[i];
        }
    }
}
