package wetside.machine;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A machine of one revision: its parts and how they are joined. Immutable. Supply, socket and surroundings are
 * components too (kinds {@code water mains}, {@code socket}, {@code surroundings}), so that an installation, a wrong
 * installation and a tolerance of the installation need no words of their own.
 */
public final class Machine {
    private final Identity identity;
    private final Map<String, Component> components;
    private final Joins joins;

    public Machine(Identity identity, Collection<Component> components, Joins joins) {
        this.identity = identity;
        this.components = new LinkedHashMap<>();
        components.forEach(c -> this.components.put(c.id(), c));
        this.joins = joins;
    }

    /**
     * @param id       file name without ending
     * @param title    e.g. "Fellmoor Twin Lever"
     * @param revision name of the revision these parts are of
     * @param supply   the supply it was built for, "" where the file knows only one
     * @param panels   id to what it is and how it comes off, in file order
     */
    public record Identity(String id, String title, String revision, String supply, List<Panel> panels) {
        /** As plates and headings say it: "revision B", "revision B for 120 V". */
        public String making() {
            return "revision " + new Making(revision, supply);
        }
    }

    /**
     * @param minutes to take it off and put it back
     * @param sides   of the case that it closes
     */
    public record Panel(String id, String name, double minutes, String caution, List<Side> sides) {}

    /** One end of a join. */
    public record End(String component, String port) {
        // Asked for hundreds of times for every plant made: a record's own equality is slow until it is compiled.
        @Override
        public boolean equals(Object other) {
            return other instanceof End end && component.equals(end.component) && port.equals(end.port);
        }

        @Override
        public int hashCode() {
            return 31 * component.hashCode() + port.hashCode();
        }

        @Override
        public String toString() {
            return component + "." + port;
        }
    }

    /**
     * A rigid pipe between two fluid ports. Without a bore the ports sit on one fitting.
     *
     * @param bore   inner diameter [m], NaN for a plain fitting
     * @param length [m]
     * @param rise   height of {@code to} above {@code from} [m]
     */
    public record Line(End from, End to, double bore, double length, double rise, String madeOf) {}

    /** A wire, a heat contact or a linkage; {@code conductance} is [W/K] for contacts, NaN otherwise. */
    public record Join(End from, End to, double conductance) {}

    /** All joins by medium. */
    public record Joins(List<Line> lines, List<Join> wires, List<Join> contacts, List<Join> linkages) {
        public Joins {
            lines = List.copyOf(lines);
            wires = List.copyOf(wires);
            contacts = List.copyOf(contacts);
            linkages = List.copyOf(linkages);
        }
    }

    public Identity identity() {
        return identity;
    }

    public Joins joins() {
        return joins;
    }

    public Collection<Component> components() {
        return components.values();
    }

    public Component component(String id) {
        Component c = components.get(id);
        if (c == null) {
            throw new IllegalStateException("no component '" + id + "' in " + identity.id());
        }
        return c;
    }

    public boolean has(String id) {
        return components.containsKey(id);
    }

    /**
     * The component that plays a role, e.g. "pump gauge"; where several stations have one, the first in the file, unless the
     * station is said: "cup, right group".
     */
    public Optional<Component> inRole(String role) {
        Optional<Component> first = components.values().stream()
                .filter(c -> c.place().roles().contains(role))
                .findFirst();
        int comma = role.lastIndexOf(", ");
        return first.isPresent() || comma < 0 ? first : at(role.substring(0, comma), role.substring(comma + 2));
    }

    private Optional<Component> at(String role, String station) {
        return components.values().stream().filter(c -> c.plays(role, station)).findFirst();
    }

    /** The component that plays a role at a station, or else, among those that belong to no station, for all of them. */
    public Optional<Component> inRole(String role, String station) {
        return at(role, station).or(() -> at(role, ""));
    }

    /** The stations its parts belong to, in file order, e.g. the groups of a machine that has two. */
    public List<String> stations() {
        return components.values().stream()
                .map(c -> c.place().station())
                .filter(s -> !s.isEmpty())
                .distinct()
                .toList();
    }

    /** A copy with one component replaced by a changed one of the same id. */
    public Machine with(Component changed) {
        Map<String, Component> copy = new LinkedHashMap<>(components);
        copy.replace(changed.id(), changed);
        return new Machine(identity, copy.values(), joins);
    }

    public Machine withAll(Collection<Component> changed) {
        Map<String, Component> copy = new LinkedHashMap<>(components);
        changed.forEach(c -> copy.replace(c.id(), c));
        return new Machine(identity, copy.values(), joins);
    }
}
