package wetside.machine;

/**
 * How far a true value may lie from the one written down. "± t" is taken as two standard deviations of a normal law, cut
 * at three; severities of faults are uniform between two ends.
 *
 * @param kind     the law
 * @param halfWidth for ABSOLUTE in the parameter's SI unit, for RELATIVE as a fraction of the value
 */
public record Spread(Law kind, double halfWidth) {
    /** Shapes of a tolerance. */
    public enum Law {
        EXACT,
        ABSOLUTE,
        RELATIVE
    }

    public static final Spread EXACT = new Spread(Law.EXACT, 0);

    public static Spread absolute(double halfWidth) {
        return new Spread(Law.ABSOLUTE, halfWidth);
    }

    public static Spread relative(double fraction) {
        return new Spread(Law.RELATIVE, fraction);
    }

    /** The same law, {@code factor} times as wide. */
    public Spread wider(double factor) {
        return new Spread(kind, halfWidth * factor);
    }

    /** The value {@code z} standard deviations from {@code nominal}. */
    public double at(double nominal, double z) {
        double cut = Math.max(-3, Math.min(3, z));
        return switch (kind) {
            case EXACT -> nominal;
            case ABSOLUTE -> nominal + halfWidth * cut / 2;
            case RELATIVE -> nominal * (1 + halfWidth * cut / 2);
        };
    }
}
