package wetside.cabinet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.machine.Body;
import wetside.machine.Side;

/**
 * The case from one side, its panels there off, seen without perspective. All measures in metres of the case: x to the right
 * of who looks, y downwards. From the top one stands at the front; from below the machine lies on its back.
 *
 * <p>Which parts are shown, and how: a part is <i>plain</i> when it is looked for from this side and a quarter of it or more
 * is free of what stands before it; <i>behind</i> when it is looked for here and less is free; <i>around</i> when it is looked
 * for elsewhere, more than half of it is free and it is not inside a larger part. Everything else is left out. What is looked
 * for here and sits in a larger part is shown on it, as the flange of a heating element.
 */
public final class View {
    private static final double PLAIN = 0.25;
    private static final double AROUND = 0.5;
    /** Points a side on which a part is tried. */
    private static final int POINTS = 12;
    /** Boxes that overlap by less only touch [m]. */
    private static final double TOUCH = 1e-3;

    private final Side side;
    private final double width;
    private final double height;
    private final Map<Integer, Rect> boxes = new HashMap<>();
    private final List<Fitted> ordered;
    private final Map<Integer, Seen> seen = new LinkedHashMap<>();

    /** How a part is drawn. */
    public enum Manner {
        PLAIN,
        BEHIND,
        AROUND,
        LEFT_OUT
    }

    /** @param free share of it that nothing stands before */
    public record Seen(Fitted part, Rect box, Manner manner, double free) {}

    View(Cabinet cabinet, Side side) {
        this.side = side;
        width = cabinet.size().along(across());
        height = cabinet.size().along(up());
        ordered = farthestFirst(cabinet.parts());
        for (Fitted part : ordered) {
            double free = share(part);
            seen.put(part.number(), new Seen(part, box(part), manner(part, free), free));
        }
    }

    private int across() {
        return side.axis() == 0 ? 1 : 0;
    }

    private int up() {
        return side.axis() == 2 ? 1 : 2;
    }

    public Side side() {
        return side;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** Parts from the farthest to the nearest, as they are drawn. */
    public List<Seen> parts() {
        return List.copyOf(seen.values());
    }

    public Seen of(Fitted part) {
        return seen.get(part.number());
    }

    double free(Fitted part) {
        return seen.get(part.number()).free;
    }

    private Manner manner(Fitted part, double free) {
        if (part.home().contains(side)) {
            return free >= PLAIN ? Manner.PLAIN : Manner.BEHIND;
        }
        return free > AROUND && !isInside(part) ? Manner.AROUND : Manner.LEFT_OUT;
    }

    /** Whether a larger part that it sits in comes out nearer to who looks. */
    private boolean isInside(Fitted part) {
        return ordered.stream()
                .filter(q -> q.body().volume() > part.body().volume())
                .filter(q -> q.near(side) >= part.near(side))
                .anyMatch(q -> q.body().overlap(part.body(), side.axis()) > TOUCH && box(q).overlap(box(part)) > TOUCH);
    }

    Rect box(Fitted part) {
        return boxes.computeIfAbsent(part.number(), n -> project(part));
    }

    private Rect project(Fitted part) {
        Body b = part.body();
        boolean mirrored = side == Side.REAR || side == Side.RIGHT;
        double x = mirrored ? width - b.high().get(across()) : b.low().get(across());
        double y = side == Side.TOP ? b.low().get(up()) : height - b.high().get(up());
        return new Rect(x, y, b.size(across()), b.size(up()));
    }

    /** Whether it is seen end on, and so as a circle. */
    boolean isCircle(Fitted part) {
        return part.body().form() == Body.Form.ROUND && part.body().axis() == side.axis();
    }

    /** Whether a part that is round lies across the picture rather than standing in it. */
    boolean liesAcross(Fitted part) {
        return part.body().axis() == across();
    }

    /** Whether {@code a} is seen before {@code b} where both are. */
    boolean isOver(Fitted a, Fitted b) {
        if (a == b || box(a).overlap(box(b)) <= TOUCH) {
            return false;
        }
        boolean inEachOther = a.body().overlap(b.body(), side.axis()) > TOUCH + depthOfLesser(a, b) / 2;
        return inEachOther ? a.body().volume() < b.body().volume() : middle(a) > middle(b);
    }

    private double depthOfLesser(Fitted a, Fitted b) {
        return Math.min(a.body().size(side.axis()), b.body().size(side.axis()));
    }

    private double middle(Fitted part) {
        return part.near(side) + part.far(side);
    }

    /** A part comes after everything it is over; where that goes round in a circle, by its near face. */
    private List<Fitted> farthestFirst(List<Fitted> parts) {
        List<Fitted> left = new ArrayList<>(parts);
        left.sort(Comparator.comparingDouble((Fitted p) -> p.near(side)).thenComparingInt(Fitted::number));
        List<Fitted> sorted = new ArrayList<>();
        while (!left.isEmpty()) {
            Fitted next = left.stream()
                    .filter(p -> left.stream().noneMatch(q -> isOver(p, q)))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            sorted.add(next);
        }
        return sorted;
    }

    private double share(Fitted part) {
        return freePoints(part).size() / (double) points(part).size();
    }

    /** Points of a part that nothing stands before. */
    List<double[]> freePoints(Fitted part) {
        List<Fitted> before = ordered.stream()
                .filter(q -> !q.body().bends() && isOver(q, part))
                .toList();
        return points(part).stream()
                .filter(p -> before.stream().noneMatch(q -> covers(q, p[0], p[1])))
                .toList();
    }

    List<double[]> points(Fitted part) {
        Rect box = box(part);
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            for (int k = 0; k < POINTS; k++) {
                double x = box.x() + box.width() * (i + 0.5) / POINTS;
                double y = box.y() + box.height() * (k + 0.5) / POINTS;
                if (covers(part, x, y)) {
                    points.add(new double[] {x, y});
                }
            }
        }
        return points;
    }

    boolean covers(Fitted part, double x, double y) {
        Rect box = box(part);
        if (!isCircle(part)) {
            return box.has(x, y);
        }
        double dx = (x - box.middleX()) / (box.width() / 2);
        double dy = (y - box.middleY()) / (box.height() / 2);
        return dx * dx + dy * dy <= 1;
    }
}
