package wetside.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import wetside.drawing.symbol.Symbol;
import wetside.drawing.symbol.Symbols;
import wetside.machine.Machine;

/**
 * How large one part is on the map and where its ports are: its symbol, with the names of rails at its sides, the room
 * its insets need, or rows of named terminals.
 */
final class Glyph {
    /** Room for the name of a rail beside a port. */
    private static final double TAG = 30;
    /** Room for the earth symbol. */
    private static final double EARTH = 22;
    /** Room for one inset of a boiler. */
    private static final double INSET = 40;

    private static final double ROW = 20;
    private static final double HANG = 8;

    private final Lettering lettering;
    /** Boilers and what is in them grow with their numbers. */
    final double grown;

    final MapPlan.Part part;
    final Symbol symbol;
    /** False for a box that stands in for a symbol nobody has drawn. */
    final boolean drawn;
    /** Whether both ports are led to the left. */
    final boolean hung;

    private final boolean crowded;

    double width;
    double height;
    /** The symbol's own box in this one. */
    Rect own;

    final Map<String, Symbol.Spot> ports = new LinkedHashMap<>();
    /** Short leads from ports of the symbol to the edge of the box. */
    final Map<String, List<Symbol.Spot>> stubs = new LinkedHashMap<>();

    final List<Tag> tags = new ArrayList<>();
    final List<Name> names = new ArrayList<>();

    /** The name of a rail, at the end of a stub from {@code x}, {@code y}; {@code dx}, {@code dy} point outwards. */
    record Tag(MapPlan.Rail rail, Symbol.Spot at, int dx, int dy) {}

    /** The name of a terminal inside a box. */
    record Name(String words, double x, double y, boolean right) {}

    Glyph(MapPlan plan, MapPlan.Part part, Lettering lettering) {
        this.part = part;
        this.lettering = lettering;
        grown = Math.max(1, lettering.size() / Lettering.NUMBERS.size());
        String kind = part.component().kind().name();
        List<Machine.End> ends = plan.ends(part);
        boolean wet = ends.stream().anyMatch(e -> plan.owned().isFluid(e));
        Symbol own = (wet ? Symbols.of(kind) : Symbols.wired(kind)).orElse(null);
        boolean covers = own != null
                && (own.form() == Symbol.Form.TERMINALS
                        || ends.stream().allMatch(e -> own.port(e.port()).isPresent()));
        drawn = covers;
        symbol = covers && own.form() != Symbol.Form.TERMINALS ? own : null;
        hung = plan.isHung(part.component().id());
        crowded = symbol != null
                && ends.stream().filter(plan.rails()::containsKey).count() > 1;
        if (symbol == null) {
            terminals(plan, ends);
        } else {
            symbol(plan, ends);
        }
    }

    /** Room for one inset of a boiler. */
    double inset() {
        return INSET * grown;
    }

    /** Names of rails and terminals. */
    Lettering small() {
        return lettering.size() > Lettering.NUMBERS.size() ? lettering : Lettering.NAMES;
    }

    private double tagged() {
        return Math.max(TAG, 12 + 1.4 * small().size());
    }

    boolean isDot() {
        return symbol != null && symbol.form() == Symbol.Form.DOT;
    }

    boolean isVessel() {
        return symbol != null && symbol.form() == Symbol.Form.VESSEL;
    }

    private void symbol(MapPlan plan, List<Machine.End> ends) {
        if (isDot()) {
            width = 8;
            height = 8;
            ends.forEach(e -> ports.put(e.port(), new Symbol.Spot(4, 4)));
            return;
        }
        double scale = scale();
        double least = isVessel() ? part.inside().size() * inset() + 16 : 0;
        own = new Rect(0, 0, Math.max(least, symbol.width() * scale), symbol.height() * scale);
        double right = hung ? HANG : room(plan, ends, s -> s.x() >= symbol.width());
        double below = hung ? HANG : room(plan, ends, s -> s.y() >= symbol.height() && isWithin(s));
        double left = room(plan, ends, s -> s.x() <= 0);
        double top = room(plan, ends, s -> s.y() <= 0 && isWithin(s));
        own = own.moved(left, top);
        width = left + own.width() + right;
        height = top + own.height() + below;
        ends.forEach(e ->
                end(e.port(), symbol.port(e.port()).orElseThrow(), plan.rails().get(e)));
    }

