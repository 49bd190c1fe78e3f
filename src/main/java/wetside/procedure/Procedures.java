package wetside.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.machine.Node;
import wetside.machine.Wording;

/** All routines and procedures, as read from their files. */
public final class Procedures {
    private final Map<String, Map<String, String>> words = new LinkedHashMap<>();
    private final Map<String, Routine> routines = new LinkedHashMap<>();
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
        root.only("wetside procedures", "words", "routines", "procedures");
        if (root.has("words")) {
            root.entries("words").forEach((name, node) -> words.put(name, words(node)));
        }
        if (root.has("routines")) {
            root.entries("routines").forEach((name, node) -> routines.put(name, Routine.read(name, node, words)));
        }
        if (root.has("procedures")) {
            root.entries("procedures")
                    .forEach((id, node) -> ProcedureReader.read(id, node).ifPresent(p -> procedures.put(id, p)));
        }
        root.check();
    }

    private static Map<String, String> words(Node node) {
        Map<String, String> words = new LinkedHashMap<>();
        node.entries().forEach((phrase, said) -> words.put(phrase, said.text()));
        return words;
    }

    /** Checks that every procedure's routine and marks exist. */
    private void join() {
        for (Procedure p : procedures.values()) {
            if (!routines.containsKey(p.routine())) {
                throw new IllegalStateException("procedure '" + p.id() + "' is read during '" + p.routine()
                        + "', which is no routine; " + Wording.thereAre(routines.keySet()));
            }
        }
    }

    Optional<Routine> routine(String name) {
        return Optional.ofNullable(routines.get(name));
    }

    /** How brewing is worded, by the name ways call it. */
    Map<String, Map<String, String>> words() {
        return words;
    }

    Map<String, Routine> routines() {
        return routines;
    }

    /** What routines are called and say, whatever the machine and the way. */
    public Map<String, String> said() {
        Map<String, String> said = new LinkedHashMap<>();
        routines.forEach((name, r) -> said.put(name, Phrases.plain(r.says())));
        return said;
    }

    public List<Procedure> all() {
        return new ArrayList<>(procedures.values());
    }

    public Optional<Procedure> find(String id) {
        return Optional.ofNullable(procedures.get(id));
    }
}
