package wetside.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import wetside.blueprint.Reading;
import wetside.units.Dimension;
import wetside.units.Display;

/** Readings over time in columns; between the rows, what was done and which moment it is. */
final class RunTable {
    private static final int COLUMN = 12;
    private static final double SHORT = 180;
    private static final String INDENT = "  ";

    private final Recording recording;
    private final List<Integer> chosen;

    /** @param rows evenly in time; the moments with a name come in addition */
    RunTable(Recording recording, int rows) {
        this.recording = recording;
        chosen = chosen(rows);
    }

    /** As many tables one below the other as the readings need. */
    void print(Console console, List<Reading> readings) {
        int from = 0;
        while (from < readings.size()) {
            int to = from + 1;
            while (to < readings.size() && fits(readings.subList(from, to + 1))) {
                to++;
            }
            if (from > 0) {
                console.line("");
            }
            table(readings.subList(from, to)).print(console, INDENT);
            from = to;
        }
    }

    private boolean fits(List<Reading> readings) {
        return table(readings).width() <= Lines.WIDTH - INDENT.length();
    }

    private List<Integer> chosen(int rows) {
        TreeSet<Integer> at = new TreeSet<>();
        for (int i = 0; i < rows; i++) {
            at.add(row(recording.end() * i / (rows - 1)));
        }
        recording.events().stream().filter(Recording.Event::isMark).forEach(e -> at.add(row(e.time())));
        return List.copyOf(at);
    }

    /** The first row at or after a time. */
    private int row(double time) {
        List<double[]> rows = recording.rows();
        int i = 0;
        while (i < rows.size() - 1 && recording.time(rows.get(i)) < time - 1e-6) {
            i++;
        }
        return i;
    }

    private Table table(List<Reading> readings) {
        Table table = new Table("r".repeat(readings.size() + 1));
        List<String> head = new ArrayList<>(List.of("time"));
        List<String> units = new ArrayList<>(List.of(isShort() ? "s" : "min:s"));
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            table.most(i + 1, r.isChoice() ? Lines.WIDTH : COLUMN);
            head.add(RunText.words(r.channel()));
            units.add(r.isChoice() ? "" : Display.METRIC.unit(r.dimension()).symbol());
        }
        table.row(head.toArray(String[]::new)).row(units.toArray(String[]::new));
        rows(table, readings);
        return table;
    }

    private void rows(Table table, List<Reading> readings) {
        int[] places = readings.stream().mapToInt(this::places).toArray();
        int event = 0;
        for (int i : chosen) {
            double[] row = recording.rows().get(i);
            double time = recording.time(row);
            event = events(table, event, time - 1e-6, false);
            List<String> cells = new ArrayList<>(List.of(clock(time)));
            for (int k = 0; k < readings.size(); k++) {
                cells.add(cell(readings.get(k), recording.value(row, readings.get(k)), places[k]));
            }
            event = events(table, event, time + 1e-6, true);
            table.row(cells.toArray(String[]::new));
        }
        events(table, event, Double.POSITIVE_INFINITY, false);
    }

    /** What was done before a row; a moment is named right above the row that shows it. */
    private int events(Table table, int from, double before, boolean marks) {
        int i = from;
        while (i < recording.events().size()) {
            Recording.Event e = recording.events().get(i);
            if (e.time() > before || marks && !e.isMark()) {
                break;
            }
            table.note(clock(e.time()), (e.isMark() ? "─ " : "· ") + e.words());
            i++;
        }
        return i;
    }

    private boolean isShort() {
        return recording.end() <= SHORT;
    }

    private String clock(double seconds) {
        if (isShort()) {
            return String.format(Locale.ROOT, "%.1f", seconds);
        }
        long s = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60);
    }

    /** Decimals of a column: three digits of its largest value, no more than instruments have. */
    private int places(Reading r) {
        double largest = 0;
        if (!r.isChoice()) {
            for (double v : recording.series(r)) {
                largest = Math.max(largest, Double.isNaN(v) ? 0 : Math.abs(v));
            }
        }
        if (r.dimension() == Dimension.TEMPERATURE || r.dimension() == Dimension.TEMPERATURE_RISE) {
            return 1;
        }
        return largest == 0 ? 2 : Math.max(0, Math.min(2, 2 - (int) Math.floor(Math.log10(largest))));
    }

    private static String cell(Reading r, double v, int places) {
        if (r.isChoice()) {
            return r.options().get((int) v);
        }
        if (Double.isNaN(v)) {
            return "–";
        }
        double shown = Display.METRIC.unit(r.dimension()).fromSi(v);
        return BigDecimal.valueOf(shown)
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString()
                .replaceFirst("^-(0(\\.0*)?)$", "$1");
    }
}
