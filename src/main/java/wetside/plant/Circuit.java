package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.CurrentPlan;
import wetside.physics.ResistiveNetwork;

/**
 * The current of one machine: reads contacts, duties, voltages and sensor resistances from the slots and writes what
 * every probe shows.
 *
 * <p>Pulsed contacts run on their own time, so every combination of those neither always on nor always off is a network
 * of its own, and a probe shows the mean over them; two contacts pulsed from one slot pulse together. Driven contacts
 * and supplies settle anew in each combination, from what was on throughout the last {@code solve}: a relay can hold
 * itself. Solutions are kept by discrete state, so that a state met again costs its sums only; varying resistances are
 * no part of the state (see {@link Loads}).
 *
 * <p>No part of the network must have a place: what hangs on nothing has one of its terminals at 0 V. Not for use by two
 * threads at once.
 */
public final class Circuit {
    /** Rounds in which all driven elements move at once before they are moved one by one. */
    private static final int ROUNDS = 10;
    /** More pulsed contacts than this at the same time are a mistake of the machine file. */
    private static final int MOST_PULSED = 8;

    private final Wiring wiring;
    private final Probes probes;
    private final Memo<CircuitState> states = new Memo<>();
    private final Memo<Pattern> patterns = new Memo<>();
    private final Map<List<Integer>, ResistiveNetwork> joinedNetworks = new HashMap<>();
    private final long[] stateKey;
    private final long[] patternKey;
    private Pattern last;
    private long held;

    private Circuit(CurrentPlan plan) {
        wiring = new Wiring(plan);
        probes = new Probes(plan, wiring);
        stateKey = new long[wiring.words];
        patternKey = new long[wiring.words + 1];
    }

    /** @param terminals how many terminals the blueprint numbered */
    public static Circuit of(CurrentPlan plan, int terminals) {
        for (CurrentPlan.Element e : plan.elements()) {
            if (e.from() < 0 || e.to() < 0 || e.from() >= terminals || e.to() >= terminals) {
                throw new IllegalStateException(e.name() + " joins terminals that were never numbered");
            }
        }
        return new Circuit(plan);
    }

    /** Solves for the state in {@code x} and writes all probes into it. */
    public void solve(double[] x) {
        Pattern pattern = pattern(x);
        held = pattern.movedThroughout();
        pattern.share(wiring.duties, x);
        for (int p = 0; p < probes.slots.length; p++) {
            x[probes.slots[p]] = pattern.mean(p);
        }
        for (int s = 0; s < probes.seenSlots.length; s++) {
            x[probes.seenSlots[s]] = pattern.seen(s, x);
        }
    }

    private Pattern pattern(double[] x) {
        wiring.read(x, patternKey);
        long on = 0;
        long pulsed = 0;
        for (int i = 0; i < wiring.duties.length; i++) {
            double duty = x[wiring.duties[i]];
            if (duty >= 1) {
                on |= 1L << i;
            } else if (duty > 0) {
                pulsed |= 1L << i;
            }
        }
        int words = wiring.words;
        patternKey[words - 2] = on;
        patternKey[words - 1] = pulsed;
        patternKey[words] = held;
        boolean isSame = last != null && Arrays.equals(last.key, patternKey);
        if (!isSame) {
            last = patterns.find(patternKey);
        }
        if (last == null) {
            last = patterns.put(new Pattern(patternKey, places(pulsed)));
            settle(last, x);
        } else if (last.isLoaded && (last.load(x) || !isSame)) {
            // Always from what is held, never from where the pattern once rested: the same slots give the same answer.
            settle(last, x);
        }
        return last;
    }

    private int[] places(long mask) {
        int count = Long.bitCount(mask);
        if (count > MOST_PULSED) {
            throw new IllegalStateException(
                    count + " contacts pulse at the same time; at most " + MOST_PULSED + " may");
        }
        int[] places = new int[count];
        long left = mask;
        for (int i = 0; i < count; i++) {
            places[i] = Long.numberOfTrailingZeros(left);
            left &= left - 1;
        }
        return places;
    }

    private void settle(Pattern pattern, double[] x) {
        pattern.restless = 0;
        pattern.isLoaded = false;
        for (int c = 0; c < pattern.combinations.length; c++) {
            long on = pattern.key[wiring.words - 2];
            for (int i = 0; i < pattern.pulsed.length; i++) {
                on |= (long) (c >> i & 1) << pattern.pulsed[i];
            }
            CircuitState s = settle(pattern, on, x);
            pattern.combinations[c] = s;
            pattern.isLoaded |= s.isLoaded();
        }
    }

