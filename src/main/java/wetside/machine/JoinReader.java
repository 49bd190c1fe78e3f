package wetside.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wetside.units.Dimension;

/** Reads the sections that join ports: lines, wires, contacts and linkages. */
final class JoinReader {
    private static final Pattern END = Pattern.compile("([^.\\s]+)\\.([^.:]+?)(?:\\s*:\\s*([^.:]+))?");
    private static final Pattern SIGN = Pattern.compile("\\s*[>~]\\s*");

    private final Node root;
    private final PartReader parts;
    private final List<Link> links = new ArrayList<>();
    private boolean complete = true;

    JoinReader(Node root, PartReader parts) {
        this.root = root;
        this.parts = parts;
    }

    /** One join of two ports as written. */
    record Link(Node node, Medium medium, Machine.End from, Machine.End to, Pipe pipe, Making.Presence in) {
        /** True when nothing lies between the two ports. */
        boolean isFitting() {
            return Double.isNaN(pipe.bore());
        }
    }

    /** What lies between two ports: bore, length and rise of a line, conductance of a contact; NaN where nothing does. */
    private record Pipe(double bore, double length, double rise, String madeOf, double conductance) {
        static final Pipe NONE = new Pipe(Double.NaN, 0, 0, "", Double.NaN);
    }

    /** An element of a chain: entered at one port and, inside a chain, left by the same or another. */
    private record Stop(Machine.End in, Machine.End out) {}

    /** True when every join was understood, so that what is missing is really missing. */
    boolean complete() {
        return complete;
    }

    List<Link> links() {
        for (Medium medium : Medium.values()) {
            root.items(medium.section()).forEach(entry -> read(entry, medium));
        }
        return links;
    }

    static Machine.Joins joins(List<Link> links) {
        List<Machine.Line> lines = links.stream()
                .filter(l -> l.medium == Medium.FLUID)
                .map(l -> new Machine.Line(l.from, l.to, l.pipe.bore, l.pipe.length, l.pipe.rise, l.pipe.madeOf))
                .toList();
        return new Machine.Joins(lines, of(links, Medium.CURRENT), of(links, Medium.HEAT), of(links, Medium.MOTION));
    }

    private static List<Machine.Join> of(List<Link> links, Medium medium) {
        return links.stream()
                .filter(l -> l.medium == medium)
                .map(l -> new Machine.Join(l.from, l.to, l.pipe.conductance))
                .toList();
    }

    private void read(Node entry, Medium medium) {
        Node chain = entry;
        Pipe pipe = Pipe.NONE;
        Making.Presence in = parts.presence(entry);
        if (entry.isMap()) {
            chain = entry.need("join");
            pipe = pipe(entry, medium);
        }
        String text = chain.text();
        String[] said = SIGN.split(text.strip());
        if (said.length < 2) {
            complete = false;
            if (!text.isEmpty()) {
                chain.problem("a join names two ports: \"component.port > component.port\"");
            }
            return;
        }
        if (said.length > 2 && pipe != Pipe.NONE) {
            chain.problem("a join with measures of its own names two ports, not a chain");
        }
        List<Optional<Stop>> stops = new ArrayList<>();
        for (String end : said) {
            stops.add(stop(chain, end, medium));
        }
        for (int i = 1; i < stops.size(); i++) {
            complete &= stops.get(i).isPresent() && stops.get(0).isPresent();
            if (stops.get(i - 1).isPresent() && stops.get(i).isPresent()) {
                link(
                        chain,
                        medium,
                        stops.get(i - 1).get().out(),
                        stops.get(i).get().in(),
                        pipe,
                        in);
            }
        }
    }

    private void link(Node node, Medium medium, Machine.End from, Machine.End to, Pipe pipe, Making.Presence in) {
        if (from.equals(to)) {
            complete = false;
            node.problem("\"" + from + "\" is joined to itself");
        } else {
            links.add(new Link(node, medium, from, to, pipe, in));
        }
    }

    private static Pipe pipe(Node entry, Medium medium) {
        if (medium == Medium.FLUID) {
            entry.only("join", "bore", "length", "rise", "made of", PartReader.ONLY_IN, PartReader.ONLY_FOR);
            if (!entry.has("bore") && !entry.has("length") && !entry.has("rise")) {
                return Pipe.NONE;
            }
            double length = between(entry, "length", 1e-3, 50);
            double rise = entry.has("rise") ? between(entry, "rise", -50, 50) : 0;
            if (Math.abs(rise) > length) {
                entry.need("rise").problem("a line cannot rise or fall further than it is long");
            }
            return new Pipe(between(entry, "bore", 1e-4, 0.1), length, rise, entry.text("made of", ""), Double.NaN);
        }
        if (medium == Medium.HEAT) {
            entry.only("join", "conductance", PartReader.ONLY_IN, PartReader.ONLY_FOR);
            double g = entry.quantity("conductance", Dimension.THERMAL_CONDUCTANCE, Double.NaN);
            if (g <= 0) {
                entry.need("conductance")
                        .problem("a conductance is greater than 0; without one the two have one temperature");
            }
            return new Pipe(Double.NaN, 0, 0, "", g);
        }
        entry.only("join", PartReader.ONLY_IN, PartReader.ONLY_FOR);
        return Pipe.NONE;
    }

    private static double between(Node entry, String name, double least, double most) {
        double value = entry.quantity(name, Dimension.LENGTH);
        if (value < least || value > most) {
            entry.need(name)
                    .problem("the " + name + " of a line lies between " + PartReader.shown(least, Dimension.LENGTH)
                            + " and " + PartReader.shown(most, Dimension.LENGTH));
        }
        return value;
    }

    private Optional<Stop> stop(Node node, String said, Medium medium) {
        Matcher shape = END.matcher(said);
        if (!shape.matches()) {
            node.problemAt(said, "\"" + said + "\" names no port; a port is written \"component.port\"", "");
            return Optional.empty();
        }
        String id = shape.group(1);
        if (!parts.nodes().containsKey(id)) {
            node.problemAt(
                    said,
                    "there is no component \"" + id + "\"",
                    Wording.nearest(id, parts.nodes().keySet()));
            return Optional.empty();
        }
        String first = shape.group(2).strip();
        String second = shape.group(3) == null ? first : shape.group(3).strip();
        boolean fine = isPort(node, said, id, first, medium);
        if (!second.equals(first)) {
            fine &= isPort(node, said, id, second, medium);
        }
        return fine ? Optional.of(new Stop(new Machine.End(id, first), new Machine.End(id, second))) : Optional.empty();
    }

    private boolean isPort(Node node, String said, String id, String port, Medium medium) {
        Declaration kind = parts.kind(id).orElse(null);
        if (kind == null) {
            return false;
        }
        Port declared = kind.port(port).orElse(null);
        if (declared == null) {
            List<String> ports = kind.ports().stream().map(Port::name).toList();
            String near = Wording.nearest(port, ports);
            node.problemAt(
                    said,
                    "\"" + id + "\" is a " + kind.name() + " and has no port \"" + port + "\"; it has "
                            + Wording.inWords(ports),
                    near);
            return false;
        }
        if (declared.medium() != medium) {
            node.problemAt(
                    said,
                    "\"" + id + "." + port + "\" is for " + declared.medium().inWords() + ", but " + medium.section()
                            + " join " + medium.inWords() + "; it belongs under "
                            + declared.medium().section(),
                    "");
            return false;
        }
        return true;
    }
}
