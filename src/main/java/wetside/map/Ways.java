package wetside.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.drawing.symbol.Symbol;
import wetside.drawing.symbol.Symbols;
import wetside.machine.Component;
import wetside.machine.Machine;

/** All lines and wires of a machine as ways between parts: hoses, pipes and leads are pieces of a way, not ends of one. */
final class Ways {
    private final Owned owned;
    private final Media media;
    private final List<Piece> pieces = new ArrayList<>();

    /** A join, or several with what lies between them. */
    private record Piece(Machine.End from, Machine.End to, boolean wire, List<Component> along) {
        boolean touches(Machine.End end) {
            return from.equals(end) || to.equals(end);
        }

        Piece endingAt(Machine.End end) {
            return to.equals(end) ? this : new Piece(to, from, wire, reversed(along));
        }
    }

    private Ways(Owned owned, Media media) {
        this.owned = owned;
        this.media = media;
    }

    static List<Way> of(Owned owned, Media media) {
        return new Ways(owned, media).all();
    }

    private List<Way> all() {
        Machine machine = owned.machine();
        machine.joins().lines().forEach(l -> pieces.add(new Piece(l.from(), l.to(), false, List.of())));
        machine.joins().wires().forEach(w -> pieces.add(new Piece(w.from(), w.to(), true, List.of())));
        pieces.removeIf(p -> isBesideTheLine(p.from()) || isBesideTheLine(p.to()));
        machine.components().forEach(this::pass);
        List<Way> ways = new ArrayList<>(pieces.stream().map(this::way).toList());
        while (deaden(ways)) {
            // what leads to a dead end is one
        }
        return ways;
    }

    /** A line to a fitting from which nothing but sensing goes on has nothing to carry; true when one was found. */
    private boolean deaden(List<Way> ways) {
        for (int i = 0; i < ways.size(); i++) {
            Way w = ways.get(i);
            if (!w.wire() && w.layer() != Layer.SENSING && (isDead(w, w.from(), ways) || isDead(w, w.to(), ways))) {
                ways.set(i, new Way(w.from(), w.to(), Layer.SENSING, false, false, w.along()));
                return true;
            }
        }
        return false;
    }

    private boolean isDead(Way way, Machine.End end, List<Way> ways) {
        if (owned.isEnd(end.component())) {
            return false;
        }
        List<Way> others = ways.stream()
                .filter(o -> o != way && !o.wire())
                .filter(o -> o.from().component().equals(end.component())
                        || o.to().component().equals(end.component()))
                .toList();
        return !others.isEmpty() && others.stream().allMatch(o -> o.layer() == Layer.SENSING);
    }

    private boolean isLine(String component) {
        return line(component).isPresent();
    }

    private Optional<Symbol> line(String component) {
        return Symbols.of(owned.machine().component(component).kind().name()).filter(s -> s.form() == Symbol.Form.LINE);
    }

    /** Such as the metal a lead lies against. */
    private boolean isBesideTheLine(Machine.End end) {
        return line(end.component()).filter(s -> s.port(end.port()).isEmpty()).isPresent();
    }

    /**
     * Joins what is on both sides of a piece of line, where exactly one thing is joined on either side. Any other stays a
     * part of its own.
     */
    private void pass(Component c) {
        if (!isLine(c.id())) {
            return;
        }
        List<Machine.End> ends = Symbols.of(c.kind().name()).orElseThrow().ports().keySet().stream()
                .map(p -> new Machine.End(c.id(), p))
                .toList();
        List<Piece> first = at(ends.get(0));
        List<Piece> second = at(ends.get(1));
        if (first.size() != 1 || second.size() != 1 || first.equals(second)) {
            return;
        }
        if (first.get(0).wire() && ends.stream().anyMatch(this::isOnARail)) {
            return;
        }
        Piece in = first.get(0).endingAt(ends.get(0));
        Piece out = second.get(0).endingAt(ends.get(1));
        List<Component> along = new ArrayList<>(in.along());
        along.add(c);
        along.addAll(reversed(out.along()));
        boolean forward = first.get(0) == in;
        Piece whole = new Piece(in.from(), out.from(), in.wire(), along);
        pieces.set(pieces.indexOf(first.get(0)), forward ? whole : whole.endingAt(in.from()));
        pieces.remove(second.get(0));
    }

    /** Where several wires meet, which may be drawn as a rail: a lead that begins there shows it at its own end. */
    private boolean isOnARail(Machine.End end) {
        int terminal = media.terminal(end);
        return owned.machine().joins().wires().stream()
                        .filter(w -> media.terminal(w.from()) == terminal)
                        .count()
                > 1;
    }

    private List<Piece> at(Machine.End end) {
        return pieces.stream().filter(p -> p.touches(end)).toList();
    }

    private Way way(Piece p) {
        if (p.wire()) {
            return new Way(p.from(), p.to(), media.ofWire(p.from()), true, media.isEarth(p.from()), p.along());
        }
        Way way = new Way(p.from(), p.to(), media.ofLine(p.from(), p.to()), false, false, p.along());
        return owned.outward(p.from()) - owned.outward(p.to()) < 0 ? way.turned() : way;
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        java.util.Collections.reverse(copy);
        return copy;
    }
}
