package wetside.machine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Looks at a whole machine of one revision: what is joined to what, and whether it is safe to heat. */
final class MachineChecks {
    private static final String EARTH = "earth";

    private final String revision;
    private final List<Component> components;
    private final List<JoinReader.Link> links;
    private final Function<String, Node> nodes;
    private final Map<Machine.End, JoinReader.Link> joined = new HashMap<>();

    MachineChecks(
            String revision, List<Component> components, List<JoinReader.Link> links, Function<String, Node> nodes) {
        this.revision = revision;
        this.components = components;
        this.links = links;
        this.nodes = nodes;
    }

    void all() {
        for (JoinReader.Link link : links) {
            once(link, link.from());
            once(link, link.to());
        }
        components.forEach(this::portsAreJoined);
        components.stream().filter(c -> c.kind().is(Trait.NEEDS_EARTH)).forEach(this::isEarthed);
        components.stream().filter(c -> c.kind().is(Trait.CLOSED_VESSEL)).forEach(this::reachesRelief);
    }

    /** Wires, contacts and linkages may share a port; a pipe cannot be screwed on where one is. */
    private void once(JoinReader.Link link, Machine.End end) {
        JoinReader.Link first = joined.putIfAbsent(end, link);
        if (first != null && link.medium() == Medium.FLUID) {
            link.node()
                    .problemAt(
                            end.toString(),
                            "\"" + end + "\" is joined twice; the first line is in line "
                                    + first.node().line() + ". Three lines meet in a tee",
                            "");
        }
    }

    private void portsAreJoined(Component c) {
        for (Port p : c.kind().ports()) {
            boolean saidElsewhere = p.name().equals(EARTH) && c.kind().is(Trait.NEEDS_EARTH);
            if (!p.optional() && !saidElsewhere && !joined.containsKey(new Machine.End(c.id(), p.name()))) {
                nodes.apply(c.id())
                        .unknown(
                                "port \"" + p.name() + "\" (" + p.meaning() + ") is joined to nothing in revision "
                                        + revision + "; it belongs under "
                                        + p.medium().section(),
                                "");
            }
        }
    }

    private void isEarthed(Component c) {
        if (!joined.containsKey(new Machine.End(c.id(), EARTH))) {
            nodes.apply(c.id())
                    .unknown(
                            "a " + c.kind().name() + " has live parts in metal; wire its port \"earth\" to the earth of"
                                    + " the machine",
                            "");
        }
    }

    /** From the vessel along lines and through parts, but through none that can shut. */
    private void reachesRelief(Component vessel) {
        Map<String, Component> byId = new HashMap<>();
        components.forEach(c -> byId.put(c.id(), c));
        Set<String> seen = new HashSet<>(Set.of(vessel.id()));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String at = open.pop();
            if (byId.get(at).kind().is(Trait.RELIEF)) {
                return;
            }
            if (byId.get(at).kind().is(Trait.SHUTS)) {
                continue;
            }
            for (JoinReader.Link link : links) {
                if (link.medium() == Medium.FLUID) {
                    step(link.from(), link.to(), at, seen, open);
                    step(link.to(), link.from(), at, seen, open);
                }
            }
        }
        nodes.apply(vessel.id())
                .unknown(
                        "nothing relieves this vessel in revision " + revision
                                + ": no lines lead from it to a safety or"
                                + " over-pressure valve without passing a valve that can shut",
                        "");
    }

    private static void step(Machine.End from, Machine.End to, String at, Set<String> seen, Deque<String> open) {
        if (from.component().equals(at) && seen.add(to.component())) {
            open.push(to.component());
        }
    }
}
