package wetside.map;

import java.util.List;
import wetside.drawing.Typeface;

/**
 * How large the words of a map are.
 *
 * @param numbers whether parts have a number alone, and a legend, rather than a name
 * @param line    height of a line of words [px]
 */
record Lettering(boolean numbers, double size, double line) {
    /** Names beside the parts: the smallest size in a drawing. */
    static final Lettering NAMES = new Lettering(false, 12.5, 16);
    /** For a map so full that it will be shown small. */
    static final Lettering NUMBERS = numbers(18);

    /** Numbers of a size: the smaller the map will be shown, the larger they have to be. */
    static Lettering numbers(double size) {
        return new Lettering(true, size, Math.ceil(1.22 * size));
    }

    double width(String text) {
        return Typeface.LABEL.width(text, size);
    }

    /** Width of the widest line. */
    double width(List<String> lines) {
        return lines.stream().mapToDouble(this::width).max().orElse(0);
    }

    List<String> wrapped(String text, double most) {
        return Typeface.LABEL.wrapped(text, size, most);
    }
}
