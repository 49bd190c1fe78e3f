package wetside.tour;

import java.util.ArrayList;
import java.util.List;
import wetside.machine.Component;

/** One arrival at a part, and where one goes on from there: the last way is the main one. */
final class Visit {
    /** What sort of arrival. */
    enum Sort {
        /** For the first time. */
        FIRST,
        /** Through another of its ports, with ways on that were not open before. */
        AGAIN,
        /** Back where the way has passed before: a ring. */
        RING,
        /** Where another way has been. */
        MEETS,
        /** Where a longer way will come, which then tells of it. */
        LATER
    }

    final Component part;
    final Sort sort;
    /** Water comes here by circulation alone. */
    boolean circulating;
    /** Side ways first. */
    final List<Visit> on = new ArrayList<>();

    Visit(Component part, Sort sort) {
        this.part = part;
        this.sort = sort;
    }

    boolean isReference() {
        return sort == Sort.RING || sort == Sort.MEETS || sort == Sort.LATER;
    }

    /** Nothing is met here, nor further on, that has not been met before. */
    boolean isKnown() {
        return sort != Sort.FIRST && on.stream().allMatch(Visit::isKnown);
    }

    boolean leadsTo(Component other) {
        return part.id().equals(other.id()) || on.stream().anyMatch(v -> v.leadsTo(other));
    }
}
