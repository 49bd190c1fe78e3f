package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Repair;

/**
 * How belief is shared among the causes. Positions are those of the library; one more, {@link #somethingElse()}, stands
 * for whatever the library does not know. The order of the observations cannot matter and taking one back leaves no
 * trace, because each posterior is computed afresh from the sorted set.
 */
public final class Posterior {
    /** What differs by less is the same. */
    private static final double SAME = 1e-6;

    private final Inference inference;
    private final Observations observations;
    private final Readings readings;
    private final Fit[] fits;
    private final double[] logWeights;
    private final double[] shares;
    private final double logEvidence;
    private Ranges ranges;

    Posterior(Inference inference, Observations observations) {
        this(inference, observations, inference.readings(observations), new Fit[0]);
    }

    /** @param known fits of the first causes to these very readings */
    private Posterior(Inference inference, Observations observations, Readings readings, Fit... known) {
        this.inference = inference;
        this.observations = observations;
        this.readings = readings;
        int causes = library().causes().size();
        fits = Arrays.copyOf(known, causes);
        logWeights = new double[causes + 1];
        double all = library().causes().stream().mapToDouble(Cause::weight).sum();
        double ofLibrary = 1 - inference.assumptions().somethingElse();
        for (int c = 0; c < causes; c++) {
            fits[c] = c < known.length ? fits[c] : inference.fit(readings, c);
            double prior = ofLibrary * library().causes().get(c).weight() / all;
            logWeights[c] = Math.log(prior) + inVain(library().causes().get(c)) + fits[c].logLikelihood;
        }
        logWeights[causes] = Math.log(inference.assumptions().somethingElse()) + readings.logBroad();
        shares = Shares.of(logWeights);
        logEvidence = Shares.logSum(logWeights);
    }

    /** A repair that did not help speaks against the causes it removes, as far as it can be trusted to work. */
    double inVain(Cause cause) {
        Repair repair = cause.repair();
        long times = observations.inVain(repair);
        return times == 0 ? 0 : times * Math.log1p(-repair.works());
    }

    /** One cause and its share of belief; {@code position} is that in the library. */
    public record Ranked(int position, String id, String words, double share) {}

    /** All causes, the likeliest first, "something else" among them. */
    public List<Ranked> ranking() {
        return IntStream.range(0, shares.length)
                .mapToObj(c -> new Ranked(c, id(c), words(c), shares[c]))
                .sorted(Comparator.comparingDouble((Ranked r) -> -r.share).thenComparing(Ranked::position))
                .toList();
    }

    /** The likeliest of the causes the library knows. */
    public Ranked best() {
        return ranking().stream()
                .filter(r -> r.position != somethingElse())
                .findFirst()
                .orElseThrow();
    }

    public double share(int cause) {
        return shares[cause];
    }

    public double share(String cause) {
        return shares[position(cause)];
    }

    /** Position of a cause by id, "something else" included. */
    public int position(String cause) {
        return cause.equals(Cause.SOMETHING_ELSE) ? somethingElse() : library().cause(cause);
    }

    /** Position of "something else". */
    public int somethingElse() {
        return fits.length;
    }

    public String id(int cause) {
        return cause == fits.length
                ? Cause.SOMETHING_ELSE
                : library().causes().get(cause).id();
    }

    public String words(int cause) {
        return cause == fits.length
                ? "none of the known causes"
                : library().causes().get(cause).words();
    }

    /** Interval that holds the share in nine of ten when the draws are drawn again: how far the library is from enough. */
    public Ranges.Range range(int cause) {
        if (ranges == null) {
            ranges = new Ranges(this);
        }
        return ranges.of(cause);
    }

    /** What a question is expected to read under a cause: mean and standard deviation without the instrument's. */
    public record Expectation(double mean, double sd) {}

    /**
     * What a number, asked or not, is expected to read if this cause is there, given all that was observed. A library may
     * keep how bad the cause is in each draw as such a number. Both are NaN when no draw has a value.
     */
    public Expectation expected(int cause, int question) {
        Fit fit = fits[cause];
        double mean = 0;
        double square = 0;
        double valued = 0;
        for (int h = 0; h < fit.humps.length; h++) {
            Hump.Expected part = fit.predict(h, question);
            double share = fit.share[h] * part.valued();
            mean += share * part.mean();
            square += share * (part.variance() + part.mean() * part.mean());
            valued += share;
        }
        mean /= valued;
        return new Expectation(mean, Math.sqrt(Math.max(0, square / valued - mean * mean)));
    }

    /** How far each draw of a cause is believed in, given all that was observed and that this cause is there; sums to 1. */
    public double[] believed(int cause) {
        return fits[cause].believed().clone();
    }

    /** Whether a question reads in every draw of a cause as it did at an earlier answer, so that nothing has changed. */
    boolean readsAsBefore(int cause, int question, int earlier) {
        float[] rows = inference.rows(cause);
        int width = library().questions().size();
        for (int at = 0; at < rows.length; at += width) {
            float now = rows[at + question];
            float then = rows[at + earlier];
            if (Float.isNaN(now) != Float.isNaN(then) || Math.abs(now - then) > SAME * Math.abs(now)) {
                return false;
            }
        }
        return true;
    }

    /** Log of the odds of a cause against all others together. */
    public double logOdds(int cause) {
        double[] others = logWeights.clone();
        others[cause] = Double.NEGATIVE_INFINITY;
        return logWeights[cause] - Shares.logSum(others);
    }

    /** Log of prior times likelihood, not normalised: differences between causes are log odds. */
    public double logWeight(int cause) {
        return logWeights[cause];
    }

    /** Log of the probability of all readings together. */
    public double logEvidence() {
        return logEvidence;
    }

    /** The same after further causes came behind those of the library: what is known of the old ones is kept. */
    public Posterior beside(Library more) {
        return new Posterior(inference.beside(more), observations, readings, fits);
    }

    /** The same library after other observations. */
    public Posterior given(Observations other) {
        return inference.posterior(other);
    }

    /** The same single causes after observations, repairs among them; as {@link Inference#asked} wants them put. */
    public Posterior after(Observations observed) {
        return inference.asked(observed).posterior(observed);
    }

    public Library library() {
        return inference.library();
    }

    public Observations observations() {
        return observations;
    }

    Inference inference() {
        return inference;
    }

    Readings readings() {
        return readings;
    }

    Fit fit(int cause) {
        return fits[cause];
    }

    public double[] shares() {
        return shares.clone();
    }
}
