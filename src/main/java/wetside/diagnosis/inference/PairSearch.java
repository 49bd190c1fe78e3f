package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.inference.Readings.Report;

/**
 * Which two causes at once could explain what no single one does. A reading that a leading cause leaves odd is a conflict:
 * only causes that move such a reading can be its partner. How a pair would read is guessed from its parts, draw by draw,
 *
 * <pre>pair = one + (other - whole)</pre>
 *
 * and an option is the one that differs from the whole machine's. Guesses rank the pairs; those worth it are then simulated.
 *
 * <p>Prior: a share of the faulty machines has two causes, by the product of their weights; faults of the same name in two
 * places (scale here and there) often share what brought them about and count several times.
 *
 * <p>A repair in vain parts time: what it was meant for may have been there and gone, and the other cause has been there
 * all along. Questions answered before show both, later ones and those to come the other alone.
 */
public final class PairSearch {
    /** Leading single causes that are tried with a partner. */
    private static final int LEADING = 16;
    /** What is so much less likely than the best is not leading. */
    private static final double FAR_BEHIND = 0.005;
    /** A pair that would hold less than this by guess is not worth a run. */
    private static final double WORTH = 0.01;
    /** After a repair in vain the guess itself will do, as most partners were not felt before; down to this share. */
    private static final double WORTH_GUESSING = 0.0005;

    private static final int MOST_GUESSED = 40;

    /** The most one number may say against a guess: parts that work on each other read like neither. */
    private static final double GUESS_ODDS = 20;
    /** How much likelier a pair may turn out than guessed when its causes work on each other [nat]. */
    private static final double MERCY = 6;

    /** A number further off than this, or a report rarer than {@link #RARE}, is a conflict. */
    private static final double OFF = 2.5;

    private static final double RARE = 0.12;
    /** How much likelier two faults of the same name come together than by chance. */
    private static final double SAME_NAME = 5;
    /** Draws a guess is made from. */
    private static final int DRAWS = 16;

    private final Posterior posterior;
    private final Library library;
    private final Readings readings;
    private final double shareOfTwo;
    private final double faulty;
    private final double products;
    private final History history;
    private final int[] observed;
    private final Runs runs;
    private final PairRows rows;
    private final boolean[][] moves;
    private final Set<String> asked;

    /** Pairs that were run. */
    public interface Runs {
        /** None yet. */
        Runs NONE = pair -> null;

        /** Rows of a library with both causes in the machine; null when not all was run that the pair was seen in. */
        float[] of(Pair pair);
    }

    /** When no pair was run yet. */
    public PairSearch(Posterior posterior, double shareOfTwo) {
        this(posterior, shareOfTwo, Runs.NONE);
    }

    /**
     * Of what single causes leave odd.
     *
     * @param shareOfTwo share of the faulty machines that have two causes
     * @param runs       pairs run earlier need no guess
     */
    public PairSearch(Posterior posterior, double shareOfTwo, Runs runs) {
        this.posterior = posterior;
        this.shareOfTwo = shareOfTwo;
        library = posterior.library();
        this.runs = runs;
        readings = posterior.readings();
        moves = new boolean[library.causes().size()][];
        history = new History(library, posterior.observations());
        rows = new PairRows(library, history);
        asked = library.questions().stream().map(q -> Overtaken.now(q.id())).collect(Collectors.toUnmodifiableSet());
        observed = observed(posterior);
        double sum = 0;
        double squares = 0;
        for (int c = 1; c < library.causes().size(); c++) {
            sum += weight(c);
            squares += weight(c) * weight(c);
        }
        faulty = sum;
        products = sum * sum - squares;
    }

