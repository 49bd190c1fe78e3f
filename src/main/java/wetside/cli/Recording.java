package wetside.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Reading;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.plant.Plant;
import wetside.run.Action;
import wetside.run.Run;
import wetside.run.Scenario;
import wetside.run.Trace;
import wetside.units.Display;
import wetside.units.Unit;

/** A run with everything it showed and what was done when, from a scenario's own beginning or from the cold machine. */
final class Recording {
    private static final double SPACING = 0.2;

    private final Run run;
    private final Trace trace;
    private final List<Event> events = new ArrayList<>();
    private final Map<String, Integer> column = new HashMap<>();
    private double start;

    /** Something done, or a moment with a name [s]. */
    record Event(double time, String words, boolean isMark) {}

    private Recording(Machine machine) {
        run = new Run(Plant.of(Kinds.blueprint(machine)));
        trace = new Trace(new ArrayList<>(run.plant().readings().values()), SPACING);
        trace.readings().forEach(r -> column.put(r.channel(), column.size() + 1));
    }

    /**
     * @param chain scenarios one after the other, the one that was asked for last
     * @param whole whether what leads to it is recorded too
     */
    static Recording of(Machine machine, List<Scenario> chain, boolean whole) {
        Recording recording = new Recording(machine);
        int last = chain.size() - 1;
        for (int i = 0; i <= last; i++) {
            if (i == (whole ? 0 : last)) {
                recording.begin();
            }
            chain.get(i).steps().forEach(recording::act);
        }
        recording.trace.end(recording.run.time(), recording.run.plant());
        return recording;
    }

    /** Readings by the names people use; an unknown one is told before anything runs. */
    static List<Reading> readings(Machine machine, List<String> names) {
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        return names.stream().map(run::reading).toList();
    }

    private void begin() {
        start = run.time();
        events.clear();
        run.marks().clear();
        run.watch(trace);
        trace.see(run.time(), run.plant());
    }

    private void act(Action action) {
        if (action instanceof Action.Move m) {
            events.add(new Event(run.time() - start, RunText.words(m.handle()) + ": " + m.value(), false));
        }
        run.go(action);
        if (action instanceof Action.Mark m) {
            events.add(new Event(run.time() - start, m.name(), true));
        }
    }

    Run run() {
        return run;
    }

    List<Event> events() {
        return events;
    }

    List<double[]> rows() {
        return trace.rows();
    }

    /** Time of a row from the beginning of what is recorded [s]. */
    double time(double[] row) {
        return row[0] - start;
    }

    double end() {
        return run.time() - start;
    }

    List<Reading> readings() {
        return trace.readings();
    }

    double value(double[] row, Reading reading) {
        return row[column.get(reading.channel())];
    }

    /** All values of a reading, in the unit it is shown in. */
    double[] series(Reading reading) {
        Unit unit = Display.METRIC.unit(reading.dimension());
        return rows().stream()
                .mapToDouble(row -> reading.isChoice() ? value(row, reading) : unit.fromSi(value(row, reading)))
                .toArray();
    }
}
