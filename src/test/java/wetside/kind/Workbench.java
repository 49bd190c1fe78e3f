package wetside.kind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Machine;
import wetside.machine.Parameter;
import wetside.machine.Spread;

/** Puts a few parts together by hand, so that a kind is tried without a machine round it. */
final class Workbench {
    private final Map<String, Kind> kinds = new LinkedHashMap<>();
    private final Map<String, Component> parts = new LinkedHashMap<>();
    private final List<Machine.Line> lines = new ArrayList<>();
    private final List<Machine.Join> wires = new ArrayList<>();
    private final List<Machine.Join> contacts = new ArrayList<>();
    private final List<Machine.Join> linkages = new ArrayList<>();

    /** Adds a part at its usual values. */
    Workbench part(String id, Kind kind) {
        kinds.put(id, kind);
        parts.put(id, usual(id, kind));
        return this;
    }

    static Component usual(String id, Kind kind) {
        Declaration d = kind.declaration();
        double[] values = d.parameters().stream().mapToDouble(Parameter::usual).toArray();
        Spread[] spreads = d.parameters().stream().map(Parameter::spread).toArray(Spread[]::new);
        return new Component(id, d, values, spreads, place(id));
    }

    private static Component.Place place(String id) {
        return new Component.Place(id, List.of(), List.of(), List.of(), "", "", List.of(), "");
    }

    Workbench set(String id, Parameter parameter, double value) {
        parts.put(id, parts.get(id).with(parameter, value));
        return this;
    }

    /** Breaks a part the way the product does. */
    Workbench broken(String id, String fault, double severity) {
        Fault named = kinds.get(id).faults().stream()
                .filter(f -> f.name().equals(fault))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(id + " has no fault " + fault));
        parts.put(id, named.on(parts.get(id), severity));
        return this;
    }

    Workbench wire(String from, String... to) {
        for (String end : to) {
            wires.add(join(from, end));
        }
        return this;
    }

    Workbench contact(String from, String to) {
        contacts.add(join(from, to));
        return this;
    }

    Workbench linkage(String from, String to) {
        linkages.add(join(from, to));
        return this;
    }

    Workbench line(String from, String to) {
        lines.add(new Machine.Line(end(from), end(to), Double.NaN, 0, 0, ""));
        return this;
    }

    private static Machine.Join join(String from, String to) {
        return new Machine.Join(end(from), end(to), Double.NaN);
    }

    private static Machine.End end(String said) {
        int dot = said.indexOf('.');
        return new Machine.End(said.substring(0, dot), said.substring(dot + 1));
    }

    /** Switches it on to be tried. */
    Trial tried() {
        Machine machine = new Machine(
                new Machine.Identity("workbench", "Workbench", "only", "", List.of()),
                parts.values(),
                new Machine.Joins(lines, wires, contacts, linkages));
        return new Trial(machine, kinds);
    }

    /** A socket with cord and switch; parts hang on {@code switch.line out} and {@code switch.neutral out}. */
    static Workbench powered() {
        return new Workbench()
                .part("socket", new Socket())
                .part("cord", new PowerCord())
                .part("switch", new PowerSwitch())
                .wire("socket.line", "cord.socket line")
                .wire("socket.neutral", "cord.socket neutral")
                .wire("socket.earth", "cord.socket earth")
                .wire("cord.line", "switch.line in")
                .wire("cord.neutral", "switch.neutral in");
    }
}
