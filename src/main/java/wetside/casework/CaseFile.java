package wetside.casework;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.analysis.WaterSheet;
import wetside.diagnosis.Who;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Node;
import wetside.machine.Wording;

/**
 * A case as a file: a machine where it stands, what its owner says, what was found.
 *
 * @param source    file name, for messages
 * @param installed machine and place
 * @param complaint in the owner's words
 * @param who       who is on the line
 * @param found     answers so far, as written
 * @param earlier   readings of this machine from when nothing was wrong with it
 * @param expected  for examples: the cause expected first, empty otherwise
 */
public record CaseFile(
        String source,
        Installed installed,
        String complaint,
        Who who,
        List<Found> found,
        List<Found> earlier,
        List<String> expected) {
    private static final List<String> WHO = List.of("owner", "technician", "qualified");

    /** One answer as written, with its place in the file. */
    public record Found(String procedure, Node answer) {}

    public static CaseFile read(Path file) {
        Node root = Node.read(file);
        root.header("wetside case", 1);
        root.only(
                "wetside case",
                "machine",
                "revision",
                "built",
                "built for",
                "installation",
                "water",
                "complaint",
                "who",
                "found",
                "when it worked",
                "expected",
                "remarks");
        Installation place = root.find("installation").map(Installation::read).orElse(Installation.UNKNOWN);
        place = fed(root, file, place);
        Who who = root.has("who") ? Candidates.who(root.choice("who", WHO)) : Who.OWNER;
        List<Found> found = found(root, "found");
        List<Found> earlier = found(root, "when it worked");
        String complaint = root.text("complaint", "");
        List<String> expected = root.has("expected") ? root.texts("expected") : List.of();
        Node machine = root.need("machine");
        String named = machine.text();
        root.check();
        MachineFile machines = MachineFile.find(beside(file, named), Kinds.declarations());
        Machine meant = machines.machine(revision(root, machines), supply(root, machines, place));
        root.check();
        return new CaseFile(file.toString(), Installed.of(meant, place), complaint, who, found, earlier, expected);
    }

    private static List<Found> found(Node root, String section) {
        List<Found> found = new ArrayList<>();
        if (root.has(section)) {
            root.entries(section).forEach((id, answer) -> found.add(new Found(id, answer)));
        }
        return found;
    }

    /** The conductivity of the water whose sheet the case names. */
    private static Installation fed(Node root, Path file, Installation place) {
        Node water = root.find("water").orElse(null);
        if (water == null || water.text().isEmpty()) {
            return place;
        }
        if (place.facts().containsKey(Installation.Fact.CONDUCTIVITY)) {
            water.problem("the installation says the water's conductivity already; say one of them");
            return place;
        }
        Path sheet = file.toAbsolutePath().resolveSibling(water.text());
        if (!Files.isRegularFile(sheet)) {
            water.problem("there is no water sheet " + water.text() + " beside this case");
            return place;
        }
        return place.with(Installation.Fact.CONDUCTIVITY, WaterSheet.read(sheet).known());
    }

    /** A machine file is looked for beside the case first. */
    private static String beside(Path file, String named) {
        Path sibling = file.toAbsolutePath().resolveSibling(named);
        return named.endsWith(".yaml") && Files.exists(sibling) ? sibling.toString() : named;
    }

    private static String revision(Node root, MachineFile file) {
        Optional<Node> name = root.find("revision");
        if (name.isPresent()) {
            return named(name.get(), "revision", file.revisionNames()).orElse(file.newestRevision());
        }
        Optional<YearMonth> built = root.find("built").flatMap(Node::month);
        if (built.isEmpty()) {
            return file.newestRevision();
        }
        return file.byBuildDate(built.get()).orElseGet(() -> {
            root.need("built")
                    .problem(
                            "no machine of this file was built that early; the first is from "
                                    + file.revisions().get(0).from(),
                            "");
            return file.newestRevision();
        });
    }

    /** What is said, or else what fits the voltage it stands at. */
    private static String supply(Node root, MachineFile file, Installation place) {
        return root.find("built for")
                .flatMap(said -> named(said, "supply", file.supplyNames()))
                .orElse(file.supplyAt(place.voltage()));
    }

    private static Optional<String> named(Node said, String sort, List<String> names) {
        if (names.contains(said.text())) {
            return Optional.of(said.text());
        }
        said.unknown(
                "this machine has no " + sort + " \"" + said.text() + "\"; " + Wording.thereAre(names),
                Wording.nearest(said.text(), names));
        return Optional.empty();
    }
}
