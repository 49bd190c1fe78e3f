package wetside.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, numbers to the right; long texts go on in the next line of their column. */
final class Table {
    private static final String GAP = "  ";

    private final List<Row> rows = new ArrayList<>();
    private final boolean[] right;
    private final int[] most;

    /** One letter a column: l left, r right. */
    Table(String alignment) {
        right = new boolean[alignment.length()];
        most = new int[alignment.length()];
        for (int i = 0; i < right.length; i++) {
            right[i] = alignment.charAt(i) == 'r';
            most[i] = Lines.WIDTH;
        }
    }

    /** A column no wider than this. */
    Table most(int column, int columns) {
        most[column] = columns;
        return this;
    }

    /** Cells of a row; of a note only the first stands in its column, the second runs across all others. */
    private record Row(String[] cells, boolean isNote) {}

    Table row(String... cells) {
        rows.add(new Row(cells, false));
        return this;
    }

    Table note(String first, String text) {
        rows.add(new Row(new String[] {first, text}, true));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Columns from the first to the last, gaps included. */
    int width() {
        int all = 0;
        for (int w : widths(Lines.WIDTH)) {
            all += w + GAP.length();
        }
        return all - GAP.length();
    }

    void print(Console console, String indent) {
        int[] width = widths(Lines.WIDTH - Lines.width(indent));
        for (Row row : rows) {
            if (row.isNote) {
                String first = " ".repeat(Math.max(0, width[0] - Lines.width(row.cells[0]))) + row.cells[0];
                console.line((indent + first + GAP + row.cells[1]).stripTrailing());
                continue;
            }
            List<List<String>> cells = new ArrayList<>();
            int height = 1;
            for (int i = 0; i < row.cells.length; i++) {
                cells.add(Lines.wrap(row.cells[i], width[i]));
                height = Math.max(height, cells.get(i).size());
            }
            for (int line = 0; line < height; line++) {
                console.line((indent + printed(cells, line, width)).stripTrailing());
            }
        }
    }

    private String printed(List<List<String>> cells, int line, int[] width) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
            String pad = " ".repeat(Math.max(0, width[i] - Lines.width(cell)));
            text.append(i == 0 ? "" : GAP).append(right[i] ? pad + cell : cell + pad);
        }
        return text.toString();
    }

    /** As wide as its widest cell; the last column takes what is left. */
    private int[] widths(int screen) {
        int[] width = new int[right.length];
        for (Row row : rows) {
            for (int i = 0; i < (row.isNote ? 1 : row.cells.length); i++) {
                width[i] = Math.max(width[i], Math.min(most[i], Lines.width(row.cells[i])));
            }
        }
        int left = screen;
        for (int i = 0; i < width.length - 1; i++) {
            left -= width[i] + GAP.length();
        }
        int last = width.length - 1;
        width[last] = Math.min(width[last], Math.max(left, GAP.length()));
        return width;
    }
}
