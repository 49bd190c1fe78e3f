package wetside.machine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import wetside.units.Dimension;

/** The usual bodies of kinds, one line each in {@code bodies.yaml}. */
public final class Bodies {
    private static final String FILE = "/wetside/machine/bodies.yaml";
    private static final List<String> FORMS = List.of("box", "round", "coil", "bent");
    /** For a kind without a line. */
    private static final Usual UNKNOWN =
            new Usual(Body.Form.BOX, List.of(0.04, 0.04, 0.04), "", Double.NaN, false, false);

    private static final Map<String, Usual> USUAL = read();

    private Bodies() {}

    /**
     * @param holds  name of the parameter it grows with, may be empty
     * @param of     value of that parameter for {@code size}, SI
     * @param inWall   true for what is seen through a wall of the case
     * @param liftsOut true for what comes out by hand
     */
    record Usual(Body.Form form, List<Double> size, String holds, double of, boolean inWall, boolean liftsOut) {
        /** As large as what it holds asks for. */
        List<Double> size(Component c) {
            double scale =
                    c.kind().parameter(holds).map(p -> Math.cbrt(c.get(p) / of)).orElse(1.0);
            return size.stream().map(s -> s * scale).toList();
        }
    }

    static Usual of(Declaration kind) {
        return USUAL.getOrDefault(kind.name(), UNKNOWN);
    }

    /** Of a kind, for people: "190 x 130 x 130 mm, grows with its volume". */
    public static String words(Declaration kind) {
        Usual usual = of(kind);
        StringBuilder words = new StringBuilder();
        usual.size.forEach(s -> words.append(words.length() == 0 ? "" : " × ").append(Math.round(s * 1000)));
        words.append(" mm");
        if (!usual.holds.isEmpty()) {
            Parameter held = kind.parameter(usual.holds).orElseThrow();
            words.append(" at ").append(PartReader.shown(usual.of, held.dimension()));
        }
        return words.append(usual.inWall ? ", in a wall" : "").toString();
    }

    /** Whether parts of a kind come out by hand, as a tank does. */
    public static boolean liftsOut(Declaration kind) {
        return of(kind).liftsOut;
    }

    /** Kinds that have a line. */
    public static Set<String> kinds() {
        return USUAL.keySet();
    }

    private static Map<String, Usual> read() {
        try (InputStream in = Bodies.class.getResourceAsStream(FILE)) {
            Node root = Node.read("bodies.yaml", new String(in.readAllBytes(), StandardCharsets.UTF_8));
            root.header("wetside bodies", 1);
            root.only("wetside bodies", "bodies");
            Map<String, Usual> all = new LinkedHashMap<>();
            root.entries("bodies").forEach((kind, node) -> all.put(kind, usual(node)));
            root.check();
            return all;
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + FILE, e);
        }
    }

    private static Usual usual(Node node) {
        node.only("form", "size", "holds", "of", "in wall", "lifts out");
        String holds = node.text("holds", "");
        return new Usual(
                Body.Form.valueOf(node.choice("form", FORMS).toUpperCase(Locale.ROOT)),
                node.items("size").stream()
                        .map(n -> n.quantity(Dimension.LENGTH))
                        .toList(),
                holds,
                holds.isEmpty() ? Double.NaN : node.quantity("of", held(node.text("of"))),
                node.yes("in wall", false),
                node.yes("lifts out", false));
    }

    private static Dimension held(String amount) {
        return amount.endsWith("kg") ? Dimension.MASS : Dimension.VOLUME;
    }
}