    /**
     * Two causes worth simulating together.
     *
     * @param one   position of one
     * @param other position of the other
     * @param cause both, with the weight they have together
     * @param guess log of prior times guessed likelihood, as {@link Posterior#logWeight} has it
     * @param seen  readings that show both, or showed both before one was mended: what is to be run
     * @param ran   whether it was run before
     * @param run   whether it is worth running on the twin, or was; otherwise what is guessed will do
     */
    public record Pair(int one, int other, Cause cause, double guess, Set<String> seen, boolean ran, boolean run) {
        Pair running(boolean does) {
            return new Pair(one, other, cause, guess, seen, ran, ran || does);
        }
    }

    private double weight(int cause) {
        return library.causes().get(cause).weight();
    }

    /** The weight of a pair on the scale of the single causes. */
    double weight(int one, int other) {
        double odds = shareOfTwo / (1 - shareOfTwo) * faulty * 2 * weight(one) * weight(other) / products;
        return sameName(one, other) ? SAME_NAME * odds : odds;
    }

    private boolean sameName(int one, int other) {
        return name(one).equals(name(other));
    }

    private String name(int cause) {
        Cause c = library.causes().get(cause);
        return c.id().substring(Math.min(c.id().length(), c.component().length()));
    }

    /** The likeliest pairs by guess, the best first; none when single causes leave nothing odd or outweigh them by far. */
    public List<Pair> best(int most) {
        Map<String, Pair> found = new LinkedHashMap<>();
        leading(posterior).forEach(one -> partners(one).forEach(other -> consider(found, one, other)));
        IntStream.range(1, library.causes().size())
                .filter(one -> weight(one) > 0 && history.isDone(one))
                .forEach(one -> others(one).forEach(other -> consider(found, one, other)));
        return worth(found.values(), most);
    }

    private void consider(Map<String, Pair> found, int one, int other) {
        found.computeIfAbsent(Cause.pair(id(one), id(other)), key -> pair(Math.min(one, other), Math.max(one, other)));
    }

    /** The single causes that hold most, none far behind. */
    private IntStream leading(Posterior believed) {
        double least = FAR_BEHIND * believed.best().share();
        return believed.ranking().stream()
                .filter(r -> r.share() >= least)
                .mapToInt(Posterior.Ranked::position)
                .filter(c -> c > 0 && c < library.causes().size() && weight(c) > 0)
                .limit(LEADING);
    }

    /** What a repair in vain was meant for may have gone, and any other cause may have been there beside it. */
    private IntStream others(int one) {
        return IntStream.range(1, library.causes().size()).filter(c -> c != one && weight(c) > 0 && apart(one, c));
    }

    private List<Pair> worth(Collection<Pair> found, int most) {
        double all = posterior.logEvidence();
        for (Pair p : found) {
            all = Shares.logAdd(all, p.guess);
        }
        double run = all + Math.log(WORTH);
        double kept = all + Math.log(WORTH_GUESSING);
        List<Pair> best = new ArrayList<>();
        int running = 0;
        for (Pair p : found.stream()
                .sorted(Comparator.comparingDouble((Pair p) -> -p.guess))
                .toList()) {
            boolean seenBoth = !history.isDone(p.one) && !history.isDone(p.other);
            boolean runs = p.guess >= (p.run ? run - MERCY : run) && running < most && !p.ran;
            if (runs || (p.ran || !seenBoth) && p.guess >= kept && best.size() < MOST_GUESSED) {
                best.add(p.running(runs));
                running += runs ? 1 : 0;
            }
        }
        return best;
    }

    private String id(int cause) {
        return library.causes().get(cause).id();
    }

    /** Causes that move a reading which this one leaves odd. */
    private Set<Integer> partners(int one) {
        Set<Integer> partners = new TreeSet<>();
        for (Plausibility.Oddity odd : Plausibility.of(posterior, one).oddities()) {
            boolean conflict = odd.observation().kind() == Observation.Kind.NUMBER
                    ? Math.abs(odd.deviations()) > OFF
                    : odd.chance() < RARE;
            if (conflict) {
                int q = library.question(odd.observation().about());
                for (int c = 1; c < library.causes().size(); c++) {
                    if (c != one && weight(c) > 0 && apart(one, c) && library.moves(c, q)) {
                        partners.add(c);
                    }
                }
            }
        }
        return partners;
    }

