package wetside.tour;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;

/** What wires make one, and where current passes from there through the parts. */
final class CurrentWays {
    private final Machine machine;
    private final Map<String, List<CurrentPlan.Element>> own = new LinkedHashMap<>();
    /** Ports on each net, in the order of the machine file. */
    private final Map<Integer, List<Machine.End>> nets = new HashMap<>();

    private final Map<Machine.End, Integer> netOf = new HashMap<>();
    private final Set<Integer> earth = new HashSet<>();

    CurrentWays(Machine machine) {
        this.machine = machine;
        Blueprint blueprint = new Blueprint(machine);
        List<CurrentPlan.Element> all = blueprint.current().elements();
        for (Component c : machine.components()) {
            int before = all.size();
            Kinds.of(c).build(c, blueprint);
            own.put(c.id(), List.copyOf(all.subList(before, all.size())));
            for (Port p : c.kind().ports()) {
                if (p.medium() == Medium.CURRENT) {
                    Machine.End end = new Machine.End(c.id(), p.name());
                    int net = blueprint.terminal(c, p.name());
                    nets.computeIfAbsent(net, n -> new ArrayList<>()).add(end);
                    netOf.put(end, net);
                    if (p.name().endsWith("earth")) {
                        earth.add(net);
                    }
                }
            }
        }
    }

    Machine machine() {
        return machine;
    }

    int net(Machine.End end) {
        return netOf.get(end);
    }

    /** Ports that wires join to a net, those of one part left out; none where the part stands alone. */
    List<Machine.End> others(int net, Component but) {
        return nets.getOrDefault(net, List.of()).stream()
                .filter(e -> !e.component().equals(but.id()))
                .toList();
    }

    boolean isEarth(int net) {
        return earth.contains(net);
    }

    /** Nets that mains is brought to by the house. */
    Map<Component, Integer> mains() {
        Map<Component, Integer> starts = new LinkedHashMap<>();
        for (Component c : machine.components()) {
            for (CurrentPlan.Element e : own.get(c.id())) {
                if (e instanceof CurrentPlan.Source) {
                    starts.putIfAbsent(c, e.to());
                }
            }
        }
        return starts;
    }

    /** Nets that low voltage comes from. */
    Map<Component, Integer> supplies() {
        Map<Component, Integer> starts = new LinkedHashMap<>();
        for (Component c : machine.components()) {
            for (CurrentPlan.Element e : own.get(c.id())) {
                if (e instanceof CurrentPlan.Supply) {
                    starts.put(c, e.to());
                }
            }
        }
        return starts;
    }

    /** Nets with earth in their name at a part that current comes from, to follow earth from the house. */
    List<Machine.End> earths(Component c) {
        return netOf.keySet().stream()
                .filter(e -> e.component().equals(c.id()) && isEarth(netOf.get(e)))
                .sorted(java.util.Comparator.comparing(Machine.End::port))
                .toList();
    }

    /** Whether current that comes to the part there goes anywhere. */
    boolean takesIn(Machine.End end) {
        return own.get(end.component()).stream().anyMatch(e -> e.from() == net(end) || e.to() == net(end));
    }

    /** Nets with something else on them that current reaches through the part, not counting what a supply makes anew. */
    List<Integer> exits(Component c, int entry) {
        Set<Integer> reached = new LinkedHashSet<>(Set.of(entry));
        Deque<Integer> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            int at = open.pop();
            if (at != entry && !others(at, c).isEmpty()) {
                continue;
            }
            for (CurrentPlan.Element e : own.get(c.id())) {
                if (e instanceof CurrentPlan.Source || e instanceof CurrentPlan.Supply) {
                    continue;
                }
                if (e.from() == at && reached.add(e.to())) {
                    open.add(e.to());
                } else if (e.to() == at && reached.add(e.from())) {
                    open.add(e.from());
                }
            }
        }
        reached.remove(entry);
        return reached.stream().filter(n -> !others(n, c).isEmpty()).toList();
    }

    /** Nets at a part's ports on which something else hangs, in the order the kind declares them. */
    List<Integer> nets(Component c) {
        return c.kind().ports().stream()
                .filter(p -> p.medium() == Medium.CURRENT)
                .map(p -> net(new Machine.End(c.id(), p.name())))
                .distinct()
                .filter(n -> !others(n, c).isEmpty())
                .toList();
    }
}
