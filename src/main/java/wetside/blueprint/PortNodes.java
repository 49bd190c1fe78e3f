package wetside.blueprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;

/** Numbers the nodes of one medium: a node per port, merged where ports are joined without anything between. */
final class PortNodes {
    private final Map<Machine.End, Integer> ids = new HashMap<>(512);
    private final List<Integer> parent = new ArrayList<>();

    PortNodes(Machine machine, Medium medium) {
        for (Component c : machine.components()) {
            for (Port p : c.kind().ports()) {
                if (p.medium() == medium) {
                    ids.put(new Machine.End(c.id(), p.name()), fresh());
                }
            }
        }
    }

    int fresh() {
        parent.add(parent.size());
        return parent.size() - 1;
    }

    void merge(Machine.End a, Machine.End b) {
        parent.set(root(id(a)), root(id(b)));
    }

    int of(Machine.End end) {
        return root(id(end));
    }

    int count() {
        return parent.size();
    }

    private int id(Machine.End end) {
        Integer id = ids.get(end);
        if (id == null) {
            throw new IllegalStateException("no port " + end);
        }
        return id;
    }

    private int root(int id) {
        int r = id;
        while (parent.get(r) != r) {
            r = parent.get(r);
        }
        return r;
    }
}
