package wetside.kind;

import java.util.List;
import java.util.function.ToIntFunction;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.physics.Atmosphere;
import wetside.units.Dimension;

/** The room the machine stands in: its air, and the bench under the machine. */
public final class Surroundings implements Kind {
    static final Parameter ALTITUDE = Parameter.usual(
            "altitude", Dimension.LENGTH, 100, -400, 5000, Spread.absolute(100), "above the sea; thins the air");
    static final Parameter TEMPERATURE = Parameter.usual(
            "temperature", Dimension.TEMPERATURE, 294.15, 258.15, 328.15, Spread.absolute(4), "of the air");

    private static final Declaration DECLARATION =
            new Declaration("surroundings", List.of(), List.of(ALTITUDE, TEMPERATURE));

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    /** Weather is no fault. */
    @Override
    public List<Fault> faults() {
        return List.of();
    }

    @Override
    public void build(Component c, Blueprint b) {
        b.slots().startAt(b.atmosphere(), Atmosphere.pressure(c.get(ALTITUDE)));
        b.slots().startAt(b.ambient(), c.get(TEMPERATURE));
        var floor = b.floor();
        b.choice(
                c, "water under the machine", Leaks.WETNESS, x -> Leaks.wetness(unseen(x, b, FluidPlan.Outlet::water)));
        b.choice(c, "steam from the machine", Outflow.STEAM, x -> Outflow.steam(unseen(x, b, FluidPlan.Outlet::steam)));
        b.reading(c, "puddle", Dimension.MASS, 10e-3, x -> x[floor.total()]);
    }

    /** What leaves somewhere behind the panels, leaks and covered outlets together. */
    private static double unseen(double[] x, Blueprint b, ToIntFunction<FluidPlan.Outlet> slot) {
        double sum = x[slot.applyAsInt(b.floor())];
        for (FluidPlan.Outlet o : b.covered()) {
            sum += x[slot.applyAsInt(o)];
        }
        return sum;
    }
}
