package wetside.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wetside.machine.Installation;
import wetside.machine.Node;
import wetside.machine.Spread;

/**
 * A water sheet: what somebody measured of a water, and what is wanted of it.
 *
 * @param source   file name, for messages
 * @param measured as far as anything was
 * @param assumed  sentences, one for each thing assumed
 * @param treatments written in the sheet; none for the usual ones
 */
public record WaterSheet(
        String source,
        String title,
        String remarks,
        Map<Content, Measured> measured,
        Waters waters,
        List<String> assumed,
        BrewingRange range,
        Use use,
        Prices prices,
        List<Conditioning> treatments) {
    private static final String HEADER = "wetside water";
    private static final long SEED = 20;

    public static WaterSheet read(Path file) {
        return read(file, Waters.DRAWS);
    }

    /** With another number of draws. */
    public static WaterSheet read(Path file, int draws) {
        return of(Node.read(file), file, draws);
    }

    /** From a text; {@code name} is what messages call it. */
    public static WaterSheet of(String name, String text) {
        return of(Node.read(name, text), Path.of(name), Waters.DRAWS);
    }

    private static WaterSheet of(Node root, Path file, int draws) {
        root.header(HEADER, 1);
        root.only(HEADER, "title", "remarks", "measured", "brewing range", "use", "prices", "treatments");
        Map<Content, Measured> measured = new EnumMap<>(Content.class);
        Map<Content, Node> nodes = new EnumMap<>(Content.class);
        Node said = root.need("measured");
        said.only(Content.names().toArray(String[]::new));
        said.entries().forEach((name, value) -> measure(name, value, measured, nodes));
        BrewingRange range = root.find("brewing range").map(BrewingRange::read).orElse(BrewingRange.STANDARD);
        Use use = root.find("use").map(Use::read).orElse(Use.HOUSEHOLD);
        Prices prices = root.find("prices").map(Prices::read).orElse(Prices.ASSUMED);
        root.check();
        enough(said, measured);
        Plausible plausible = new Plausible(measured, nodes);
        plausible.parts();
        root.check();
        Completion completion = new Completion(measured);
        Waters waters = Waters.of(completion, draws, SEED);
        plausible.whole(waters.middle());
        List<Conditioning> treatments = new ArrayList<>();
        root.entries("treatments")
                .forEach((name, node) -> Conditioning.read(name, node, file, waters.middle(), range)
                        .ifPresent(treatments::add));
        root.check();
        return new WaterSheet(
                file.toString(),
                root.text("title", file.getFileName().toString()),
                root.text("remarks", ""),
                measured,
                waters,
                completion.assumed(),
                range,
                use,
                prices,
                List.copyOf(treatments));
    }

    private static void measure(String name, Node value, Map<Content, Measured> measured, Map<Content, Node> nodes) {
        if (!Content.names().contains(name) || value.isText() && value.text().equals("unknown")) {
            return;
        }
        Content content = Content.of(name);
        try {
            String text = value.text();
            if (value.isText()) {
                measured.put(content, Measured.parse(text, content));
                nodes.put(content, value);
            }
        } catch (Measured.NotAMeasure e) {
            value.problem(e.getMessage());
        }
    }

    /** Below this nothing can be said of scale, and nothing is guessed. */
    private static void enough(Node said, Map<Content, Measured> measured) {
        boolean hard = measured.containsKey(Content.HARDNESS)
                || measured.containsKey(Content.CALCIUM)
                || measured.containsKey(Content.MAGNESIUM);
        if (!hard) {
            said.problem(
                    "hardness (or calcium) is missing: the least is one drop test of hardness and one of alkalinity");
        }
        if (!measured.containsKey(Content.ALKALINITY)) {
            said.problem("alkalinity is missing: the least is one drop test of hardness and one of alkalinity");
        }
        said.check();
    }

    /** One content from a text such as {@code 50 mg/l CaCO3}; what is wrong with it is thrown as the caller likes. */
    public static double value(Content content, String text, Function<String, RuntimeException> wrong) {
        try {
            return Measured.parse(text, content).value();
        } catch (Measured.NotAMeasure e) {
            throw wrong.apply(e.getMessage());
        }
    }

    /** What a machine's installation knows of its water by this sheet. */
    public Installation.Known known() {
        Ranged r = conductivity();
        double half = Math.max(r.high() - r.middle(), r.middle() - r.low()) * 2 / 1.645;
        return new Installation.Known(r.middle(), Spread.absolute(half));
    }

    /** Conductivity at 25 °C [S/m]: measured where somebody has, else from the ions. */
    public Ranged conductivity() {
        Measured pen = measured.get(Content.CONDUCTIVITY);
        return pen != null
                ? new Ranged(pen.at(0.05), pen.value(), pen.at(0.95), "")
                : waters.of(wetside.water.Conductivity::atRoom);
    }
}
