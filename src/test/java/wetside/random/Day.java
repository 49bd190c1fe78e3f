package wetside.random;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.plant.Balance;
import wetside.plant.Plant;
import wetside.plant.Stepper;
import wetside.units.Dimension;

/** Twenty-four hours of a machine in careless hands: switched on, then handles moved at random with long waits between. */
final class Day {
    private static final double LENGTH = 24 * 3600;
    /** Handles moved, about. */
    private static final int MOVES = 30;

    private static final long MOST_STEPS = 60_000;
    /** Mean length of a step below which a run creeps [s]. */
    private static final double LEAST_STEP = 0.05;

    private final Plant plant;
    private final Stepper stepper;
    private final SplittableRandom random;
    private final List<Handle> handles;
    final List<String> wrong = new ArrayList<>();
    private String last = "";

    Day(Machine machine, long seed) {
        plant = Plant.of(Kinds.blueprint(machine));
        stepper = new Stepper(plant);
        random = new SplittableRandom(~seed);
        handles = List.copyOf(plant.handles().values());
    }

    /** One part of every second machine is broken somehow. */
    static Machine worn(Machine machine, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 31);
        List<Component> breakable = machine.components().stream()
                .filter(c -> !Kinds.of(c).faults().isEmpty())
                .toList();
        if (seed % 2 == 0 || breakable.isEmpty()) {
            return machine;
        }
        Component c = breakable.get(random.nextInt(breakable.size()));
        List<Fault> faults = Kinds.of(c).faults();
        return machine.with(faults.get(random.nextInt(faults.size())).on(c, random.nextDouble()));
    }

    /** Lives through the first so many hours; returns everything that was read at their end. */
    double[] live(double hours) {
        handles.stream().filter(h -> h.name().endsWith(".switch")).forEach(h -> plant.set(h, 1));
        stepper.moved();
        double end = LENGTH * hours / 24;
        while (stepper.time() < end - 1 && !stuck()) {
            pass(Math.min(end, stepper.time() + LENGTH / MOVES * 2 * random.nextDouble()));
            move(end);
        }
        pass(end);
        return plant.readings().values().stream().mapToDouble(plant::read).toArray();
    }

    /** Moves something for a while, mostly back again, sometimes not. */
    private void move(double end) {
        if (handles.isEmpty()) {
            return;
        }
        Handle handle = handles.get(random.nextInt(handles.size()));
        boolean words = !handle.options().isEmpty();
        double first = plant.slot(handle.name());
        double to = words
                ? random.nextInt(handle.options().size())
                : handle.least() + (handle.most() - handle.least()) * random.nextDouble();
        put(handle, to);
        if (!words || random.nextDouble() < 0.85) {
            pass(Math.min(end, stepper.time() + 2 + 60 * random.nextDouble()));
            put(handle, first);
        }
    }

    private void put(Handle handle, double to) {
        plant.set(handle, to);
        last = handle.name() + " to "
                + (handle.options().isEmpty() ? to : handle.options().get((int) to));
        stepper.moved();
    }

    private void pass(double until) {
        while (until - stepper.time() > 1e-9 && !stuck()) {
            long before = stepper.unsolved();
            stepper.advance(until - stepper.time());
            if (stepper.unsolved() > before && wrong.isEmpty()) {
                wrong.add("no balance at " + plant.worstNode() + " after " + stepper.time() + " s, after " + last);
            }
        }
        readings();
    }

    /** A day takes some thousand steps. Where something runs or clicks all day it ends early; creeping on is a fault. */
    private boolean stuck() {
        if (stepper.steps() < MOST_STEPS && wrong.isEmpty() && !Double.isNaN(stepper.time())) {
            return false;
        }
        if (wrong.isEmpty() && !(stepper.time() > LEAST_STEP * stepper.steps())) {
            wrong.add("creeps: " + stepper.steps() + " steps by " + stepper.time() + " s, after " + last);
        }
        return true;
    }

    private void readings() {
        for (Reading r : plant.readings().values()) {
            double v = plant.read(r);
            boolean sound = r.isChoice()
                    ? v >= 0 && v < r.options().size() && v == Math.rint(v)
                    : !Double.isInfinite(v) || r.dimension() == Dimension.RESISTANCE;
            if (!sound && wrong.isEmpty()) {
                wrong.add(r.channel() + " reads " + v + " after " + stepper.time() + " s, after " + last);
            }
        }
    }

    /** What the books leave open that should not be. */
    void books() {
        Balance b = plant.balance();
        off("water [kg]", b.waterResidual(), 1e-7 * (1 + Math.abs(b.waterTaken())));
        off("air [kg]", b.airResidual(), 1e-7);
        off("energy [J]", b.energyResidual(), 1e-6 * (1e5 + b.heatTaken() + 4e5 * Math.abs(b.waterTaken())));
        off("charge [A]", b.chargeResidual(), 1e-6);
    }

    private void off(String what, double residual, double allowed) {
        if (!(Math.abs(residual) <= allowed)) {
            wrong.add(what + " off by " + residual + ", allowed " + allowed);
        }
    }

    long steps() {
        return stepper.steps();
    }

    static boolean same(double[] a, double[] b) {
        return Arrays.equals(a, b);
    }
}
