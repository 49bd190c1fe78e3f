package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.blueprint.Reading;
import wetside.casework.Installed;
import wetside.plant.Balance;
import wetside.run.Run;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;

/** A recorded run as text, CSV, JSON and chart. */
final class RunOutput {
    private final Installed installed;
    private final String scenario;
    private final List<String> breaks;
    private final Recording recording;
    private final List<Reading> readings;

    RunOutput(Installed installed, String scenario, List<String> breaks, Recording recording, List<Reading> readings) {
        this.installed = installed;
        this.scenario = scenario;
        this.breaks = breaks;
        this.recording = recording;
        this.readings = readings;
    }

    private String title() {
        return installed.machine().identity().title() + ", " + scenario;
    }

    private String subtitle() {
        String broken = breaks.isEmpty() ? "" : ", with " + String.join(" and ", breaks);
        return installed.machine().identity().making() + ", " + installed.fed() + broken;
    }

    void text(Console console, int rows) {
        console.text("", title() + "; " + subtitle());
        console.line("");
        new RunTable(recording, rows).print(console, readings);
        console.line("");
        console.text("Balance: ", balance());
        Run run = recording.run();
        if (run.stepper().unsolved() > 0) {
            console.text(
                    "Mind: ",
                    "in " + run.stepper().unsolved() + " steps water and steam found no balance; worst at "
                            + run.plant().worstNode());
        }
    }

    private String balance() {
        Run run = recording.run();
        Balance b = run.plant().balance();
        return String.format(
                Locale.ROOT,
                "water off by %.0e of %.2f kg, air %.0e kg, heat %.0e of %.0f kJ, charge %.0e A; %d steps, %s",
                Math.abs(b.waterResidual()),
                b.waterTaken(),
                Math.abs(b.airResidual()),
                Math.abs(b.energyResidual()) / 1000,
                b.heatTaken() / 1000,
                Math.abs(b.chargeResidual()),
                run.stepper().steps(),
                Display.METRIC.print(run.time(), Dimension.TIME));
    }

    String svg(Recording without) {
        return new RunChart(recording, without).draw(title(), subtitle(), readings);
    }

    /** All readings at all times; the first line names them and their units. */
    String csv() {
        StringBuilder s = new StringBuilder("time s");
        for (Reading r : recording.readings()) {
            s.append(',').append(quoted((r.channel() + " " + unit(r)).strip()));
        }
        s.append('\n');
        for (double[] row : recording.rows()) {
            s.append(String.format(Locale.ROOT, "%.2f", recording.time(row)));
            for (Reading r : recording.readings()) {
                s.append(',').append(cell(r, recording.value(row, r)));
            }
            s.append('\n');
        }
        return s.toString();
    }

    private static String unit(Reading r) {
        return r.isChoice() ? "" : Display.METRIC.unit(r.dimension()).symbol();
    }

    private static String cell(Reading r, double v) {
        if (r.isChoice()) {
            return quoted(r.options().get((int) v));
        }
        Unit unit = Display.METRIC.unit(r.dimension());
        return Double.isNaN(v) ? "" : String.format(Locale.ROOT, "%.6g", unit.fromSi(v));
    }

    private static String quoted(String text) {
        return text.matches("[^,\"\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    Map<String, Object> json() {
        Map<String, Object> m = Json.machine(installed);
        m.put("scenario", scenario);
        m.put("broken", breaks);
        m.put("seconds", Json.number(recording.end()));
        Map<String, Object> marks = new LinkedHashMap<>();
        List<Map<String, Object>> done = new ArrayList<>();
        for (Recording.Event e : recording.events()) {
            if (e.isMark()) {
                marks.put(e.words(), Json.number(e.time()));
            } else {
                Map<String, Object> event = new LinkedHashMap<>();
                event.put("at", Json.number(e.time()));
                event.put("what", e.words());
                done.add(event);
            }
        }
        m.put("marks", marks);
        m.put("done", done);
        m.put(
                "time",
                recording.rows().stream()
                        .map(row -> Json.number(recording.time(row)))
                        .toList());
        m.put("readings", readings.stream().map(this::json).toList());
        m.put("balance", jsonBalance());
        return m;
    }

    private Map<String, Object> json(Reading r) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("reading", r.channel());
        m.put("unit", unit(r));
        List<Object> values = new ArrayList<>();
        for (double v : recording.series(r)) {
            values.add(r.isChoice() ? r.options().get((int) v) : Json.number(v));
        }
        m.put("values", values);
        return m;
    }

    private Map<String, Object> jsonBalance() {
        Balance b = recording.run().plant().balance();
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("waterKg", Json.number(b.waterResidual()));
        m.put("airKg", Json.number(b.airResidual()));
        m.put("energyJ", Json.number(b.energyResidual()));
        m.put("chargeA", Json.number(b.chargeResidual()));
        m.put("unsolvedSteps", recording.run().stepper().unsolved());
        return m;
    }
}
