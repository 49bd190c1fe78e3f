package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Reading;
import wetside.drawing.StripChart;
import wetside.units.Dimension;
import wetside.units.Display;

/** A recorded run as a strip chart: one strip for each unit and medium, beside the same run without a fault. */
final class RunChart {
    private final Recording recording;
    private final Recording without;

    /** @param without the same scenario on the whole machine, or null */
    RunChart(Recording recording, Recording without) {
        this.recording = recording;
        this.without = without;
    }

    String draw(String title, String subtitle, List<Reading> readings) {
        double[] minutes = recording.rows().stream()
                .mapToDouble(row -> recording.time(row) / 60)
                .toArray();
        List<StripChart.Mark> marks = recording.events().stream()
                .filter(e -> !e.isMark())
                .map(e -> new StripChart.Mark(e.time() / 60, e.words()))
                .toList();
        String behind = without == null ? "" : "; broad and grey behind: without it";
        return StripChart.draw(
                new StripChart.Title(title, subtitle + behind),
                minutes,
                marks,
                strips(readings).stream().map(this::strip).toList());
    }

    private static List<List<Reading>> strips(List<Reading> readings) {
        Map<String, List<Reading>> open = new LinkedHashMap<>();
        List<List<Reading>> strips = new ArrayList<>();
        for (Reading r : readings) {
            String key = r.isChoice()
                    ? r.channel()
                    : Display.METRIC.unit(r.dimension()).symbol() + " " + medium(r);
            List<Reading> strip = open.get(key);
            if (strip == null || strip.size() == StripChart.MOST_LINES) {
                strip = new ArrayList<>();
                open.put(key, strip);
                strips.add(strip);
            }
            strip.add(r);
        }
        return strips;
    }

    private StripChart.Strip strip(List<Reading> readings) {
        Reading first = readings.get(0);
        return new StripChart.Strip(
                first.isChoice() ? "" : Display.METRIC.unit(first.dimension()).symbol(),
                medium(first),
                first.isChoice() ? first.options() : List.of(),
                readings.stream().map(this::line).toList());
    }

    private StripChart.Line line(Reading r) {
        double[] last = recording.rows().get(recording.rows().size() - 1);
        return new StripChart.Line(
                RunText.words(r.channel()),
                recording.series(r),
                "ends at " + RunText.value(r, recording.value(last, r)),
                without == null ? new double[0] : beside(r));
    }

    /** The other run's values at this one's times. */
    private double[] beside(Reading r) {
        double[] values = new double[recording.rows().size()];
        double[] other = without.series(r);
        int j = 0;
        for (int i = 0; i < values.length; i++) {
            double time = recording.time(recording.rows().get(i));
            while (j < other.length - 1 && without.time(without.rows().get(j)) < time - 1e-6) {
                j++;
            }
            values[i] = other[j];
        }
        return values;
    }

    private static StripChart.Medium medium(Reading r) {
        String c = r.channel();
        if (c.contains("steam") && r.dimension() == Dimension.PRESSURE) {
            return StripChart.Medium.STEAM;
        }
        if (c.contains("drain") || c.contains("tray")) {
            return StripChart.Medium.DRAIN;
        }
        return switch (r.dimension()) {
            case POWER, CURRENT, VOLTAGE, RESISTANCE -> StripChart.Medium.CURRENT;
            case TEMPERATURE, TEMPERATURE_RISE, RATIO, NUMBER -> StripChart.Medium.SENSING;
            default -> StripChart.Medium.WATER;
        };
    }
}