    /** One part is not counted broken twice. */
    private boolean apart(int one, int other) {
        String component = library.causes().get(one).component();
        return component.isEmpty()
                || !component.equals(library.causes().get(other).component());
    }

    private Pair pair(int one, int other) {
        double weight = weight(one, other);
        Cause both = library.causes().get(one).and(library.causes().get(other), weight);
        Pair pair = new Pair(one, other, both, 0, seen(one, other), false, true);
        float[] run = runs.of(pair);
        Fit fit = new Fit(
                run == null ? lenient(one, other) : readings,
                rows.of(pair, run, DRAWS, observed),
                posterior.inference().layout(),
                posterior.inference().assumptions());
        double known = 1 - posterior.inference().assumptions().somethingElse();
        double all = library.causes().stream().mapToDouble(Cause::weight).sum();
        double guess = Math.log(known * weight / all) + posterior.inVain(both) + fit.logLikelihood;
        return new Pair(one, other, both, guess, pair.seen, run != null, run == null && meet(one, other));
    }

    /** Whether both move something that was answered while both were there: then the guess may be far off. */
    private boolean meet(int one, int other) {
        return IntStream.of(observed)
                .anyMatch(q -> history.couldShow(one, q)
                        && history.couldShow(other, q)
                        && library.moves(one, q)
                        && library.moves(other, q));
    }

    /** All readings while both are there; once one was mended only those of before matter. */
    private Set<String> seen(int one, int other) {
        if (!history.isDone(one) && !history.isDone(other)) {
            return asked;
        }
        Set<String> seen = new TreeSet<>();
        for (int q : observed) {
            if (history.couldShow(one, q) && history.couldShow(other, q)) {
                seen.add(Overtaken.now(library.questions().get(q).id()));
            }
        }
        return seen;
    }

    /** Where both move what was read, neither may be what it reads like. */
    private Readings lenient(int one, int other) {
        boolean[] where = new boolean[readings.size()];
        for (int i = 0; i < where.length; i++) {
            int q = readings.question[i];
            where[i] = history.couldShow(one, q) && history.couldShow(other, q) && moves(one, i) && moves(other, i);
        }
        return readings.lenient(where, GUESS_ODDS);
    }

    private boolean moves(int cause, int i) {
        if (moves[cause] == null) {
            moves[cause] = new boolean[readings.size()];
            for (int j = 0; j < moves[cause].length; j++) {
                moves[cause][j] = library.moves(cause, readings.question[j]);
            }
        }
        return moves[cause][i];
    }

    private static int[] observed(Posterior posterior) {
        IntStream numbers = IntStream.of(posterior.readings().question);
        IntStream reports =
                posterior.readings().reports.stream().flatMap(List::stream).mapToInt(Report::question);
        return IntStream.concat(numbers, reports).toArray();
    }

    /**
     * The most that all pairs not looked at could hold together: their prior weight times the best likelihood anything can
     * have.
     *
     * <pre>P(omitted) <= w L_max / (kept + w L_max)</pre>
     *
     * @param with posterior with the pairs simulated among its causes
     */
    public double bound(Posterior with) {
        double all = 0;
        for (int one = 1; one < library.causes().size(); one++) {
            for (int other = one + 1; other < library.causes().size(); other++) {
                all += apart(one, other) ? weight(one, other) : 0;
            }
        }
        double sum = with.library().causes().stream().mapToDouble(Cause::weight).sum();
        double kept = with.library().causes().stream()
                .skip(library.causes().size())
                .mapToDouble(Cause::weight)
                .sum();
        double known = 1 - with.inference().assumptions().somethingElse();
        double omitted = Math.log(known * Math.max(0, all - kept) / sum)
                + with.readings().logBest();
        return Math.exp(omitted - Shares.logAdd(with.logEvidence(), omitted));
    }
}
