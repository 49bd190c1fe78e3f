package wetside.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What was done, written above the strips: each label in the first row where it touches no other, a line down from it. */
final class MarkLabels {
    private static final int MOST_ROWS = 6;
    private static final double APART = 10;

    private final double right;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Double> ends = new ArrayList<>();

    private record Placed(String words, double x, int row, boolean leftwards) {}

    private MarkLabels(double right) {
        this.right = right;
    }

    static MarkLabels of(List<StripChart.Mark> marks, ToDoubleFunction<StripChart.Mark> x, double right) {
        MarkLabels labels = new MarkLabels(right);
        marks.forEach(m -> labels.place(m.words(), x.applyAsDouble(m)));
        return labels;
    }

    /** A label that finds no room keeps its line only. */
    private void place(String words, double x) {
        double width = Look.width(words, Look.LABEL);
        boolean leftwards = x + 4 + width > right;
        double from = leftwards ? x - 4 - width : x + 4;
        int row = 0;
        while (row < ends.size() && ends.get(row) > from) {
            row++;
        }
        if (row < MOST_ROWS) {
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, (leftwards ? x : from + width) + APART);
        }
        placed.add(new Placed(row < MOST_ROWS ? words : "", x, row, leftwards));
    }

    int rows() {
        return ends.size();
    }

    void draw(Svg svg, double top, double height, double bottom) {
        for (Placed p : placed) {
            svg.line(p.x, y(p, top, height) - 10, p.x, bottom, Look.EDGE, 1, "3 3");
        }
        for (Placed p : placed) {
            if (!p.words.isEmpty()) {
                double at = p.leftwards ? p.x - 4 : p.x + 4;
                svg.halo(at, y(p, top, height), p.leftwards ? "end" : "start", Look.LABEL, Look.INK2, p.words);
            }
        }
    }

    private double y(Placed p, double top, double height) {
        return top + (Math.min(p.row, rows() - 1) + 1) * height;
    }
}
