package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;
import wetside.blueprint.Reading;
import wetside.casework.Casework;
import wetside.machine.Machine;
import wetside.map.Measured;
import wetside.run.Draws;
import wetside.run.Run;

/**
 * Sound machines of the same making, each a little different within its tolerances, taken through what the run is taken
 * through, some way behind it: between the lowest and the highest of them a reading is nothing to wonder at. They run on a
 * thread of their own that gives way to everything else, and are left behind for good when they cannot keep up.
 */
final class Siblings implements Runnable {
    /** How many; each costs as much as the run itself. */
    static final int MANY = 5;

    private static final int SEED = 20_260;
    private static final int MOST_WAITING = 40_000;

    private final Machine machine;
    private final List<Reading> readings;
    private final History band;
    private final LinkedBlockingQueue<Turn> turns = new LinkedBlockingQueue<>(MOST_WAITING);
    private final List<Run> runs = new ArrayList<>();
    private volatile boolean over;
    private volatile boolean lost;

    /** At a time either something was moved, or the readings were written down; afresh when the time is below zero. */
    private record Turn(double time, String handle, String value) {}

    Siblings(Machine machine, List<Reading> readings, History band) {
        this.machine = machine;
        this.readings = readings;
        this.band = band;
    }

    /** The lowest of each reading, and the highest, over time. */
    History band() {
        return band;
    }

    void moved(double time, String handle, String value) {
        leave(new Turn(time, handle, value));
    }

    void wrote(double time) {
        leave(new Turn(time, null, null));
    }

    void afresh() {
        turns.clear();
        lost = false;
        leave(new Turn(-1, null, null));
    }

    private void leave(Turn turn) {
        lost = lost || !turns.offer(turn);
    }

    void end() {
        over = true;
    }

    @Override
    public void run() {
        begin();
        while (!over) {
            try {
                Turn turn = turns.poll(500, TimeUnit.MILLISECONDS);
                if (turn != null && turn.time() < 0) {
                    begin();
                } else if (turn != null && !lost) {
                    take(turn);
                }
            } catch (InterruptedException e) {
                over = true;
            } catch (RuntimeException e) {
                // a twin that gives up leaves a run without a band, which is no harm to the run
                lost = true;
            }
        }
    }

    private void begin() {
        band.clear();
        runs.clear();
        Draws draws = new Draws(machine, SEED).wider(Casework.WIDER);
        for (int k = 0; k < MANY; k++) {
            Run run = Measured.cold(draws.machine(k)).run();
            run.begin();
            runs.add(run);
        }
    }

    private void take(Turn turn) {
        for (Run run : runs) {
            if (over) {
                return;
            }
            if (turn.time() > run.time()) {
                run.pass(turn.time() - run.time());
            }
            if (turn.handle() != null) {
                run.move(turn.handle(), turn.value());
            }
        }
        if (turn.handle() == null) {
            band.add(turn.time(), all(v -> v[0]), all(v -> v[1]));
        }
    }

    private double[] all(ToDoubleFunction<double[]> end) {
        double[] values = new double[readings.size()];
        for (int i = 0; i < values.length; i++) {
            String channel = readings.get(i).channel();
            double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            for (Run run : runs) {
                double v = run.plant().read(run.plant().readings().get(channel));
                ends[0] = Math.min(ends[0], v);
                ends[1] = Math.max(ends[1], v);
            }
            values[i] = end.applyAsDouble(ends);
        }
        return values;
    }
}
