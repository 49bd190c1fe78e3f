package wetside.units;

import java.util.List;

/**
 * One way to write a dimension: {@code si = value * factor + offset}.
 *
 * @param symbol the preferred spelling, also used on screen; empty for a plain number
 * @param factor SI units in one of this unit
 * @param offset SI value of zero in this unit (only temperatures have one)
 * @param aliases other accepted spellings
 */
public record Unit(String symbol, double factor, double offset, List<String> aliases) {
    public Unit {
        aliases = List.copyOf(aliases);
    }

    static Unit of(String symbol, double factor, String... aliases) {
        return new Unit(symbol, factor, 0, List.of(aliases));
    }

    static Unit from(String symbol, double factor, double offset, String... aliases) {
        return new Unit(symbol, factor, offset, List.of(aliases));
    }

    /** The SI value of {@code value} of this unit. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** What an SI value is called in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    boolean isPlain() {
        return symbol.isEmpty();
    }

    boolean isWritten(String text) {
        return symbol.equals(text) || aliases.contains(text);
    }

    boolean isWrittenIgnoringCase(String text) {
        if (symbol.equalsIgnoreCase(text)) {
            return true;
        }
        for (String alias : aliases) {
            if (alias.equalsIgnoreCase(text)) {
                return true;
            }
        }
        return false;
    }
}
