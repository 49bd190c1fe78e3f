package wetside.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, numbers to the right. */
final class Table {
    private final List<String[]> rows = new ArrayList<>();
    private final boolean[] right;

    /** One letter a column: l left, r right. */
    Table(String alignment) {
        right = new boolean[alignment.length()];
        for (int i = 0; i < right.length; i++) {
            right[i] = alignment.charAt(i) == 'r';
        }
    }

    Table row(String... cells) {
        rows.add(cells);
        return this;
    }

    void print(Console console, String indent) {
        int[] width = new int[right.length];
        for (String[] row : rows) {
            for (int i = 0; i < row.length - (row.length == right.length && !right[right.length - 1] ? 1 : 0); i++) {
                width[i] = Math.max(width[i], row[i].codePointCount(0, row[i].length()));
            }
        }
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < row.length; i++) {
                String pad = " ".repeat(Math.max(0, width[i] - row[i].codePointCount(0, row[i].length())));
                line.append(i == 0 ? "" : "  ").append(right[i] ? pad + row[i] : row[i] + pad);
            }
            console.line(line.toString().stripTrailing());
        }
    }
}
