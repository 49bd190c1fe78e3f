package wetside.plant;

import java.util.Arrays;

/**
 * The solution of a circuit in one discrete state: contacts, source voltages, which pulsed contacts are on, which driven
 * ones. Varying resistances are in it with a nominal value; those of them that matter to anybody are loads on it.
 */
final class CircuitState extends Memo.Entry {
    private final Wiring wiring;
    private final Probes probes;
    private final double[] siemens;
    private final double[] emf;
    private final double[] volts;
    private final double[] drop;
    /** What every live probe shows; fresh after {@link #load} where {@link #isLoaded}. */
    final double[] values;
    /** Varying elements that matter, and the potentials one ampere through each of them causes. */
    private int[] active = {};

    private double[][] lift = {};
    private double[] nominalVolts;
    private double[] more;
    private double[] extra;
    private Loads loads;
    private SeenResistances seen;
    private Circuit.Balance balance;

    CircuitState(long[] key, Wiring wiring, Probes probes) {
        super(key);
        this.wiring = wiring;
        this.probes = probes;
        int count = wiring.elements.size();
        siemens = new double[count];
        emf = new double[count];
        volts = new double[wiring.network.nodes()];
        drop = new double[count];
        values = new double[probes.slots.length];
        wiring.set(key, siemens, emf);
        wiring.network.conduct(siemens);
        wiring.network.excite(emf, volts, drop);
        findActive();
        evaluate();
    }

    private void findActive() {
        int n = 0;
        int[] found = new int[wiring.varying.length];
        double[][] lifts = new double[found.length][];
        double[] amps = new double[volts.length];
        for (int e : wiring.varying) {
            // Without a voltage across it a resistance may be what it likes.
            if (drop[e] != 0 || isRead(e)) {
                double[] u = new double[volts.length];
                amps[wiring.from[e]] += 1;
                amps[wiring.to[e]] -= 1;
                wiring.network.inject(amps, u);
                amps[wiring.from[e]] = 0;
                amps[wiring.to[e]] = 0;
                if (isRead(e) || matters(e, u)) {
                    lifts[n] = u;
                    found[n++] = e;
                }
            }
        }
        if (n > 0) {
            prepareLoads(Arrays.copyOf(found, n), lifts);
        }
    }

    private void prepareLoads(int[] found, double[][] lifts) {
        int n = found.length;
        active = found;
        lift = lifts;
        nominalVolts = new double[n];
        more = new double[n];
        extra = new double[n];
        double[][] z = new double[n][n];
        for (int i = 0; i < n; i++) {
            nominalVolts[i] = drop[found[i]];
            for (int j = 0; j < n; j++) {
                z[i][j] = across(lifts[j], wiring.from[found[i]], wiring.to[found[i]]);
            }
        }
        loads = new Loads(z);
    }

    private static double across(double[] potentials, int a, int b) {
        return potentials[a] - potentials[b];
    }

    private boolean isRead(int element) {
        for (int p : probes.elements) {
            if (p == element) {
                return true;
            }
        }
        return false;
    }

    /** Whether any value of this resistance, from none to infinite, changes what somebody reads or what moves. */
    private boolean matters(int e, double[] u) {
        double z = across(u, wiring.from[e], wiring.to[e]);
        double withoutIt = Wiring.NOMINAL / Math.max(1 - Wiring.NOMINAL * z, 1e-15);
        double most = Math.abs(drop[e]) * Math.max(1 / z, withoutIt);
        for (int p = 0; p < probes.slots.length; p++) {
            double change = most * Math.abs(across(u, probes.from[p], probes.to[p]));
            int read = probes.elements[p];
            if (read >= 0
                    ? change * siemens[read] > 1e-9 + 1e-7 * Math.abs(drop[read] * siemens[read])
                    : change > noticed(probes.from[p], probes.to[p])) {
                return true;
            }
        }
        for (int i = 0; i < wiring.driven.length; i++) {
            int in = wiring.drivenIn[i];
            int ret = wiring.drivenRet[i];
            if (most * Math.abs(across(u, in, ret)) > noticed(in, ret)) {
                return true;
            }
        }
        return false;
    }

    private double noticed(int a, int b) {
        return 1e-6 + 1e-7 * Math.abs(across(volts, a, b));
    }

    /** True if what the probes show follows varying resistances. */
    boolean isLoaded() {
        return active.length > 0;
    }

    /**
     * Takes the varying resistances as they are in {@code x}.
     *
     * @return false if they are still what they were the last time
     */
    boolean load(double[] x) {
        boolean changed = false;
        for (int i = 0; i < active.length; i++) {
            double now = wiring.varyingSiemens(active[i], x) - Wiring.NOMINAL;
            changed |= now != more[i];
            more[i] = now;
        }
        if (changed) {
            balance = null;
            loads.solve(more, nominalVolts, extra);
            evaluate();
        }
        return changed;
    }

    private void evaluate() {
        for (int p = 0; p < values.length; p++) {
            values[p] = value(p);
        }
    }

    private double value(int p) {
        int e = probes.elements[p];
        return switch (probes.sorts[p]) {
            case POWER -> power(e);
            case AMPS -> amps(e);
            case VOLTAGE -> voltage(probes.from[p], probes.to[p]);
            case SHARE -> Math.abs(voltage(probes.from[p], probes.to[p])) >= probes.least[p] ? 1 : 0;
        };
    }

    /** What a resistance takes, or what a source gives at its terminals [W]. */
    private double power(int e) {
        double d = dropOf(e);
        return wiring.isSource(e) ? (emf[e] - d) * amps(e) : d * amps(e);
    }

    private double amps(int e) {
        double g = siemens[e];
        for (int i = 0; i < active.length; i++) {
            if (active[i] == e) {
                g += more[i];
            }
        }
        return g * dropOf(e);
    }

    private double dropOf(int e) {
        double d = drop[e];
        for (int i = 0; i < active.length; i++) {
            d -= extra[i] * across(lift[i], wiring.from[e], wiring.to[e]);
        }
        return d;
    }

    private double voltage(int a, int b) {
        double v = volts[b] - volts[a];
        for (int i = 0; i < active.length; i++) {
            v -= extra[i] * across(lift[i], b, a);
        }
        return v;
    }

    /** Which driven elements would be on at these voltages. */
    long driven() {
        long mask = 0;
        for (int i = 0; i < wiring.driven.length; i++) {
            if (Math.abs(voltage(wiring.drivenRet[i], wiring.drivenIn[i])) >= wiring.least[i]) {
                mask |= 1L << i;
            }
        }
        return mask;
    }

    /** Which driven elements are on in this state. */
    long moved() {
        return key[key.length - 1];
    }

    SeenResistances seen() {
        if (seen == null) {
            seen = new SeenResistances(wiring, probes, siemens);
        }
        return seen;
    }

    /** Balance of charge and power, found once for what is loaded. */
    Circuit.Balance balance() {
        if (balance == null) {
            balance = findBalance();
        }
        return balance;
    }

    private Circuit.Balance findBalance() {
        double[] sums = new double[volts.length];
        double delivered = 0;
        double dissipated = 0;
        for (int e = 0; e < drop.length; e++) {
            double amps = amps(e);
            sums[wiring.from[e]] -= amps;
            sums[wiring.to[e]] += amps;
            delivered += emf[e] * amps;
            dissipated += dropOf(e) * amps;
        }
        double charge = 0;
        for (double sum : sums) {
            charge = Math.max(charge, Math.abs(sum));
        }
        return new Circuit.Balance(charge, delivered, dissipated);
    }
}