    /** Of the symbol: more where names of rails stand below one another at its side. */
    double scale() {
        return isVessel() || crowded ? grown : 1;
    }

    private boolean isWithin(Symbol.Spot s) {
        return s.x() > 0 && s.x() < symbol.width();
    }

    /** What the names of rails need on one side. */
    private double room(MapPlan plan, List<Machine.End> ends, Predicate<Symbol.Spot> side) {
        return ends.stream()
                .filter(e -> plan.rails().containsKey(e)
                        && side.test(symbol.port(e.port()).orElseThrow()))
                .mapToDouble(e -> plan.rails().get(e).earth() ? EARTH : tagged())
                .max()
                .orElse(0);
    }

    /** A port of the symbol: named if it is on a rail, otherwise led to the edge of the box. */
    private void end(String port, Symbol.Spot s, MapPlan.Rail rail) {
        boolean east = s.x() >= symbol.width();
        boolean west = s.x() <= 0;
        Symbol.Spot at = new Symbol.Spot(east ? own.right() : own.x() + s.x() * scale(), own.y() + s.y() * scale());
        int dx = east ? 1 : west ? -1 : 0;
        int dy = dx != 0 ? 0 : s.y() <= 0 ? -1 : 1;
        if (rail != null) {
            tags.add(new Tag(rail, at, dx, dy));
            return;
        }
        if (hung && east) {
            // round below the symbol to the left
            ports.put(port, new Symbol.Spot(0, height));
            stubs.put(
                    port,
                    List.of(
                            at,
                            new Symbol.Spot(width, at.y()),
                            new Symbol.Spot(width, height),
                            new Symbol.Spot(0, height)));
            return;
        }
        Symbol.Spot edge = new Symbol.Spot(east ? width : west ? 0 : at.x(), dx != 0 ? at.y() : dy < 0 ? 0 : height);
        ports.put(port, edge);
        if (!edge.equals(at)) {
            stubs.put(port, List.of(at, edge));
        }
    }

    /** Rows of terminals: on the left what is led to the box, on the right what it leads on. */
    private void terminals(MapPlan plan, List<Machine.End> ends) {
        List<Machine.End> in = new ArrayList<>();
        List<Machine.End> out = new ArrayList<>();
        for (Machine.End e : ends) {
            (leadsOn(plan, e) ? out : in).add(e);
        }
        double wide = widest(in) + widest(out) + 28;
        width = Math.max(64, wide);
        height = Math.max(40, Math.max(in.size(), out.size()) * row() + 12);
        double tagsLeft = in.stream().anyMatch(plan.rails()::containsKey) ? tagged() : 0;
        double tagsRight = out.stream().anyMatch(plan.rails()::containsKey) ? tagged() : 0;
        double box = width;
        own = new Rect(tagsLeft, 0, box, height);
        width += tagsLeft + tagsRight;
        side(plan, in, tagsLeft, false);
        side(plan, out, tagsLeft + box, true);
    }

    private static boolean leadsOn(MapPlan plan, Machine.End e) {
        List<Way> own = plan.ways().stream().filter(w -> w.touches(e)).toList();
        List<Way> away = own.stream()
                .filter(w -> !w.from().component().equals(w.to().component()))
                .toList();
        return !own.isEmpty() && away.stream().allMatch(w -> w.from().equals(e));
    }

    private double row() {
        return Math.max(ROW, 1.3 * small().size());
    }

    private double widest(List<Machine.End> ends) {
        return ends.stream().mapToDouble(e -> small().width(e.port())).max().orElse(0);
    }

    private void side(MapPlan plan, List<Machine.End> ends, double edge, boolean right) {
        double y = height / 2 - (ends.size() - 1) * row() / 2;
        for (Machine.End e : ends) {
            MapPlan.Rail rail = plan.rails().get(e);
            names.add(new Name(e.port(), right ? edge - 7 : edge + 7, y, right));
            if (rail != null) {
                tags.add(new Tag(rail, new Symbol.Spot(edge, y), right ? 1 : -1, 0));
            } else {
                Symbol.Spot at = new Symbol.Spot(right ? width : 0, y);
                ports.put(e.port(), at);
                if (at.x() != edge) {
                    stubs.put(e.port(), List.of(new Symbol.Spot(edge, y), at));
                }
            }
            y += row();
        }
    }
}
