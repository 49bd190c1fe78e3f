package wetside.diagnosis.inference;

/**
 * What the inference takes for granted about people, instruments and its own ignorance.
 *
 * @param somethingElse prior share of causes the library does not know
 * @param mostOdds the most by which one number may move the odds between two causes, however fine the instrument, because no
 *     twin is that exact; approached within a factor of ten, as one number also changes how the others are weighed
 * @param sameMind how much of a reporter's error is shared between answers about the same thing, 0 to 1
 * @param slip probability that a number turns out to be anything at all
 * @param smoothing how far draws are smoothed into a density, in units of the usual rule: 0 is the plain kernel sum,
 *     infinity one normal distribution per heap
 * @param fewest what words say of the draws, and so of numbers, is believed as long as so many draws speak; below that the
 *     others are heard as well, because the moments of a few draws differ from cause to cause by chance
 * @param separation distance between two heaps of draws, in their own spread, above which they are kept apart
 */
public record Assumptions(
        double somethingElse,
        double mostOdds,
        double sameMind,
        double slip,
        double smoothing,
        double separation,
        double fewest) {
    /** The shipped assumptions. */
    public static final Assumptions USUAL = new Assumptions(0.02, 1000, 0.9, 0.02, 0.8, 4, 8);

    /** No catch-all, no misreading, plain sums over draws: textbook inference, for checking against textbooks. */
    public static final Assumptions TEXTBOOK =
            new Assumptions(0, Double.POSITIVE_INFINITY, 1, 0, 0, Double.POSITIVE_INFINITY, 0);

    public Assumptions {
        if (!(somethingElse >= 0 && somethingElse < 1) || !(mostOdds > 1) || !(sameMind >= 0 && sameMind <= 1)) {
            throw new IllegalArgumentException("assumptions out of range: " + somethingElse + ", " + mostOdds);
        }
    }

    /** The same with another prior share of causes the library does not know. */
    public Assumptions somethingElse(double other) {
        return new Assumptions(other, mostOdds, sameMind, slip, smoothing, separation, fewest);
    }

    /** The same with another most that one number may say. */
    public Assumptions mostOdds(double other) {
        return new Assumptions(somethingElse, other, sameMind, slip, smoothing, separation, fewest);
    }

    /** The same with draws smoothed more or less. */
    public Assumptions smoothing(double other) {
        return new Assumptions(somethingElse, mostOdds, sameMind, slip, other, separation, fewest);
    }
}
