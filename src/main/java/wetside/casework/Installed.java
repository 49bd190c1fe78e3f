package wetside.casework;

import java.util.List;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.procedure.Procedures;
import wetside.run.NoSuchThing;

/**
 * A machine of one revision where it stands.
 *
 * @param machine      its supply, socket and surroundings set
 * @param installation what is known of the place
 */
public record Installed(Machine machine, Installation installation) {
    public static Installed of(Machine revision, Installation installation) {
        Installation.Feed feed = feed(revision, installation);
        Machine fed = installation.around(revision);
        for (String role : List.of("source selector", "mains cock")) {
            fed = standing(fed, role, feed == Installation.Feed.MAINS ? 1 : 0);
        }
        return new Installed(fed, installation);
    }

    /** A cock or selector as the feed wants it; how it was left wrongly is a fault of its own. */
    private static Machine standing(Machine machine, String role, double position) {
        return machine.inRole(role)
                .flatMap(c -> c.kind().parameter("position at start").map(p -> machine.with(c.with(p, position))))
                .orElse(machine);
    }

    /** What it draws from: what it has alone if it has but one, else what was said; a tank when nobody has said. */
    public Installation.Feed feed() {
        return feed(machine, installation);
    }

    /** What it draws from in a word: tank, mains, or "hand" for a boiler somebody fills. */
    public String source() {
        boolean byHand =
                machine.inRole("tank").isEmpty() && machine.inRole("mains cock").isEmpty();
        return byHand ? "hand" : feed().word();
    }

    /** The same for headings: "fed from the tank", "filled by hand". */
    public String fed() {
        return source().equals("hand") ? "filled by hand" : "fed from the " + source();
    }

    private static Installation.Feed feed(Machine machine, Installation installation) {
        if (machine.inRole("tank").isEmpty() && machine.inRole("mains cock").isPresent()) {
            return Installation.Feed.MAINS;
        }
        return installation.fedFrom().orElse(Installation.Feed.TANK);
    }

    public Casework casework(Procedures procedures) {
        return Casework.of(machine, procedures);
    }

    /**
     * The machine with something broken: {@code component:fault} or {@code component:fault=severity}, the fault by any
     * beginning of its name that fits one fault only.
     */
    public static Machine broken(Machine machine, String words) {
        int colon = words.indexOf(':');
        int equals = words.lastIndexOf('=');
        if (colon < 0) {
            throw new NoSuchThing(
                    "'" + words + "' does not say what breaks: write COMPONENT:FAULT or COMPONENT:FAULT=0.5",
                    words,
                    List.of());
        }
        String id = words.substring(0, colon).trim();
        String name = (equals > colon ? words.substring(colon + 1, equals) : words.substring(colon + 1)).trim();
        Component c =
                machine.has(id) ? machine.component(id) : machine.inRole(id).orElse(null);
        if (c == null) {
            throw new NoSuchThing(
                    "no component '" + id + "'",
                    id,
                    machine.components().stream().map(Component::id).toList());
        }
        return machine.with(fault(c, name).on(c, equals > colon ? severity(words.substring(equals + 1)) : 0.8));
    }

    private static Fault fault(Component c, String name) {
        List<Fault> faults = Kinds.of(c).faults();
        List<Fault> fitting = faults.stream().filter(f -> f.name().equals(name)).toList();
        if (fitting.isEmpty()) {
            fitting = faults.stream().filter(f -> f.name().startsWith(name)).toList();
        }
        if (fitting.size() != 1) {
            List<String> names = faults.stream().map(Fault::name).toList();
            throw new NoSuchThing(
                    c.name() + " has no " + (fitting.isEmpty() ? "" : "single ") + "fault '" + name + "'; it has "
                            + String.join("; ", names),
                    name,
                    List.of());
        }
        return fitting.get(0);
    }

    private static double severity(String text) {
        try {
            double s = Double.parseDouble(text.trim());
            if (s >= 0 && s <= 1) {
                return s;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new NoSuchThing("severity '" + text + "' is not a number from 0 (just noticeable) to 1", text, List.of());
    }
}
