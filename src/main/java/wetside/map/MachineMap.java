package wetside.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import wetside.drawing.PartNumbers;
import wetside.drawing.Theme;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Wording;

/** The map of a machine: chosen layers, laid out, and drawn on request. */
public final class MachineMap {
    /** Layers of the drawing of pipes. */
    public static final Set<Layer> WET = EnumSet.of(Layer.WATER, Layer.STEAM, Layer.DRAIN, Layer.SENSING);
    /** Layers of the drawing of wires. */
    public static final Set<Layer> WIRED = EnumSet.of(Layer.CURRENT, Layer.SENSING);

    /** Room on an A4 sheet laid across, inside its margins [px at 96 to the inch]. */
    static final double PAGE_WIDTH = 1032;

    static final double PAGE_HEIGHT = 690;

    /** Widest line of a name beside pipes, where many parts stand in a row, and beside wires. */
    private static final double NAME_WET = 76;

    private static final double NAME_WIRED = 108;

    /** Room at either side of a part for the number of a hose that ends there. */
    private static final double BESIDE = 24;

    /** Drawn smaller than this, names of parts can no longer be read. */
    private static final double LEGIBLE = 0.92;

    /** Numbers are to be read at arm's length [px], and grow in steps until they can. */
    static final double ARM_S_LENGTH = 12;

    private static final double STEP = 2;
    private static final double LARGEST = 54;

    private static final int ROUNDS = 3;
    /** Points in a pixel. */
    private static final double POINTS = 0.75;

    /** Names that would be smaller on paper give way to numbers and a legend. */
    private static final double LEAST_POINTS = 5.2;

    private final MapPlan plan;
    private final Measured measured;
    private final Map<Lettering, Sheet> laid = new ConcurrentHashMap<>();
    private Sheet sheet;

    private MachineMap(MapPlan plan, Measured measured) {
        this.plan = plan;
        this.measured = measured;
    }

    public static MachineMap of(Machine machine, PartNumbers numbers, Set<Layer> layers) {
        return new MachineMap(MapPlan.of(machine, numbers, layers), null);
    }

    /** A map coloured by what a run measured. */
    public static MachineMap of(Measured measured, PartNumbers numbers, Set<Layer> layers) {
        return new MachineMap(MapPlan.of(measured.owned(), numbers, layers), measured);
    }

    /** On paper, laid whichever way makes it larger, but no larger than it is drawn. */
    private double points(Sheet s) {
        MapSvg whole = new MapSvg(plan, s, measured, Theme.LIGHT);
        double across = Math.min(PAGE_WIDTH / whole.width(), PAGE_HEIGHT / whole.height());
        double upright = Math.min(PAGE_HEIGHT / whole.width(), PAGE_WIDTH / whole.height());
        return s.lettering().size() * Math.min(1, Math.max(across, upright)) * POINTS;
    }

    /** What joins what in words: medium or rail, and a line for each chain. */
    public Map<String, List<String>> outline() {
        return Outline.of(plan);
    }

    /** How large the smallest words are on a sheet of A4 [points]. */
    public double pointsOnPaper() {
        return points(sheet());
    }

    /** What is in it, to say what its lines mean. */
    public Set<Layer> shown() {
        return plan.ways().stream().map(Way::layer).collect(Collectors.toCollection(() -> EnumSet.noneOf(Layer.class)));
    }

    /** What it is a map of, e.g. "Water, steam, drain". */
    public String title() {
        String words = plan.layers().stream().map(Layer::word).collect(Collectors.joining(", "));
        return Wording.capital(words);
    }

    /** Width of the drawing by its height. */
    public double aspect() {
        MapSvg whole = new MapSvg(plan, sheet(), measured, Theme.LIGHT);
        return whole.width() / whole.height();
    }

    /** The drawing as SVG text. */
    public String svg(Theme theme) {
        return new MapSvg(plan, sheet(), measured, theme).draw();
    }

    /**
     * The circuit alone, for a page that says by itself what it is of and what its lines mean: every part a link, its id in
     * {@code data-part}; every line a group with {@code data-line}, its place in {@link #flows}, and {@code data-layer}.
     *
     * @param link address of the part of an id
     */
    public String linked(UnaryOperator<String> link) {
        return new MapSvg(plan, sheet(), measured, Theme.LIGHT, link, false).draw();
    }

    /**
     * The same for a page that lists the parts beside it: names where all of them can be read in the room there is, else
     * numbers alone, as large as they have to be to be read there.
     *
     * @param width  of the room [px]
     * @param height of the room [px]
     */
    public String linked(UnaryOperator<String> link, double width, double height) {
        return new MapSvg(plan, fitting(width, height), measured, Theme.LIGHT, link, true).draw();
    }

