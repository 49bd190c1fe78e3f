package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.blueprint.Reading;
import wetside.drawing.StripChart;
import wetside.run.Trace;
import wetside.units.Display;
import wetside.units.Unit;

/** A trace as table, CSV, series and chart. */
final class RunText {
    private RunText() {}

    static Table table(Trace trace, List<Reading> readings, int rows) {
        Table table = new Table("r" + "r".repeat(readings.size()));
        List<String> head = new ArrayList<>();
        head.add("time");
        readings.forEach(r -> head.add(words(r)));
        table.row(head.toArray(String[]::new));
        List<double[]> all = trace.rows();
        double end = all.get(all.size() - 1)[0];
        int next = 0;
        for (int i = 0; i < rows; i++) {
            double t = end * i / Math.max(1, rows - 1);
            while (next < all.size() - 1 && all.get(next)[0] < t) {
                next++;
            }
            table.row(row(all.get(next), trace, readings));
        }
        return table;
    }

    private static String[] row(double[] row, Trace trace, List<Reading> readings) {
        List<String> cells = new ArrayList<>();
        cells.add(clock(row[0]));
        for (Reading r : readings) {
            cells.add(shown(r, row[trace.readings().indexOf(r) + 1]));
        }
        return cells.toArray(String[]::new);
    }

    static String shown(Reading r, double v) {
        if (r.isChoice()) {
            return r.options().get((int) v);
        }
        return Double.isNaN(v) ? "–" : Display.METRIC.print(v, r.dimension());
    }

    private static String clock(double seconds) {
        long s = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60);
    }

    static String words(Reading r) {
        return r.channel()
                .replace('-', ' ')
                .replace(".needle", "")
                .replace(".display", "")
                .replace('.', ' ');
    }

    static String csv(Trace trace) {
        StringBuilder s = new StringBuilder("time s");
        for (Reading r : trace.readings()) {
            Unit unit = Display.METRIC.unit(r.dimension());
            s.append(',').append(r.channel());
            if (!r.isChoice() && !unit.symbol().isEmpty()) {
                s.append(' ').append(unit.symbol());
            }
        }
        s.append('\n');
        for (double[] row : trace.rows()) {
            s.append(String.format(Locale.ROOT, "%.2f", row[0]));
            for (int i = 0; i < trace.readings().size(); i++) {
                s.append(',').append(cell(trace.readings().get(i), row[i + 1]));
            }
            s.append('\n');
        }
        return s.toString();
    }

    private static String cell(Reading r, double v) {
        if (r.isChoice()) {
            return r.options().get((int) v);
        }
        return Double.isNaN(v)
                ? ""
                : String.format(
                        Locale.ROOT, "%.6g", Display.METRIC.unit(r.dimension()).fromSi(v));
    }

    static Map<String, Object> series(Trace trace, List<Reading> readings) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("time s", trace.rows().stream().map(row -> Json.number(row[0])).toList());
        for (Reading r : readings) {
            int i = trace.readings().indexOf(r) + 1;
            Unit unit = Display.METRIC.unit(r.dimension());
            all.put(
                    r.isChoice() ? r.channel() : (r.channel() + " " + unit.symbol()).trim(),
                    trace.rows().stream()
                            .map(row -> r.isChoice() ? r.options().get((int) row[i]) : Json.number(unit.fromSi(row[i])))
                            .toList());
        }
        return all;
    }

    /** One strip for each unit and medium, up to three lines in one. */
    static String svg(String title, String subtitle, Trace trace, List<Reading> readings) {
        Map<String, List<Reading>> strips = new LinkedHashMap<>();
        for (Reading r : readings) {
            if (!r.isChoice()) {
                String key = Display.METRIC.unit(r.dimension()).symbol() + medium(r);
                List<Reading> strip = strips.computeIfAbsent(key, k -> new ArrayList<>());
                if (strip.size() < 3) {
                    strip.add(r);
                } else {
                    strips.put(key + r.channel(), new ArrayList<>(List.of(r)));
                }
            }
        }
        double[] minutes = trace.rows().stream().mapToDouble(row -> row[0] / 60).toArray();
        List<StripChart.Strip> drawn = strips.values().stream()
                .map(strip -> new StripChart.Strip(
                        Display.METRIC.unit(strip.get(0).dimension()).symbol(),
                        medium(strip.get(0)),
                        strip.stream().map(r -> line(r, trace)).toList()))
                .toList();
        return StripChart.draw(title, subtitle, minutes, drawn);
    }

    private static StripChart.Line line(Reading r, Trace trace) {
        int i = trace.readings().indexOf(r) + 1;
        Unit unit = Display.METRIC.unit(r.dimension());
        double[] values =
                trace.rows().stream().mapToDouble(row -> unit.fromSi(row[i])).toArray();
        return new StripChart.Line(words(r), values, shown(r, trace.rows().get(values.length - 1)[i]));
    }

    private static StripChart.Medium medium(Reading r) {
        String c = r.channel();
        if (c.contains("steam") && r.dimension() == wetside.units.Dimension.PRESSURE) {
            return StripChart.Medium.STEAM;
        }
        if (c.contains("drain") || c.contains("tray")) {
            return StripChart.Medium.DRAIN;
        }
        return switch (r.dimension()) {
            case POWER, CURRENT, VOLTAGE -> StripChart.Medium.CURRENT;
            case TEMPERATURE, RATIO -> StripChart.Medium.SENSING;
            default -> StripChart.Medium.WATER;
        };
    }
}
