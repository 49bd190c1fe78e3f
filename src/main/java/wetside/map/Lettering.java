package wetside.map;

import java.util.List;
import wetside.drawing.Typeface;

/** How large the words of a map are. */
enum Lettering {
    /** Names beside the parts: the smallest size in a drawing. */
    NAMES(12.5, 16),
    /** Numbers alone, on a map so full that it will be printed small; its legend likewise. */
    NUMBERS(18, 22);

    final double size;
    /** Height of a line of words [px]. */
    final double line;

    Lettering(double size, double line) {
        this.size = size;
        this.line = line;
    }

    static Lettering of(boolean numbers) {
        return numbers ? NUMBERS : NAMES;
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
