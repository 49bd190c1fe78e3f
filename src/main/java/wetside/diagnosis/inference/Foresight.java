package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Question;

/**
 * What a question not yet asked would answer: its outcomes and how likely each is under every cause still in play.
 * Options are outcomes as they are; numbers are cut into ranges that lie close where the causes in play differ.
 */
public final class Foresight {
    private static final int RANGES = 8;
    /** Middle values of seven equal shares of a standard normal distribution. */
    private static final double[] SEVENTHS = {-1.4652, -0.7916, -0.3661, 0, 0.3661, 0.7916, 1.4652};
    /** The same of three, for mixtures of many pieces. */
    private static final double[] THIRDS = {-0.9674, 0, 0.9674};

    private static final int MANY = 40;

    private final Question question;
    private final double[] limits;
    private final double[][] chance;
    private final double[] overall;

    private Foresight(Question question, double[] limits, double[][] chance, double[] shares) {
        this.question = question;
        this.limits = limits;
        this.chance = chance;
        overall = new double[chance[0].length];
        for (int a = 0; a < chance.length; a++) {
            for (int k = 0; k < overall.length; k++) {
                overall[k] += shares[a] * chance[a][k];
            }
        }
    }

    static Foresight of(InPlay inPlay, int q) {
        Question question = inPlay.posterior().library().questions().get(q);
        return question.answering() instanceof Answering.Choice choice
                ? options(inPlay, q, question, choice)
                : ranges(inPlay, q, question, (Answering.Number) question.answering());
    }

    private static Foresight options(InPlay inPlay, int q, Question question, Answering.Choice choice) {
        int count = choice.options().size();
        Posterior posterior = inPlay.posterior();
        double[][] chance = new double[inPlay.size()][count];
        for (int a = 0; a < chance.length; a++) {
            double[] truth = inPlay.known(a)
                    ? posterior
                            .fit(inPlay.position(a))
                            .options(posterior.inference().columns(inPlay.position(a)), q, count)
                    : new double[count];
            double missing = 1 - Arrays.stream(truth).sum();
            for (int k = 0; k < count; k++) {
                chance[a][k] = missing * posterior.inference().pool().chance(q, k);
                for (int t = 0; t < count; t++) {
                    chance[a][k] += truth[t] * choice.chance(k, t);
                }
            }
        }
        return new Foresight(question, new double[0], chance, inPlay.shares());
    }

    /** A normal piece of what a cause lets one expect. */
    private record Piece(int active, double share, double mean, double sd) {}

    private static Foresight ranges(InPlay inPlay, int q, Question question, Answering.Number number) {
        List<Piece> pieces = new ArrayList<>();
        for (int a = 0; a < inPlay.size(); a++) {
            if (inPlay.known(a)) {
                addPieces(pieces, a, inPlay, q, number);
            }
        }
        double[] flat = inPlay.flattened();
        double[] limits = limits(pieces, flat, number);
        double[][] chance = new double[inPlay.size()][limits.length + 1];
        double[] base = new double[limits.length + 1];
        for (Piece piece : pieces) {
            double[] row = chance[piece.active];
            double below = 0;
            for (int k = 0; k <= limits.length; k++) {
                double upTo = k == limits.length ? 1 : Normal.below((limits[k] - piece.mean) / piece.sd);
                row[k] += piece.share * (upTo - below);
                base[k] += flat[piece.active] * piece.share * (upTo - below);
                below = upTo;
            }
        }
        blend(chance, base, inPlay.posterior().inference().assumptions().slip());
        return new Foresight(question, limits, chance, inPlay.shares());
    }

