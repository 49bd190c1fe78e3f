package wetside.cabinet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where the leader of each part ends: on a point of it that is seen, near its middle, clear of what stands before it. */
final class Anchors {
    private static final double CLEAR = 6;
    private static final double APART = 7;

    private final Frame frame;
    private final Map<Fitted, double[]> anchors = new LinkedHashMap<>();

    private Anchors(Frame frame) {
        this.frame = frame;
    }

    static Map<Fitted, double[]> of(Frame frame, List<Fitted> parts) {
        Anchors anchors = new Anchors(frame);
        parts.stream()
                .sorted(Comparator.comparingDouble((Fitted p) -> p.body().volume()))
                .forEach(anchors::add);
        return anchors.anchors;
    }

    private void add(Fitted part) {
        View view = frame.view();
        List<double[]> points = view.freePoints(part);
        List<double[]> candidates = points.isEmpty() ? view.points(part) : points;
        List<Rect> before = new ArrayList<>();
        view.parts().stream()
                .filter(s -> s.manner() != View.Manner.LEFT_OUT && view.isOver(s.part(), part))
                .forEach(s -> before.add(frame.box(s.part())));
        double[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double[] p : candidates) {
            double[] at = {frame.x(p[0]), frame.y(p[1])};
            double cost = cost(at, frame.box(part), before);
            if (cost < least) {
                least = cost;
                best = at;
            }
        }
        anchors.put(part, best);
    }

    private double cost(double[] at, Rect box, List<Rect> before) {
        double cost = Math.hypot(at[0] - box.middleX(), at[1] - box.middleY());
        for (Rect r : before) {
            cost += 10 * Math.max(0, CLEAR - outside(r, at));
        }
        for (double[] other : anchors.values()) {
            cost += 20 * Math.max(0, APART - Math.hypot(at[0] - other[0], at[1] - other[1]));
        }
        return cost;
    }

    private static double outside(Rect r, double[] at) {
        double dx = Math.max(0, Math.max(r.x() - at[0], at[0] - r.right()));
        double dy = Math.max(0, Math.max(r.y() - at[1], at[1] - r.bottom()));
        return Math.hypot(dx, dy);
    }
}
