package wetside.diagnosis.exact;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * The smallest sets that meet every one of some sets: diagnoses from conflicts. Taken up conflict by conflict, so the
 * result does not depend on their order.
 */
public final class HittingSets {
    private HittingSets() {}

    /** The minimal sets that have an element in common with each of {@code conflicts}. */
    public static Set<Set<String>> of(Collection<Set<String>> conflicts) {
        Set<Set<String>> hitting = Set.of(Set.of());
        for (Set<String> conflict : conflicts) {
            hitting = with(hitting, conflict);
        }
        return hitting;
    }

    /** The minimal hitting sets when one more conflict is known. */
    public static Set<Set<String>> with(Set<Set<String>> hitting, Set<String> conflict) {
        Set<Set<String>> grown = new LinkedHashSet<>();
        for (Set<String> set : hitting) {
            if (meets(set, conflict)) {
                grown.add(set);
            } else {
                for (String element : conflict) {
                    Set<String> extended = new TreeSet<>(set);
                    extended.add(element);
                    grown.add(extended);
                }
            }
        }
        return smallest(grown);
    }

    static boolean meets(Set<String> one, Set<String> other) {
        return one.stream().anyMatch(other::contains);
    }

    private static Set<Set<String>> smallest(Set<Set<String>> sets) {
        Set<Set<String>> smallest = new LinkedHashSet<>();
        for (Set<String> set : sets) {
            if (sets.stream().noneMatch(other -> other.size() < set.size() && set.containsAll(other))) {
                smallest.add(set);
            }
        }
        return smallest;
    }
}
