package wetside.blueprint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The register of everything that changes while a machine runs: names and first values of the state array. */
public final class Slots {
    /** Room for those of most machines: one is made for every run. */
    private static final int SOME = 512;

    private final List<String> names = new ArrayList<>();
    private double[] initial = new double[SOME];
    private final List<Boolean> discrete = new ArrayList<>();
    private final Map<String, Integer> index = new HashMap<>(2 * SOME);

    /** A number that moves smoothly: a timer, a needle, a speed. */
    public int smooth(String name, double first) {
        return add(name, first, false);
    }

    /** A number that jumps: a contact, a latch, a position. A change of it ends the step it happens in. */
    public int state(String name, double first) {
        return add(name, first, true);
    }

    private int add(String name, double first, boolean jumps) {
        int slot = names.size();
        if (index.putIfAbsent(name, slot) != null) {
            throw new IllegalStateException("slot '" + name + "' declared twice");
        }
        if (slot == initial.length) {
            initial = Arrays.copyOf(initial, 2 * slot);
        }
        names.add(name);
        initial[slot] = first;
        discrete.add(jumps);
        return slot;
    }

    public int size() {
        return names.size();
    }

    public String name(int slot) {
        return names.get(slot);
    }

    public boolean isState(int slot) {
        return discrete.get(slot);
    }

    /** Changes the first value, e.g. of the surroundings when their component is built. */
    public void startAt(int slot, double value) {
        initial[slot] = value;
    }

    public double first(int slot) {
        return initial[slot];
    }

    public double[] firstValues() {
        return Arrays.copyOf(initial, names.size());
    }

    /** Slot of a name, or -1. */
    public int find(String name) {
        return index.getOrDefault(name, -1);
    }
}
