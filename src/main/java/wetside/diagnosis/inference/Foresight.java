package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.Optional;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Observation;
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
    private final int size;
    /** By outcome, then by cause in play. */
    private final double[] chance;

    private final double[] overall;

    private Foresight(Question question, double[] limits, double[] chance, double[] shares) {
        this.question = question;
        this.limits = limits;
        this.chance = chance;
        size = shares.length;
        overall = new double[chance.length / size];
        for (int k = 0; k < overall.length; k++) {
            for (int a = 0; a < size; a++) {
                overall[k] += shares[a] * chance[k * size + a];
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
        int size = inPlay.size();
        Posterior posterior = inPlay.posterior();
        double[] chance = new double[size * count];
        double[] missing = new double[size];
        Arrays.fill(missing, 1);
        Optional<Observation> before = posterior.readings().overtaken(question);
        for (int a = 0; a < size; a++) {
            if (before.isPresent() && sameAgain(inPlay, a, q, before.get())) {
                missing[a] = 0;
                for (int k = 0; k < count; k++) {
                    chance[k * size + a] =
                            k == before.get().option() ? 1 - choice.doubt() : choice.doubt() / (count - 1);
                }
            } else if (inPlay.known(a)) {
                double[] truth = posterior.fit(inPlay.position(a)).options(q);
                for (int t = 0; t < count; t++) {
                    missing[a] -= truth[t];
                    for (int k = 0; k < count; k++) {
                        chance[k * size + a] += truth[t] * choice.chance(k, t);
                    }
                }
            }
        }
        for (int k = 0; k < count; k++) {
            double broad = posterior.inference().pool().chance(q, k);
            for (int a = 0; a < size; a++) {
                chance[k * size + a] += missing[a] * broad;
            }
        }
        return new Foresight(question, new double[0], chance, inPlay.shares());
    }

    /** Normal pieces of what the causes let one expect, side by side. */
    private static final class Pieces {
        int count;
        int[] active = new int[64];
        double[] share = new double[64];
        double[] mean = new double[64];
        double[] sd = new double[64];

        void add(int cause, double howMuch, double middle, double spread) {
            if (count == active.length) {
                active = Arrays.copyOf(active, 2 * count);
                share = Arrays.copyOf(share, 2 * count);
                mean = Arrays.copyOf(mean, 2 * count);
                sd = Arrays.copyOf(sd, 2 * count);
            }
            active[count] = cause;
            share[count] = howMuch;
            mean[count] = middle;
            sd[count++] = spread;
        }
    }

    private static Foresight ranges(InPlay inPlay, int q, Question question, Answering.Number number) {
        Pieces pieces = new Pieces();
        Optional<Observation> before = inPlay.posterior().readings().overtaken(question);
        for (int a = 0; a < inPlay.size(); a++) {
            if (before.isPresent() && sameAgain(inPlay, a, q, before.get())) {
                double value = before.get().value();
                pieces.add(a, 1, value, Math.sqrt(number.again(value)));
            } else if (inPlay.known(a)) {
                addPieces(pieces, a, inPlay, q, number);
            }
        }
        int size = inPlay.size();
        double[] flat = inPlay.flattened();
        double[] limits = limits(pieces, flat, number);
        double[] chance = new double[size * (limits.length + 1)];
        double[] base = new double[limits.length + 1];
        for (int i = 0; i < pieces.count; i++) {
            double below = 0;
            for (int k = 0; k <= limits.length; k++) {
                double upTo = k == limits.length ? 1 : Normal.below((limits[k] - pieces.mean[i]) / pieces.sd[i]);
                double held = pieces.share[i] * (upTo - below);
                chance[k * size + pieces.active[i]] += held;
                base[k] += flat[pieces.active[i]] * held;
                below = upTo;
            }
        }
        blend(chance, size, base, inPlay.posterior().inference().assumptions().slip());
        return new Foresight(question, limits, chance, inPlay.shares());
    }

    /** Who asks again what nothing has changed hears the same again. */
    private static boolean sameAgain(InPlay inPlay, int a, int q, Observation before) {
        Posterior posterior = inPlay.posterior();
        return !inPlay.known(a)
                || posterior.readsAsBefore(
                        inPlay.position(a), q, posterior.library().question(before.about()));
    }

    private static void addPieces(Pieces pieces, int a, InPlay inPlay, int q, Answering.Number number) {
        Fit fit = inPlay.posterior().fit(inPlay.position(a));
        double finest = 1e-4 * inPlay.posterior().inference().pool().sd(q) + 1e-12;
        for (int h = 0; h < fit.humps.length; h++) {
            if (fit.share[h] > 1e-3) {
                Hump.Expected expected = fit.predict(h, q);
                double variance = expected.variance() + number.variance(expected.mean());
                if (expected.valued() > 0) {
                    pieces.add(
                            a,
                            fit.share[h] * expected.valued(),
                            expected.mean(),
                            Math.max(Math.sqrt(variance), finest));
                }
            }
        }
    }

    private static double[] limits(Pieces pieces, double[] flat, Answering.Number number) {
        double[] middles = pieces.count > MANY ? THIRDS : SEVENTHS;
        double[] point = new double[pieces.count * middles.length];
        double[] weight = new double[point.length];
        int n = 0;
        double all = 0;
        for (int i = 0; i < pieces.count; i++) {
            double each = flat[pieces.active[i]] * pieces.share[i] / middles.length;
            for (double z : middles) {
                point[n] = pieces.mean[i] + z * pieces.sd[i];
                weight[n++] = each;
                all += each;
            }
        }
        int[] order = ascending(point);
        double[] limits = new double[RANGES - 1];
        int found = 0;
        int reached = 0;
        double sum = 0;
        for (int i = 0; i + 1 < order.length && reached < limits.length; i++) {
            sum += weight[order[i]];
            if (sum * RANGES >= (reached + 1) * all) {
                reached = Math.max(reached + 1, (int) (sum * RANGES / all));
                double limit = 0.5 * (point[order[i]] + point[order[i + 1]]);
                double apart = 0.25 * Math.sqrt(number.variance(limit));
                if (found == 0 || limit - limits[found - 1] > apart) {
                    limits[found++] = limit;
                }
            }
        }
        return Arrays.copyOf(limits, found);
    }

    /**
     * Places of the points, the lowest first. They are sorted as whole numbers that end in the place; what the place hides
     * of a point is a part in 10^11 at most.
     */
    private static int[] ascending(double[] point) {
        int bits = 32 - Integer.numberOfLeadingZeros(Math.max(1, point.length - 1));
        long place = (1L << bits) - 1;
        long[] keys = new long[point.length];
        for (int i = 0; i < keys.length; i++) {
            long sortable = Double.doubleToLongBits(point[i]);
            sortable ^= sortable >> 63 & Long.MAX_VALUE;
            keys[i] = sortable & ~place | i;
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = (int) (keys[i] & place);
        }
        return order;
    }

    /** A number may be misread, and where a cause has no value anything may come: both spread like all causes together. */
    private static void blend(double[] chance, int size, double[] base, double slip) {
        double all = Arrays.stream(base).sum();
        double[] valued = new double[size];
        for (int k = 0; k < base.length; k++) {
            for (int a = 0; a < size; a++) {
                valued[a] += chance[k * size + a];
            }
        }
        for (int k = 0; k < base.length; k++) {
            double broad = all > 0 ? base[k] / all : 1.0 / base.length;
            for (int a = 0; a < size; a++) {
                chance[k * size + a] = (1 - slip) * chance[k * size + a] + (1 - (1 - slip) * valued[a]) * broad;
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
        return chance[outcome * size + active];
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
            sum += Math.abs(chance[k * size + oneActive] - chance[k * size + otherActive]);
        }
        return 0.5 * sum;
    }

    /** Probability of an outcome together with each cause in play, or the first few, for any shares; returns their sum. */
    public double joint(double[] shares, int outcome, double[] into) {
        double sum = 0;
        for (int a = 0; a < shares.length; a++) {
            into[a] = shares[a] * chance[outcome * size + a];
            sum += into[a];
        }
        return sum;
    }

    /** Expected loss of entropy of the causes in play [bit]. */
    public double bits(InPlay inPlay) {
        double[] shares = inPlay.shares();
        double bits = 0;
        for (int k = 0; k < overall.length; k++) {
            for (int a = 0; a < size; a++) {
                double given = chance[k * size + a];
                double joint = shares[a] * given;
                bits += joint > 0 ? joint * Math.log(given / overall[k]) : 0;
            }
        }
        return Math.max(0, bits / Math.log(2));
    }
}
