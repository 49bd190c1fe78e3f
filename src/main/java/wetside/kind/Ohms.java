package wetside.kind;

import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** Resistances that every contact and wire shares: what counts as closed, as open and as whole insulation. */
final class Ohms {
    /** A good contact or a short wire [Ω]. */
    static final double CLOSED = 0.005;

    /** Air between two terminals [Ω]. */
    static final double OPEN = 1e9;

    /** Sound insulation [Ω]. */
    static final double INSULATION = 50e6;

    private Ohms() {}

    /** A resistance that is small while whole; faults raise it up to {@link #OPEN}. */
    static Parameter closed(String name, double whole, String meaning) {
        return Parameter.condition(name, Dimension.RESISTANCE, whole, 1e-4, OPEN, Spread.relative(0.5), meaning);
    }

    /** A resistance that is endless while whole; faults lower it. */
    static Parameter open(String name, double whole, String meaning) {
        return Parameter.condition(name, Dimension.RESISTANCE, whole, 1e-3, OPEN, Spread.EXACT, meaning);
    }
}
