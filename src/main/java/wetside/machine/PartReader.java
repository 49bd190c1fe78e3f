package wetside.machine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.units.Dimension;
import wetside.units.Display;

/** Reads the components of a machine file, each as it is in one making. */
final class PartReader {
    static final String ONLY_IN = "only in revisions";
    static final String ONLY_FOR = "only built for";
    static final String BUILT_FOR = "built for ";

    private static final List<String> SIDES = List.of("wide", "deep", "high");
    /** Sheet and rounding [m]. */
    private static final double SLACK = 1e-3;

    private static final String IN_REVISION = "in revision ";
    private static final List<String> CHANGEABLE = List.of("set", "part", "mark", "at", "size", "behind");
    private static final List<String> KNOWN = List.of(
            "kind", "name", "roles", "station", "at", "size", "behind", "mark", "part", "set", ONLY_IN, ONLY_FOR);

    private final Map<String, Node> nodes;
    private final Map<String, Declaration> kindOf = new LinkedHashMap<>();
    private final Map<String, Making.Presence> presence = new LinkedHashMap<>();
    private final Surrounds around;
    private boolean makingsKnown = true;

    /** What parts refer to. */
    record Surrounds(
            Optional<MachineFile.Case> size,
            List<Machine.Panel> panels,
            List<String> revisions,
            List<String> supplies) {}

    PartReader(Map<String, Node> nodes, Map<String, Declaration> kinds, Surrounds around) {
        this.nodes = nodes;
        this.around = around;
        nodes.forEach((id, node) -> {
            if (!id.matches("[a-z0-9][a-z0-9-]*")) {
                node.unknown("\"" + id + "\": a component is named with small letters, digits and hyphens", "");
            }
            node.only(KNOWN, key -> key.startsWith(IN_REVISION) || key.startsWith(BUILT_FOR));
            presence.put(id, presence(node));
            kind(node, kinds).ifPresent(kind -> kindOf.put(id, kind));
            overrides(node);
        });
    }

    private static Optional<Declaration> kind(Node node, Map<String, Declaration> kinds) {
        String said = node.isMap() ? node.text("kind") : "";
        if (!said.isEmpty() && !kinds.containsKey(said)) {
            String near = Wording.nearest(said, kinds.keySet());
            node.need("kind")
                    .problem(
                            "there is no kind \"" + said + "\""
                                    + (near.isEmpty() ? "; " + Wording.thereAre(kinds.keySet()) : ""),
                            near);
        }
        return Optional.ofNullable(kinds.get(said));
    }

    private void overrides(Node node) {
        if (!node.isMap()) {
            return;
        }
        node.entries().forEach((key, child) -> {
            if (key.startsWith(IN_REVISION)) {
                override(child, "revision", key.substring(IN_REVISION.length()), around.revisions());
            } else if (key.startsWith(BUILT_FOR)) {
                override(child, "supply", key.substring(BUILT_FOR.length()), around.supplies());
            }
        });
    }

    private static void override(Node child, String sort, String name, List<String> all) {
        if (!all.contains(name)) {
            child.unknown(none(sort, name, all), Wording.nearest(name, all));
        }
        child.only(CHANGEABLE, other -> false);
    }

    /** The makings something is in: those it names, or all. */
    Making.Presence presence(Node node) {
        return new Making.Presence(
                named(node, ONLY_IN, "revision", around.revisions()),
                named(node, ONLY_FOR, "supply", around.supplies()));
    }

    private List<String> named(Node node, String key, String sort, List<String> all) {
        Node named = node.find(key).orElse(null);
        if (named == null) {
            return all;
        }
        List<String> said = named.texts();
        said.stream().filter(r -> !all.contains(r)).forEach(r -> {
            makingsKnown = false;
            named.problemAt(r, none(sort, r, all), Wording.nearest(r, all));
        });
        return said;
    }

