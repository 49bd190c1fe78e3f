package wetside.plant;

/** One state of contacts, duties and held relays: the combinations of its pulses, each a network of its own. */
final class Pattern extends Memo.Entry {
    final CircuitState[] combinations;
    /** Places in {@link Wiring#duties} of those that are neither always on nor always off. */
    final int[] pulsed;
    /** Driven elements that found no rest and were left off. */
    long restless;
    /** True if varying resistances matter in any combination. */
    boolean isLoaded;

    private final double[] shares;

    Pattern(long[] key, int[] pulsed) {
        super(key);
        this.pulsed = pulsed;
        combinations = new CircuitState[1 << pulsed.length];
        shares = new double[combinations.length];
    }

    /** Share of the time each combination lasts, pulses being independent of each other. */
    void share(int[] duties, double[] x) {
        for (int c = 0; c < shares.length; c++) {
            double share = 1;
            for (int i = 0; i < pulsed.length; i++) {
                double duty = x[duties[pulsed[i]]];
                share *= (c >> i & 1) != 0 ? duty : 1 - duty;
            }
            shares[c] = share;
        }
    }

    /** Takes varying resistances as they are in {@code x}; returns false if none has changed. */
    boolean load(double[] x) {
        boolean changed = false;
        for (CircuitState s : combinations) {
            changed |= s.load(x);
        }
        return changed;
    }

    /** Driven elements that are on in every combination. */
    long movedThroughout() {
        long throughout = -1;
        for (CircuitState s : combinations) {
            throughout &= s.moved();
        }
        return throughout;
    }

    /** Mean of a live probe. */
    double mean(int probe) {
        double mean = 0;
        for (int c = 0; c < shares.length; c++) {
            mean += shares[c] * combinations[c].values[probe];
        }
        return mean;
    }

    /** Mean of what is seen, taken as a conductance, since that is how short pulses of a low resistance count [Ω]. */
    double seen(int probe, double[] x) {
        if (shares.length == 1) {
            return combinations[0].seen().at(probe, x);
        }
        double siemens = 0;
        for (int c = 0; c < shares.length; c++) {
            siemens += shares[c] / combinations[c].seen().at(probe, x);
        }
        return 1 / siemens;
    }

    Circuit.Balance balance() {
        double charge = 0;
        double delivered = 0;
        double dissipated = 0;
        for (int c = 0; c < shares.length; c++) {
            Circuit.Balance b = combinations[c].balance();
            charge = Math.max(charge, b.charge());
            delivered += shares[c] * b.delivered();
            dissipated += shares[c] * b.dissipated();
        }
        return new Circuit.Balance(charge, delivered, dissipated);
    }
}
