package wetside.plant;

import java.util.List;
import wetside.blueprint.CurrentPlan;

/**
 * The current of one machine: reads contacts, duties, voltages and sensor resistances from the slots and writes what
 * every probe shows. Not for use by two threads at once.
 */
public final class Circuit {
    private Circuit() {}

    /** @param terminals how many terminals the blueprint numbered */
    public static Circuit of(CurrentPlan plan, int terminals) {
        return new Circuit();
    }

    /** Solves for the state in {@code x} and writes all probes into it. */
    public void solve(double[] x) {
        throw new UnsupportedOperationException("not yet");
    }

    /**
     * What an ohm-meter reads between two terminals with the plug out [Ω]: sources and supplies taken out, whatever
     * current moves dropped out, contacts as they stand in {@code x}. Infinite where nothing joins them.
     */
    public double resistance(double[] x, int from, int to) {
        return resistance(x, new int[] {from}, to);
    }

    /** The same from several terminals held together, e.g. line and neutral of a plug, to one. */
    public double resistance(double[] x, int[] joined, int to) {
        throw new UnsupportedOperationException("not yet");
    }

    /** Balance of charge and power in the last {@code solve}. */
    public Balance balance() {
        throw new UnsupportedOperationException("not yet");
    }

    /** Names of relays and supplies that found no rest in the last {@code solve} and were left off. */
    public List<String> restless() {
        return List.of();
    }

    /** Which relays and supplies are held: what the network remembers beside the slots. Store it with them. */
    public long held() {
        return 0;
    }

    /** Puts the memory of relays and supplies back, e.g. when a run is forked from a stored state. */
    public void hold(long held) {}

    /**
     * @param charge    largest sum of currents at any terminal, which should be nothing [A]
     * @param delivered mean power the sources give [W]
     * @param dissipated mean power in all resistances [W]
     */
    public record Balance(double charge, double delivered, double dissipated) {}
}
