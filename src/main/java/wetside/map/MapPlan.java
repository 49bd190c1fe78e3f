package wetside.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wetside.drawing.PartNumbers;
import wetside.drawing.symbol.Symbol;
import wetside.drawing.symbol.Symbols;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;

/** What a map of some layers shows: its parts in the order of the machine file, and the ways between them. */
public final class MapPlan {
    /** Terminals joined by more wires than this are a rail, shown by its name at each of them. */
    private static final int MOST_WIRES = 2;

    /** Earth and what leads back, whose lines would cross all others, become rails sooner. */
    private static final Set<String> RETURNS = Set.of("", "N", "−");

    private final Owned owned;
    private final PartNumbers numbers;
    private final List<Way> ways = new ArrayList<>();
    private final List<Way> told;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<Machine.End, Rail> railAt = new LinkedHashMap<>();
    private final Set<Layer> layers;

    /**
     * A part on the map.
     *
     * @param inside parts that touch its water or metal and have no place of their own on this map
     */
    record Part(Component component, int number, List<Component> inside) {}

    /** A conductor that many terminals share. */
    record Rail(String name, boolean earth) {}

    private MapPlan(Owned owned, PartNumbers numbers, Set<Layer> layers) {
        this.owned = owned;
        this.numbers = numbers;
        this.layers = layers;
        Media media = new Media(owned);
        Ways.of(owned, media).stream().filter(this::isShown).forEach(ways::add);
        rails(media);
        ways.removeIf(w -> railAt.containsKey(w.from()) && railAt.containsKey(w.to()));
        for (Component c : owned.machine().components()) {
            if (ways.stream().anyMatch(w -> isAt(w.from(), c) || isAt(w.to(), c))
                    || railAt.keySet().stream().anyMatch(e -> isAt(e, c))) {
                parts.put(c.id(), new Part(c, numbers.of(c.id()).orElseThrow(), List.of()));
            }
        }
        told = List.copyOf(ways);
        ways.replaceAll(w -> isBackwards(w) ? w.turned() : w);
        if (isWet()) {
            parts.replaceAll((id, p) -> isVessel(p) ? new Part(p.component(), p.number(), inside(p)) : p);
        }
    }

    static MapPlan of(Machine machine, PartNumbers numbers, Set<Layer> layers) {
        return of(new Owned(machine), numbers, layers);
    }

    static MapPlan of(Owned owned, PartNumbers numbers, Set<Layer> layers) {
        return new MapPlan(owned, numbers, layers);
    }

    private static boolean isAt(Machine.End end, Component c) {
        return end.component().equals(c.id());
    }

    /** Signal wires go with the wires that feed things; capillaries with what is in them. */
    private boolean isShown(Way w) {
        boolean wet = layers.contains(Layer.WATER) || layers.contains(Layer.STEAM) || layers.contains(Layer.DRAIN);
        boolean only = w.layer() != Layer.SENSING || !w.wire() || layers.contains(Layer.CURRENT) || !wet;
        boolean capillary = w.layer() != Layer.SENSING || w.wire() || wet || !layers.contains(Layer.CURRENT);
        return layers.contains(w.layer()) && only && capillary;
    }

    boolean isWet() {
        return ways.stream().anyMatch(w -> !w.wire());
    }

    /** What joins many terminals: lines to each would hide all else. */
    private void rails(Media media) {
        Map<Integer, List<Machine.End>> nets = new LinkedHashMap<>();
        Map<Integer, Integer> wires = new TreeMap<>();
        for (Way w : ways) {
            if (w.wire() && w.from().component().equals(w.to().component())) {
                continue;
            }
            if (w.wire()) {
                for (Machine.End e : List.of(w.from(), w.to())) {
                    List<Machine.End> ends = nets.computeIfAbsent(media.terminal(e), n -> new ArrayList<>());
                    if (!ends.contains(e)) {
                        ends.add(e);
                    }
                }
                if (media.terminal(w.from()) == media.terminal(w.to())) {
                    wires.merge(media.terminal(w.from()), 1, Integer::sum);
                }
            }
        }
        Map<String, Integer> used = new LinkedHashMap<>();
        nets.forEach((net, ends) -> {
            boolean earth = media.isEarth(ends.get(0));
            String word = earth ? "" : word(ends);
            int most = RETURNS.contains(word) ? 1 : MOST_WIRES;
            if (wires.getOrDefault(net, 0) > most) {
                int count = used.merge(word, 1, Integer::sum);
                Rail rail = new Rail(count == 1 || earth ? word : word + count, earth);
                ends.forEach(e -> railAt.put(e, rail));
            }
        });
    }

