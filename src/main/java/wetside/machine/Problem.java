package wetside.machine;

import java.util.Comparator;
import java.util.List;

/**
 * One thing wrong in a user's file.
 *
 * @param spot    file, line and column
 * @param path    where that is in the file's own names, e.g. {@code components / brew-gauge / set / full scale}; may be empty
 * @param what    what is wrong and what would be right
 * @param maybe   what was probably meant, or empty
 * @param excerpt the line, its neighbours and a caret, or empty
 */
public record Problem(Spot spot, String path, String what, String maybe, List<String> excerpt) {
    /** Where in a file; lines and columns count from 1, line 0 stands for the file as a whole. */
    public record Spot(String file, int line, int column) {
        @Override
        public String toString() {
            return line == 0 ? file : file + ":" + line + ":" + column;
        }
    }

    static final Comparator<Problem> IN_FILE_ORDER = Comparator.comparing((Problem p) -> p.spot.file)
            .thenComparingInt(p -> p.spot.line)
            .thenComparingInt(p -> p.spot.column);

    /** The message without its excerpt, on one line. */
    public String line() {
        String at = path.isEmpty() ? "" : path + ": ";
        String end = what.endsWith(".") || what.endsWith("?") ? "" : ".";
        return spot + ": " + at + what + end + (maybe.isEmpty() ? "" : " Maybe " + maybe + ".");
    }

    @Override
    public String toString() {
        return excerpt.isEmpty() ? line() : line() + "\n" + String.join("\n", excerpt);
    }
}
