package wetside.tour;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.machine.Component;
import wetside.machine.Machine;

/**
 * Goes along {@link CurrentWays}: from the line through each load back to where the neutral is waiting; then low voltage
 * from where it is made, what only tells, and earth.
 */
final class CurrentWalk {
    private final CurrentWays ways;
    private final Set<String> seen = new HashSet<>();
    private final Set<Integer> passed = new HashSet<>();
    private final Deque<String> behind = new ArrayDeque<>();
    private boolean sensing;
    private boolean earthed;

    CurrentWalk(CurrentWays ways) {
        this.ways = ways;
    }

    List<Visit> mains() {
        List<Visit> visits = new ArrayList<>();
        ways.mains().forEach((c, net) -> visits.add(start(c, List.of(net))));
        return visits;
    }

    List<Visit> lowVoltage() {
        List<Visit> visits = new ArrayList<>();
        ways.supplies().forEach((c, net) -> visits.add(start(c, List.of(net))));
        return visits;
    }

    /** What is left: from each part that has been met, along wires no current was followed through yet. */
    List<Visit> sensing() {
        sensing = true;
        List<Visit> visits = new ArrayList<>();
        for (Component c : ways.machine().components()) {
            List<Integer> left = ways.nets(c).stream()
                    .filter(n -> !ways.isEarth(n) && !passed.contains(n))
                    .toList();
            if (seen.contains(c.id()) && !left.isEmpty()) {
                Visit visit = start(c, left);
                if (!visit.on.isEmpty()) {
                    visits.add(visit);
                }
            }
        }
        return visits;
    }

    List<Visit> earth() {
        sensing = false;
        earthed = true;
        List<Visit> visits = new ArrayList<>();
        for (Component c : ways.mains().keySet()) {
            visits.add(start(c, ways.earths(c).stream().map(ways::net).toList()));
        }
        return visits;
    }

    private Visit start(Component c, List<Integer> nets) {
        Visit visit = new Visit(c, seen.add(c.id()) ? Visit.Sort.FIRST : Visit.Sort.AGAIN);
        go(visit, nets);
        return visit;
    }

    private void go(Visit visit, List<Integer> nets) {
        behind.push(visit.part.id());
        record Next(Visit closed, Machine.End to, int size) {}
        List<Next> next = new ArrayList<>();
        for (int net : nets) {
            if (ways.isEarth(net) != earthed && !(sensing && closes(net, visit.part))) {
                continue;
            }
            List<Machine.End> others = ways.others(net, visit.part);
            Optional<String> back = closedBy(net, visit.part);
            if (back.isPresent()) {
                if (!ways.isEarth(net)) {
                    passed.add(net);
                }
                next.add(new Next(back(back.get(), net), null, 0));
            } else if (passed.add(net)) {
                others.stream().filter(ways::takesIn).forEach(e -> next.add(new Next(null, e, reach(e))));
            }
        }
        next.stream()
                .sorted(Comparator.comparingInt(Next::size))
                .forEach(n -> visit.on.add(n.closed() != null ? n.closed() : arrive(n.to())));
        behind.pop();
    }

    /** Where a circuit comes back to: through that part it may go on by another pole. */
    private Visit back(String id, int net) {
        Component c = ways.machine().component(id);
        List<Integer> fresh = ways.exits(c, net).stream()
                .filter(n -> !ways.isEarth(n) && !passed.contains(n))
                .toList();
        Visit visit = new Visit(c, fresh.isEmpty() ? Visit.Sort.RING : Visit.Sort.AGAIN);
        if (!fresh.isEmpty()) {
            go(visit, fresh);
        }
        return visit;
    }

    private boolean closes(int net, Component from) {
        return closedBy(net, from).isPresent();
    }

    /** The part a circuit comes back to: of those on the net the one it began with, or passed first. */
    private Optional<String> closedBy(int net, Component from) {
        List<String> there =
                ways.others(net, from).stream().map(Machine.End::component).toList();
        Iterable<String> firstToLast = behind::descendingIterator;
        for (String id : firstToLast) {
            if (there.contains(id)) {
                return Optional.of(id);
            }
        }
        return Optional.empty();
    }

    private Visit arrive(Machine.End at) {
        Component c = ways.machine().component(at.component());
        int entry = ways.net(at);
        List<Integer> exits = ways.exits(c, entry);
        if (seen.add(c.id())) {
            Visit visit = new Visit(c, Visit.Sort.FIRST);
            go(visit, exits);
            return visit;
        }
        List<Integer> fresh = exits.stream().filter(n -> !passed.contains(n)).toList();
        if (behind.contains(c.id()) || fresh.isEmpty()) {
            return new Visit(c, behind.contains(c.id()) ? Visit.Sort.RING : Visit.Sort.MEETS);
        }
        Visit visit = new Visit(c, Visit.Sort.AGAIN);
        go(visit, fresh);
        return visit;
    }

    /** How many parts lie ahead that have not been seen. */
    private int reach(Machine.End from) {
        Map<String, Integer> entered = new LinkedHashMap<>();
        Deque<Machine.End> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            Machine.End at = open.pop();
            if (seen.contains(at.component()) || entered.putIfAbsent(at.component(), 1) != null) {
                continue;
            }
            Component c = ways.machine().component(at.component());
            for (int net : ways.exits(c, ways.net(at))) {
                if (!ways.isEarth(net) && !passed.contains(net) && !closes(net, c)) {
                    ways.others(net, c).stream().filter(ways::takesIn).forEach(open::push);
                }
            }
        }
        return entered.size();
    }
}
