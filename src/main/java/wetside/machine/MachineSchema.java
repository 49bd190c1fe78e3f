package wetside.machine;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import wetside.units.Dimension;

/**
 * The JSON Schema of machine files, for editors that complete and check while one writes. It knows every kind with its
 * parameters and units. What joins to what, ranges and dangers only the reader sees, so a file that passes here may
 * still be refused there.
 */
public final class MachineSchema {
    private static final String OVERRIDE = "^(in revision|built for) .+$";
    private static final String NUMBER = "[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?";
    private static final String TOLERANCE = "(±|\\+/-|\\+-)";
    private static final String END = "[a-z0-9][a-z0-9-]*\\.[^.:>~]+(:[^.:>~]+)?";
    private static final String JOIN = "^\\s*" + END + "(\\s*[>~]\\s*" + END + ")+\\s*$";

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final ObjectNode root = mapper.createObjectNode();
    private final ObjectNode defs = mapper.createObjectNode();

    private MachineSchema() {}

    /** The schema as text, ready to be saved as a file. */
    public static String json(Collection<Declaration> kinds) {
        return new MachineSchema().build(kinds);
    }

    private String build(Collection<Declaration> kinds) {
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Wetside machine file");
        closed(root, MachineFile.HEADER, "title", "components");
        ObjectNode p = root.putObject("properties");
        p.putObject(MachineFile.HEADER).put("const", MachineFile.VERSION).put("description", "version of this format");
        text(p.putObject("title"), "what the machine is called");
        text(p.putObject("about"), "a remark for people");
        size(p.putObject("case"));
        panels(p.putObject("panels"));
        revisions(p.putObject("revisions"));
        supplies(p.putObject("built for"));
        ObjectNode components = p.putObject("components").put("type", "object");
        components.put("additionalProperties", false);
        components
                .putObject("patternProperties")
                .putObject("^[a-z0-9][a-z0-9-]*$")
                .put("$ref", "#/$defs/component");
        for (Medium medium : Medium.values()) {
            joins(p.putObject(medium.section()), medium);
        }
        component(kinds);
        dimensions();
        root.set("$defs", defs);
        return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private void size(ObjectNode node) {
        closed(node, "width", "depth", "height").put("description", "outer measures");
        List.of("width", "depth", "height").forEach(s -> quantity(node.withObject("/properties"), s, Dimension.LENGTH));
    }

    private void panels(ObjectNode node) {
        node.put("type", "object").put("description", "what comes off to reach parts");
        ObjectNode panel = closed(node.putObject("additionalProperties"), "minutes");
        text(panel.putObject("properties").putObject("name"), "what it is called");
        quantity(panel.withObject("/properties"), "minutes", Dimension.NUMBER)
                .put("description", "to take it off and put it back");
        text(panel.withObject("/properties").putObject("caution"), "what to beware of");
        texts(panel.withObject("/properties").putObject("sides"), "sides it closes, where its id does not say so");
    }

    private void revisions(ObjectNode node) {
        node.put("type", "array").put("description", "oldest first; each lasts until the next begins");
        ObjectNode revision = closed(node.putObject("items"), "name", "from");
        ObjectNode p = revision.putObject("properties");
        text(p.putObject("name"), "what this state of making is called");
        p.putObject("from")
                .put("type", "string")
                .put("pattern", "^\\d{4}-\\d{2}$")
                .put("description", "first month built");
    }

    private void supplies(ObjectNode node) {
        node.put("type", "array").put("description", "mains supplies it is sold for, the usual one first");
        ObjectNode supply = closed(node.putObject("items"), "name", "voltage");
        text(supply.putObject("properties").putObject("name"), "what machines for it are called");
        quantity(supply.withObject("/properties"), "voltage", Dimension.VOLTAGE);
    }

    private void joins(ObjectNode node, Medium medium) {
        node.put("type", "array").put("description", "join ports for " + medium.inWords());
        ArrayNode shapes = node.putObject("items").putArray("anyOf");
        shapes.addObject().put("type", "string").put("pattern", JOIN);
        ObjectNode map = closed(shapes.addObject(), "join");
        ObjectNode p = map.putObject("properties");
        p.putObject("join").put("type", "string").put("pattern", JOIN);
        texts(p.putObject(PartReader.ONLY_IN), "revisions it is in");
        texts(p.putObject(PartReader.ONLY_FOR), "supplies it is built for");
        if (medium == Medium.FLUID) {
            quantity(p, "bore", Dimension.LENGTH).put("description", "inner diameter");
            quantity(p, "length", Dimension.LENGTH);
            quantity(p, "rise", Dimension.LENGTH).put("description", "height of the second port above the first");
            text(p.putObject("made of"), "what the pipe is made of");
            dependent(map, "bore", "length");
            dependent(map, "length", "bore");
        } else if (medium == Medium.HEAT) {
            quantity(p, "conductance", Dimension.THERMAL_CONDUCTANCE);
        }
    }

    private static void dependent(ObjectNode map, String name, String needs) {
        map.withObject("/dependentRequired").putArray(name).add(needs);
    }

    private void component(Collection<Declaration> kinds) {
        ObjectNode component = closed(defs.putObject("component"), "kind");
        ObjectNode p = component.putObject("properties");
        ArrayNode names = p.putObject("kind").putArray("enum");
        text(p.putObject("name"), "what a technician calls it on this machine");
        texts(p.putObject("roles"), "what it is for procedures");
        text(p.putObject("station"), "which of several alike, such as left group");
        changeable(p);
        texts(p.putObject(PartReader.ONLY_IN), "revisions it is in; in all when silent");
        texts(p.putObject(PartReader.ONLY_FOR), "supplies it is built for; all when silent");
        component.putObject("patternProperties").putObject(OVERRIDE).put("$ref", "#/$defs/override");
        changeable(closed(defs.putObject("override")).putObject("properties"));
        ArrayNode cases = component.putArray("allOf");
        for (Declaration kind : kinds) {
            names.add(kind.name());
            String set = "set of " + kind.name();
            parameters(defs.putObject(set), kind);
            ObjectNode choice = cases.addObject();
            choice.putObject("if").putObject("properties").putObject("kind").put("const", kind.name());
            ObjectNode then = choice.putObject("then");
            reference(then.putObject("properties").putObject("set"), set);
            reference(
                    then.putObject("patternProperties")
                            .putObject(OVERRIDE)
                            .putObject("properties")
                            .putObject("set"),
                    set);
        }
    }

    private void changeable(ObjectNode p) {
        ObjectNode at =
                p.putObject("at").put("type", "array").put("minItems", 3).put("maxItems", 3);
        at.put("description", "its middle: from the left, from the rear, from the bottom of the case");
        reference(at.putObject("items"), name(Dimension.LENGTH));
        ObjectNode size =
                p.putObject("size").put("type", "array").put("minItems", 3).put("maxItems", 3);
        size.put("description", "width, depth, height, where it is not as large as its kind usually is");
        reference(size.putObject("items"), name(Dimension.LENGTH));
        texts(p.putObject("behind"), "panels to take off, the outermost first");
        text(p.putObject("mark"), "how to tell it from its neighbours");
        text(p.putObject("part"), "part number");
        p.putObject("set").put("type", "object");
    }

    private void parameters(ObjectNode node, Declaration kind) {
        closed(node);
        ObjectNode p = node.putObject("properties");
        for (Parameter parameter : kind.parameters()) {
            ObjectNode one = p.putObject(parameter.name());
            reference(one, name(parameter.dimension()) + " with tolerance");
            String usual = parameter.mustBeGiven()
                    ? "must be given"
                    : "usually " + PartReader.shown(parameter.usual(), parameter.dimension());
            one.put(
                    "description",
                    parameter.meaning() + "; " + usual + "; from "
                            + PartReader.shown(parameter.min(), parameter.dimension()) + " to "
                            + PartReader.shown(parameter.max(), parameter.dimension()));
        }
    }

    private void dimensions() {
        Map<String, Dimension> sorted = new TreeMap<>();
        for (Dimension d : Dimension.values()) {
            sorted.put(name(d), d);
        }
        sorted.forEach((name, d) -> {
            String value = NUMBER + "\\s*" + units(d);
            String of = d == Dimension.TEMPERATURE ? units(Dimension.TEMPERATURE_RISE) : "(%|" + units(d) + ")";
            String tolerance = TOLERANCE + "\\s*" + NUMBER + "\\s*" + of;
            written(defs.putObject(name), d, "^\\s*" + value + "\\s*$");
            written(
                    defs.putObject(name + " with tolerance"),
                    d,
                    "^\\s*(" + value + "|(" + value + "\\s*)?" + tolerance + ")\\s*$");
        });
    }

    private static void written(ObjectNode node, Dimension d, String pattern) {
        if (d.allowsPlain()) {
            node.putArray("type").add("string").add("number");
        } else {
            node.put("type", "string");
        }
        node.put("pattern", pattern);
    }

    /** Every spelling, the longer before its own beginning. */
    private static String units(Dimension d) {
        return d.units().stream()
                .flatMap(u -> Stream.concat(Stream.of(u.symbol()), u.aliases().stream()))
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(s -> s.replaceAll("[.()/$^*+?\\[\\]{}|\\\\]", "\\\\$0"))
                .collect(Collectors.joining("|", "(", ")"));
    }

    private static String name(Dimension d) {
        return d.article().replaceFirst("^an? ", "");
    }

    private static ObjectNode quantity(ObjectNode properties, String name, Dimension dimension) {
        return reference(properties.putObject(name), name(dimension));
    }

    private static ObjectNode reference(ObjectNode node, String definition) {
        return node.put("$ref", "#/$defs/" + definition.replace(" ", "%20"));
    }

    private static ObjectNode closed(ObjectNode node, String... required) {
        node.put("type", "object").put("additionalProperties", false);
        if (required.length > 0) {
            ArrayNode names = node.putArray("required");
            List.of(required).forEach(names::add);
        }
        return node;
    }

    private static ObjectNode text(ObjectNode node, String description) {
        node.putArray("type").add("string").add("number").add("boolean");
        return node.put("description", description);
    }

    private static void texts(ObjectNode node, String description) {
        node.putArray("type").add("string").add("number").add("array");
        node.put("description", description);
        node.putObject("items").putArray("type").add("string").add("number");
    }
}
