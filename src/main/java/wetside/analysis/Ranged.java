package wetside.analysis;

/**
 * A result with what it may be: 5 to 95 % of the waters an analysis may mean.
 *
 * @param mainly what was measured or assumed that it hangs on most; empty where it hangs on nothing much
 */
public record Ranged(double low, double middle, double high, String mainly) {
    /** Wider by something not drawn. */
    public Ranged widened(double by) {
        return new Ranged(low - by, middle, high + by, mainly);
    }

    public Ranged times(double factor) {
        return new Ranged(low * factor, middle * factor, high * factor, mainly);
    }

    public static Ranged exactly(double value) {
        return new Ranged(value, value, value, "");
    }
}
