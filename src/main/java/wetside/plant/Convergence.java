package wetside.plant;

/** How hard the flow solver had to work since the last {@link #clear}, and where it failed. */
public final class Convergence {
    long solves;
    long failures;
    long iterations;
    long residuals;
    long fallbacks;
    long repeats;
    String worst = "";
    double worstImbalance;

    public long solves() {
        return solves;
    }

    /** Solves that ended without balance at every node. */
    public long failures() {
        return failures;
    }

    public long iterations() {
        return iterations;
    }

    public long residuals() {
        return residuals;
    }

    /** Solves that needed the slow, safe way. */
    public long fallbacks() {
        return fallbacks;
    }

    /** Solves repeated because steam, air or water stood elsewhere than assumed. */
    public long repeats() {
        return repeats;
    }

    /** Node with the largest imbalance in the last failed solve, in words; empty when none failed. */
    public String worst() {
        return worst;
    }

    /** That imbalance [kg/s]. */
    public double worstImbalance() {
        return worstImbalance;
    }

    public void clear() {
        solves = 0;
        failures = 0;
        iterations = 0;
        residuals = 0;
        fallbacks = 0;
        repeats = 0;
        worst = "";
        worstImbalance = 0;
    }
}
