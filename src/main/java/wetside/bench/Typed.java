package wetside.bench;

import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;

/**
 * A reading as it was typed and the units it was typed in, so that it comes back unchanged when units are chosen and chosen
 * back.
 *
 * @param text  "" for nothing
 * @param units as {@link Units#code} says them
 */
public record Typed(String text, String units) {
    private static final int LONGEST = 40;

    /** From a form whose fields were in some units; what nobody has touched since it was turned is what it was. */
    static Typed of(Form form, String field, String units) {
        String text = form.text(field, LONGEST);
        String[] was = form.text(was(field), 3 * LONGEST).split("\\|", -1);
        return was.length == 3 && was[2].equals(text) ? new Typed(was[1], was[0]) : new Typed(text, units);
    }

    /** The field beside a field, for {@link #kept}. */
    public static String was(String field) {
        return "was " + field;
    }

    /** A number in other units; words and what is no number stay as they are. */
    String in(Display wanted, Dimension dimension) {
        Unit from = Units.of(units).unit(dimension);
        Unit to = wanted.unit(dimension);
        double value = ReadingsView.parsed(text);
        return from.equals(to) || Double.isNaN(value) ? text : Spoken.figures(to.fromSi(from.toSi(value)));
    }

    /** For the next form, beside what it shows. */
    String kept(String shown) {
        return text.isEmpty() || text.equals(shown) ? "" : units + "|" + text + "|" + shown;
    }
}
