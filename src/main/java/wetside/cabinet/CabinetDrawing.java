package wetside.cabinet;

import static wetside.drawing.Theme.Token.INK;
import static wetside.drawing.Theme.Token.SHEET;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wetside.drawing.Look;
import wetside.drawing.Svg;
import wetside.drawing.Theme;
import wetside.machine.Side;

/**
 * The case as a line drawing, one view under the other, numbers round it and names beside it. Case outline, dashed panel,
 * parts plain; what is behind others thin and dashed, what is looked for from another side thin; the chosen part in enamel.
 */
public final class CabinetDrawing {
    private static final double MARGIN = 16;
    private static final double HEAD = 26;
    private static final double ROW = 17;
    static final double FOOT = 9;
    /** Parts as large as this share of the front are numbered wherever they are seen, to find one's way by. */
    private static final double LANDMARK = 0.05;

    private final Cabinet cabinet;
    private final Optional<Fitted> chosen;
    private final Set<String> named;
    private final Room room;
    private final double scale;

    /** How large a drawing is: the longest measure of the case, and the width of the names beside it. */
    public enum Room {
        /** On a screen of its own. */
        SCREEN(460, 262),
        /** Across a sheet. */
        SHEET(350, 216),
        /** In half of a sheet, without names. */
        HALF(230, 0);

        private final double longest;
        private final double legend;

        Room(double longest, double legend) {
            this.longest = longest;
            this.legend = legend;
        }
    }

    /**
     * @param chosen the part to point out, if any
     * @param named  ids of the parts to number; empty for all that are looked for from a side
     */
    public CabinetDrawing(Cabinet cabinet, Optional<Fitted> chosen, Set<String> named, Room room) {
        this.cabinet = cabinet;
        this.room = room;
        this.chosen = chosen;
        this.named = named;
        double longest = Math.max(
                cabinet.size().width(),
                Math.max(cabinet.size().depth(), cabinet.size().height()));
        scale = room.longest / longest;
    }

    /** What stands where in the drawing of one view; for tests and for whoever puts views together. */
    public record Laid(
            Frame frame, Map<Fitted, Callouts.Callout> callouts, List<Line> legend, double width, double height) {}

    /** A line of the legend. */
    public record Line(int number, String words, double x, double y, boolean goesOn) {}

    /** One view without heading and names, and no larger than what is on it; {@link #caption} says what that is. */
    public String bare(Side side) {
        return bare(side, null);
    }

    /** The same, every part and number a link with its id in {@code data-part}; {@code link} says the address of an id. */
    public String bare(Side side, UnaryOperator<String> link) {
        View view = cabinet.from(side);
        Frame there = new Frame(view, 0, 0, scale);
        Map<Fitted, Callouts.Callout> callouts = new LinkedHashMap<>(Callouts.of(there, numbered(view)));
        Rect all = extent(there.outline(), callouts);
        Frame frame = new Frame(view, -all.x(), -all.y(), scale);
        // Moved, not placed anew: a place as good as another may win by a rounding, and then lie outside.
        callouts.replaceAll((part, c) -> c.moved(-all.x(), -all.y()));
        Laid laid = new Laid(frame, callouts, List.of(), all.width(), all.height());
        String title = cabinet.machine().identity().title() + ": " + captionShut(side);
        Svg svg = new Svg(all.width(), all.height(), title, description(List.of(side)));
        new ViewInk(svg, cabinet, chosen, named, link).view(laid.frame(), laid.callouts());
        return svg.end();
    }

    /** How wide {@link #bare} is. */
    public double bareWidth(Side side) {
        View view = cabinet.from(side);
        Frame there = new Frame(view, 0, 0, scale);
        return extent(there.outline(), Callouts.of(there, numbered(view))).width();
    }

    private static Rect extent(Rect outline, Map<Fitted, Callouts.Callout> callouts) {
        double left = outline.x() - 6;
        double top = outline.y() - 6;
        double right = outline.right() + 6;
        double bottom = outline.bottom() + FOOT + 4;
        for (Callouts.Callout c : callouts.values()) {
            left = Math.min(left, c.x() - Callouts.RADIUS - 2);
            top = Math.min(top, c.y() - Callouts.RADIUS - 2);
            right = Math.max(right, c.x() + Callouts.RADIUS + 2);
            bottom = Math.max(bottom, c.y() + Callouts.RADIUS + 2);
        }
        return new Rect(left, top, right - left, bottom - top);
    }

    /** "From the rear, rear panel off. 4 water tank". */
    public String caption(Side side) {
        return captioned(heading(side), side);
    }

    /** "From the top. 4 water tank", for whoever leaves the panels on. */
    public String captionShut(Side side) {
        return captioned("From the " + side.word(), side);
    }

