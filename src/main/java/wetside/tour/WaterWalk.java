package wetside.tour;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Installation;
import wetside.machine.Machine;

/** Goes along {@link WaterWays} and notes each part where it is met first; short ways before long ones. */
final class WaterWalk {
    private final WaterWays ways;
    private final Set<String> seen = new HashSet<>();
    private final Set<Machine.End> taken = new HashSet<>();
    private final Deque<String> behind = new ArrayDeque<>();
    /** Parts that a way still to come leads to. */
    private Set<String> kept = new HashSet<>();

    private boolean steam;
    private boolean asked;

    WaterWalk(WaterWays ways) {
        this.ways = ways;
    }

    /** From where the machine is fed; where it has no such source, from the one it has. */
    List<Visit> water(Installation.Feed feed) {
        List<Machine.End> sources = ways.sources(feed == Installation.Feed.MAINS);
        if (sources.isEmpty()) {
            sources = ways.sources(feed != Installation.Feed.MAINS);
        }
        return sources.stream()
                .map(Machine.End::component)
                .distinct()
                .filter(id -> !seen.contains(id))
                .map(id -> start(id, sourcesOf(id)))
                .toList();
    }

    private List<WaterWays.Exit> sourcesOf(String id) {
        List<Machine.End> all = new ArrayList<>(ways.sources(true));
        all.addAll(ways.sources(false));
        return all.stream()
                .filter(end -> end.component().equals(id))
                .flatMap(this::outOf)
                .toList();
    }

    private java.util.stream.Stream<WaterWays.Exit> outOf(Machine.End end) {
        return ways.across(end).stream().filter(ways::takesIn).map(to -> new WaterWays.Exit(end, to, false));
    }

    /** From every vessel in which steam stands above water; where there is none, from what makes steam when asked to. */
    List<Visit> steam() {
        steam = true;
        List<Visit> visits = new ArrayList<>();
        for (Component c : ways.machine().components()) {
            List<Machine.End> ports = ways.steamPorts(c);
            if (!ports.isEmpty()) {
                visits.add(start(c.id(), ports.stream().flatMap(this::outOf).toList()));
            }
        }
        return visits.isEmpty() ? whenAsked() : visits;
    }

    private List<Visit> whenAsked() {
        asked = true;
        List<Visit> visits = new ArrayList<>();
        for (Component c : ways.machine().components()) {
            List<WaterWays.Exit> exits = ways.outs(c).stream()
                    .flatMap(this::outOf)
                    .filter(e -> leadsToSteam(e.to()))
                    .toList();
            if (!exits.isEmpty() && !words(c).turns().isEmpty()) {
                visits.add(start(c.id(), exits));
            }
        }
        return visits;
    }

    private static Words.OnTour words(Component c) {
        return Words.of(c.kind().name()).tour();
    }

    /** Something further on is made for steam. */
    private boolean leadsToSteam(Machine.End in) {
        return ahead(in).stream().map(id -> ways.machine().component(id)).anyMatch(WaterWalk::isForSteam);
    }

    private static boolean isForSteam(Component c) {
        return !words(c).steam().isEmpty() && words(c).turns().isEmpty();
    }

    /** From every part that lets something off, in the order of the machine file. */
    List<Visit> drain() {
        List<Visit> visits = new ArrayList<>();
        for (Component c : ways.machine().components()) {
            if (ways.letsOff(c)) {
                List<WaterWays.Exit> exits = c.kind().ports().stream()
                        .map(p -> new Machine.End(c.id(), p.name()))
                        .filter(ways::isSpent)
                        .flatMap(this::outOf)
                        .toList();
                visits.add(start(c.id(), exits));
            }
        }
        return visits;
    }

    private Visit start(String id, List<WaterWays.Exit> exits) {
        Visit visit = new Visit(ways.machine().component(id), seen.add(id) ? Visit.Sort.FIRST : Visit.Sort.AGAIN);
        go(visit, exits);
        return visit;
    }

    private void go(Visit visit, List<WaterWays.Exit> exits) {
        behind.push(visit.part.id());
        List<WaterWays.Exit> fresh =
                exits.stream().filter(e -> !taken.contains(e.from())).toList();
        fresh.forEach(e -> taken.add(e.from()));
        List<WaterWays.Exit> ordered = ordered(fresh);
        for (int i = 0; i < ordered.size(); i++) {
            WaterWays.Exit exit = ordered.get(i);
            Set<String> before = keep(ordered.subList(i + 1, ordered.size()));
            visit.on.add(arrive(exit.to(), exit.circulates() || visit.circulating));
            kept = before;
        }
        behind.pop();
    }

    /** Keeps what longer ways come to as well for those; gives what was kept until now. */
    private Set<String> keep(List<WaterWays.Exit> later) {
        Set<String> before = kept;
        kept = new HashSet<>(kept);
        later.forEach(e -> kept.addAll(ahead(e.to())));
        return before;
    }

    private Visit arrive(Machine.End at, boolean circulating) {
        taken.add(at);
        Visit visit = arrival(at);
        visit.circulating = circulating;
        go(visit, onwards(at, visit));
        return visit;
    }

    private Visit arrival(Machine.End at) {
        Component c = ways.machine().component(at.component());
        if (kept.contains(c.id()) && !seen.contains(c.id())) {
            return new Visit(c, Visit.Sort.LATER);
        }
        if (seen.add(c.id())) {
            return new Visit(c, Visit.Sort.FIRST);
        }
        boolean passed = behind.contains(c.id());
        if (untaken(at).isEmpty() || steam && passed) {
            return new Visit(c, passed ? Visit.Sort.RING : Visit.Sort.MEETS);
        }
        return new Visit(c, Visit.Sort.AGAIN);
    }

    private List<WaterWays.Exit> onwards(Machine.End at, Visit visit) {
        return visit.isReference() ? List.of() : untaken(at);
    }

    private List<WaterWays.Exit> untaken(Machine.End at) {
        // Past a tap made for steam everything belongs to it.
        boolean before = asked
                && !isForSteam(ways.machine().component(at.component()))
                && behind.stream().noneMatch(id -> isForSteam(ways.machine().component(id)));
        return ways.exits(at).stream()
                .filter(e -> !taken.contains(e.from()))
                .filter(e -> !before || leadsToSteam(e.to()))
                .toList();
    }

    /** Rings first, then what is let off, then short ways; the longest is the main way. */
    private List<WaterWays.Exit> ordered(List<WaterWays.Exit> exits) {
        Map<WaterWays.Exit, Integer> sizes = new HashMap<>();
        exits.forEach(e -> sizes.put(e, reach(e)));
        return exits.stream()
                .sorted(Comparator.comparing((WaterWays.Exit e) -> !e.circulates())
                        .thenComparing(e -> sizes.get(e))
                        .thenComparing(e -> !ways.isSpent(e.from())))
                .toList();
    }

    /** How many parts lie ahead that have not been seen. */
    private int reach(WaterWays.Exit exit) {
        return (int) ahead(exit.to()).stream().filter(id -> !seen.contains(id)).count();
    }

    /** The part entered and all that can be reached from it without a way that was taken. */
    private Set<String> ahead(Machine.End in) {
        Set<Machine.End> entered = new HashSet<>();
        Set<String> parts = new HashSet<>();
        Deque<Machine.End> open = new ArrayDeque<>(List.of(in));
        while (!open.isEmpty()) {
            Machine.End at = open.pop();
            if (entered.add(at)) {
                parts.add(at.component());
                ways.exits(at).stream().filter(e -> !taken.contains(e.from())).forEach(e -> open.push(e.to()));
            }
        }
        return parts;
    }
}
