package wetside.map;

import java.util.ArrayList;
import java.util.List;

/** What is wrong with a map as a picture: things that overlap, lines through what they do not end at, things outside. */
public final class Geometry {
    private static final double TOUCH = 0.5;

    private final Sheet sheet;
    private final List<String> wrong = new ArrayList<>();

    private record Thing(String what, Rect box, Sheet.Placed part, Sheet.Line line) {}

    private Geometry(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Complaints about a map, none when it is fit to be seen. */
    public static List<String> of(MachineMap map) {
        return of(map.sheet());
    }

    static List<String> of(Sheet sheet) {
        Geometry g = new Geometry(sheet);
        g.look();
        return g.wrong;
    }

    private void look() {
        List<Thing> things = things();
        Rect picture = new Rect(0, 0, sheet.width(), sheet.height());
        for (int i = 0; i < things.size(); i++) {
            Thing a = things.get(i);
            if (!picture.holds(a.box())) {
                wrong.add(a.what() + " is outside the picture");
            }
            for (int j = i + 1; j < things.size(); j++) {
                Thing b = things.get(j);
                if (a.box().hits(b.box())) {
                    wrong.add(a.what() + " overlaps " + b.what());
                }
            }
        }
        sheet.lines().forEach(l -> l.pieces().forEach(p -> line(l, p, things, picture)));
    }

    private void line(Sheet.Line line, Rect piece, List<Thing> things, Rect picture) {
        if (!picture.holds(piece)) {
            wrong.add(line.way() + " leaves the picture");
        }
        for (Thing t : things) {
            boolean own = t.line() == line;
            boolean dot =
                    t.part() != null && t.part().glyph().isDot() && t.what().startsWith("symbol");
            Rect inner = t.box().grown(-TOUCH);
            Rect thin = new Rect(piece.x() - 0.01, piece.y() - 0.01, piece.width() + 0.02, piece.height() + 0.02);
            if (!own && !dot && thin.hits(inner)) {
                wrong.add("line " + line.way().from() + " to " + line.way().to() + " runs through " + t.what());
            }
        }
    }

    private List<Thing> things() {
        List<Thing> all = new ArrayList<>();
        for (Sheet.Placed p : sheet.parts()) {
            String id = p.glyph().part.component().id();
            all.add(new Thing("symbol of " + id, p.box(), p, null));
            List<wetside.machine.Component> inside = p.glyph().part.inside();
            if (sheet.lettering().width("88") > p.glyph().inset() && inside.size() > 1) {
                wrong.add("numbers in " + id + " run into one another");
            }
            if (!p.glyph().isVessel()) {
                all.add(new Thing("name of " + id, p.label().box(), p, null));
            }
        }
        for (Sheet.Line l : sheet.lines()) {
            l.words().forEach(w -> all.add(new Thing("words " + w.lines(), w.box(), null, l)));
        }
        return all;
    }
}
