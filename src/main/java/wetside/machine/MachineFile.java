package wetside.machine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A machine file that has been read and found right: the machine in each of its revisions. Reading either gives this or
 * throws {@link BadFile} with everything that is wrong.
 */
public final class MachineFile {
    /** What the first line of a machine file says before its version. */
    public static final String HEADER = "wetside machine";

    static final int VERSION = 1;

    private final String source;
    private final Optional<Case> size;
    private final List<Revision> revisions;
    private final Map<String, Machine> machines;

    MachineFile(String source, Optional<Case> size, List<Revision> revisions, Map<String, Machine> machines) {
        this.source = source;
        this.size = size;
        this.revisions = List.copyOf(revisions);
        this.machines = new LinkedHashMap<>(machines);
    }

    /** Outer measures of the case [m]. */
    public record Case(double width, double depth, double height) {}

    /** A state of the machine's making, from a month until the next one begins. */
    public record Revision(String name, YearMonth from) {}

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

    /** The machine of a revision named in {@link #revisions()}. */
    public Machine machine(String revision) {
        Machine machine = machines.get(revision);
        if (machine == null) {
            throw new IllegalArgumentException("no revision '" + revision + "'; there are " + machines.keySet());
        }
        return machine;
    }

    public Machine newest() {
        return machine(revisions.get(revisions.size() - 1).name());
    }

    /** The machine as it was built in a month; empty before the first revision. */
    public Optional<Machine> byBuildDate(YearMonth built) {
        return revisions.stream()
                .filter(r -> !r.from().isAfter(built))
                .reduce((earlier, later) -> later)
                .map(r -> machine(r.name()));
    }
}
