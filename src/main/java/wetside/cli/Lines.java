package wetside.cli;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines. */
final class Lines {
    /** Columns of a line. */
    static final int WIDTH = 100;

    private Lines() {}

    /** At least one line, broken between words, all as far in as the text; a word longer than a line stays whole. */
    static List<String> wrap(String text, int columns) {
        String indent = " ".repeat(text.length() - text.stripLeading().length());
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split(" +")) {
            if (line.length() > indent.length() && width(line) + 1 + width(word) > columns) {
                lines.add(line.toString());
                line.setLength(indent.length());
            }
            line.append(line.length() == indent.length() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Columns a text takes. */
    static int width(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - width(text)));
    }
}
