package wetside.shop;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads how a job ended from what its timeline tells of it. */
final class Ending {
    private static final String PASSED = "passed: ";
    private static final String FAILED = "failed: ";

    private final Outcomes.Done job;
    private final List<Outcomes.Told> told;
    private final Map<Long, Map<String, Double>> believed;

    Ending(Outcomes.Done job, List<Outcomes.Told> told, Map<Long, Map<String, Double>> believed) {
        this.job = job;
        Set<Long> corrected = told.stream()
                .map(Outcomes.Told::corrects)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        // A finding set right by a note is none, not the one before it.
        Optional<Outcomes.Told> last = last(told, "finding");
        this.told = last.isPresent() && corrected.contains(last.get().id())
                ? List.of()
                : told.stream().filter(t -> !corrected.contains(t.id())).toList();
        this.believed = believed;
    }

    /** Empty when no finding stands. */
    Optional<Outcome> outcome() {
        return last(told, "finding")
                .map(found -> new Outcome(
                        job.id(),
                        job.number(),
                        job.machineId(),
                        last(told, "signs").map(t -> sign(t.words())).orElse(""),
                        job.finding(),
                        job.opened(),
                        found.at(),
                        last(told, "state").map(Outcomes.Told::at).orElse(found.at()),
                        passed(found.id()),
                        believed.getOrDefault(found.id(), Map.of()),
                        last(told, "counts")
                                .flatMap(t -> Outcomes.reason(t.words()))
                                .orElse("")));
    }

    private static Optional<Outcomes.Told> last(List<Outcomes.Told> told, String sort) {
        return told.stream().filter(t -> t.sort().equals(sort)).reduce((a, b) -> b);
    }

    /** The first of "one; another. When: then". */
    static String sign(String words) {
        return words.split("; |\\.? ?When: ", 2)[0];
    }

    /** Proof given for an earlier finding shows nothing of this one. */
    private Set<String> passed(long finding) {
        Set<String> passed = new HashSet<>();
        for (Outcomes.Told t : told) {
            if (t.sort().equals("proof") && t.id() > finding) {
                String what = t.words().split(" – ", 2)[0];
                if (what.startsWith(PASSED)) {
                    passed.add(what.substring(PASSED.length()));
                } else if (what.startsWith(FAILED)) {
                    passed.remove(what.substring(FAILED.length()));
                }
            }
        }
        return passed;
    }
}
