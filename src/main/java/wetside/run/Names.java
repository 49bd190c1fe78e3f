package wetside.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.plant.Plant;

/**
 * Turns "pump gauge.needle" (a role) or "pump-gauge.needle" (an id) into what this machine has: at one station and among what
 * there is once, or anywhere.
 */
public final class Names {
    private final Machine machine;
    private final Optional<String> station;

    /** Names of the whole machine; a role that several stations have means the first. */
    public Names(Machine machine) {
        this(machine, Optional.empty());
    }

    private Names(Machine machine, Optional<String> station) {
        this.machine = machine;
        this.station = station;
    }

    /** Names at one station; at the empty station only what there is once. */
    public static Names at(String station, Machine machine) {
        return new Names(machine, Optional.of(station));
    }

    /** {@code component.what} of this machine, empty when nothing plays the role. */
    public Optional<String> resolve(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? Optional.of(name) : component(name.substring(0, dot)).map(c -> c.id() + name.substring(dot));
    }

    /** The component named by role or id. */
    public Optional<Component> component(String part) {
        if (machine.has(part)) {
            return Optional.of(machine.component(part));
        }
        return station.isPresent() ? machine.inRole(part, station.get()) : machine.inRole(part);
    }

    /** The scenario in names of this machine, empty when it cannot do and show everything the scenario names. */
    public Optional<List<Action>> steps(Scenario scenario, Plant plant) {
        List<Action> steps = new ArrayList<>();
        for (Action a : scenario.steps()) {
            Optional<Action> step = step(a, plant);
            if (step.isEmpty()) {
                return Optional.empty();
            }
            steps.add(step.get());
        }
        return Optional.of(steps);
    }

    private Optional<Action> step(Action action, Plant plant) {
        if (action instanceof Action.Move m) {
            return resolve(m.handle())
                    .filter(n -> moves(plant.handles().get(n), m.value()))
                    .map(n -> new Action.Move(n, m.value()));
        }
        if (action instanceof Action.Until u) {
            return resolve(u.reading())
                    .filter(n -> shows(plant.readings().get(n), u.value()))
                    .map(n -> new Action.Until(n, u.test(), u.value(), u.atMost()));
        }
        return Optional.of(action);
    }

    private static boolean moves(Handle handle, String value) {
        return handle != null && (handle.options().isEmpty() || handle.options().contains(value));
    }

    private static boolean shows(Reading reading, String value) {
        return reading != null && (!reading.isChoice() || reading.options().contains(value));
    }
}
