package wetside.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * What this very machine read when nothing was wrong with it. A draw number means the same parts under every cause, so an
 * earlier reading is what the whole machine of that draw reads, whatever is wrong now; observed beside the readings of
 * today it narrows the tolerances to this machine's normal.
 */
public final class Earlier {
    private static final String BEFORE = "when it worked: ";

    private Earlier() {}

    /** The library with a column for each earlier number, filled from "works as it should", the first cause. */
    public static Library columns(Library library, Observations earlier) {
        List<Question> questions = new ArrayList<>(library.questions());
        List<Integer> from = new ArrayList<>();
        for (Observation o : numbers(earlier)) {
            int q = library.question(o.about());
            Question asked = library.questions().get(q);
            from.add(q);
            questions.add(new Question(
                    BEFORE + asked.id(), asked.words(), asked.answering(), asked.effort(), asked.reporter()));
        }
        if (from.isEmpty()) {
            return library;
        }
        float[][] rows = new float[library.causes().size()][];
        for (int c = 0; c < rows.length; c++) {
            rows[c] = widened(library.signatures(), library.signatures().rows(c), from);
        }
        return new Library(library.causes(), questions, Signatures.of(questions.size(), rows));
    }

    private static float[] widened(Signatures s, float[] rows, List<Integer> from) {
        int width = s.questions();
        int draws = rows.length / width;
        float[] wide = new float[draws * (width + from.size())];
        for (int k = 0; k < draws; k++) {
            int at = k * (width + from.size());
            System.arraycopy(rows, k * width, wide, at, width);
            for (int i = 0; i < from.size(); i++) {
                wide[at + width + i] = k < s.draws(0) ? s.value(0, k, from.get(i)) : Float.NaN;
            }
        }
        return wide;
    }

    /** Rows of today's questions with the earlier columns of a library that has them put behind. */
    public static float[] behind(Library wide, float[] rows, int width) {
        int more = wide.questions().size() - width;
        int draws = rows.length / width;
        float[] joined = new float[draws * (width + more)];
        for (int k = 0; k < draws; k++) {
            System.arraycopy(rows, k * width, joined, k * (width + more), width);
            for (int i = 0; i < more; i++) {
                boolean there = k < wide.signatures().draws(0);
                joined[k * (width + more) + width + i] =
                        there ? wide.signatures().value(0, k, width + i) : Float.NaN;
            }
        }
        return joined;
    }

    /** The earlier numbers as observations of their own columns; words tell nothing of tolerances. */
    public static Observations observed(Observations today, Observations earlier) {
        Observations all = today;
        for (Observation o : numbers(earlier)) {
            all = all.with(Observation.number(BEFORE + o.about(), o.value()));
        }
        return all;
    }

    private static List<Observation> numbers(Observations earlier) {
        return earlier.stream().filter(o -> o.kind() == Observation.Kind.NUMBER).toList();
    }

    /** The reading an earlier one is of, or one from before a repair; the same for one of now. */
    public static String reading(String about) {
        return about.startsWith(BEFORE) ? about.substring(BEFORE.length()) : Overtaken.now(about);
    }
}