    private String captioned(String from, Side side) {
        String names = CabinetSheet.named(numbered(cabinet.from(side)));
        return from + (names.isEmpty() ? "" : ". " + names);
    }

    /** Views one under the other. */
    public String svg(List<Side> sides) {
        List<Laid> laid = new ArrayList<>();
        double y = 0;
        double width = 0;
        for (Side side : sides) {
            Laid one = lay(side, y);
            laid.add(one);
            y += one.height();
            width = Math.max(width, one.width());
        }
        String title = cabinet.machine().identity().title() + ", "
                + cabinet.machine().identity().making();
        Svg svg = new Svg(width, y, title + ": the cabinet", description(sides));
        if (room == Room.SCREEN) {
            svg.rect(0, 0, width, y, Theme.LIGHT.of(SHEET));
        }
        laid.forEach(l -> draw(l, svg));
        return svg.end();
    }

    private String description(List<Side> sides) {
        String from = String.join(", ", sides.stream().map(Side::word).toList());
        return "Case seen from the " + from
                + chosen.map(c -> "; pointed out: " + c.name()).orElse("");
    }

    /** Numbered parts of a view, in the order of their numbers. */
    List<Fitted> numbered(View view) {
        return view.parts().stream()
                .filter(s -> named.isEmpty()
                        ? isLookedFor(s)
                        : named.contains(s.part().id()) && isShown(s))
                .map(View.Seen::part)
                .sorted(Comparator.comparingInt(Fitted::number))
                .toList();
    }

    private boolean isLookedFor(View.Seen seen) {
        boolean isLandmark = seen.manner() == View.Manner.AROUND
                && seen.box().width() * seen.box().height()
                        > LANDMARK * cabinet.size().along(0) * cabinet.size().along(2);
        return isLandmark
                || seen.manner() == View.Manner.PLAIN
                || seen.manner() == View.Manner.BEHIND
                || isChosen(seen.part());
    }

    private boolean isShown(View.Seen seen) {
        return seen.manner() != View.Manner.LEFT_OUT || isChosen(seen.part());
    }

    private boolean isChosen(Fitted part) {
        return chosen.filter(part::equals).isPresent();
    }

    /** Places everything of one view whose upper edge is at {@code top}. */
    public Laid lay(Side side, double top) {
        View view = cabinet.from(side);
        List<Fitted> parts = numbered(view);
        double out = Callouts.reach(new Frame(view, 0, 0, scale), parts.size()) + 6;
        Frame frame = new Frame(view, MARGIN + out, top + MARGIN + HEAD + out, scale);
        Map<Fitted, Callouts.Callout> callouts = Callouts.of(frame, parts);
        double x = frame.outline().right() + out + 20;
        List<Line> legend = legend(view, parts, x, top + MARGIN + HEAD + 18);
        double drawn = frame.outline().bottom() + out + FOOT + MARGIN - top;
        double listed = legend.isEmpty() ? 0 : legend.get(legend.size() - 1).y() + MARGIN - top;
        return new Laid(frame, callouts, legend, x + room.legend + MARGIN, Math.max(drawn, listed));
    }

    private List<Line> legend(View view, List<Fitted> parts, double x, double top) {
        List<Line> lines = new ArrayList<>();
        double y = top;
        for (Fitted p : parts) {
            boolean hidden = view.of(p).manner() == View.Manner.BEHIND;
            boolean first = true;
            for (String words :
                    Svg.wrapped(p.name() + (hidden ? ", behind others" : ""), Look.NAME, room.legend - 30)) {
                lines.add(new Line(p.number(), words, x, y, !first));
                first = false;
                y += ROW;
            }
        }
        return lines;
    }

    private void draw(Laid laid, Svg svg) {
        Rect c = laid.frame().outline();
        double top = c.y() - (c.x() - MARGIN) - HEAD + 12;
        svg.text(
                MARGIN,
                top,
                "start",
                Look.NAME,
                600,
                Theme.LIGHT.of(INK),
                heading(laid.frame().view().side()));
        ViewInk ink = new ViewInk(svg, cabinet, chosen, named);
        ink.view(laid.frame(), laid.callouts());
        laid.legend().forEach(ink::line);
    }

    /** What is seen, in words: "From the rear, rear panel off". */
    private String heading(Side side) {
        List<String> off =
                cabinet.panels(side).stream().map(p -> p.name() + " off").toList();
        String where = side == Side.TOP ? " (front below)" : side == Side.BOTTOM ? " (front above)" : "";
        return "From the " + side.word() + where + (off.isEmpty() ? ", no panel here" : ", " + String.join(", ", off));
    }
}
