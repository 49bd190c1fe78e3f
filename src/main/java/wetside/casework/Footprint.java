package wetside.casework;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Question;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.inference.Calls;

/**
 * The routines in which a cause can be felt, judged by the draws there are: where every reading of every draw was what the
 * same machine reads when nothing is wrong with it, to a small share of what its instrument can tell, further draws need
 * not be run. A cause that is not felt in a routine may be felt in one that follows; then both are run.
 */
final class Footprint {
    /** Draws needed before a routine may be spared; one block spans all severities. */
    static final int ENOUGH = wetside.run.Draws.BLOCK;

    /** A difference below this share of a reading's own standard deviation is none. */
    private static final double NONE = 0.05;

    private Footprint() {}

    /** Names of the readings still to be simulated for a cause. */
    static Set<String> readings(Casework casework, Library library, int cause) {
        return readings(
                casework,
                IntStream.range(0, casework.askings().size())
                        .filter(q -> isFelt(library, cause, q))
                        .boxed()
                        .toList());
    }

    /** The same where two causes are there: where one of them is felt at least. */
    static Set<String> readings(Casework casework, Library library, int one, int other) {
        return readings(
                casework,
                IntStream.range(0, casework.askings().size())
                        .filter(q -> isFelt(library, one, q) || isFelt(library, other, q))
                        .boxed()
                        .toList());
    }

    /** Names of the readings of the routines in which some questions are asked, and of those that lead there. */
    static Set<String> readings(Casework casework, List<Integer> felt) {
        Set<String> routines = new LinkedHashSet<>();
        for (int q : felt) {
            routines.addAll(
                    casework.leadingTo(casework.askings().get(q).procedure().routine()));
        }
        Set<String> readings = new HashSet<>();
        for (Asking a : casework.askings()) {
            if (routines.contains(a.procedure().routine())) {
                readings.add(a.question().id());
            }
        }
        return readings;
    }

    /**
     * The library as believed in when somebody has called: every cause counts as far as an owner would notice anything of
     * it, and not at all where nothing on this installation would ever show it, such as the mains of a machine fed from its
     * tank. Calls about machines that work stay as many as they are.
     *
     * @param noticed false where only some readings are simulated: what an owner would notice is then not known
     * @param calls   of this library
     */
    static Library called(Library library, boolean noticed, Calls calls) {
        double[] chance = new double[library.causes().size()];
        double before = 0;
        double after = 0;
        for (int c = 1; c < chance.length; c++) {
            double weight = library.causes().get(c).weight();
            chance[c] = !isHeard(library, c) ? 0 : noticed ? calls.chance(c) : 1;
            before += weight;
            after += weight * chance[c];
        }
        double[] weights = new double[chance.length];
        for (int c = 0; c < weights.length; c++) {
            double weight = library.causes().get(c).weight();
            weights[c] = c == 0 || after == 0 ? weight : weight * chance[c] * before / after;
        }
        return library.weighted(weights);
    }

    private static boolean isHeard(Library library, int cause) {
        Signatures s = library.signatures();
        int width = s.questions();
        float[] whole = s.rows(0);
        float[] here = s.rows(cause);
        // as the rows lie; most readings of most causes are those of the whole machine
        for (int at = 0; at < Math.min(here.length, whole.length); at++) {
            if (here[at] != whole[at] && differs(library.questions().get(at % width), whole[at], here[at])) {
                return true;
            }
        }
        return false;
    }

    private static boolean isFelt(Library library, int cause, int question) {
        Signatures s = library.signatures();
        for (int k = 0; k < s.draws(cause); k++) {
            if (differs(library.questions().get(question), s.value(0, k, question), s.value(cause, k, question))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a reading differs from that of the same machine when nothing is wrong by more than nothing. */
    static boolean differs(Question question, float whole, float here) {
        return question.differs(whole, here, NONE);
    }

    /** The same by more than its instrument may be off. */
    static boolean differsPlainly(Question question, float whole, float here) {
        return question.differs(whole, here, 1);
    }
}
