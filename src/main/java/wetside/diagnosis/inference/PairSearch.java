package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Signatures;
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

    /** A number further off than this, or a report rarer than {@link #RARE}, is a conflict. */
    private static final double OFF = 2.5;

    private static final double RARE = 0.12;
    /** A cause moves a reading when its draws lie this many of the reading's own deviations off. */
    private static final double MOVES = 1;
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

    /** @param shareOfTwo share of the faulty machines that have two causes */
    public PairSearch(Posterior posterior, double shareOfTwo) {
        this.posterior = posterior;
        this.shareOfTwo = shareOfTwo;
        library = posterior.library();
        Assumptions usual = posterior.inference().assumptions();
        Assumptions lenient = usual.mostOdds(Math.min(GUESS_ODDS, usual.mostOdds()));
        readings = posterior.inference().readings(posterior.observations(), lenient);
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
     * @param shows which of the two a question shows: a repair in vain has removed one before later questions
     * @param run   whether it is worth running on the twin; otherwise {@link #rows} with what is guessed will do
     */
    public record Pair(int one, int other, Cause cause, double guess, Shows[] shows, boolean run) {
        Pair running(boolean does) {
            return new Pair(one, other, cause, guess, shows, does);
        }
    }

    /** Which of two causes were there when a question was answered, or are there now. */
    enum Shows {
        BOTH,
        ONE,
        OTHER,
        NONE
    }

    /** The rows of a pair, from those of a run with both causes in the machine; from the guess when there is none. */
    public static float[] rows(Library library, Pair pair, float[] run) {
        int width = library.questions().size();
        Signatures known = library.signatures();
        int both = Math.min(known.draws(pair.one), known.draws(pair.other));
        int draws = Math.min(Math.min(both, known.draws(0)), run == null ? DRAWS : run.length / width);
        float[] rows = new float[draws * width];
        for (int k = 0; k < draws; k++) {
            for (int q = 0; q < width; q++) {
                boolean ran = pair.shows[q] == Shows.BOTH && run != null;
                rows[k * width + q] =
                        ran ? run[k * width + q] : guess(library, pair.shows[q], pair.one, pair.other, k, q);
            }
        }
        return rows;
    }

    private static float guess(Library library, Shows shows, int one, int other, int k, int q) {
        float whole = library.signatures().value(0, k, q);
        float first = library.signatures().value(one, k, q);
        float second = library.signatures().value(other, k, q);
        return switch (shows) {
            case ONE -> first;
            case OTHER -> second;
            case NONE -> whole;
            case BOTH ->
                library.questions().get(q).answering() instanceof Answering.Number
                        ? first + (second - whole)
                        : second != whole ? second : first;
        };
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
        List<Observation> inVain = posterior.observations().stream()
                .filter(o -> o.kind() == Observation.Kind.STILL_BAD)
                .toList();
        if (!inVain.isEmpty()) {
            leading(posterior.given(Observations.of(posterior.observations().stream()
                            .filter(o -> o.kind() != Observation.Kind.STILL_BAD)
                            .toList())))
                    .filter(this::isDone)
                    .forEach(one -> others(one).forEach(other -> consider(found, one, other)));
        }
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

    private boolean isDone(int cause) {
        return posterior.observations().inVain(library.causes().get(cause).repair()) > 0;
    }

    /** When a repair was in vain, what it was meant for may have gone, and any other cause may have been there beside it. */
    private IntStream others(int one) {
        return IntStream.range(1, library.causes().size())
                .filter(c -> c != one && weight(c) > 0 && apart(one, c) && !isDone(c));
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
            boolean seenBoth = !isDone(p.one) && !isDone(p.other);
            boolean runs = p.guess >= run && running < most;
            if (runs || !seenBoth && p.guess >= kept && best.size() < MOST_GUESSED) {
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
                    if (c != one && weight(c) > 0 && apart(one, c) && moves(c, q)) {
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

    private boolean moves(int cause, int q) {
        int n = Math.min(library.signatures().draws(cause), library.signatures().draws(0));
        for (int k = 0; k < n; k++) {
            float whole = library.signatures().value(0, k, q);
            float here = library.signatures().value(cause, k, q);
            double noise = library.questions().get(q).answering() instanceof Answering.Number number
                    ? MOVES * Math.sqrt(number.variance(whole))
                    : 0;
            if (Float.isNaN(whole) != Float.isNaN(here) || Math.abs(here - whole) > noise) {
                return true;
            }
        }
        return false;
    }

    private Pair pair(int one, int other) {
        double weight = weight(one, other);
        Cause both = library.causes().get(one).and(library.causes().get(other), weight);
        Shows[] shows = shows(one, other);
        Fit fit = new Fit(
                readings,
                posterior.inference().scatter().of(guessed(one, other, shows)),
                posterior.inference().layout(),
                posterior.inference().assumptions());
        double known = 1 - posterior.inference().assumptions().somethingElse();
        double all = library.causes().stream().mapToDouble(Cause::weight).sum();
        double guess = Math.log(known * weight / all) + fit.logLikelihood;
        return new Pair(one, other, both, guess, shows, true);
    }

    /** What every question showed or shows: both causes until the repair of one was done. */
    private Shows[] shows(int one, int other) {
        List<Observation> entered = posterior.observations().entered();
        int oneGone = done(entered, one);
        int otherGone = done(entered, other);
        Shows[] shows = new Shows[library.questions().size()];
        Arrays.fill(shows, shows(oneGone < entered.size(), otherGone < entered.size()));
        for (int i = 0; i < entered.size(); i++) {
            Observation o = entered.get(i);
            if (o.kind() == Observation.Kind.NUMBER || o.kind() == Observation.Kind.CHOICE) {
                shows[library.question(o.about())] = shows(oneGone < i, otherGone < i);
            }
        }
        return shows;
    }

    private static Shows shows(boolean oneGone, boolean otherGone) {
        return oneGone ? otherGone ? Shows.NONE : Shows.OTHER : otherGone ? Shows.ONE : Shows.BOTH;
    }

    /** When the repair of a cause was done first; the end when it was not. */
    private int done(List<Observation> entered, int cause) {
        String repair = library.causes().get(cause).repair().id();
        for (int i = 0; i < entered.size(); i++) {
            Observation o = entered.get(i);
            if (o.kind() == Observation.Kind.STILL_BAD
                    && Repair.parts(o.about()).contains(repair)) {
                return i;
            }
        }
        return entered.size();
    }

    /** Rows of a pair as guessed from its parts; only what was observed has a value. */
    private float[] guessed(int one, int other, Shows[] shows) {
        int width = library.questions().size();
        int n = Math.min(
                DRAWS,
                Math.min(library.signatures().draws(one), library.signatures().draws(other)));
        float[] rows = new float[n * width];
        Arrays.fill(rows, Float.NaN);
        List<Integer> observed = new ArrayList<>();
        for (int q : posterior.readings().question) {
            observed.add(q);
        }
        for (List<Report> group : posterior.readings().reports) {
            group.forEach(r -> observed.add(r.question()));
        }
        for (int k = 0; k < n; k++) {
            for (int q : observed) {
                rows[k * width + q] = guess(library, shows[q], one, other, k, q);
            }
        }
        return rows;
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
