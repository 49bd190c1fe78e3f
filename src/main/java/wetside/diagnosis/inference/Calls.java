package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Question;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Who;

/**
 * Whether anybody would call about a machine. There is a job because an owner noticed something: a valve stuck shut that
 * never has to open, or a joint that weeps a drop a day, brings nobody. So of all that an owner can see,
 *
 * <pre>strikes = max over q of min(oddness of the reading, 2 |reading - reading of the same machine without the cause| / sd)</pre>
 *
 * in standard deviations of a machine that works, instrument included; a word counts when the cause changed it, by how rare
 * it is on machines that work.
 */
public final class Calls {
    /** From here on anybody calls. */
    public static final double STRIKING = 2;

    /** One in so many calls about what strikes nobody: found when somebody looked for something else. */
    private static final double BY_CHANCE = 0.05;

    /** What everything on a machine that works pulls, striking or not: assumed. Among thirty things as much as one that strikes much. */
    private static final double ANYTHING = 0.1;

    /** Standard deviations that nobody notices, and those from which on nothing strikes more. */
    private static final double UNNOTICED = 1;

    private static final double MOST = 4;

    /** Half as wide as the stretch in which some call and some do not. */
    private static final double SOME = 1;

    private final Library library;
    private final boolean[] seen;
    private final double[] mean;
    private final double[] sd;
    private final int[][] counts;
    private final int[] valued;
    /** By cause, as far as somebody asked. */
    private final AtomicReferenceArray<double[]> chances;

    public Calls(Library library) {
        this.library = library;
        chances = new AtomicReferenceArray<>(library.causes().size());
        int n = library.questions().size();
        seen = new boolean[n];
        mean = new double[n];
        sd = new double[n];
        counts = new int[n][];
        valued = new int[n];
        for (int q = 0; q < n && library.signatures().causes() > 0; q++) {
            Question question = library.questions().get(q);
            seen[q] = question.effort().allowed(Who.OWNER);
            if (question.answering() instanceof Answering.Choice choice) {
                counts[q] = new int[choice.options().size()];
                count(q);
            } else {
                moments(q, (Answering.Number) question.answering());
            }
        }
    }

    private void count(int q) {
        Signatures s = library.signatures();
        for (int k = 0; k < s.draws(0); k++) {
            float v = s.value(0, k, q);
            if (!Float.isNaN(v)) {
                valued[q]++;
                counts[q][(int) v]++;
            }
        }
    }

    private void moments(int q, Answering.Number number) {
        Signatures s = library.signatures();
        double squares = 0;
        for (int k = 0; k < s.draws(0); k++) {
            float v = s.value(0, k, q);
            if (!Float.isNaN(v)) {
                valued[q]++;
                double step = v - mean[q];
                mean[q] += step / valued[q];
                squares += step * (v - mean[q]);
            }
        }
        double variance = valued[q] > 0 ? squares / valued[q] : 0;
        sd[q] = Math.sqrt(variance + number.variance(mean[q]));
    }

    /** The same machine that works, with further causes. */
    private Calls(Calls same, Library library) {
        this.library = library;
        seen = same.seen;
        mean = same.mean;
        sd = same.sd;
        counts = same.counts;
        valued = same.valued;
        chances = new AtomicReferenceArray<>(library.causes().size());
        Signatures old = same.library.signatures();
        for (int c = 0; c < Math.min(old.causes(), chances.length()); c++) {
            if (old.rows(c) == library.signatures().rows(c)) {
                chances.set(c, same.chances.get(c));
            }
        }
    }

    /** The same for a library in which some causes have other draws; nothing is worked out again for the others. */
    public Calls sharper(Library other) {
        boolean sameWhole = library.questions() == other.questions()
                && library.signatures().causes() > 0
                && library.signatures().rows(0) == other.signatures().rows(0);
        return sameWhole ? new Calls(this, other) : new Calls(other);
    }

    /** Whether these are of just these signatures, whatever the weights. */
    boolean isOf(Library other) {
        return library.signatures() == other.signatures();
    }

    Calls of(Library more) {
        return new Calls(this, more);
    }

    /** Whether an owner can see the answer to a question. */
    public boolean isSeen(int q) {
        return seen[q];
    }

    /** How far an answer lies from a machine that works, in standard deviations or what is as rare; 0 for no answer. */
    public double oddness(int q, float value) {
        if (valued[q] == 0 || Float.isNaN(value)) {
            return 0;
        }
        if (library.questions().get(q).answering() instanceof Answering.Choice choice) {
            double chance = (counts[q][(int) value] + choice.errorRate()) / (valued[q] + 1);
            return Math.sqrt(-2 * Math.log(Math.min(1, chance)));
        }
        return Math.abs(value - mean[q]) / sd[q];
    }

    /** How much an answer strikes, where the same machine without the cause has {@code whole}. */
    public double strikes(int q, float value, float whole) {
        if (Float.isNaN(value)) {
            return 0;
        }
        if (counts[q] != null || Float.isNaN(whole)) {
            return value == whole ? 0 : oddness(q, value);
        }
        return Math.min(oddness(q, value), 2 * Math.abs(value - whole) / sd[q]);
    }

