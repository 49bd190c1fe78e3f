package wetside.diagnosis.plan;

import java.util.List;
import java.util.Optional;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Repair;

/**
 * What is left to do against a cause after some repairs were in vain: of a pair, the one that was not done. A repair that
 * does not always hold may be done once more, with another part; then it counts as done.
 */
public final class Left {
    private static final int TRIES = 2;

    private Left() {}

    /** The repair still open; empty when all of it was done. */
    public static Optional<Repair> of(Library library, int cause, Observations observations) {
        Repair whole = library.causes().get(cause).repair();
        if (isDone(whole, observations)) {
            return Optional.empty();
        }
        List<String> parts = whole.parts();
        if (parts.size() == 1) {
            return Optional.of(whole);
        }
        List<Repair> open = parts.stream()
                .flatMap(part -> library.causes().stream()
                        .map(Cause::repair)
                        .filter(r -> r.id().equals(part))
                        .limit(1))
                .filter(r -> observations.inVain(r) == 0)
                .toList();
        return Optional.of(open.size() == 1 ? open.get(0) : whole);
    }

    private static boolean isDone(Repair repair, Observations observations) {
        return observations.inVain(repair) >= (repair.works() < 1 ? TRIES : 1);
    }
}
