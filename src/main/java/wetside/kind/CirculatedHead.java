package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * A heavy head kept hot by water that circulates through it from a boiler or an exchanger: two lumps of metal, the path the
 * water takes and the bell with rim and filter holder. A kind with the ports {@code upper}, {@code lower}, {@code feed},
 * {@code path} and {@code bell} adds these parameters to its own.
 */
final class CirculatedHead {
    static final Parameter PATH = Parameter.usual(
            "path heat capacity",
            Dimension.HEAT_CAPACITY,
            500,
            20,
            5000,
            Spread.relative(0.1),
            "metal round the water path");
    static final Parameter BELL = Parameter.usual(
            "bell heat capacity",
            Dimension.HEAT_CAPACITY,
            1600,
            20,
            9000,
            Spread.relative(0.1),
            "bell, rim and filter holder");
    static final Parameter PATH_TO_BELL = Parameter.usual(
            "path to bell", Dimension.THERMAL_CONDUCTANCE, 3, 0.1, 50, Spread.relative(0.15), "conductance");
    static final Parameter PATH_LOSS = Parameter.usual(
            "path loss",
            Dimension.THERMAL_CONDUCTANCE,
            0.15,
            0.01,
            5,
            Spread.relative(0.2),
            "from the path to the air");
    static final Parameter BELL_LOSS = Parameter.usual(
            "bell loss",
            Dimension.THERMAL_CONDUCTANCE,
            0.35,
            0.01,
            5,
            Spread.relative(0.2),
            "from the bell to the air");
    static final Parameter CIRCULATION = Parameter.usual(
            "circulation exchange",
            Dimension.THERMAL_CONDUCTANCE,
            14,
            0.5,
            100,
            Spread.relative(0.2),
            "between circulating water and path");
    static final Parameter HEAD = Parameter.usual(
            "circulation height",
            Dimension.LENGTH,
            0.12,
            0.01,
            1,
            Spread.relative(0.1),
            "mean height of the group above the middle of the boiler's two ports");
    /** Exchange of the brewed water with the path and with the bell [W/K]. */
    private static final double PATH_EXCHANGE = 12;

    private static final double BELL_EXCHANGE = 2;
    /** What a pipe loses to the air while little flows through it [W/K]. */
    private static final double PIPE_LOSS = 0.3;

    private static final double CP = 4200;

    private CirculatedHead() {}

    /** Metal, circulation, and the way from the hot pipe past the path to the port {@code feed}. */
    static void build(Component c, Blueprint b) {
        metal(c, b);
        FluidPlan.Passage wide = Blueprint.jet(5e-3, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch feed =
                b.fluid().branch(c.id() + " feed", b.node(c, "upper"), b.node(c, "feed"), wide, FluidPlan.ALWAYS);
        b.fluid().exchange(feed, b.heatNode(c, "path"), PATH_EXCHANGE);
        circulation(c, b);
    }

    /** Brewing water on this branch passes the bell. */
    static void passesBell(Component c, FluidPlan.Branch branch, Blueprint b) {
        b.fluid().exchange(branch, b.heatNode(c, "bell"), BELL_EXCHANGE);
    }

    private static void metal(Component c, Blueprint b) {
        int path = b.heatNode(c, "path");
        int bell = b.heatNode(c, "bell");
        b.heat().capacity(path, c.get(PATH));
        b.heat().capacity(bell, c.get(BELL));
        b.heat().conductance(path, bell, c.get(PATH_TO_BELL));
        b.heat().conductance(path, HeatPlan.SURROUNDINGS, c.get(PATH_LOSS));
        b.heat().conductance(bell, HeatPlan.SURROUNDINGS, c.get(BELL_LOSS));
        Holder.felt(c, bell, b);
    }

    private static void circulation(Component c, Blueprint b) {
        FluidPlan.Loop loop = b.fluid()
                .loop(
                        c.id(),
                        b.node(c, "upper"),
                        b.node(c, "lower"),
                        b.heatNode(c, "path"),
                        c.get(CIRCULATION),
                        c.get(HEAD));
        b.reading(c, "upper pipe", Dimension.TEMPERATURE, 3, x -> skin(x, loop, loop.hot(), b.ambient()));
        b.reading(c, "lower pipe", Dimension.TEMPERATURE, 3, x -> skin(x, loop, loop.cold(), b.ambient()));
    }

    /** A pipe is as hot as its water while water flows, and cools when it stands. */
    private static double skin(double[] x, FluidPlan.Loop loop, int water, int ambient) {
        double carried = Math.abs(x[loop.flow()]) * CP;
        return x[ambient] + (x[water] - x[ambient]) * carried / (carried + PIPE_LOSS);
    }
}
