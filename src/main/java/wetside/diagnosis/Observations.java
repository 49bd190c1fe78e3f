package wetside.diagnosis;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What has been learnt so far. Immutable; the order of entry is kept for undo and for the log, but everything computed
 * from it goes through {@link #sorted()}, so the order cannot matter.
 */
public final class Observations implements Iterable<Observation> {
    private static final Observations NONE = new Observations(List.of());

    private final List<Observation> entered;

    private Observations(List<Observation> entered) {
        this.entered = List.copyOf(entered);
    }

    public static Observations none() {
        return NONE;
    }

    public static Observations of(Observation... observations) {
        return new Observations(List.of(observations));
    }

    public static Observations of(List<Observation> observations) {
        return new Observations(observations);
    }

    /** With one more. */
    public Observations with(Observation observation) {
        List<Observation> more = new ArrayList<>(entered);
        more.add(observation);
        return new Observations(more);
    }

    /** With one more, in the place of an answer to the same since the last repair: before it, it was another machine. */
    public Observations learning(Observation observation) {
        int since = entered.size();
        while (since > 0 && entered.get(since - 1).kind() != Observation.Kind.STILL_BAD) {
            since--;
        }
        List<Observation> all = new ArrayList<>(entered.subList(0, since));
        entered.subList(since, entered.size()).stream()
                .filter(o -> !o.about().equals(observation.about()))
                .forEach(all::add);
        all.add(observation);
        return new Observations(all);
    }

    /** Without this one: exactly as if it had never been entered. */
    public Observations without(Observation observation) {
        List<Observation> fewer = new ArrayList<>(entered);
        if (!fewer.remove(observation)) {
            throw new IllegalArgumentException("was never entered: " + observation);
        }
        return new Observations(fewer);
    }

    /** Without everything learnt about a question or repair. */
    public Observations without(String about) {
        return new Observations(
                entered.stream().filter(o -> !o.about().equals(about)).toList());
    }

    /** Without the last one; the same when there is none. */
    public Observations undo() {
        return entered.isEmpty() ? this : new Observations(entered.subList(0, entered.size() - 1));
    }

    /** The first thing learnt about a question or repair. */
    public Optional<Observation> about(String id) {
        return entered.stream().filter(o -> o.about().equals(id)).findFirst();
    }

    /** How often all parts of a repair were done in vain, alone or together with others. */
    public long inVain(Repair repair) {
        // asked of every cause: most often no repair was done yet
        if (entered.stream().noneMatch(o -> o.kind() == Observation.Kind.STILL_BAD)) {
            return 0;
        }
        return repair.parts().stream()
                .mapToLong(part -> entered.stream()
                        .filter(o -> o.kind() == Observation.Kind.STILL_BAD)
                        .filter(o -> Repair.parts(o.about()).contains(part))
                        .count())
                .min()
                .orElse(0);
    }

    /** In an order that does not depend on the order of entry. */
    public List<Observation> sorted() {
        return entered.stream().sorted().toList();
    }

    public List<Observation> entered() {
        return entered;
    }

    public Stream<Observation> stream() {
        return entered.stream();
    }

    public int size() {
        return entered.size();
    }

    @Override
    public Iterator<Observation> iterator() {
        return entered.iterator();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Observations that && sorted().equals(that.sorted());
    }

    @Override
    public int hashCode() {
        return sorted().hashCode();
    }

    @Override
    public String toString() {
        return entered.toString();
    }
}