    private static String none(String sort, String name, List<String> all) {
        return all.equals(List.of(""))
                ? "this file has no section \"built for\""
                : "there is no " + sort + " \"" + name + "\"; " + Wording.thereAre(all);
    }

    Node node(String id) {
        return nodes.get(id);
    }

    Map<String, Node> nodes() {
        return nodes;
    }

    /** The kind of a component, empty when there is no such component or its kind is unknown. */
    Optional<Declaration> kind(String id) {
        return Optional.ofNullable(kindOf.get(id));
    }

    boolean isIn(String id, Making making) {
        return presence.containsKey(id) && presence.get(id).in(making);
    }

    /** True when every component's kind and every revision and supply named are known, so that what is missing is really missing. */
    boolean complete() {
        return kindOf.size() == nodes.size() && makingsKnown;
    }

    List<Component> components(Making making) {
        List<Component> components = new ArrayList<>();
        kindOf.forEach((id, kind) -> {
            if (isIn(id, making)) {
                components.add(component(id, kind, making));
            }
        });
        return components;
    }

    private Component component(String id, Declaration kind, Making making) {
        Node base = nodes.get(id);
        List<Node> layers = new ArrayList<>(List.of(base));
        base.find(IN_REVISION + making.revision()).ifPresent(layers::add);
        base.find(BUILT_FOR + making.supply()).ifPresent(layers::add);
        double[] values = new double[kind.parameters().size()];
        Spread[] spreads = new Spread[values.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = kind.parameters().get(i).usual();
            spreads[i] = kind.parameters().get(i).spread();
        }
        layers.forEach(layer -> layer.find("set").ifPresent(set -> apply(set, kind, values, spreads)));
        missing(base, kind, values);
        Component component = new Component(id, kind, values, spreads, place(id, layers));
        last(layers, "at").ifPresent(at -> fits(at, component));
        return component;
    }

    private static void apply(Node set, Declaration kind, double[] values, Spread[] spreads) {
        List<String> names = kind.parameters().stream().map(Parameter::name).toList();
        set.entries().forEach((name, node) -> {
            int i = names.indexOf(name);
            if (i < 0 && node.isNothing() && name.matches("\\d.*")) {
                node.unknown("a comma begins a new entry; the decimal sign is a point", "");
                return;
            }
            if (i < 0) {
                node.unknown(
                        "a " + kind.name() + " has no \"" + name + "\""
                                + (names.isEmpty() ? "" : "; it has " + Wording.inWords(names)),
                        Wording.nearest(name, names));
                return;
            }
            Amount amount = node.amount(kind.parameters().get(i).dimension());
            if (amount == null) {
                values[i] = kind.parameters().get(i).min();
                return;
            }
            values[i] = Double.isNaN(amount.si()) ? values[i] : amount.si();
            spreads[i] = amount.spread() == null ? spreads[i] : amount.spread();
            inRange(node, kind, kind.parameters().get(i), values[i]);
        });
    }

    private static void inRange(Node node, Declaration kind, Parameter p, double value) {
        double slack = 1e-9 * Math.max(Math.abs(p.min()), Math.abs(value));
        if (value < p.min() - slack || value > p.max() + slack) {
            node.problem("\"" + node.text() + "\" makes no sense: " + p.name() + " of a " + kind.name()
                    + " lies between " + shown(p.min(), p.dimension()) + " and " + shown(p.max(), p.dimension()));
        }
    }

    static String shown(double si, Dimension dimension) {
        return Display.METRIC.print(si, dimension);
    }

    private static void missing(Node base, Declaration kind, double[] values) {
        for (int i = 0; i < values.length; i++) {
            Parameter p = kind.parameters().get(i);
            if (Double.isNaN(values[i])) {
                base.unknown(
                        "a " + kind.name() + " needs \"" + p.name() + "\" in its set ("
                                + p.dimension().article() + ": " + p.meaning() + ")",
                        "");
            }
        }
    }

