package wetside.run;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.Reading;
import wetside.plant.Plant;

/** Readings over time, no closer together than a spacing. */
public final class Trace implements Run.Watcher {
    private final List<Reading> readings;
    private final double spacing;
    private final List<double[]> rows = new ArrayList<>();

    public Trace(List<Reading> readings, double spacing) {
        this.readings = List.copyOf(readings);
        this.spacing = spacing;
    }

    @Override
    public void see(double time, Plant plant) {
        if (rows.isEmpty() || time - rows.get(rows.size() - 1)[0] >= spacing) {
            add(time, plant);
        }
    }

    /** Adds the last moment of a run whatever its distance. */
    public void end(double time, Plant plant) {
        if (rows.isEmpty() || rows.get(rows.size() - 1)[0] < time) {
            add(time, plant);
        }
    }

    private void add(double time, Plant plant) {
        double[] row = new double[readings.size() + 1];
        row[0] = time;
        for (int i = 0; i < readings.size(); i++) {
            row[i + 1] = plant.read(readings.get(i));
        }
        rows.add(row);
    }

    public List<Reading> readings() {
        return readings;
    }

    /** Each row: time [s], then the readings in order, SI. */
    public List<double[]> rows() {
        return rows;
    }
}
