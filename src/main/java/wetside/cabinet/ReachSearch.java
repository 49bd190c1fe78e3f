package wetside.cabinet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wetside.machine.Bodies;
import wetside.machine.Machine;
import wetside.machine.Side;

/**
 * Looks for the least work that frees a part. Its panels come off; then it leaves through one of the sides so opened, and
 * whatever rigid part its box would strike on the way has to come off first, each in its own best way. Hoses and leads give
 * way, what is fixed in the opened wall comes off with the panel, and what is much smaller sits on the part or is undone with
 * it.
 */
final class ReachSearch {
    /** A part that the box would only graze is no obstacle: share of the moved part's measure, and metres. */
    private static final double GRAZE = 0.25;

    private static final double LEAST_GRAZE = 0.004;
    /** What has less than this share of the moved part's room comes off with it or is undone in passing. */
    private static final double FITTING = 0.2;
    /** A part this near to a wall without a panel shows in it [m]. */
    private static final double AT_WALL = 0.02;
    /** Work of taking a part off, in panels. */
    private static final double PART = 1.5;

    private final Cabinet cabinet;

    ReachSearch(Cabinet cabinet) {
        this.cabinet = cabinet;
    }

    Reach to(Fitted part) {
        return to(part, new LinkedHashSet<>());
    }

    private Reach to(Fitted part, Set<Fitted> asked) {
        if (part.behind().isEmpty()) {
            return new Reach(part, List.of(), byHand(part));
        }
        Set<Side> ways = new LinkedHashSet<>();
        part.behind().forEach(panel -> ways.addAll(panel.sides()));
        asked.add(part);
        return ways.stream()
                .map(side -> through(part, side, asked))
                .min(Comparator.comparingDouble(ReachSearch::work))
                .orElse(new Reach(part, part.behind(), List.of()));
    }

    /**
     * What is reached without taking off a panel stands in a wall, or in a bay that is open above once what lifts out of it
     * is out.
     */
    private List<Fitted> byHand(Fitted part) {
        boolean inWall =
                part.body().inWall() || part.home().stream().anyMatch(s -> cabinet.distance(part, s) < AT_WALL);
        return inWall
                ? List.of()
                : inTheWay(part, Side.TOP).stream()
                        .filter(p -> Bodies.liftsOut(p.component().kind()))
                        .toList();
    }

    private static double work(Reach reach) {
        return reach.panels().size() + PART * reach.first().size();
    }

    private Reach through(Fitted part, Side side, Set<Fitted> asked) {
        Set<Machine.Panel> panels = new LinkedHashSet<>(part.behind());
        Set<Fitted> first = new LinkedHashSet<>();
        for (Fitted obstacle : inTheWay(part, side)) {
            if (!asked.contains(obstacle)) {
                Reach before = to(obstacle, new LinkedHashSet<>(asked));
                panels.addAll(before.panels());
                first.addAll(before.first());
                first.add(obstacle);
            }
        }
        return new Reach(part, new ArrayList<>(panels), new ArrayList<>(first));
    }

    /** The nearest to the opened side first. */
    List<Fitted> inTheWay(Fitted part, Side side) {
        return cabinet.parts().stream()
                .filter(other -> isInTheWay(other, part, side))
                .sorted(Comparator.comparingDouble((Fitted p) -> -p.near(side)))
                .toList();
    }

    private static boolean isInTheWay(Fitted other, Fitted part, Side side) {
        boolean inOpenedWall = other.body().inWall() && other.home().contains(side);
        if (other == part
                || other.body().bends()
                || inOpenedWall
                || other.body().volume() < FITTING * part.body().volume()
                || other.far(side) < part.near(side) - part.body().size(side.axis()) / 2) {
            return false;
        }
        for (int axis = 0; axis < 3; axis++) {
            double graze = Math.max(LEAST_GRAZE, GRAZE * part.body().size(axis));
            if (axis != side.axis() && other.body().overlap(part.body(), axis) <= graze) {
                return false;
            }
        }
        return true;
    }
}