    private Component.Place place(String id, List<Node> layers) {
        Node base = layers.get(0);
        String name = base.text("name", id.replace('-', ' '));
        return new Component.Place(
                name,
                last(layers, "at").map(this::position).orElse(List.of()),
                last(layers, "size").map(PartReader::size).orElse(List.of()),
                last(layers, "behind").map(this::behind).orElse(List.of()),
                last(layers, "mark").map(Node::text).orElse(""),
                last(layers, "part").map(Node::text).orElse(""),
                base.texts("roles"),
                base.text("station", ""));
    }

    private static Optional<Node> last(List<Node> layers, String name) {
        return layers.stream().flatMap(l -> l.find(name).stream()).reduce((a, b) -> b);
    }

    private List<String> behind(Node node) {
        List<String> panels = around.panels().stream().map(Machine.Panel::id).toList();
        List<String> said = node.texts();
        said.stream()
                .filter(p -> !panels.contains(p))
                .forEach(p -> node.problemAt(
                        p, "there is no panel \"" + p + "\"; " + Wording.thereAre(panels), Wording.nearest(p, panels)));
        return said;
    }

    private List<Double> position(Node node) {
        List<Double> xyz =
                node.items().stream().map(n -> n.quantity(Dimension.LENGTH)).toList();
        if (node.isList() && xyz.size() != 3) {
            node.problem("a place is three lengths: from the left, from the rear, from the bottom of the case");
            return List.of();
        }
        around.size().ifPresent(size -> inside(node, xyz, List.of(size.width(), size.depth(), size.height())));
        return xyz;
    }

    private static void inside(Node node, List<Double> xyz, List<Double> size) {
        for (int i = 0; i < xyz.size(); i++) {
            if (xyz.get(i) < -1e-9 || xyz.get(i) > size.get(i) + 1e-9) {
                node.items()
                        .get(i)
                        .problem("this is outside the case, which is " + shown(size.get(i), Dimension.LENGTH) + " "
                                + SIDES.get(i) + "; parts outside it have no \"at\"");
            }
        }
    }

    private static List<Double> size(Node node) {
        List<Double> size =
                node.items().stream().map(n -> n.quantity(Dimension.LENGTH)).toList();
        if (node.isList() && size.size() != 3) {
            node.problem("a size is three lengths: width, depth, height");
            return List.of();
        }
        for (int i = 0; i < size.size(); i++) {
            if (!(size.get(i) >= 1e-3 && size.get(i) <= 5)) {
                node.items().get(i).problem("a part measures between 1 mm and 5 m");
                return List.of();
            }
        }
        return size;
    }

    /** The whole part must be in the case, not only its middle. */
    private void fits(Node at, Component c) {
        Body body = Body.of(c, around.size()).orElse(null);
        if (body == null || around.size().isEmpty() || !at.isList()) {
            return;
        }
        for (int i = 0; i < 3; i++) {
            double room = around.size().get().along(i);
            double half = body.size(i) / 2;
            double middle = body.middle(i);
            if (!(room > 0)
                    || middle < 0
                    || middle > room
                    || (middle - half > -SLACK && middle + half < room + SLACK)) {
                continue; // it fits; or case or middle are wrong themselves, which has been told
            }
            String measure = shown(2 * half, Dimension.LENGTH) + " " + SIDES.get(i);
            String right = 2 * half > room
                    ? "the case is only " + shown(room, Dimension.LENGTH) + " " + SIDES.get(i)
                            + ", so say a smaller \"size\""
                    : "\"at\" is its middle and lies between " + shown(half, Dimension.LENGTH) + " and "
                            + shown(room - half, Dimension.LENGTH) + " here, or say a smaller \"size\"";
            at.items()
                    .get(i)
                    .problem("this " + c.kind().name() + " is " + measure + " and would stick out of the case: "
                            + right);
        }
    }
}
