package wetside.machine;

import java.util.regex.Pattern;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;
import wetside.units.Quantity;

/**
 * A value with its tolerance as written in a file: {@code 9 bar}, {@code 9 bar ± 3 %}, {@code 93 °C ± 2 K}, or
 * {@code ± 3 %} alone where only the tolerance differs from the kind's.
 *
 * @param si     the value in SI, NaN when only a tolerance is written
 * @param spread the tolerance, null when none is written
 */
record Amount(double si, Spread spread) {
    private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/-|\\+-");

    static Amount parse(String text, Dimension dimension) {
        String[] parts = PLUS_MINUS.split(text, 2);
        if (parts.length == 2 && parts[1].isBlank()) {
            throw new NotAQuantity("\"" + text + "\" ends where its tolerance should be", null);
        }
        double value = parts.length == 2 && parts[0].isBlank()
                ? Double.NaN
                : Quantity.parse(parts[0], dimension).si();
        return new Amount(value, parts.length == 2 ? tolerance(parts[1], dimension) : null);
    }

    /**
     * "%" is of the value, except for shares, where it is of the whole like the value itself, and for temperatures, whose
     * zero is far away.
     */
    private static Spread tolerance(String text, Dimension dimension) {
        boolean ofTheValue = dimension != Dimension.RATIO && dimension != Dimension.TEMPERATURE;
        if (text.strip().endsWith("%") && ofTheValue) {
            return Spread.relative(positive(text, Dimension.RATIO));
        }
        Dimension difference = dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_RISE : dimension;
        return Spread.absolute(positive(text, difference));
    }

    private static double positive(String text, Dimension dimension) {
        return Math.abs(Quantity.parse(text, dimension).si());
    }
}
