package wetside.machine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A machine file that has been read and found right: the machine in each of its makings. Reading either gives this or
 * throws {@link BadFile} with everything that is wrong.
 */
public final class MachineFile {
    /** What the first line of a machine file says before its version. */
    public static final String HEADER = "wetside machine";

    static final int VERSION = 1;

    private final String source;
    private final Optional<Case> size;
    private final List<Revision> revisions;
    private final List<Supply> supplies;
    private final Map<Making, Machine> machines;

    MachineFile(
            String source,
            Optional<Case> size,
            List<Revision> revisions,
            List<Supply> supplies,
            Map<Making, Machine> machines) {
        this.source = source;
        this.size = size;
        this.revisions = List.copyOf(revisions);
        this.supplies = List.copyOf(supplies);
        this.machines = new LinkedHashMap<>(machines);
    }

    /** Outer measures of the case [m]. */
    public record Case(double width, double depth, double height) {
        /** 0 for width, 1 for depth, 2 for height. */
        public double along(int axis) {
            return axis == 0 ? width : axis == 1 ? depth : height;
        }
    }

    /** A state of the machine's making, from a month until the next one begins. */
    public record Revision(String name, YearMonth from) {
        /** The only one of a file that names none. */
        static final Revision FIRST = new Revision("first", YearMonth.of(1900, 1));

        /** Whether the file says from when. */
        public boolean isDated() {
            return !equals(FIRST);
        }
    }

    /** A mains supply that machines of this file are built for. */
    public record Supply(String name, double voltage) {}

    /** Reads a file of the user's. */
    public static MachineFile read(Path file, Collection<Declaration> kinds) {
        return read(file.toString(), TextFile.read(file), kinds);
    }

    /** Reads a text; {@code file} is what messages call it, its name without ending becomes the machine's id. */
    public static MachineFile read(String file, String text, Collection<Declaration> kinds) {
        return new MachineReader(Node.read(file, text), text, kinds).machineFile();
    }

    /** A machine that comes with Wetside. */
    public static MachineFile bundled(String name, Collection<Declaration> kinds) {
        String path = BundledFiles.MACHINES + "/" + name + ".yaml";
        try (InputStream in = MachineFile.class.getResourceAsStream("/" + path)) {
            if (in == null || !name.matches("[\\w-]+")) {
                throw BadFile.whole(
                        name,
                        "no machine of this name comes with Wetside; " + Wording.thereAre(names()),
                        Wording.nearest(name, names()));
            }
            return read(name + ".yaml", TextFile.decode(name, in), kinds);
        } catch (IOException e) {
            throw new IllegalStateException("bundled machine " + name, e);
        }
    }

    /** Names of the machines that come with Wetside. */
    public static List<String> names() {
        return BundledFiles.names(BundledFiles.MACHINES);
    }

    /** What a person names on the command line: a file, or a machine that comes with Wetside. */
    public static MachineFile find(String fileOrName, Collection<Declaration> kinds) {
        boolean isFile = fileOrName.contains("/") || fileOrName.contains(".") || Files.exists(Path.of(fileOrName));
        return isFile ? read(Path.of(fileOrName), kinds) : bundled(fileOrName, kinds);
    }

    /** The text as read, for keys of what is computed from it. */
    public String source() {
        return source;
    }

    public Optional<Case> size() {
        return size;
    }

    /** Oldest first. */
    public List<Revision> revisions() {
        return revisions;
    }

    public List<String> revisionNames() {
        return revisions.stream().map(Revision::name).toList();
    }

    /** What machines of this file are built for; empty when it says nothing of it. */
    public List<Supply> supplies() {
        return supplies;
    }

    public List<String> supplyNames() {
        return supplies.stream().map(Supply::name).toList();
    }

    /** The supply it is most likely built for where it stands: the nearest to a voltage, the first when none is known. */
    public String supplyAt(OptionalDouble voltage) {
        return supplies.stream()
                .min(Comparator.comparingDouble(
                        s -> voltage.isPresent() ? Math.abs(Math.log(s.voltage() / voltage.getAsDouble())) : 0))
                .map(Supply::name)
                .orElse("");
    }

    /** The machine of a revision named in {@link #revisions()}, built for the first supply. */
    public Machine machine(String revision) {
        return machine(revision, supplyAt(OptionalDouble.empty()));
    }

    /** The machine of a revision, built for a supply named in {@link #supplies()}. */
    public Machine machine(String revision, String supply) {
        Machine machine = machines.get(new Making(revision, supply));
        if (machine == null) {
            throw new IllegalArgumentException(
                    "no revision '" + new Making(revision, supply) + "'; there are " + machines.keySet());
        }
        return machine;
    }

    /** Every revision built for every supply. */
    public Collection<Machine> machines() {
        return machines.values();
    }

    public Machine newest() {
        return machine(newestRevision());
    }

    /** The revision built in a month; empty before the first. */
    public Optional<String> byBuildDate(YearMonth built) {
        return revisions.stream()
                .filter(r -> !r.from().isAfter(built))
                .reduce((earlier, later) -> later)
                .map(Revision::name);
    }

    public String newestRevision() {
        return revisions.get(revisions.size() - 1).name();
    }
}
