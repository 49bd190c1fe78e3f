package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Handle;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.plant.Plant;

/** The parts of a machine with the names that {@code run} takes: readings, handles and faults. */
final class Parts {
    private final Machine machine;
    private final Plant plant;

    Parts(Machine machine) {
        this.machine = machine;
        plant = Plant.of(Kinds.blueprint(machine));
    }

    void print(Console console) {
        for (Component c : machine.components()) {
            console.line("");
            console.text("", c.id() + ": " + c.name() + " (" + c.kind().name() + ")");
            list(console, "  shows   ", readings(c));
            list(console, "  set by  ", handles(c));
            list(console, "  fails   ", faults(c));
        }
    }

    private static void list(Console console, String label, List<String> names) {
        if (!names.isEmpty()) {
            console.text(label, String.join("; ", names));
        }
    }

    List<Map<String, Object>> json() {
        List<Map<String, Object>> all = new ArrayList<>();
        for (Component c : machine.components()) {
            Map<String, Object> m = new LinkedHashMap<>();
            m.put("component", c.id());
            m.put("name", c.name());
            m.put("kind", c.kind().name());
            m.put("roles", c.place().roles());
            m.put("shows", readings(c));
            m.put("setBy", handles(c));
            m.put("faults", faults(c));
            all.add(m);
        }
        return all;
    }

    private List<String> readings(Component c) {
        return plant.readings().keySet().stream()
                .filter(n -> n.startsWith(c.id() + "."))
                .toList();
    }

    private List<String> handles(Component c) {
        return plant.handles().values().stream()
                .filter(h -> h.name().startsWith(c.id() + "."))
                .map(Parts::handle)
                .toList();
    }

    private static String handle(Handle h) {
        return h.options().isEmpty() ? h.name() : h.name() + " (" + String.join(", ", h.options()) + ")";
    }

    private static List<String> faults(Component c) {
        return Kinds.of(c).faults().stream().map(Fault::name).toList();
    }
}
