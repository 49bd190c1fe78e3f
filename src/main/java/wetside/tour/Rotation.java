package wetside.tour;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sentences for what is said again and again, so that it does not sound the same each time. */
final class Rotation {
    private final Map<List<String>, Integer> used = new HashMap<>();

    /** The next of some sentences, beginning anew when all have been used. */
    String next(List<String> sentences) {
        return sentences.get((used.merge(sentences, 1, Integer::sum) - 1) % sentences.size());
    }
}
