package wetside.kind;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wetside.machine.Node;
import wetside.units.Dimension;

/**
 * What people are told of a kind, from its words file.
 *
 * @param whatFor what it does on the machine
 * @param knowIt  how to tell it from its neighbours
 * @param fails   how it usually goes wrong
 * @param test    how to test it
 * @param caution what can hurt
 * @param faults  words of every fault by its name
 * @param tour    what is said where a walk through a machine comes to it
 */
public record Words(
        String whatFor,
        String knowIt,
        String fails,
        String test,
        Caution caution,
        Map<String, OfFault> faults,
        OnTour tour) {
    private static final Map<String, Words> READ = new ConcurrentHashMap<>();
    private static final OnTour NO_TOUR =
            new OnTour(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    private static final List<String> WHO = List.of("owner", "technician", "qualified");

    /**
     * Whole sentences for a walk through a machine; each list serves the first part of the kind on a walk, the second, and so
     * on. {@code {next}}, {@code {from}}, {@code {on}} stand for what comes next, what was before, what it is fastened to.
     *
     * @param does    what it does here, on a walk along the water, or along the current for what is only electric
     * @param joins   the same for a fitting that only one way leaves
     * @param partly  the same for a vessel that is kept partly filled
     * @param steam   the same on a walk along the steam
     * @param turns   the same, for what is full of water and makes steam only when that is asked for
     * @param drain   the same on a walk along what is let off
     * @param current the same on a walk along the current, for what has water too
     * @param noticed what one would notice if it failed
     */
    public record OnTour(
            List<String> does,
            List<String> joins,
            List<String> partly,
            List<String> steam,
            List<String> turns,
            List<String> drain,
            List<String> current,
            List<String> noticed) {}

    /** Who may, and what can hurt. */
    public record Caution(String who, String says) {}

    /**
     * @param says    for a technician
     * @param owner   for the owner
     * @param remedy  what puts it right
     * @param prove   what shows that the repair holds
     */
    public record OfFault(String says, String owner, Remedy remedy, List<String> prove) {}

    /**
     * @param money parts, assumed
     * @param works share of cases in which it helps, assumed
     */
    public record Remedy(String does, double minutes, double money, String who, String caution, double works) {}

    /** Words of a kind by its name; IllegalStateException when the jar lacks them. */
    public static Words of(String kind) {
        return READ.computeIfAbsent(kind, Words::read);
    }

    private static Words read(String kind) {
        String file = "/wetside/kind/" + kind + ".yaml";
        try (InputStream in = Words.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("kind '" + kind + "' has no words: " + file);
            }
            Node root = Node.read(kind + ".yaml", new String(in.readAllBytes(), StandardCharsets.UTF_8));
            Words words = words(root);
            root.check();
            return words;
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + file, e);
        }
    }

    private static Words words(Node root) {
        root.only("kind", "what for", "know it", "fails", "test", "tour", "caution", "faults");
        Node caution = root.need("caution");
        Map<String, OfFault> faults = new LinkedHashMap<>();
        if (root.has("faults")) {
            root.entries("faults").forEach((name, node) -> faults.put(name, fault(node)));
        }
        return new Words(
                root.text("what for"),
                root.text("know it"),
                root.text("fails", ""),
                root.text("test"),
                new Caution(caution.choice("who", WHO), caution.text("says")),
                faults,
                root.find("tour").map(Words::tour).orElse(NO_TOUR));
    }

    private static OnTour tour(Node node) {
        node.only("does", "joins", "partly", "steam", "turns", "drain", "current", "noticed");
        return new OnTour(
                node.texts("does"),
                node.texts("joins"),
                node.texts("partly"),
                node.texts("steam"),
                node.texts("turns"),
                node.texts("drain"),
                node.texts("current"),
                node.texts("noticed"));
    }

    private static OfFault fault(Node node) {
        node.only("says", "owner", "remedy", "prove");
        Node remedy = node.need("remedy");
        remedy.only("do", "minutes", "money", "who", "caution", "works");
        return new OfFault(
                node.text("says"),
                node.text("owner"),
                new Remedy(
                        remedy.text("do"),
                        remedy.quantity("minutes", Dimension.NUMBER),
                        remedy.quantity("money", Dimension.NUMBER),
                        remedy.choice("who", WHO),
                        remedy.text("caution", ""),
                        remedy.quantity("works", Dimension.NUMBER)),
                node.has("prove") ? node.texts("prove") : List.of());
    }
}
