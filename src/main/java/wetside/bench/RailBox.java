package wetside.bench;

import java.util.Locale;
import wetside.casework.Expected;
import wetside.diagnosis.Observation;

/**
 * A reading beside what is expected: one axis, the band first, then the mark.
 *
 * @param from   where the band begins, in per cent of the axis
 * @param to     where it ends
 * @param mark   where the reading stands
 * @param before where it stood as found, NaN when it was not read then
 */
public record RailBox(double from, double to, double mark, double before) {
    /** The axis reaches this far beyond band and marks, as a share of what it must hold. */
    private static final double MARGIN = 0.25;

    /** Null where there is nothing to draw: a word, or nothing expected. */
    static RailBox of(Double low, Double high, Double now, Double then) {
        if (low == null || high == null || now == null || low.isNaN()) {
            return null;
        }
        double least = Math.min(low, Math.min(now, then == null ? now : then));
        double most = Math.max(high, Math.max(now, then == null ? now : then));
        double room = MARGIN * Math.max(most - least, 1e-9);
        double from = least >= 0 && least - 3 * room < 0 ? 0 : least - room;
        double span = most + room - from;
        return new RailBox(
                100 * (low - from) / span,
                100 * (high - from) / span,
                100 * (now - from) / span,
                then == null ? Double.NaN : 100 * (then - from) / span);
    }

    /** What a reading is against what is expected; "" when nothing is. */
    static String verdict(Expected expected, Observation o) {
        if (expected == null || o.kind() == Observation.Kind.UNKNOWN) {
            return "";
        }
        if (!expected.isNumber()) {
            String word = expected.asking().options().get(o.option());
            return expected.shares().getOrDefault(word, 0.0) >= 0.05 ? "as expected" : "not as expected";
        }
        if (Double.isNaN(expected.middle())) {
            return "";
        }
        return o.value() < expected.low() ? "low" : o.value() > expected.high() ? "high" : "as expected";
    }

    /** The mark that goes with a verdict, so that it is not told by colour alone. */
    public static String sign(String verdict) {
        return switch (verdict) {
            case "low" -> "▼";
            case "high", "not as expected" -> "▲";
            case "as expected" -> "✓";
            default -> "";
        };
    }

    /** A number as an attribute. */
    public static String at(double percent) {
        return String.format(Locale.ROOT, "%.1f", percent);
    }

    public boolean hasBefore() {
        return !Double.isNaN(before);
    }
}
