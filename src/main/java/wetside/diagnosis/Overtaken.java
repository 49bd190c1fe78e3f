package wetside.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Answers a repair has overtaken. What was read before a repair that did not put everything right shows what was there then;
 * what the repair may have changed can be asked again, and the new answer shows what is left. The old answer moves to a
 * column of its own. One cause alone reads the same in both: either the repair was not meant for it or it did not hold. Two
 * causes do not.
 */
public final class Overtaken {
    private static final String THEN = "before repair ";
    private static final Pattern NAME = Pattern.compile(THEN + "(\\d+): (.*)");

    private Overtaken() {}

    /** The same observations, those overtaken about their own columns. */
    public static Observations observed(Library library, Observations entered) {
        List<Observation> all = new ArrayList<>(entered.entered());
        int repairs = 0;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).kind() == Observation.Kind.STILL_BAD) {
                repairs++;
                for (int before = 0; before < i; before++) {
                    Observation o = all.get(before);
                    if (isOvertaken(library, o, all.get(i))) {
                        all.set(
                                before,
                                new Observation(o.kind(), THEN + repairs + ": " + o.about(), o.value(), o.by()));
                    }
                }
            }
        }
        return repairs == 0 ? entered : Observations.of(latest(all));
    }

    /** What was answered again though no repair had overtaken it counts once; what was called about stays. */
    private static List<Observation> latest(List<Observation> all) {
        List<Observation> latest = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Observation o = all.get(i);
            boolean again = all.subList(i + 1, all.size()).stream().anyMatch(later -> isSame(later, o))
                    || all.subList(0, i).stream()
                            .anyMatch(call -> call.isComplaint() && call.about().equals(o.about()));
            if (!again || o.kind() == Observation.Kind.STILL_BAD) {
                latest.add(o);
            }
        }
        return latest;
    }

    private static boolean isSame(Observation one, Observation other) {
        return one.about().equals(other.about()) && one.by().equals(other.by());
    }

    private static boolean isOvertaken(Library library, Observation o, Observation repair) {
        if (!isAnswer(o) || !now(o.about()).equals(o.about())) {
            return false;
        }
        int q = library.question(o.about());
        List<String> mended = Repair.parts(repair.about());
        for (int c = 1; c < library.causes().size(); c++) {
            Cause cause = library.causes().get(c);
            if (cause.weight() > 0 && mended.contains(cause.repair().id()) && library.moves(c, q)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAnswer(Observation o) {
        return o.kind() == Observation.Kind.NUMBER || o.kind() == Observation.Kind.CHOICE;
    }

    /** The question an answer is to, whenever it was given. */
    public static String now(String about) {
        Matcher then = about.startsWith(THEN) ? NAME.matcher(about) : null;
        return then != null && then.matches() ? then.group(2) : about;
    }

    /** The answer before this one to the same question. */
    public static Optional<Observation> before(Observations observed, String about) {
        return observed.stream()
                .filter(o -> isAnswer(o)
                        && !o.about().equals(about)
                        && now(o.about()).equals(now(about)))
                .filter(o -> about.equals(now(about)) || repairs(o.about()) < repairs(about))
                .max(Comparator.comparingInt(o -> repairs(o.about())));
    }

    /** How many repairs were done when an overtaken answer was overtaken. */
    private static int repairs(String about) {
        Matcher then = NAME.matcher(about);
        return then.matches() ? Integer.parseInt(then.group(1)) : Integer.MAX_VALUE;
    }

    /** What has columns of its own. */
    public static List<String> names(Observations observed) {
        return observed.stream()
                .map(Observation::about)
                .filter(about -> !now(about).equals(about))
                .toList();
    }

    /** The library with a column for each answer overtaken, filled from its question's; the same when there is none. */
    public static Library columns(Library library, Observations observed) {
        List<Question> questions = new ArrayList<>(library.questions());
        List<Integer> from = new ArrayList<>();
        for (Observation o : observed) {
            boolean there = questions.stream().anyMatch(q -> q.id().equals(o.about()));
            if (!there && !now(o.about()).equals(o.about())) {
                int q = library.question(now(o.about()));
                from.add(q);
                questions.add(named(library.questions().get(q), o.about()));
            }
        }
        return from.isEmpty() ? library : new Library(library.causes(), questions, wider(library.signatures(), from));
    }

    private static Question named(Question q, String id) {
        return new Question(id, q.words(), q.answering(), q.effort(), q.reporter());
    }

    private static Signatures wider(Signatures signatures, List<Integer> from) {
        float[][] rows = new float[signatures.causes()][];
        int[] simulated = new int[rows.length];
        for (int c = 0; c < rows.length; c++) {
            rows[c] = wider(signatures.rows(c), signatures.questions(), from);
            simulated[c] = signatures.simulated(c);
        }
        return Signatures.of(signatures.questions() + from.size(), rows, simulated);
    }

    private static float[] wider(float[] rows, int width, List<Integer> from) {
        int more = from.size();
        int draws = rows.length / width;
        float[] wide = new float[draws * (width + more)];
        for (int k = 0; k < draws; k++) {
            System.arraycopy(rows, k * width, wide, k * (width + more), width);
            for (int i = 0; i < more; i++) {
                wide[k * (width + more) + width + i] = rows[k * width + from.get(i)];
            }
        }
        return wide;
    }

    /** Writes the columns for what was overtaken in rows of a library that has them. */
    public static void fill(Library wide, float[] rows) {
        int width = wide.questions().size();
        for (int q = 0; q < width; q++) {
            String id = wide.questions().get(q).id();
            if (!now(id).equals(id)) {
                int from = wide.question(now(id));
                for (int at = 0; at < rows.length; at += width) {
                    rows[at + q] = rows[at + from];
                }
            }
        }
    }
}
