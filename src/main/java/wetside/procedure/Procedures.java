package wetside.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.machine.Node;
import wetside.machine.Wording;
import wetside.run.Scenario;

/** All routines and procedures, as read from their files. */
public final class Procedures {
    private final Map<String, Scenario> routines = new LinkedHashMap<>();
    private final Map<String, Procedure> procedures = new LinkedHashMap<>();

    /** Reads what {@code procedures/} ships. */
    public static Procedures bundled() {
        Procedures all = new Procedures();
        for (String name : ProcedureFiles.names()) {
            all.add(Node.read(name, ProcedureFiles.text(name)));
        }
        all.join();
        return all;
    }

    /** Adds one file's routines and procedures. */
    void add(Node root) {
        root.header("wetside procedures", 1);
        root.only("wetside procedures", "routines", "procedures");
        if (root.has("routines")) {
            root.entries("routines").forEach((name, node) -> routines.put(name, Scenario.read(name, node)));
        }
        if (root.has("procedures")) {
            root.entries("procedures")
                    .forEach((id, node) -> ProcedureReader.read(id, node).ifPresent(p -> procedures.put(id, p)));
        }
        root.check();
    }

    /** Checks that every procedure's routine and marks exist. */
    private void join() {
        for (Procedure p : procedures.values()) {
            Scenario s = routines.get(p.routine());
            if (s == null) {
                throw new IllegalStateException("procedure '" + p.id() + "' is read during '" + p.routine()
                        + "', which is no routine; " + Wording.thereAre(routines.keySet()));
            }
        }
    }

    public Optional<Scenario> routine(String name) {
        return Optional.ofNullable(routines.get(name));
    }

    public Map<String, Scenario> routines() {
        return routines;
    }

    public List<Procedure> all() {
        return new ArrayList<>(procedures.values());
    }

    public Optional<Procedure> find(String id) {
        return Optional.ofNullable(procedures.get(id));
    }
}
