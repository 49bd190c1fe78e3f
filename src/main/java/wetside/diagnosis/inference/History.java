package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Repair;

/**
 * When questions were answered and repairs done in vain: of two causes a question shows both until one was mended. A repair
 * that does not always hold did so at the first try in as many draws as it usually does, then at the next.
 */
final class History {
    private final Library library;
    /** When each question was answered; {@link #now} when it was not, as it would be answered now. */
    private final int[] answered;

    private final int now;
    private final Map<String, List<Integer>> tries = new HashMap<>();

    History(Library library, Observations observations) {
        this.library = library;
        List<Observation> entered = observations.entered();
        now = entered.size();
        answered = new int[library.questions().size()];
        Arrays.fill(answered, now);
        for (int i = 0; i < now; i++) {
            Observation o = entered.get(i);
            if (o.kind() == Observation.Kind.STILL_BAD) {
                for (String part : Repair.parts(o.about())) {
                    tries.computeIfAbsent(part, p -> new ArrayList<>()).add(i);
                }
            } else if (o.kind() != Observation.Kind.UNKNOWN) {
                answered[library.question(o.about())] = i;
            }
        }
    }

    boolean isDone(int cause) {
        return tries.containsKey(library.causes().get(cause).repair().id());
    }

    /** Whether a cause may have been there when a question was answered. */
    boolean couldShow(int cause, int q) {
        List<Integer> all =
                tries.getOrDefault(library.causes().get(cause).repair().id(), List.of());
        return all.isEmpty() || answered[q] < all.get(0);
    }

    /**
     * Which of two causes are there when a question is answered, in one of some draws. Where both were mended and something
     * is still bad, one repair has not held.
     */
    Shows shows(int one, int other, int q, int k, int draws) {
        if (isDone(one) && isDone(other)) {
            double first = fails(one) * works(other);
            double second = fails(other) * works(one);
            boolean stays = first + second > 0 && (k + 0.5) * (first + second) < first * draws;
            return new Shows(stays || couldShow(one, q), !stays || couldShow(other, q));
        }
        return new Shows(shows(one, q, k, draws), shows(other, q, k, draws));
    }

    /** Whether each of two is there. */
    record Shows(boolean one, boolean other) {}

    private double works(int cause) {
        return library.causes().get(cause).repair().works();
    }

    private double fails(int cause) {
        return 1 - works(cause);
    }

    private boolean shows(int cause, int q, int k, int draws) {
        double fails = 1;
        for (int at : tries.getOrDefault(library.causes().get(cause).repair().id(), List.of())) {
            fails *= fails(cause);
            if (k + 0.5 < draws * (1 - fails)) {
                return answered[q] < at;
            }
        }
        return true;
    }
}
