package wetside.bench;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wetside.shop.Answer;
import wetside.shop.Entry;
import wetside.shop.Reading;

/**
 * What was told in fault finding, as the timeline and the report take it: readings of the machine as it came. Their numbers
 * are below zero, so that they are never taken for entries that somebody wrote.
 *
 * @param takenBack numbers of entries that were answered anew or taken back: on record, but struck
 */
record AsFound(List<Entry> entries, List<Reading> readings, Set<Long> takenBack) {
    private static final Set<String> NOTHING = Set.of("don't know", "can't reach", FaultCase.STILL_BAD);

    static AsFound of(List<Answer> answers) {
        return new AsFound(
                answers.stream().map(AsFound::entry).toList(),
                beforeAnyRepair(answers).stream()
                        .filter(a -> a.takenBack().isEmpty() && !NOTHING.contains(a.said()))
                        .map(AsFound::reading)
                        .toList(),
                answers.stream()
                        .filter(a -> !a.takenBack().isEmpty())
                        .map(a -> -a.id())
                        .collect(Collectors.toSet()));
    }

    /** What was read after a repair is not how the machine came. */
    private static List<Answer> beforeAnyRepair(List<Answer> answers) {
        return answers.stream()
                .takeWhile(a ->
                        !a.said().equals(FaultCase.STILL_BAD) || !a.takenBack().isEmpty())
                .toList();
    }

    private static Entry entry(Answer a) {
        boolean done = a.said().equals(FaultCase.STILL_BAD);
        String words = a.asked() + ": " + (done ? "done, still there" : a.said());
        return new Entry(-a.id(), a.jobId(), a.at(), done ? "work" : "answer", a.who(), words, "{}", null);
    }

    private static Reading reading(Answer a) {
        return new Reading(-a.id(), "found", a.asked(), a.said(), "", a.who(), a.at(), -a.id(), null, null, null, null);
    }
}