    /** Moves driven elements until they rest; one that finds no rest is left off. */
    private CircuitState settle(Pattern pattern, long on, double[] x) {
        long moved = pattern.key[wiring.words];
        long forcedOff = 0;
        int round = 0;
        while (true) {
            CircuitState s = state(pattern, on, moved, x);
            long wanted = s.driven() & ~forcedOff;
            if (wanted == moved) {
                pattern.restless |= forcedOff;
                return s;
            }
            if (round < ROUNDS) {
                moved = wanted;
            } else if (round < ROUNDS + 2 * wiring.driven.length) {
                moved ^= Long.lowestOneBit(wanted ^ moved);
            } else {
                forcedOff |= Long.lowestOneBit(wanted ^ moved);
                moved &= ~forcedOff;
                round = 0;
            }
            round++;
        }
    }

    private CircuitState state(Pattern pattern, long on, long moved, double[] x) {
        System.arraycopy(pattern.key, 0, stateKey, 0, wiring.words - 2);
        stateKey[wiring.words - 2] = on;
        stateKey[wiring.words - 1] = moved;
        CircuitState s = states.find(stateKey);
        if (s == null) {
            s = states.put(new CircuitState(stateKey, wiring, probes));
        }
        if (s.isLoaded()) {
            s.load(x);
        }
        return s;
    }

    /**
     * What an ohm-meter reads between two terminals with the plug out [Ω]: sources and supplies taken out, whatever
     * current moves dropped out, pulsed contacts off, other contacts as they stand in {@code x}. Infinite where nothing
     * joins the terminals.
     */
    public double resistance(double[] x, int from, int to) {
        return resistance(x, new int[] {from}, to);
    }

    /** The same from several terminals held together, e.g. line and neutral of a plug, to one. */
    public double resistance(double[] x, int[] joined, int to) {
        int b = wiring.nodeOf(to);
        int[] a = Arrays.stream(joined).map(wiring::nodeOf).filter(n -> n >= 0).toArray();
        if (Arrays.stream(joined).anyMatch(t -> t == to)) {
            return 0;
        }
        if (b < 0 || a.length == 0) {
            return Double.POSITIVE_INFINITY;
        }
        ResistiveNetwork network = a.length == 1 ? wiring.network : joined(a);
        network.conduct(wiring.unplugged(x));
        return network.resistance(a[0], b);
    }

    private ResistiveNetwork joined(int[] nodes) {
        List<Integer> list = Arrays.stream(nodes).boxed().toList();
        return joinedNetworks.computeIfAbsent(
                list,
                l -> new ResistiveNetwork(
                        wiring.network.nodes(), merged(wiring.from, l), merged(wiring.to, l), l.get(0)));
    }

    private static int[] merged(int[] ends, List<Integer> nodes) {
        return Arrays.stream(ends)
                .map(n -> nodes.contains(n) ? nodes.get(0) : n)
                .toArray();
    }

    /** Balance of charge and power in the last {@code solve}. */
    public Balance balance() {
        return last.balance();
    }

    /** Largest sum of currents at any terminal in the last {@code solve} [A]. */
    public double chargeResidual() {
        return balance().charge();
    }

    /** Names of relays and supplies that found no rest in the last {@code solve} and were left off. */
    public List<String> restless() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < wiring.driven.length; i++) {
            if (last != null && (last.restless >> i & 1) != 0) {
                names.add(wiring.elements.get(wiring.driven[i]).name());
            }
        }
        return names;
    }

    /** Which relays and supplies are held: what the network remembers beside the slots. Store it with them. */
    public long held() {
        return held;
    }

    /** Puts the memory of relays and supplies back, e.g. when a run is forked from a stored state; 0 for a cold start. */
    public void hold(long held) {
        this.held = held;
    }

    /** Whether contacts, sources and held relays stood in the last {@code solve} as {@code key} has them; keeps them in it. */
    boolean isAs(long[] key) {
        boolean same = key[wiring.words] == last.key[wiring.words];
        for (int i = 0; i < wiring.words - 2; i++) {
            same &= key[i] == last.key[i];
        }
        System.arraycopy(last.key, 0, key, 0, key.length);
        return same;
    }

    /** A key for {@link #isAs} that nothing is like. */
    long[] unlikeAny() {
        long[] key = new long[wiring.words + 1];
        Arrays.fill(key, -1);
        return key;
    }

    /** How many discrete states have been solved so far. */
    public int statesSolved() {
        return states.size();
    }

    /**
     * @param charge     largest sum of currents at any terminal, which should be nothing [A]
     * @param delivered  mean power the sources give, their own resistance included [W]
     * @param dissipated mean power in all resistances [W]
     */
    public record Balance(double charge, double delivered, double dissipated) {}
}
