package wetside.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All that is known of a machine before anybody asks: its causes, the questions it can be asked, and the signatures
 * (rows in the order of the causes, columns in the order of the questions).
 */
public final class Library {
    private final List<Cause> causes;
    private final List<Question> questions;
    private final Signatures signatures;
    private final Map<String, Integer> causeIndex;
    private final Map<String, Integer> questionIndex;

    public Library(List<Cause> causes, List<Question> questions, Signatures signatures) {
        this.causes = List.copyOf(causes);
        this.questions = List.copyOf(questions);
        this.signatures = signatures;
        if (signatures.causes() != causes.size() || signatures.questions() != questions.size()) {
            throw new IllegalArgumentException("signatures of " + signatures.causes() + " causes and "
                    + signatures.questions() + " questions for " + causes.size() + " and " + questions.size());
        }
        causeIndex = index(this.causes.stream().map(Cause::id).toList());
        questionIndex = index(this.questions.stream().map(Question::id).toList());
    }

    private static Map<String, Integer> index(List<String> ids) {
        Map<String, Integer> index = new HashMap<>();
        for (String id : ids) {
            if (index.put(id, index.size()) != null) {
                throw new IllegalArgumentException("twice in the library: " + id);
            }
        }
        return index;
    }

    /** The same with other (usually more) draws. */
    public Library with(Signatures sharper) {
        return new Library(causes, questions, sharper);
    }

    /** With further causes after those there are, each with its rows. */
    public Library with(List<Cause> more, float[][] rows) {
        List<Cause> all = new ArrayList<>(causes);
        all.addAll(more);
        float[][] every = new float[all.size()][];
        int[] simulated = new int[all.size()];
        for (int c = 0; c < every.length; c++) {
            boolean old = c < causes.size();
            every[c] = old ? signatures.rows(c) : rows[c - causes.size()];
            simulated[c] = old ? signatures.simulated(c) : every[c].length / Math.max(1, questions.size());
        }
        return new Library(all, questions, Signatures.of(questions.size(), every, simulated));
    }

    /** The same signatures with the causes weighted otherwise. */
    public Library weighted(double... weights) {
        List<Cause> weighted = new ArrayList<>();
        for (int c = 0; c < weights.length; c++) {
            weighted.add(causes.get(c).weighing(weights[c]));
        }
        return new Library(weighted, questions, signatures);
    }

    /** Whether a cause moves a reading in any draw by more than the reading's own deviation. */
    public boolean moves(int cause, int q) {
        int n = Math.min(signatures.draws(cause), signatures.draws(0));
        for (int k = 0; k < n; k++) {
            if (questions.get(q).differs(signatures.value(0, k, q), signatures.value(cause, k, q), 1)) {
                return true;
            }
        }
        return false;
    }

    public List<Cause> causes() {
        return causes;
    }

    public List<Question> questions() {
        return questions;
    }

    public Signatures signatures() {
        return signatures;
    }

    /** Position of a cause; throws when there is no such cause. */
    public int cause(String id) {
        return known(causeIndex, id, "cause");
    }

    /** Position of a question; throws when there is no such question. */
    public int question(String id) {
        return known(questionIndex, id, "question");
    }

    private static int known(Map<String, Integer> index, String id, String what) {
        Integer position = index.get(id);
        if (position == null) {
            throw new IllegalArgumentException("no " + what + " \"" + id + "\" in the library");
        }
        return position;
    }
}
