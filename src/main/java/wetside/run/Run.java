package wetside.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.plant.Plant;
import wetside.plant.Stepper;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;

/** One plant going through scenarios, watched by whoever asks. */
public final class Run {
    private final Plant plant;
    private final Names names;
    private final Stepper stepper;
    private final List<Watcher> watchers = new ArrayList<>();
    private final Map<String, Double> marks = new LinkedHashMap<>();

    public Run(Plant plant) {
        this.plant = plant;
        names = new Names(plant.blueprint().machine());
        stepper = new Stepper(plant);
    }

    /** Looks at the plant after every accepted step. */
    @FunctionalInterface
    public interface Watcher {
        void see(double time, Plant plant);
    }

    /** Sets the clock to zero, forgets marks and lets the plant settle: after this a run depends on its state alone. */
    public void begin() {
        stepper.time(0);
        stepper.moved();
        marks.clear();
    }

    public Plant plant() {
        return plant;
    }

    public Stepper stepper() {
        return stepper;
    }

    public double time() {
        return stepper.time();
    }

    public void watch(Watcher watcher) {
        watchers.add(watcher);
    }

    public void unwatch() {
        watchers.clear();
    }

    /** Time of a mark [s]; NaN when it was not reached. */
    public double mark(String name) {
        return marks.getOrDefault(name, Double.NaN);
    }

    public Map<String, Double> marks() {
        return marks;
    }

    public void go(Scenario scenario) {
        scenario.steps().forEach(this::go);
    }

    public void go(Action action) {
        if (action instanceof Action.Move m) {
            move(m.handle(), m.value());
        } else if (action instanceof Action.Wait w) {
            pass(w.seconds());
        } else if (action instanceof Action.Until u) {
            until(u);
        } else if (action instanceof Action.Mark m) {
            marks.put(m.name(), time());
            see();
        }
    }

    /** Sets a handle to a word or a number; nobody sees what it does before time goes on. */
    public void move(String handleName, String value) {
        Handle handle = handle(handleName);
        plant.set(handle, position(handle, value));
        stepper.moved();
    }

    private Handle handle(String name) {
        Handle handle = names.resolve(name).map(n -> plant.handles().get(n)).orElse(null);
        if (handle == null) {
            throw new NoSuchThing(
                    "this machine has no handle '" + name + "'",
                    name,
                    plant.handles().keySet());
        }
        return handle;
    }

    private static double position(Handle handle, String value) {
        if (!handle.options().isEmpty()) {
            int i = handle.options().indexOf(value);
            if (i < 0) {
                throw new NoSuchThing(
                        "'" + handle.name() + "' cannot be set to '" + value + "'", value, handle.options());
            }
            return i;
        }
        for (Dimension d : new Dimension[] {Dimension.RATIO, Dimension.TEMPERATURE}) {
            try {
                double v = Said.si(value, d);
                if (v >= handle.least() && v <= handle.most()) {
                    return v;
                }
            } catch (NotAQuantity e) {
                continue;
            }
        }
        throw new NoSuchThing("'" + handle.name() + "' cannot be set to '" + value + "'", value, List.of());
    }

    public void pass(double seconds) {
        double end = time() + seconds;
        while (end - time() > 1e-9) {
            stepper.advance(end - time());
            see();
        }
    }

    private void until(Action.Until u) {
        Reading reading = reading(u.reading());
        double wanted = wanted(reading, u.value());
        double end = time() + u.atMost();
        while (!met(u.test(), plant.read(reading), wanted) && end - time() > 1e-9) {
            stepper.advance(end - time());
            see();
        }
    }

    private static boolean met(Action.Test test, double value, double wanted) {
        return switch (test) {
            case ABOVE -> value >= wanted;
            case BELOW -> value <= wanted;
            case IS -> value == wanted;
        };
    }

    /** A reading by role or id. */
    public Reading reading(String name) {
        Reading reading = names.resolve(name).map(n -> plant.readings().get(n)).orElse(null);
        if (reading == null) {
            throw new NoSuchThing(
                    "this machine has no reading '" + name + "'",
                    name,
                    plant.readings().keySet());
        }
        return reading;
    }

    private static double wanted(Reading reading, String value) {
        if (reading.isChoice()) {
            int i = reading.options().indexOf(value);
            if (i < 0) {
                throw new NoSuchThing(
                        "'" + reading.channel() + "' never shows '" + value + "'", value, reading.options());
            }
            return i;
        }
        try {
            return Said.si(value, reading.dimension());
        } catch (NotAQuantity e) {
            throw new NoSuchThing(e.getMessage(), value, List.of());
        }
    }

    private void see() {
        for (Watcher w : watchers) {
            w.see(time(), plant);
        }
    }
}
