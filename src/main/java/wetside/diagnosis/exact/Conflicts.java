package wetside.diagnosis.exact;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Minimal conflicts: parts that cannot all be well, given what was observed. Nothing is asked of the system but whether
 * it can be as observed when certain parts are well and the others do anything.
 */
public final class Conflicts {
    private final Set<Set<String>> conflicts = new LinkedHashSet<>();
    private Set<Set<String>> diagnoses = Set.of();

    private Conflicts() {}

    /**
     * Finds all minimal conflicts and, with them, all minimal diagnoses.
     *
     * @param parts all parts
     * @param possible whether the observations are possible when exactly these parts are taken to be well
     */
    public static Conflicts of(Collection<String> parts, Predicate<Set<String>> possible) {
        Conflicts found = new Conflicts();
        found.search(new TreeSet<>(parts), possible);
        return found;
    }

    /** Paths of a tree: below a conflict one branch for each of its parts, until what is left can all be well. */
    private void search(Set<String> parts, Predicate<Set<String>> possible) {
        Set<Set<String>> seen = new LinkedHashSet<>();
        Deque<Set<String>> paths = new ArrayDeque<>(List.of(Set.of()));
        while (!paths.isEmpty()) {
            Set<String> path = paths.removeFirst();
            Set<String> conflict = label(path, parts, possible);
            for (String part : conflict) {
                Set<String> longer = new TreeSet<>(path);
                longer.add(part);
                if (seen.add(longer)) {
                    paths.addLast(longer);
                }
            }
        }
        diagnoses = HittingSets.of(conflicts);
    }

    /** A minimal conflict that has nothing in common with the path; empty when there is none. */
    private Set<String> label(Set<String> path, Set<String> parts, Predicate<Set<String>> possible) {
        for (Set<String> conflict : conflicts) {
            if (!HittingSets.meets(path, conflict)) {
                return conflict;
            }
        }
        Set<String> well = new TreeSet<>(parts);
        well.removeAll(path);
        if (possible.test(well)) {
            return Set.of();
        }
        for (String part : List.copyOf(well)) {
            well.remove(part);
            if (possible.test(well)) {
                well.add(part);
            }
        }
        conflicts.add(well);
        return well;
    }

    /** The minimal conflicts met: enough of them that their hitting sets are all minimal diagnoses. */
    public Set<Set<String>> conflicts() {
        return conflicts;
    }

    /** The minimal sets of parts that, if bad, let the observations be. */
    public Set<Set<String>> diagnoses() {
        return diagnoses;
    }
}