    /** As it is shown in a room of that size. */
    Sheet fitting(double width, double height) {
        Sheet named = with(Lettering.NAMES);
        if (shown(named, width, height) >= LEGIBLE * Lettering.NAMES.size()) {
            return named;
        }
        Sheet numbered = with(Lettering.NUMBERS);
        double size = Lettering.NUMBERS.size();
        while (size < LARGEST && shown(numbered, width, height) < ARM_S_LENGTH) {
            double wanted = size * ARM_S_LENGTH / shown(numbered, width, height);
            size = Math.min(LARGEST, Math.ceil(Math.max(size + STEP, wanted)));
            numbered = with(Lettering.numbers(size));
        }
        return numbered;
    }

    /** How large words are on a screen that has room for so much [px]. */
    double shown(Sheet s, double width, double height) {
        MapSvg drawn = new MapSvg(plan, s, measured, Theme.LIGHT, id -> "", true);
        return s.lettering().size() * Math.min(width / drawn.width(), height / drawn.height());
    }

    /** What has a number on it: parts, what sits inside them, what lines consist of. */
    public Set<String> numbered() {
        Set<String> all = new HashSet<>(plan.parts().keySet());
        plan.parts().values().forEach(p -> p.inside().forEach(c -> all.add(c.id())));
        plan.ways().forEach(w -> w.along().forEach(c -> all.add(c.id())));
        return all;
    }

    private Sheet with(Lettering lettering) {
        return laid.computeIfAbsent(lettering, this::roomy);
    }

    /** What flows in each line now [kg/s], the way it is drawn; 0 for wires and what only senses. */
    public double[] flows(Measured now) {
        return plan.ways().stream()
                .mapToDouble(w -> w.wire() || w.layer() == Layer.SENSING ? 0 : now.flow(w))
                .map(f -> Math.abs(f) >= Measured.STILL ? f : 0)
                .toArray();
    }

    /** True when nothing of this machine is in the chosen layers. */
    public boolean isEmpty() {
        return plan.parts().isEmpty();
    }

    /** Laid out when first asked for: an outline in words needs none. */
    Sheet sheet() {
        if (sheet == null) {
            sheet = with(Lettering.NAMES);
            if (points(sheet) < LEAST_POINTS) {
                Sheet numbered = with(Lettering.NUMBERS);
                sheet = points(numbered) > points(sheet) ? numbered : sheet;
            }
        }
        return sheet;
    }

    /** With more room beside parts whose lines found none for their words. */
    private Sheet roomy(Lettering lettering) {
        Set<String> tight = new HashSet<>();
        Sheet best = laidOut(lettering, tight);
        for (int round = 0; round < ROUNDS && !best.missing().isEmpty(); round++) {
            best.missing()
                    .forEach(m -> tight.addAll(
                            List.of(m.way().from().component(), m.way().to().component())));
            Sheet next = laidOut(lettering, tight);
            best = next.missing().size() < best.missing().size() ? next : best;
        }
        return best;
    }

    private Sheet laidOut(Lettering lettering, Set<String> tight) {
        Map<String, Glyph> glyphs = new LinkedHashMap<>();
        plan.parts().forEach((id, p) -> glyphs.put(id, new Glyph(plan, p, lettering)));
        Map<String, List<String>> labels = new LinkedHashMap<>();
        glyphs.forEach((id, g) -> labels.put(id, label(g, lettering.numbers())));
        List<Placing.Box> boxes = new ArrayList<>();
        order(glyphs).forEach(id -> boxes.add(box(id, glyphs.get(id), labels.get(id), tight.contains(id), lettering)));
        Placing.Placed placed =
                Placing.of(boxes, plan.ways().stream().map(w -> link(w, glyphs)).toList());
        List<Sheet.Placed> parts = new ArrayList<>();
        glyphs.forEach((id, g) -> {
            double[] at = placed.boxes().get(id);
            parts.add(new Sheet.Placed(
                    g,
                    at[0],
                    at[1],
                    words(g, labels.get(id), at, placed.labels().get(id), lettering)));
        });
        List<Sheet.Line> lines = new ArrayList<>();
        for (int i = 0; i < plan.ways().size(); i++) {
            Placing.Route r = placed.routes().get(i);
            lines.add(new Sheet.Line(
                    plan.ways().get(i),
                    ended(plan.ways().get(i), r.points(), glyphs),
                    r.junctions(),
                    new ArrayList<>()));
        }
        return lettered(new Sheet(placed.width(), placed.height(), parts, lines, new ArrayList<>(), lettering));
    }

