package wetside.machine;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.machine.MachineFile.Case;
import wetside.machine.MachineFile.Revision;
import wetside.machine.MachineFile.Supply;
import wetside.units.Dimension;

/** Reads the sections of a machine file and puts a machine of each making together. */
final class MachineReader {
    private static final String SUPPLIES = "built for";

    private final Node root;
    private final String source;
    private final Map<String, Declaration> kinds = new LinkedHashMap<>();

    MachineReader(Node root, String source, Collection<Declaration> declarations) {
        this.root = root;
        this.source = source;
        declarations.forEach(d -> kinds.put(d.name(), d));
    }

    MachineFile machineFile() {
        if (!root.isMap()) {
            root.problem("this is no machine file: it should consist of lines \"name: value\" and begin with \""
                    + MachineFile.HEADER + ": " + MachineFile.VERSION + "\"");
            root.check();
        }
        root.header(MachineFile.HEADER, MachineFile.VERSION);
        root.only(
                MachineFile.HEADER,
                "title",
                "about",
                "case",
                "panels",
                "revisions",
                SUPPLIES,
                "components",
                "lines",
                "wires",
                "contacts",
                "linkages");
        String title = root.text("title");
        Optional<Case> size = root.find("case").map(MachineReader::size);
        List<Machine.Panel> panels = panels();
        List<Revision> revisions = revisions();
        List<String> names = revisions.stream().map(Revision::name).toList();
        List<Supply> supplies = supplies();
        List<String> supplied = supplies.isEmpty()
                ? List.of("")
                : supplies.stream().map(Supply::name).toList();
        Map<String, Node> components = components();
        PartReader parts = new PartReader(components, kinds, new PartReader.Surrounds(size, panels, names, supplied));
        JoinReader joins = new JoinReader(root, parts);
        List<JoinReader.Link> links = joins.links();
        List<Making> makings = names.stream()
                .flatMap(r -> supplied.stream().map(s -> new Making(r, s)))
                .toList();
        MachineChecks checks = new MachineChecks(makings, parts::node, parts.complete() && joins.complete());
        Map<Making, Machine> machines = new LinkedHashMap<>();
        for (Making making : makings) {
            Machine.Identity identity = new Machine.Identity(id(), title, making.revision(), making.supply(), panels);
            machines.put(making, machine(identity, making, parts, links, checks));
        }
        checks.tell();
        root.check();
        return new MachineFile(source, size, revisions, supplies, machines);
    }

    private Map<String, Node> components() {
        Node node = root.need("components");
        Map<String, Node> components = node.entries();
        if (!node.isMap()) {
            root.check();
        }
        return components;
    }

    private String id() {
        String name = Path.of(root.file()).getFileName().toString();
        return name.replaceFirst("\\.ya?ml$", "");
    }

    /** A join is there in the makings it names, and only where both its ends are. */
    private Machine machine(
            Machine.Identity identity,
            Making making,
            PartReader parts,
            List<JoinReader.Link> links,
            MachineChecks checks) {
        List<Component> components = parts.components(making);
        List<JoinReader.Link> present = links.stream()
                .filter(l -> l.in().in(making))
                .filter(l -> parts.isIn(l.from().component(), making))
                .filter(l -> parts.isIn(l.to().component(), making))
                .toList();
        checks.look(making, components, present);
        return new Machine(identity, components, JoinReader.joins(present));
    }

    private static Case size(Node node) {
        node.only("width", "depth", "height");
        return new Case(side(node, "width"), side(node, "depth"), side(node, "height"));
    }

    private static double side(Node node, String name) {
        double metres = node.quantity(name, Dimension.LENGTH);
        if (metres <= 0 || metres > 5) {
            node.need(name).problem("a case measures more than 0 and at most 5 m");
        }
        return metres;
    }

    private List<Machine.Panel> panels() {
        List<Machine.Panel> panels = new ArrayList<>();
        root.entries("panels").forEach((id, node) -> {
            node.only("name", "minutes", "caution", "sides");
            double minutes = node.quantity("minutes", Dimension.NUMBER);
            if (minutes < 0 || minutes > 600) {
                node.need("minutes").problem("a panel takes between 0 and 600 minutes off and on again");
            }
            panels.add(new Machine.Panel(
                    id, node.text("name", id.replace('-', ' ')), minutes, node.text("caution", ""), sides(id, node)));
        });
        return panels;
    }

    /** The sides a panel closes: those it names, else the one its id is a word for. */
    private static List<Side> sides(String id, Node panel) {
        return panel.find("sides")
                .map(node -> node.texts().stream()
                        .map(word -> sideNamed(node, word))
                        .flatMap(Optional::stream)
                        .toList())
                .orElseGet(() -> Side.of(id.split("-")).stream().toList());
    }

    private static Optional<Side> sideNamed(Node node, String word) {
        Optional<Side> side = Side.of(word);
        if (side.isEmpty()) {
            node.problemAt(
                    word,
                    "\"" + word + "\" is no side; there are " + Wording.inWords(Side.words()),
                    Wording.nearest(word, Side.words()));
        }
        return side;
    }

    private List<Revision> revisions() {
        List<Revision> revisions = new ArrayList<>();
        for (Node node : root.items("revisions")) {
            node.only("name", "from");
            String name = node.text("name");
            Optional<YearMonth> from = node.need("from").month();
            if (revisions.stream().anyMatch(r -> r.name().equals(name))) {
                node.need("name").problem("revision \"" + name + "\" is there twice");
            } else {
                from.ifPresent(month -> inOrder(node.need("from"), month, revisions));
                revisions.add(new Revision(name, from.orElse(YearMonth.of(1900, 1))));
            }
        }
        return revisions.isEmpty() ? List.of(Revision.FIRST) : revisions;
    }

    private List<Supply> supplies() {
        List<Supply> supplies = new ArrayList<>();
        for (Node node : root.items(SUPPLIES)) {
            node.only("name", "voltage");
            String name = node.text("name");
            double voltage = node.quantity("voltage", Dimension.VOLTAGE);
            if (voltage < 80 || voltage > 440) {
                node.need("voltage").problem("a machine is built for 80 V to 440 V");
            }
            if (supplies.stream().anyMatch(s -> s.name().equals(name))) {
                node.need("name").problem("supply \"" + name + "\" is there twice");
            } else {
                supplies.add(new Supply(name, voltage));
            }
        }
        return supplies;
    }

    private static void inOrder(Node node, YearMonth from, List<Revision> before) {
        if (from.isBefore(YearMonth.of(1950, 1)) || from.isAfter(YearMonth.of(2100, 1))) {
            node.problem("revision from " + from + ": that is no date an espresso machine was built");
        } else if (!before.isEmpty()
                && !from.isAfter(before.get(before.size() - 1).from())) {
            Revision last = before.get(before.size() - 1);
            node.problem("revisions stand oldest first, but " + from + " is not after " + last.from() + " of revision "
                    + last.name());
        }
    }
}
