package wetside.machine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Looks at whole machines, one making after the other: what is joined to what, and whether it is safe to heat. What is
 * wrong in every making is told once.
 */
final class MachineChecks {
    private static final String EARTH = "earth";

    private final List<Making> makings;
    private final Function<String, Node> nodes;
    private final boolean complete;
    private final Map<Complaint, List<Making>> complaints = new LinkedHashMap<>();

    /** What is wrong with a component. */
    private record Complaint(String component, String what) {}

    /** @param complete false when parts or joins were not understood: then what seems missing may only be misspelt */
    MachineChecks(List<Making> makings, Function<String, Node> nodes, boolean complete) {
        this.makings = makings;
        this.nodes = nodes;
        this.complete = complete;
    }

    void look(Making making, List<Component> components, List<JoinReader.Link> links) {
        Map<Machine.End, JoinReader.Link> joined = new HashMap<>();
        for (JoinReader.Link link : links) {
            once(link, link.from(), joined);
            once(link, link.to(), joined);
        }
        rolesAreClear(making, components);
        if (complete) {
            components.forEach(c -> portsAreJoined(c, making, joined.keySet()));
            components.forEach(c -> isScrewedIn(c, making, components, joined));
            components.stream()
                    .filter(c -> c.kind().is(Trait.CLOSED_VESSEL))
                    .filter(c -> !reachesRelief(c, components, links))
                    .forEach(c -> complain(
                            c,
                            making,
                            "nothing relieves this vessel: no line leads from it to a safety or over-pressure valve"
                                    + " without passing something that can shut"));
        }
    }

    /** A role says one part to procedures, or one at each of several stations. */
    private void rolesAreClear(Making making, List<Component> components) {
        Map<String, List<Component>> holders = new LinkedHashMap<>();
        for (Component c : components) {
            c.place()
                    .roles()
                    .forEach(r ->
                            holders.computeIfAbsent(r, key -> new ArrayList<>()).add(c));
            if (c.place().roles().isEmpty() && !c.place().station().isEmpty()) {
                complain(c, making, "a part at a station needs a role: what it is there for procedures");
            }
        }
        holders.forEach((role, parts) -> {
            Component last = parts.get(parts.size() - 1);
            String station = last.place().station();
            parts.stream()
                    .filter(c -> c != last && c.plays(role, station))
                    .findFirst()
                    .ifPresent(first -> {
                        String where =
                                station.isEmpty() ? "; several alike need a station each" : " at station " + station;
                        complain(last, making, "role \"" + role + "\" is already that of " + first.id() + where);
                    });
            if (parts.size() == 1 && !station.isEmpty()) {
                complain(
                        last,
                        making,
                        "nothing but this plays \"" + role + "\": a station is for what there is several times");
            }
        });
    }

    /** Notes what was found. */
    void tell() {
        complaints.forEach((complaint, in) -> {
            List<String> names = in.stream().map(Making::toString).toList();
            String where = in.size() == makings.size() ? "" : " (in revision " + Wording.inWords(names) + ")";
            nodes.apply(complaint.component()).unknown(complaint.what() + where, "");
        });
    }

    private void complain(Component c, Making making, String what) {
        complaints
                .computeIfAbsent(new Complaint(c.id(), what), key -> new ArrayList<>())
                .add(making);
    }

    /** Wires, contacts and linkages may share a port; a pipe cannot be screwed on where one is. */
    private static void once(JoinReader.Link link, Machine.End end, Map<Machine.End, JoinReader.Link> joined) {
        JoinReader.Link first = joined.putIfAbsent(end, link);
        if (first != null && link.medium() == Medium.FLUID) {
            String place = first.node().line() == link.node().line()
                    ? "in this line"
                    : "first in line " + first.node().line();
            link.node()
                    .problemAt(
                            end.toString(),
                            "\"" + end + "\" is joined twice, " + place + "; three ways meet in a tee",
                            "");
        }
    }

    private void portsAreJoined(Component c, Making making, Set<Machine.End> joined) {
        for (Port p : c.kind().ports()) {
            boolean free = !joined.contains(new Machine.End(c.id(), p.name()));
            if (free && p.name().equals(EARTH) && c.kind().is(Trait.NEEDS_EARTH)) {
                complain(c, making, "live parts in metal: port \"earth\" must be wired to the earth of the machine");
            } else if (free && !p.optional()) {
                complain(
                        c,
                        making,
                        "port \"" + p.name() + "\" (" + p.meaning() + ") is joined to nothing; it belongs under "
                                + p.medium().section());
            }
        }
    }

    private void isScrewedIn(
            Component c, Making making, List<Component> components, Map<Machine.End, JoinReader.Link> joined) {
        for (Port p : c.kind().ports()) {
            JoinReader.Link link = joined.get(new Machine.End(c.id(), p.name()));
            if (p.screwed() && link != null) {
                String other = (link.from().component().equals(c.id()) ? link.to() : link.from()).component();
                boolean boiler = components.stream()
                        .anyMatch(o -> o.id().equals(other) && o.kind().is(Trait.CLOSED_VESSEL));
                if (!boiler || !link.isFitting()) {
                    complain(
                            c,
                            making,
                            "port \"" + p.name() + "\" looks into a boiler and is screwed straight into it: join"
                                    + " it to a port of a boiler, with no pipe and no part between");
                }
            }
        }
    }

    /** From the vessel along lines and through parts, but through none that can shut. */
    private static boolean reachesRelief(Component vessel, List<Component> components, List<JoinReader.Link> links) {
        Map<String, Declaration> kinds = new HashMap<>();
        components.forEach(c -> kinds.put(c.id(), c.kind()));
        Set<String> seen = new HashSet<>(Set.of(vessel.id()));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String at = open.pop();
            if (kinds.get(at).is(Trait.RELIEF)) {
                return true;
            }
            if (!kinds.get(at).is(Trait.SHUTS)) {
                links.stream().filter(l -> l.medium() == Medium.FLUID).forEach(l -> {
                    step(l.from(), l.to(), at, seen, open);
                    step(l.to(), l.from(), at, seen, open);
                });
            }
        }
        return false;
    }

    private static void step(Machine.End from, Machine.End to, String at, Set<String> seen, Deque<String> open) {
        if (from.component().equals(at) && seen.add(to.component())) {
            open.push(to.component());
        }
    }
}
