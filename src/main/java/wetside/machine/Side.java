package wetside.machine;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A side of the case, and with it a direction: in which axis it lies and at which end of it. */
public enum Side {
    REAR(1, false),
    RIGHT(0, true),
    LEFT(0, false),
    TOP(2, true),
    FRONT(1, true),
    BOTTOM(2, false);

    private final int axis;
    private final boolean far;

    Side(int axis, boolean far) {
        this.axis = axis;
        this.far = far;
    }

    /** 0 for width, 1 for depth, 2 for height. */
    public int axis() {
        return axis;
    }

    /** True when measures of its axis grow towards it. */
    public boolean isFar() {
        return far;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The side that the first of some words names which names one. */
    public static Optional<Side> of(String... words) {
        for (String word : words) {
            for (Side side : values()) {
                if (side.word().equals(word)) {
                    return Optional.of(side);
                }
            }
        }
        return Optional.empty();
    }

    public static List<String> words() {
        return List.of(values()).stream().map(Side::word).toList();
    }
}
