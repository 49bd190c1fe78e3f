package wetside.kind;

import java.util.function.DoubleUnaryOperator;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** What all resistance thermometers share: a small tip that follows its pocket, and leads that break or touch. */
final class Thermometer {
    static final Parameter SEATING = Parameter.condition(
            "contact with the pocket",
            Dimension.THERMAL_CONDUCTANCE,
            1,
            1e-3,
            10,
            Spread.relative(0.2),
            "between its tip and what it measures");
    static final Parameter SERIES = Ohms.closed("resistance in series", 0.05, "of its own leads");
    static final Parameter ACROSS = Ohms.open("resistance across", Ohms.INSULATION, "between its two leads");

    /** Heat capacity of the tip [J/K] and what its stem loses to the air [W/K]. */
    private static final double TIP = 4;

    private static final double STEM = 0.004;

    private Thermometer() {}

    /** Joins the tip to port {@code tip} and the resistance to terminals 1 and 2. */
    static void build(Component c, Blueprint b, DoubleUnaryOperator resistance) {
        int tip = b.innerHeatNode();
        b.heat().capacity(tip, TIP);
        b.heat().conductance(b.heatNode(c, "tip"), tip, c.get(SEATING));
        b.heat().conductance(tip, HeatPlan.SURROUNDINGS, STEM);
        double series = c.get(SERIES);
        double across = c.get(ACROSS);
        HeatPlan.ResistanceLaw law = t -> series + 1 / (1 / resistance.applyAsDouble(t) + 1 / across);
        int ohms = b.slots().smooth(c.id() + ".ohms", law.ohms(293.15));
        b.heat().sensor(new HeatPlan.Sensor(tip, ohms, law));
        b.current().add(new CurrentPlan.Varying(c.id(), b.terminal(c, "1"), b.terminal(c, "2"), ohms));
    }
}
