package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** What everything has that is clamped to hot metal and acts by its own temperature: a small mass, and how well it sits. */
final class Disc {
    static final Parameter SEATING = Parameter.usual(
            "contact with the face",
            Dimension.THERMAL_CONDUCTANCE,
            0.6,
            1e-3,
            10,
            Spread.relative(0.2),
            "between the disc and what it is screwed to");

    private static final double HOLDS = 6;
    private static final double LOSS = 0.01;

    private Disc() {}

    /** Slot of the temperature of a disc on the port {@code face} [K]. */
    static int on(Component c, Blueprint b) {
        int disc = b.innerHeatNode();
        b.heat().capacity(disc, HOLDS);
        b.heat().conductance(b.heatNode(c, "face"), disc, c.get(SEATING));
        b.heat().conductance(disc, HeatPlan.SURROUNDINGS, LOSS);
        return b.heat().temperature(disc);
    }
}
