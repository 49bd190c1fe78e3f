package wetside.plant;

/**
 * Newton's method on the node balances. The step length makes the balance vanish along the step, F·d = 0, not the norm of
 * F: for laws like a square root the norm misleads, while F·d falls steadily along d. Beside a vessel that boils it need not
 * (water and steam weigh differently in its balances), and where gas one way is water the other a step may lead to and fro
 * across the kink: after some turns, steps are halved until the balances add up to less. Where that does not converge
 * either, nodes are tied to where they are by a spring that is let go step by step.
 */
final class FlowNewton {
    private static final int QUICK = 50;
    private static final int CAP = 160;
    /** Whoever has not arrived after so many turns is going round in a circle. */
    private static final int ASTRAY = 12;
    /** Shortest share of a step. */
    private static final double LEAST = 0.01;

    private static final double BALANCED = 3e-10;
    private static final double ACCEPTED = 1e-9;
    /** What a vessel's pressure may be off [Pa]: its mass is kept elsewhere, from the flows. */
    private static final double NOTHING = 1e-3;

    private final FlowSystem system;
    private final Convergence count;
    private final double[] d;
    private final double[] start;
    private final double[] inner;
    private final double[] first;
    private int worst;

    FlowNewton(FlowSystem system, Convergence count) {
        this.system = system;
        this.count = count;
        d = new double[system.unknowns];
        start = new double[system.unknowns];
        inner = new double[system.vessels.count];
        first = new double[system.unknowns];
    }

    /** Balances all nodes, starting from the system's pressures. */
    boolean solve() {
        System.arraycopy(system.p, 0, first, 0, first.length);
        long evaluations = system.evaluations;
        system.anchor = 0;
        boolean done = iterate(QUICK);
        if (!done) {
            count.fallbacks++;
            done = anchored();
        }
        count.residuals += system.evaluations - evaluations;
        return done;
    }

    private boolean anchored() {
        System.arraycopy(first, 0, system.p, 0, first.length);
        System.arraycopy(first, 0, system.vessels.z, 0, system.vessels.count);
        double anchor = 1e-6;
        int spent = 0;
        while (spent < CAP * 4) {
            System.arraycopy(system.p, 0, system.anchorAt, 0, first.length);
            system.anchor = anchor;
            long before = count.iterations;
            boolean held = iterate(QUICK);
            spent += Math.max(1, (int) (count.iterations - before));
            if (held) {
                system.anchor = 0;
                if (anchor < 1e-9 && iterate(QUICK)) {
                    return true;
                }
                anchor *= 0.1;
            } else {
                System.arraycopy(system.anchorAt, 0, system.p, 0, first.length);
                System.arraycopy(first, 0, system.vessels.z, 0, system.vessels.count);
                anchor *= 20;
            }
        }
        system.anchor = 0;
        return iterate(QUICK);
    }

    private boolean iterate(int most) {
        system.evaluate();
        for (int turn = 0; turn < most; turn++) {
            if (imbalance() < BALANCED) {
                return true;
            }
            count.iterations++;
            if (!system.step(d)) {
                return false;
            }
            boolean small = small();
            search(turn >= ASTRAY);
            if (small && imbalance() < ACCEPTED) {
                return true;
            }
        }
        return imbalance() < BALANCED;
    }

    /** Largest imbalance [kg/s]. */
    private double imbalance() {
        double most = 0;
        for (int k = 0; k < system.unknowns; k++) {
            double size = Math.abs(system.f[k]);
            if (k < system.vessels.count) {
                double least = BALANCED / NOTHING;
                double asPressure = size * least / system.vessels.storage(k);
                size = Math.max(Math.min(size, asPressure), least * Math.abs(system.vessels.off(k)));
            }
            if (!(size <= most)) {
                most = size;
                worst = k;
            }
        }
        return most;
    }

    private boolean small() {
        for (int k = 0; k < d.length; k++) {
            if (!(Math.abs(d[k]) < 1e-3 + 1e-9 * Math.abs(system.p[k]))) {
                return false;
            }
        }
        return true;
    }

    private double at(double length) {
        for (int k = 0; k < d.length; k++) {
            system.p[k] = start[k] + length * d[k];
        }
        for (int v = 0; v < system.vessels.count; v++) {
            system.vessels.z[v] = inner[v] + length * system.vessels.dz[v];
        }
        system.evaluate();
        return system.along(d);
    }

    private void search(boolean astray) {
        system.vessels.freeze();
        System.arraycopy(system.p, 0, start, 0, start.length);
        System.arraycopy(system.vessels.z, 0, inner, 0, inner.length);
        if (astray) {
            shrink();
        } else {
            stretch();
        }
    }

    /** Looks along the step for where F·d vanishes. */
    private void stretch() {
        double here = system.along(d);
        double length = 1;
        double there = at(1);
        double enough = 0.3 * Math.abs(here);
        if (Math.abs(there) <= enough || !(here < 0)) {
            return;
        }
        while (there < -enough && length < 4) {
            length *= 2;
            there = at(length);
        }
        if (there <= enough) {
            return;
        }
        between(here, length, there, enough);
    }

    /** Halves the step until the balances are better than they were. */
    private void shrink() {
        double before = system.size();
        double length = 1;
        at(length);
        while (!(system.size() <= (1 - 0.1 * length) * before) && length > LEAST) {
            length *= 0.5;
            at(length);
        }
    }

    /** Illinois: the root of F·d between no step and one that is too long. */
    private void between(double here, double length, double there, double enough) {
        double low = 0;
        double atLow = here;
        double high = length;
        double atHigh = there;
        for (int turn = 0; turn < 12; turn++) {
            double middle = low + (high - low) * atLow / (atLow - atHigh);
            middle = Math.min(Math.max(middle, low + 0.02 * (high - low)), high - 0.02 * (high - low));
            double value = at(middle);
            if (Math.abs(value) <= enough) {
                return;
            }
            if (value > 0) {
                high = middle;
                atHigh = value;
                atLow *= 0.5;
            } else {
                low = middle;
                atLow = value;
                atHigh *= 0.5;
            }
        }
    }

    int worst() {
        return worst;
    }
}