    /** The most striking of what an owner can see, from rows of answers in the library's order. */
    public double strikes(float[] rows, int from, float[] whole, int wholeFrom) {
        double most = 0;
        for (int q = 0; q < seen.length; q++) {
            // what reads as without the cause strikes nobody: most readings of most causes
            if (seen[q] && rows[from + q] != whole[wholeFrom + q]) {
                most = Math.max(most, strikes(q, rows[from + q], whole[wholeFrom + q]));
            }
        }
        return most;
    }

    /**
     * Probability that somebody calls, by draw of a cause; certain for a machine that works, and where there is none. Read,
     * never write.
     */
    public double[] chances(int cause) {
        double[] known = chances.get(cause);
        if (known == null) {
            known = workedOut(cause);
            chances.set(cause, known);
        }
        return known;
    }

    private double[] workedOut(int cause) {
        Signatures s = library.signatures();
        float[] rows = s.rows(cause);
        float[] whole = s.rows(0);
        double[] chances = new double[s.draws(cause)];
        Arrays.fill(chances, 1);
        for (int k = 0; k < chances.length && cause > 0; k++) {
            if ((k + 1) * seen.length <= whole.length) {
                chances[k] = chance(strikes(rows, k * seen.length, whole, k * seen.length));
            }
        }
        return chances;
    }

    /**
     * What each draw of a cause counts: those that somebody would call about count more, 1 on average; and by how likely
     * they would call about this, 1 being any one thing as likely as another. Who calls about a fault calls because something
     * strikes, and then about what does, or by chance, and then about anything, so that it cannot be likelier to hear of
     * what is as it should be than to be called by chance:
     *
     * <pre>n P(called, q) = b + (P(called) - b) n pull_q^2 / SUM_j pull_j^2,   pull = what strikes beyond what nobody notices</pre>
     *
     * with b the share called about by chance; a reading that the cause leaves as it was pulls nothing, however odd it is.
     * Of a machine that works some are only unsure, and what strikes there is chance:
     *
     * <pre>n P(q) = n (g + pull_q^2) / (n g + SUM_j pull_j^2)</pre>
     */
    double[] weights(int cause, Optional<Readings.Complaint> complaint) {
        double[] chances = chances(cause);
        double mean = Arrays.stream(chances).average().orElse(1);
        double[] weights = new double[chances.length];
        for (int k = 0; k < weights.length; k++) {
            double chance = chances[k];
            int draw = k;
            weights[k] = complaint.map(c -> told(cause, draw, chance, c)).orElse(chance) / mean;
        }
        return weights;
    }

    private double told(int cause, int draw, double chance, Readings.Complaint complaint) {
        double n = 0;
        double others = 0;
        boolean known = draw < library.signatures().draws(0);
        for (int q = 0; q < seen.length; q++) {
            if (seen[q]) {
                n++;
                others += q == complaint.question() || !known ? 0 : pull(strikes(cause, draw, q));
            }
        }
        if (cause > 0 && known) {
            double here = pull(broughtAbout(cause, draw, complaint));
            return BY_CHANCE + (here > 0 ? (chance - BY_CHANCE) * n * here / (here + others) : 0);
        }
        double here = pull(oddness(complaint.question(), complaint.value()));
        return chance * n * (ANYTHING + here) / (n * ANYTHING + here + others);
    }

    /** How much of what was called about a cause can have brought about: nothing where the draw reads the same without it. */
    private double broughtAbout(int cause, int draw, Readings.Complaint complaint) {
        int q = complaint.question();
        float here = library.signatures().value(cause, draw, q);
        float whole = library.signatures().value(0, draw, q);
        if (Float.isNaN(here) || here == whole) {
            return 0;
        }
        double odd = oddness(q, complaint.value());
        return counts[q] != null || Float.isNaN(whole) ? odd : Math.min(odd, 2 * Math.abs(here - whole) / sd[q]);
    }

    /** How much a reading of a draw strikes; of a machine that works, how odd it is. */
    private double strikes(int cause, int draw, int q) {
        Signatures s = library.signatures();
        return cause == 0 ? oddness(q, s.value(0, draw, q)) : strikes(q, s.value(cause, draw, q), s.value(0, draw, q));
    }

    private static double pull(double strikes) {
        double beyond = Math.max(0, Math.min(strikes, MOST) - UNNOTICED);
        return beyond * beyond;
    }

    private static double chance(double strikes) {
        double some = (strikes - STRIKING + SOME) / (2 * SOME);
        return Math.max(BY_CHANCE, Math.min(1, some));
    }

    /** Whether any draw of a cause brings anybody to call but by chance. */
    public boolean isEverMade(int cause) {
        return Arrays.stream(chances(cause)).anyMatch(chance -> chance > BY_CHANCE);
    }

    /** Probability that somebody calls about a cause; 1 where nothing is known of it. */
    public double chance(int cause) {
        return Arrays.stream(chances(cause)).average().orElse(1);
    }
}
