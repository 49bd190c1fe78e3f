package wetside.run;

import java.util.Optional;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.plant.Plant;

/** Turns "pump gauge.needle" (a role) or "pump-gauge.needle" (an id) into what this machine has. */
public final class Names {
    private final Machine machine;

    public Names(Machine machine) {
        this.machine = machine;
    }

    /** {@code component.what} of this machine, empty when nothing plays the role. */
    public Optional<String> resolve(String name) {
        int dot = name.lastIndexOf('.');
        if (dot < 0) {
            return Optional.of(name);
        }
        String part = name.substring(0, dot);
        if (machine.has(part)) {
            return Optional.of(name);
        }
        return machine.inRole(part).map(c -> c.id() + name.substring(dot));
    }

    /** The component named by role or id. */
    public Optional<Component> component(String part) {
        return machine.has(part) ? Optional.of(machine.component(part)) : machine.inRole(part);
    }

    /** True when this machine can do and show everything a scenario names. */
    public boolean fits(Scenario scenario, Plant plant) {
        return scenario.names().stream()
                .allMatch(n -> resolve(n)
                        .filter(r -> plant.handles().containsKey(r)
                                || plant.readings().containsKey(r))
                        .isPresent());
    }
}
