package wetside.bench;

import java.util.Optional;
import java.util.stream.Collectors;
import wetside.casework.Casework;
import wetside.shop.Entry;

/** A finding is kept by the names the machine file has for it; this says it as people do. */
final class Found {
    private static final String THEN = ". ";

    private Found() {}

    /** In words; as it is written when it is none of this machine's causes. */
    static String words(Optional<Casework> casework, String finding) {
        String words = casework.stream()
                .flatMap(c -> Proof.causes(c, finding).stream())
                .map(c -> c.cause().words())
                .collect(Collectors.joining(", and "));
        return words.isEmpty() ? finding : words;
    }

    /** An entry of the timeline with its finding in words; what was written behind it stays. */
    static Entry said(Optional<Casework> casework, Entry e) {
        if (!e.sort().equals("finding")) {
            return e;
        }
        int end = e.words().contains(THEN) ? e.words().indexOf(THEN) : e.words().length();
        String words = words(casework, e.words().substring(0, end)) + e.words().substring(end);
        return new Entry(e.id(), e.jobId(), e.at(), e.sort(), e.who(), words, e.detail(), e.corrects());
    }
}