    /** As in the file; among wires, what has nothing to do with water comes first: the supply. */
    private List<String> order(Map<String, Glyph> glyphs) {
        List<String> ids = new ArrayList<>(glyphs.keySet());
        if (!plan.isWet()) {
            ids.sort(Comparator.comparing(id ->
                    plan.machine().component(id).kind().ports().stream().anyMatch(p -> p.medium() == Medium.FLUID)));
        }
        return ids;
    }

    /** Lines run on into the middle of a dot. */
    private static List<double[]> ended(Way w, List<double[]> points, Map<String, Glyph> glyphs) {
        List<double[]> all = new ArrayList<>(points);
        if (glyphs.get(w.from().component()).isDot()) {
            double[] p = all.get(0);
            all.set(0, new double[] {p[0] - 4, p[1]});
        }
        if (glyphs.get(w.to().component()).isDot()) {
            double[] p = all.get(all.size() - 1);
            all.set(all.size() - 1, new double[] {p[0] + 4, p[1]});
        }
        return all;
    }

    private static Placing.Link link(Way w, Map<String, Glyph> glyphs) {
        return new Placing.Link(
                w.from().component(),
                glyphs.get(w.from().component()).isDot() ? "right" : w.from().port(),
                w.to().component(),
                glyphs.get(w.to().component()).isDot() ? "left" : w.to().port());
    }

    private List<String> label(Glyph g, boolean numbers) {
        String number = String.valueOf(g.part.number());
        if (numbers || g.isDot()) {
            return List.of(number);
        }
        double most = g.isVessel()
                ? g.width - 24
                : Math.max(plan.isWet() ? NAME_WET : NAME_WIRED, g.symbol == null ? g.own.width() : 0);
        return Lettering.NAMES.wrapped(number + "\u00a0" + g.part.component().name(), most);
    }

    private Placing.Box box(String id, Glyph g, List<String> label, boolean tight, Lettering lettering) {
        Map<String, double[]> ports = new LinkedHashMap<>();
        if (g.isDot()) {
            ports.put("left", new double[] {0, 4});
            ports.put("right", new double[] {8, 4});
        } else {
            g.ports.forEach((name, s) -> ports.put(name, new double[] {s.x(), s.y()}));
        }
        double w = Math.max(lettering.width(label) + 4, tight && !g.isDot() ? g.width + 2 * BESIDE : 0);
        double[] size = g.isVessel() ? new double[] {0, 0} : new double[] {w, label.size() * lettering.line()};
        boolean up = g.ports.values().stream().anyMatch(s -> s.y() <= 0 && s.x() > 0 && s.x() < g.width);
        return new Placing.Box(id, g.width, g.height, ports, size, up && !g.isDot());
    }

    private Sheet.Words words(Glyph g, List<String> lines, double[] at, double[] label, Lettering lettering) {
        double w = lettering.width(lines) + 4;
        double h = lines.size() * lettering.line();
        if (g.isVessel()) {
            return new Sheet.Words(lines, new Rect(at[0] + (g.width - w) / 2, at[1] + 10, w, h), true);
        }
        return new Sheet.Words(lines, new Rect(at[0] + (g.width - w) / 2, label[1], w, h), false);
    }

    /** Words beside the lines, once everything else has its place. */
    private Sheet lettered(Sheet s) {
        List<Rect> boxes = new ArrayList<>();
        s.parts().forEach(p -> boxes.add(p.box()));
        s.parts().forEach(p -> boxes.add(p.label().box()));
        LineWords words = new LineWords(s.lettering(), new Rect(0, 0, s.width(), s.height()), boxes, s.lines());
        if (measured != null) {
            new Values(plan, measured, s, words).write();
            return s;
        }
        for (int i = 0; i < s.lines().size(); i++) {
            Sheet.Line line = s.lines().get(i);
            for (List<String> wordings : names(line.way(), s.numbers())) {
                Sheet.Words found = words.place(i, line, wordings);
                if (found == null) {
                    s.missing().add(new Sheet.Missing(line.way(), wordings.get(0)));
                } else {
                    line.words().add(found);
                }
            }
        }
        return s;
    }

    /** Names of what a line consists of, the fullest wording first. */
    private List<List<String>> names(Way w, boolean numbers) {
        List<List<String>> all = new ArrayList<>();
        for (Component c : w.along()) {
            String number = String.valueOf(plan.numbers().of(c.id()).orElseThrow());
            all.add(numbers ? List.of(number) : List.of(number + " " + c.name(), number));
        }
        return all;
    }

    /** Kinds of this machine that would be drawn as a plain box for want of a symbol. */
    Set<String> undrawn() {
        return sheet().parts().stream()
                .map(Sheet.Placed::glyph)
                .filter(g -> !g.drawn)
                .map(g -> g.part.component().kind().name())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
    }
}
