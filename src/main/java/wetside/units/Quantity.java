package wetside.units;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its dimension, in SI units.
 *
 * @param si the value in SI units (pressure as written, so gauge in files; temperature in kelvin)
 * @param dimension what kind of quantity it is
 */
public record Quantity(double si, Dimension dimension) {
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)", Pattern.DOTALL);
    private static final Pattern COMMA = Pattern.compile("([+-]?\\d+),(\\d+)(.*)", Pattern.DOTALL);
    private static final Pattern ABSOLUTE = Pattern.compile("(bar|kPa|MPa|Pa|psi|mbar)\\s*\\(?a(bs(olute)?)?\\)?\\.?");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int LONGEST = 60;

    /**
     * Reads a number and its unit, such as "9 bar", "9bar", "-0.2 bar", "120 °C", "2 kohm", "5 µF", "3 %".
     *
     * @param text what the user wrote
     * @param expected the dimension wanted at this place
     * @throws NotAQuantity if the text is no number, lacks its unit, or has an unknown or wrong one
     */
    public static Quantity parse(String text, Dimension expected) {
        String clean = normalised(text);
        Matcher shape = SHAPE.matcher(clean);
        if (clean.length() > LONGEST || COMMA.matcher(clean).matches() || !shape.matches()) {
            throw notANumber(clean, expected);
        }
        String unit = shape.group(2);
        double value = Double.parseDouble(shape.group(1));
        if (!Double.isFinite(value)) {
            throw new NotAQuantity("\"" + clean + "\" is too large a number", null);
        }
        if (unit.isEmpty() && !expected.allowsPlain()) {
            throw missingUnit(shape.group(1), expected);
        }
        Unit known = expected.unit(unit).orElseThrow(() -> wrongUnit(shape.group(1), unit, expected));
        return new Quantity(known.toSi(value), expected);
    }

    /** The same of whatever dimension its unit says: the first that has it; a plain number is a share. */
    public static Optional<Quantity> parseAny(String text) {
        String clean = normalised(text);
        Matcher shape = SHAPE.matcher(clean);
        if (clean.length() > LONGEST || !shape.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(shape.group(1));
        for (Dimension d : Dimension.values()) {
            Optional<Unit> unit = d.unit(shape.group(2));
            if (unit.isPresent() && Double.isFinite(value)) {
                return Optional.of(new Quantity(unit.get().toSi(value), d));
            }
        }
        return Optional.empty();
    }

    /** This quantity as the trade writes it. */
    public String in(Display display) {
        return display.print(si, dimension);
    }

    private static String normalised(String text) {
        String clean = text.strip()
                .replace('\u2212', '-')
                .replace('\u00A0', ' ')
                .replace('\u202F', ' ')
                .replace('\u03BC', '\u00B5')
                .replace('\u2126', '\u03A9')
                .replace('\u00BA', '\u00B0')
                .replace('\u00B2', '2')
                .replace('\u00B3', '3');
        return SPACES.matcher(clean).replaceAll(" ");
    }

    private static NotAQuantity notANumber(String text, Dimension expected) {
        Matcher comma = COMMA.matcher(text);
        if (comma.matches() && text.length() <= LONGEST) {
            return new NotAQuantity(
                    "\"" + text + "\" has a comma in its number; the decimal sign is a point",
                    comma.group(1) + "." + comma.group(2) + comma.group(3));
        }
        String shown = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
        String wanted = expected.article() + (expected == Dimension.NUMBER ? "" : " in " + expected.unitsInWords());
        return new NotAQuantity("\"" + shown + "\" is not " + wanted, null);
    }

    private static NotAQuantity missingUnit(String number, Dimension expected) {
        return new NotAQuantity(
                "\"" + number + "\" has no unit; " + expected.article() + " is written in " + expected.unitsInWords(),
                number + " " + expected.units().get(0).symbol());
    }

    private static NotAQuantity wrongUnit(String number, String unit, Dimension expected) {
        String whole = "\"" + number + " " + unit + "\"";
        if (expected == Dimension.PRESSURE && ABSOLUTE.matcher(unit).matches()) {
            return new NotAQuantity(
                    whole + " is absolute; pressures are written as a gauge shows them, zero at the open air", null);
        }
        Optional<Dimension> other = Arrays.stream(Dimension.values())
                .filter(d -> d != expected && d.unit(unit).isPresent())
                .findFirst();
        if (other.isPresent()) {
            return new NotAQuantity(
                    whole + " is " + other.get().article() + "; " + expected.article() + " is wanted here ("
                            + expected.unitsInWords() + ")",
                    null);
        }
        String nearest = nearest(unit, expected);
        return new NotAQuantity(
                whole + ": \"" + unit + "\" is not a unit of "
                        + expected.article().replaceFirst("^an? ", "") + "; use " + expected.unitsInWords(),
                nearest == null ? null : (number + " " + nearest).strip());
    }

    private static String nearest(String unit, Dimension expected) {
        return expected.units().stream()
                .map(Unit::symbol)
                .filter(s -> Nearest.distance(s.toLowerCase(), unit.toLowerCase()) <= Math.max(1, s.length() / 2))
                .min(Comparator.comparingInt(s -> Nearest.distance(s.toLowerCase(), unit.toLowerCase())))
                .orElse(null);
    }
}