    private static String word(List<Machine.End> ends) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("neutral", "N");
        words.put("minus", "−");
        words.put("plus", "+");
        words.put("common", "C");
        words.put("line", "L");
        return words.entrySet().stream()
                .filter(w -> ends.stream().anyMatch(e -> e.port().contains(w.getKey())))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("W");
    }

    private static boolean isVessel(Part p) {
        return Symbols.of(p.component().kind().name())
                .filter(s -> s.form() == Symbol.Form.VESSEL)
                .isPresent();
    }

    /** What has a heat contact with the part and no place of its own. */
    private List<Component> inside(Part p) {
        return owned.machine().joins().contacts().stream()
                .filter(j -> isAt(j.from(), p.component()) || isAt(j.to(), p.component()))
                .map(j -> isAt(j.from(), p.component()) ? j.to() : j.from())
                .map(e -> owned.machine().component(e.component()))
                .filter(c -> !parts.containsKey(c.id()))
                .distinct()
                .toList();
    }

    /** A part of two ports that both lead to the same other part hangs beside that. */
    boolean isHung(String component) {
        Component c = owned.machine().component(component);
        List<Way> own =
                told.stream().filter(w -> isAt(w.from(), c) || isAt(w.to(), c)).toList();
        return own.size() == 2
                && own.get(0).wire() == own.get(1).wire()
                && portsFor(c, own.get(0).wire()) == 2
                && far(own.get(0), c).equals(far(own.get(1), c))
                && !far(own.get(0), c).equals(component);
    }

    /** What two parts have between them runs both ways: it is drawn from the one with more terminals. */
    private boolean isBackwards(Way w) {
        String from = w.from().component();
        String to = w.to().component();
        if (isHung(from) && !isHung(to)) {
            return true;
        }
        return w.wire()
                && terminals(from) < terminals(to)
                && told.stream()
                        .anyMatch(o -> o.wire()
                                && o.from().component().equals(to)
                                && o.to().component().equals(from));
    }

    private long terminals(String component) {
        return portsFor(owned.machine().component(component), true);
    }

    private static long portsFor(Component c, boolean wire) {
        Medium medium = wire ? Medium.CURRENT : Medium.FLUID;
        return c.kind().ports().stream().filter(p -> p.medium() == medium).count();
    }

    private static String far(Way w, Component c) {
        return isAt(w.from(), c) ? w.to().component() : w.from().component();
    }

    Machine machine() {
        return owned.machine();
    }

    Owned owned() {
        return owned;
    }

    /** As they are drawn: some turned, so that what hangs on a part stands behind it. */
    List<Way> ways() {
        return ways;
    }

    /** As they flow. */
    List<Way> told() {
        return told;
    }

    Map<String, Part> parts() {
        return parts;
    }

    PartNumbers numbers() {
        return numbers;
    }

    Map<Machine.End, Rail> rails() {
        return railAt;
    }

    Set<Layer> layers() {
        return layers;
    }

    /** Ports of a part that something shown is joined to, in the order of its kind. */
    List<Machine.End> ends(Part p) {
        return p.component().kind().ports().stream()
                .map(port -> new Machine.End(p.component().id(), port.name()))
                .filter(e -> railAt.containsKey(e) || ways.stream().anyMatch(w -> w.touches(e)))
                .toList();
    }
}
