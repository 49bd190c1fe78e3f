package wetside.cabinet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.drawing.PartNumbers;
import wetside.machine.Body;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Side;

/** The case of a machine with the parts that have a place in it. */
public final class Cabinet {
    /** Sides every case is drawn from, in the order they are shown. */
    public static final List<Side> SIDES = List.of(Side.REAR, Side.RIGHT, Side.LEFT, Side.TOP, Side.FRONT);

    /** A wall as near as the nearest within this counts as nearest too [m]. */
    private static final double AS_NEAR = 0.005;

    private final Machine machine;
    private final MachineFile.Case size;
    private final Map<String, Fitted> parts = new LinkedHashMap<>();
    private final Map<Side, View> views = new EnumMap<>(Side.class);

    private Cabinet(MachineFile file, Machine machine, MachineFile.Case size) {
        this.machine = machine;
        this.size = size;
        PartNumbers numbers = PartNumbers.of(file);
        for (Component c : machine.components()) {
            Optional<Body> body = Body.of(c, Optional.of(size));
            if (body.isPresent() && numbers.of(c.id()).isPresent()) {
                parts.put(c.id(), fitted(numbers.of(c.id()).getAsInt(), c, body.get()));
            }
        }
    }

    /**
     * @param file    for the measures of the case and for numbers that stay from one revision to the next
     * @param machine one of the file's, in any revision and installation
     * @return empty when the file gives no measures of the case
     */
    public static Optional<Cabinet> of(MachineFile file, Machine machine) {
        return file.size().map(size -> new Cabinet(file, machine, size));
    }

    private Fitted fitted(int number, Component c, Body body) {
        List<Machine.Panel> behind = new ArrayList<>();
        for (String id : c.place().behind()) {
            machine.identity().panels().stream().filter(p -> p.id().equals(id)).forEach(behind::add);
        }
        Set<Side> home = EnumSet.noneOf(Side.class);
        Fitted nowhere = new Fitted(number, c, body, behind, home);
        behind.forEach(p -> home.addAll(nearest(nowhere, p.sides())));
        return home.isEmpty() ? new Fitted(number, c, body, behind, nearest(nowhere, SIDES)) : nowhere;
    }

    private Set<Side> nearest(Fitted part, List<Side> sides) {
        double least = Double.POSITIVE_INFINITY;
        for (Side side : sides) {
            least = Math.min(least, part.distance(side, room(side)));
        }
        Set<Side> nearest = EnumSet.noneOf(Side.class);
        for (Side side : sides) {
            if (part.distance(side, room(side)) <= least + AS_NEAR) {
                nearest.add(side);
            }
        }
        return nearest;
    }

    private double room(Side side) {
        return size.along(side.axis());
    }

    /** Of a part from a wall [m]. */
    double distance(Fitted part, Side side) {
        return part.distance(side, room(side));
    }

    public Machine machine() {
        return machine;
    }

    public MachineFile.Case size() {
        return size;
    }

    /** Parts with a place, in the order of their numbers. */
    public List<Fitted> parts() {
        return List.copyOf(parts.values());
    }

    public Optional<Fitted> part(String id) {
        return Optional.ofNullable(parts.get(id));
    }

    /** What a panel hides. */
    public List<Fitted> hiddenBy(Machine.Panel panel) {
        return parts.values().stream().filter(p -> p.behind().contains(panel)).toList();
    }

    /** Names of what is behind a panel although the file does not say where. */
    public List<String> somewhereBehind(Machine.Panel panel) {
        return machine.components().stream()
                .filter(c -> c.place().behind().contains(panel.id()) && !parts.containsKey(c.id()))
                .map(Component::name)
                .toList();
    }

    /** What is reached without taking off a panel. */
    public List<Fitted> open() {
        return parts.values().stream().filter(p -> p.behind().isEmpty()).toList();
    }

    /** Panels on a side. */
    public List<Machine.Panel> panels(Side side) {
        return machine.identity().panels().stream()
                .filter(p -> p.sides().contains(side))
                .toList();
    }

    /** The sides it is drawn from: {@link #SIDES}, and from below where a panel comes off there. */
    public List<Side> sides() {
        List<Side> sides = new ArrayList<>(SIDES);
        if (!panels(Side.BOTTOM).isEmpty()) {
            sides.add(Side.BOTTOM);
        }
        return sides;
    }

    /** What is seen from a side with its panels off. */
    public View from(Side side) {
        return views.computeIfAbsent(side, s -> new View(this, s));
    }

    /** The side a part is best shown from: where it is looked for and least hidden. */
    public Side best(Fitted part) {
        Side best = part.home().iterator().next();
        double most = -1;
        for (Side side : part.home()) {
            double free = from(side).free(part);
            if (free > most + 1e-9) {
                best = side;
                most = free;
            }
        }
        return best;
    }

    /** Parts by the way to them, in words. */
    public Map<String, List<Fitted>> ways(List<Fitted> parts) {
        Map<String, List<Fitted>> ways = new LinkedHashMap<>();
        parts.forEach(p ->
                ways.computeIfAbsent(reach(p).words(), way -> new ArrayList<>()).add(p));
        return ways;
    }

    /** How to get at a part. */
    public Reach reach(Fitted part) {
        return new ReachSearch(this).to(part);
    }
}
