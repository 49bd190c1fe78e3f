package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.stream.IntStream;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Signatures;

/**
 * How a machine with two causes reads, draw by draw. What was answered after one was mended shows the other alone, which the
 * library knows. What shows both is guessed from its parts,
 *
 * <pre>pair = one + (other - whole)</pre>
 *
 * an option being the one that differs from the whole machine's, or comes from runs of the twin with both causes in it. A few
 * runs tell all draws: of some ways in which two causes may meet in a reading, the one that tells the runs best, and what it
 * leaves at the run nearest in how bad both are.
 */
public final class PairRows {
    private final Library library;
    private final History history;

    PairRows(Library library, History history) {
        this.library = library;
        this.history = history;
    }

    /** As a posterior of single causes has observed them. */
    public static PairRows of(Posterior singles) {
        return new PairRows(singles.library(), new History(singles.library(), singles.observations()));
    }

    /** All rows of a pair; {@code both} as from {@link #told}, null to guess them. */
    public float[] of(PairSearch.Pair pair, float[] both) {
        int[] all = IntStream.range(0, library.questions().size()).toArray();
        return of(pair, both, Integer.MAX_VALUE, all);
    }

    /** The first draws of some questions; the others have no value. */
    float[] of(PairSearch.Pair pair, float[] both, int most, int... questions) {
        int width = library.questions().size();
        int draws = Math.min(most, draws(library, pair.one(), pair.other()));
        float[] rows = new float[draws * width];
        Arrays.fill(rows, Float.NaN);
        boolean[] ran = new boolean[width];
        for (int q : questions) {
            ran[q] = both != null
                    && pair.seen()
                            .contains(Overtaken.now(library.questions().get(q).id()));
        }
        for (int k = 0; k < draws; k++) {
            for (int q : questions) {
                History.Shows shows = history.shows(pair.one(), pair.other(), q, k, draws);
                rows[k * width + q] = ran[q] && shows.one() && shows.other()
                        ? both[k * width + q]
                        : guess(library, shows.one() ? pair.one() : 0, shows.other() ? pair.other() : 0, k, q);
            }
        }
        return rows;
    }

    private static int draws(Library library, int one, int other) {
        Signatures known = library.signatures();
        return Math.min(known.draws(0), Math.min(known.draws(one), known.draws(other)));
    }

    /** What both read together; the whole machine, position 0, adds nothing. */
    private static float guess(Library library, int one, int other, int k, int q) {
        float whole = library.signatures().value(0, k, q);
        float first = library.signatures().value(one, k, q);
        float second = library.signatures().value(other, k, q);
        if (one == 0 || other == 0) {
            return one == 0 ? second : first;
        }
        return library.questions().get(q).answering() instanceof Answering.Number
                ? first + (second - whole)
                : second != whole ? second : first;
    }

    /** So much smaller than what a cause makes of it nothing can be a multiple of a reading. */
    private static final double NEXT_TO_NOTHING = 1e-2;

    /** Ways in which two causes may meet in a number. */
    private enum Meeting {
        SUM,
        PRODUCT,
        LESS,
        MORE,
        FIRST,
        SECOND;

        float of(float one, float other, float whole) {
            return switch (this) {
                case SUM -> one + (other - whole);
                case PRODUCT ->
                    Math.abs(whole) < NEXT_TO_NOTHING * Math.max(Math.abs(one), Math.abs(other))
                            ? Float.NaN
                            : one * other / whole;
                case LESS -> Math.min(one, other);
                case MORE -> Math.max(one, other);
                case FIRST -> one;
                case SECOND -> other;
            };
        }
    }

    /**
     * Rows with both causes there, of every draw, from those that were run.
     *
     * @param run   rows of the first draws
     * @param donor the run draw that is nearest to each draw in how bad both causes are
     */
    public static float[] told(Library library, int one, int other, float[] run, int... donor) {
        int width = library.questions().size();
        int ran = run.length / width;
        int draws = Math.min(donor.length, draws(library, one, other));
        float[] rows = Arrays.copyOf(run, Math.max(ran, draws) * width);
        for (int q = 0; q < width && draws > ran; q++) {
            Meeting meeting = library.questions().get(q).answering() instanceof Answering.Number
                    ? meeting(library, one, other, run, q)
                    : null;
            for (int k = ran; k < draws; k++) {
                float there = run[donor[k] * width + q];
                float base = base(library, meeting, one, other, k, q);
                float moved = base + there - base(library, meeting, one, other, donor[k], q);
                boolean tells = meeting != null && Float.isFinite(moved);
                rows[k * width + q] = tells ? there >= 0 && base >= 0 ? Math.max(0, moved) : moved : there;
            }
        }
        return rows;
    }

    private static float base(Library library, Meeting meeting, int one, int other, int k, int q) {
        Signatures s = library.signatures();
        return meeting == null ? Float.NaN : meeting.of(s.value(one, k, q), s.value(other, k, q), s.value(0, k, q));
    }

    /** The way that tells the runs best; null when none has a value wherever the runs have. */
    private static Meeting meeting(Library library, int one, int other, float[] run, int q) {
        int width = library.questions().size();
        Meeting best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Meeting meeting : Meeting.values()) {
            double missed = 0;
            for (int k = 0; k < run.length / width; k++) {
                double off = run[k * width + q] - base(library, meeting, one, other, k, q);
                missed += Float.isNaN(run[k * width + q]) ? 0 : off * off;
            }
            if (missed < least) {
                least = missed;
                best = meeting;
            }
        }
        return best;
    }
}
