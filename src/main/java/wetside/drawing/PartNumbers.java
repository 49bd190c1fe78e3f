package wetside.drawing;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/**
 * The number of each part, the same on every drawing of a machine: map, cabinet, tour. Parts count in the order of the
 * machine file, from 1. What joins to nothing, such as the room, is no part and has none.
 */
public final class PartNumbers {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private PartNumbers(Set<String> ids) {
        ids.forEach(id -> numbers.put(id, numbers.size() + 1));
    }

    /** Counts the parts of one revision. */
    public static PartNumbers of(Machine machine) {
        return new PartNumbers(new LinkedHashSet<>(ids(machine)));
    }

    /** Counts over all revisions, so that a part keeps its number from one revision to the next. */
    public static PartNumbers of(MachineFile file) {
        Set<String> all = new LinkedHashSet<>();
        for (String revision : file.revisionNames()) {
            all.addAll(ids(file.machine(revision)));
        }
        return new PartNumbers(all);
    }

    private static List<String> ids(Machine machine) {
        return machine.components().stream()
                .filter(c -> !c.kind().ports().isEmpty())
                .map(Component::id)
                .toList();
    }

    /** Empty for what is no part. */
    public OptionalInt of(String component) {
        Integer number = numbers.get(component);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** Component ids with their numbers, rising. */
    public Map<String, Integer> all() {
        return Map.copyOf(numbers);
    }
}
