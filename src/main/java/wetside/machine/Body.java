package wetside.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The room a part takes in the case: the box round it, in metres from the left, from the rear and from the bottom.
 *
 * @param inWall true for what is seen through a wall of the case
 * @param low    its least corner
 * @param high   its greatest corner
 */
public record Body(Form form, boolean inWall, List<Double> low, List<Double> high) {
    /** How a part looks from outside. */
    public enum Form {
        BOX,
        /** A cylinder along {@link Body#axis()}. */
        ROUND,
        /** A valve's body with a winding on it. */
        COIL,
        /** A hose, lead or pipe: it gives way. */
        BENT
    }

    /** Of a part with a place. {@code at} is the middle; what is seen through a wall is pushed inwards until it fits. */
    public static Optional<Body> of(Component c, Optional<MachineFile.Case> around) {
        List<Double> at = c.place().xyz();
        if (at.size() != 3) {
            return Optional.empty();
        }
        Bodies.Usual usual = Bodies.of(c.kind());
        List<Double> size = c.place().size().size() == 3 ? c.place().size() : usual.size(c);
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double half = size.get(i) / 2;
            double middle = at.get(i);
            if (usual.inWall() && around.isPresent()) {
                double room = around.get().along(i);
                middle = Math.max(half, Math.min(room - half, middle));
            }
            low.add(middle - half);
            high.add(middle + half);
        }
        return Optional.of(new Body(usual.form(), usual.inWall(), List.copyOf(low), List.copyOf(high)));
    }

    public double size(int axis) {
        return high.get(axis) - low.get(axis);
    }

    public double middle(int axis) {
        return (low.get(axis) + high.get(axis)) / 2;
    }

    public double volume() {
        return size(0) * size(1) * size(2);
    }

    /** The axis of what is round: the measure that is left when the two most alike are its diameter. */
    public int axis() {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            double a = size((i + 1) % 3);
            double b = size((i + 2) % 3);
            double unlike = Math.abs(Math.log(a / b));
            if (unlike < least - 1e-9) {
                least = unlike;
                best = i;
            }
        }
        return best;
    }

    /** Gives way when something has to pass. */
    public boolean bends() {
        return form == Form.BENT;
    }

    /** How deep two boxes are in each other along an axis, negative when they are apart [m]. */
    public double overlap(Body other, int axis) {
        return Math.min(high.get(axis), other.high.get(axis)) - Math.max(low.get(axis), other.low.get(axis));
    }
}
