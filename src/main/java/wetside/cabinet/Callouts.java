package wetside.cabinet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers round the case, each with a straight leader to its part. Places stand in a ring outside the case; parts and places
 * are matched so that leaders are short. Whenever two leaders cross, exchanging their places shortens both, so the shortest
 * match has no crossings; a leader over another number costs more than any length.
 */
public final class Callouts {
    /** Radius of a number's disc. */
    public static final double RADIUS = 11;

    private static final double OUT = 24;
    private static final double STEP = 25;
    private static final double OVER_NUMBER = 1e4;
    private static final double CROSSING = 3e3;
    private static final double OVER_ANCHOR = 400;
    private static final int SWEEPS = 40;

    private final List<Fitted> parts;
    private final double[][] anchors;
    private final List<double[]> places = new ArrayList<>();
    private final int[] placeOf;

    /** The disc's middle and the leader's end on the part. */
    public record Callout(double x, double y, double partX, double partY) {
        Callout moved(double dx, double dy) {
            return new Callout(x + dx, y + dy, partX + dx, partY + dy);
        }
    }

    private Callouts(Frame frame, List<Fitted> parts) {
        this.parts = parts;
        Map<Fitted, double[]> found = Anchors.of(frame, parts);
        anchors = parts.stream().map(found::get).toArray(double[][]::new);
        placeOf = new int[parts.size()];
        for (int ring = 0; places.size() < 1.3 * parts.size() + 4; ring++) {
            ring(frame.outline(), OUT + ring * STEP);
        }
    }

    /** How far out numbers stand at most when there are so many. */
    static double reach(Frame frame, int parts) {
        double round = 2 * (frame.outline().width() + frame.outline().height()) / STEP;
        double rings = Math.ceil((1.3 * parts + 4) / round);
        return OUT + (Math.max(1, rings) - 1) * STEP + RADIUS;
    }

    public static Map<Fitted, Callout> of(Frame frame, List<Fitted> parts) {
        Callouts callouts = new Callouts(frame, parts);
        callouts.begin();
        for (int i = 0; i < SWEEPS && callouts.improve(); i++) {
            // until nothing gets better
        }
        Map<Fitted, Callout> all = new LinkedHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            double[] at = callouts.places.get(callouts.placeOf[i]);
            all.put(parts.get(i), new Callout(at[0], at[1], callouts.anchors[i][0], callouts.anchors[i][1]));
        }
        return all;
    }

    private void ring(Rect r, double out) {
        int down = (int) Math.max(1, Math.floor(r.height() / STEP));
        for (int i = 0; i < down; i++) {
            double y = r.middleY() + (i - (down - 1) / 2.0) * STEP;
            places.add(new double[] {r.x() - out, y});
            places.add(new double[] {r.right() + out, y});
        }
        int across = (int) Math.max(1, Math.floor(r.width() / STEP));
        for (int i = 0; i < across; i++) {
            double x = r.middleX() + (i - (across - 1) / 2.0) * STEP;
            places.add(new double[] {x, r.y() - out});
            places.add(new double[] {x, r.bottom() + out + 6});
        }
    }

    /** Each part takes the nearest free place. */
    private void begin() {
        boolean[] taken = new boolean[places.size()];
        for (int i = 0; i < parts.size(); i++) {
            int best = -1;
            for (int k = 0; k < places.size(); k++) {
                if (!taken[k] && (best < 0 || length(i, k) < length(i, best))) {
                    best = k;
                }
            }
            placeOf[i] = best;
            taken[best] = true;
        }
    }

    private boolean improve() {
        boolean better = false;
        for (int i = 0; i < parts.size(); i++) {
            for (int k = 0; k < places.size(); k++) {
                better |= tryMove(i, k);
            }
        }
        return better;
    }

    /** Moves part {@code i} to a place, exchanging with whoever is there, if that is better. */
    private boolean tryMove(int i, int place) {
        int mine = placeOf[i];
        if (mine == place) {
            return false;
        }
        int other = holder(place);
        double before = cost(i) + (other < 0 ? 0 : cost(other));
        placeOf[i] = place;
        if (other >= 0) {
            placeOf[other] = mine;
        }
        double after = cost(i) + (other < 0 ? 0 : cost(other));
        if (after < before - 1e-6) {
            return true;
        }
        placeOf[i] = mine;
        if (other >= 0) {
            placeOf[other] = place;
        }
        return false;
    }

    private int holder(int place) {
        for (int i = 0; i < placeOf.length; i++) {
            if (placeOf[i] == place) {
                return i;
            }
        }
        return -1;
    }

    private double length(int i, int place) {
        return Math.hypot(places.get(place)[0] - anchors[i][0], places.get(place)[1] - anchors[i][1]);
    }

    /** Length of a leader and the price of what it meets, and of what meets its number. */
    private double cost(int i) {
        double[] at = places.get(placeOf[i]);
        double cost = length(i, placeOf[i]);
        for (int k = 0; k < parts.size(); k++) {
            if (k == i) {
                continue;
            }
            double[] other = places.get(placeOf[k]);
            cost += distance(other, at, anchors[i]) < RADIUS + 3 ? OVER_NUMBER : 0;
            cost += distance(at, other, anchors[k]) < RADIUS + 3 ? OVER_NUMBER : 0;
            cost += cross(at, anchors[i], other, anchors[k]) ? CROSSING : 0;
            cost += distance(anchors[k], at, anchors[i]) < 4 ? OVER_ANCHOR : 0;
            cost += distance(anchors[i], other, anchors[k]) < 4 ? OVER_ANCHOR : 0;
        }
        return cost;
    }

    /** From a point to a stretch. */
    static double distance(double[] p, double[] a, double[] b) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double t = ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy + 1e-12);
        t = Math.max(0, Math.min(1, t));
        return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
    }

    static boolean cross(double[] a, double[] b, double[] c, double[] d) {
        return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }

    private static double turn(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }
}
