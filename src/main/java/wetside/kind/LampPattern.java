package wetside.kind;

import java.util.List;

/** How a lamp driven in pulses looks to a person who watches it for some seconds. */
final class LampPattern {
    static final List<String> WORDS = List.of("dark", "flashing", "steady");
    static final List<String> LIT = List.of("dark", "lit");

    private LampPattern() {}

    /** Index into {@link #WORDS} for a lamp lit for a share of the time. */
    static int of(double share) {
        if (!(share > 0.004)) {
            return 0;
        }
        return share < 0.985 ? 1 : 2;
    }
}
