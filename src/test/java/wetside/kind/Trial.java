package wetside.kind;

import java.util.HashMap;
import java.util.Map;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.Handle;
import wetside.blueprint.HeatPlan;
import wetside.blueprint.Reading;
import wetside.blueprint.Slots;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.plant.Circuit;

/** Current and controls of a few parts; the test sets temperatures, levels and duties itself. */
final class Trial {
    private static final int ROUNDS = 30;

    private final Machine machine;
    private final Blueprint blueprint;
    private final Circuit circuit;
    private final double[] x;

    Trial(Machine machine, Map<String, Kind> kinds) {
        this.machine = machine;
        blueprint = new Blueprint(machine);
        machine.components().forEach(c -> kinds.get(c.id()).build(c, blueprint));
        circuit = Circuit.of(blueprint.current(), blueprint.nodeCount(Medium.CURRENT));
        x = blueprint.slots().firstValues();
        heat(293.15);
    }

    /** A whole machine of registered kinds. */
    static Trial of(Machine machine) {
        Map<String, Kind> kinds = new HashMap<>();
        machine.components().forEach(c -> kinds.put(c.id(), Kinds.of(c)));
        return new Trial(machine, kinds);
    }

    /** Brings every heat node to one temperature [K] and lets everything settle. */
    Trial heat(double temperature) {
        for (HeatPlan.NodeSlot s : blueprint.heat().temperatures()) {
            x[s.slot()] = temperature;
        }
        for (HeatPlan.Sensor s : blueprint.heat().sensors()) {
            x[s.ohms()] = s.law().ohms(temperature);
        }
        return settle();
    }

    Trial set(String slot, double value) {
        x[slot(slot)] = value;
        return settle();
    }

    Trial move(String handle, String to) {
        Handle h = blueprint.handles().get(handle);
        x[h.slot()] = h.options().indexOf(to);
        return settle();
    }

    /** Lets time pass in steps no longer than the controls ask for. */
    Trial run(double seconds) {
        double left = seconds;
        while (left > 1e-9) {
            double dt = Math.min(left, Math.min(0.5, Math.max(1e-3, horizon())));
            act(dt);
            settle();
            left -= dt;
        }
        return this;
    }

    private double horizon() {
        return blueprint.controls().stream()
                .mapToDouble(c -> c.horizon(x))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private void act(double dt) {
        for (Control c : blueprint.controls()) {
            c.act(x, dt);
        }
    }

    private Trial settle() {
        Slots slots = blueprint.slots();
        for (int round = 0; round < ROUNDS; round++) {
            circuit.solve(x);
            blueprint.heat().regulators().forEach(r -> x[r.shown()] = r.law().temperature(x[r.seen()]));
            double[] before = x.clone();
            act(0);
            boolean changed = false;
            for (int i = 0; i < x.length; i++) {
                changed |= slots.isState(i) && before[i] != x[i];
            }
            if (!changed) {
                circuit.solve(x);
                return this;
            }
        }
        throw new AssertionError("found no rest in " + ROUNDS + " rounds");
    }

    double get(String slot) {
        return x[slot(slot)];
    }

    private int slot(String name) {
        int slot = blueprint.slots().find(name);
        if (slot < 0) {
            throw new AssertionError("no slot '" + name + "'");
        }
        return slot;
    }

    double reading(String channel) {
        return blueprint.readings().get(channel).value().at(x);
    }

    /** The word a person would answer. */
    String word(String channel) {
        Reading r = blueprint.readings().get(channel);
        return r.options().get((int) r.value().at(x));
    }

    /** Mean power that warms anything [W]. */
    double heating() {
        return blueprint.heat().sources().stream()
                .mapToDouble(s -> x[s.power()])
                .sum();
    }

    double ohms(String from, String to) {
        return circuit.resistance(x, terminal(from), terminal(to));
    }

    private int terminal(String said) {
        int dot = said.indexOf('.');
        Component c = machine.component(said.substring(0, dot));
        return blueprint.terminal(c, said.substring(dot + 1));
    }

    Blueprint blueprint() {
        return blueprint;
    }
}