    private static void addPieces(List<Piece> pieces, int a, InPlay inPlay, int q, Answering.Number number) {
        Fit fit = inPlay.posterior().fit(inPlay.position(a));
        float[] columns = inPlay.posterior().inference().columns(inPlay.position(a));
        for (int h = 0; h < fit.humps.length; h++) {
            if (fit.share[h] > 1e-3) {
                Hump.Expected expected = fit.predict(columns, h, q);
                double variance = expected.variance() + number.variance(expected.mean());
                if (expected.valued() > 0) {
                    double finest = 1e-4 * inPlay.posterior().inference().pool().sd(q) + 1e-12;
                    pieces.add(new Piece(
                            a,
                            fit.share[h] * expected.valued(),
                            expected.mean(),
                            Math.max(Math.sqrt(variance), finest)));
                }
            }
        }
    }

    private static double[] limits(List<Piece> pieces, double[] flat, Answering.Number number) {
        double[] middles = pieces.size() > MANY ? THIRDS : SEVENTHS;
        double[][] points = new double[pieces.size() * middles.length][];
        int n = 0;
        double all = 0;
        for (Piece piece : pieces) {
            double weight = flat[piece.active] * piece.share / middles.length;
            for (double z : middles) {
                points[n++] = new double[] {piece.mean + z * piece.sd, weight};
                all += weight;
            }
        }
        Arrays.sort(points, (a, b) -> Double.compare(a[0], b[0]));
        double[] limits = new double[RANGES - 1];
        int found = 0;
        int reached = 0;
        double sum = 0;
        for (int i = 0; i + 1 < points.length && reached < limits.length; i++) {
            sum += points[i][1];
            if (sum * RANGES >= (reached + 1) * all) {
                reached = Math.max(reached + 1, (int) (sum * RANGES / all));
                double limit = 0.5 * (points[i][0] + points[i + 1][0]);
                double apart = 0.25 * Math.sqrt(number.variance(limit));
                if (found == 0 || limit - limits[found - 1] > apart) {
                    limits[found++] = limit;
                }
            }
        }
        return Arrays.copyOf(limits, found);
    }

    /** A number may be misread, and where a cause has no value anything may come: both spread like all causes together. */
    private static void blend(double[][] chance, double[] base, double slip) {
        double all = Arrays.stream(base).sum();
        for (double[] row : chance) {
            double valued = Arrays.stream(row).sum();
            for (int k = 0; k < row.length; k++) {
                double broad = all > 0 ? base[k] / all : 1.0 / row.length;
                row[k] = (1 - slip) * row[k] + (1 - (1 - slip) * valued) * broad;
            }
        }
    }

    public Question question() {
        return question;
    }

    public int outcomes() {
        return overall.length;
    }

    /** Probability of an outcome. */
    public double chance(int outcome) {
        return overall[outcome];
    }

    /** Probability of an outcome under the cause in play at this place. */
    public double chance(int active, int outcome) {
        return chance[active][outcome];
    }

    /** Name of an option outcome; empty for a range. */
    public String option(int outcome) {
        return question.answering() instanceof Answering.Choice choice
                ? choice.options().get(outcome)
                : "";
    }

    /** Lower end of a range, minus infinity for the first. */
    public double low(int outcome) {
        return outcome == 0 ? Double.NEGATIVE_INFINITY : limits[outcome - 1];
    }

    /** Upper end of a range, infinity for the last. */
    public double high(int outcome) {
        return outcome == limits.length ? Double.POSITIVE_INFINITY : limits[outcome];
    }

    /** What two causes in play let one expect differently: 0 nothing, 1 everything (total variation). */
    public double apart(int oneActive, int otherActive) {
        double sum = 0;
        for (int k = 0; k < overall.length; k++) {
            sum += Math.abs(chance[oneActive][k] - chance[otherActive][k]);
        }
        return 0.5 * sum;
    }

    /** Expected loss of entropy of the causes in play [bit]. */
    public double bits(InPlay inPlay) {
        double[] shares = inPlay.shares();
        double bits = 0;
        for (int k = 0; k < overall.length; k++) {
            for (int a = 0; a < shares.length; a++) {
                double joint = shares[a] * chance[a][k];
                bits += joint > 0 ? joint * Math.log(chance[a][k] / overall[k]) : 0;
            }
        }
        return Math.max(0, bits / Math.log(2));
    }
}
