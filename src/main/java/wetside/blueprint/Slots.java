package wetside.blueprint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The register of everything that changes while a machine runs: names and first values of the state array. */
public final class Slots {
    private final List<String> names = new ArrayList<>();
    private final List<Double> initial = new ArrayList<>();
    private final List<Boolean> discrete = new ArrayList<>();
    private final Map<String, Integer> index = new LinkedHashMap<>();

    /** A number that moves smoothly: a timer, a needle, a speed. */
    public int smooth(String name, double first) {
        return add(name, first, false);
    }

    /** A number that jumps: a contact, a latch, a position. A change of it ends the step it happens in. */
    public int state(String name, double first) {
        return add(name, first, true);
    }

    private int add(String name, double first, boolean jumps) {
        if (index.containsKey(name)) {
            throw new IllegalStateException("slot '" + name + "' declared twice");
        }
        index.put(name, names.size());
        names.add(name);
        initial.add(first);
        discrete.add(jumps);
        return names.size() - 1;
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
        initial.set(slot, value);
    }

    public double first(int slot) {
        return initial.get(slot);
    }

    public double[] firstValues() {
        return initial.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Slot of a name, or -1. */
    public int find(String name) {
        return index.getOrDefault(name, -1);
    }
}
