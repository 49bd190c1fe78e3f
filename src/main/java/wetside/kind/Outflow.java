package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.units.Dimension;

/** What a person sees, catches and measures where something leaves the machine. */
final class Outflow {
    private static final List<String> WATER = List.of("dry", "drips", "runs thinly", "runs");
    static final List<String> STEAM = List.of("none", "wisp", "plume", "jet");

    private static final List<String> COMES = List.of("nothing", "quietly", "hisses", "spits steam", "steam");

    /** Less than this wets no thermometer [kg/s]. */
    private static final double MEASURED = 1e-4;

    private Outflow() {}

    static void readings(Component c, FluidPlan.Outlet outlet, Blueprint b) {
        b.choice(c, "water", WATER, x -> water(x[outlet.water()]));
        b.choice(c, "steam", STEAM, x -> steam(x[outlet.steam()]));
        b.choice(c, "comes", COMES, x -> comes(x[outlet.water()], x[outlet.steam()]));
        b.reading(c, "flow", Dimension.MASS_FLOW, 0.2e-3, x -> x[outlet.water()]);
        b.reading(c, "caught", Dimension.MASS, 2e-3, x -> x[outlet.total()]);
        b.reading(
                c,
                "temperature",
                Dimension.TEMPERATURE,
                1,
                x -> x[outlet.water()] > MEASURED ? x[outlet.temperature()] : Double.NaN);
    }

    private static int water(double flow) {
        int wet = Leaks.wetness(flow);
        return wet == 2 && flow > 3e-3 ? 3 : wet;
    }

    /** A little of the water that boils off at the mouth makes many times its volume of steam: it tears the stream apart. */
    private static int comes(double water, double steam) {
        if (water + steam < MEASURED) {
            return 0;
        }
        double share = steam / (water + steam);
        return share > 0.5 ? 4 : share > 0.01 ? 3 : share > 0.001 ? 2 : 1;
    }

    static int steam(double flow) {
        return flow > 5e-4 ? 3 : flow > 4e-5 ? 2 : flow > 3e-6 ? 1 : 0;
    }
}
