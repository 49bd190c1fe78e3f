package wetside.kind;

import static wetside.kind.Fault.log;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * A heavy brew group with a brew valve and a drain valve lifted by a cam, kept hot by water that circulates through it.
 * Its metal is two lumps: the path the water takes, and the bell with rim and filter holder.
 */
public final class LeverGroup implements Kind {
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
    static final Parameter VALVE =
            Parameter.usual("valve bore", Dimension.LENGTH, 3.5e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "brew valve");
    static final Parameter DRAIN =
            Parameter.usual("drain bore", Dimension.LENGTH, 2.5e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "drain valve");
    static final Parameter BREW_SEAL = Leaks.seat("brew valve leak");
    static final Parameter DRAIN_SEAL = Leaks.seat("drain valve leak");

    /** Exchange of the brewed water with the path and with the bell [W/K]. */
    private static final double PATH_EXCHANGE = 12;

    private static final double BELL_EXCHANGE = 2;
    /** What a pipe loses to the air while little flows through it [W/K]. */
    private static final double PIPE_LOSS = 0.3;

    private static final double CP = 4200;

    private static final Declaration DECLARATION = new Declaration(
            "lever group",
            List.of(
                    Port.fluid("upper", "hot pipe from the boiler"),
                    Port.fluid("lower", "return pipe to the boiler"),
                    Port.fluid("feed", "to the jet"),
                    Port.fluid("brew", "from the jet to the brew valve"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.fluid("drain", "below the drain valve").toWaste(),
                    Port.motion("brew-cam", "lift of the brew valve, 0 to 1"),
                    Port.motion("drain-cam", "lift of the drain valve, 0 to 1"),
                    Port.heat("path", "metal round the water path").orPlugged(),
                    Port.heat("bell", "bell and rim").orPlugged()),
            List.of(
                    PATH,
                    BELL,
                    PATH_TO_BELL,
                    PATH_LOSS,
                    BELL_LOSS,
                    CIRCULATION,
                    HEAD,
                    VALVE,
                    DRAIN,
                    Holder.SCREEN,
                    Holder.PUCK,
                    BREW_SEAL,
                    DRAIN_SEAL,
                    Holder.RIM));

    private static final List<Fault> FAULTS = Holder.faultsAnd(
            Fault.of("brew valve seal worn", 2.0, log(BREW_SEAL, 0.03e-3, 0.6e-3)),
            Fault.of("drain valve seal worn", 2.0, log(DRAIN_SEAL, 0.05e-3, 0.8e-3)));

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        metal(c, b);
        int chamber = b.innerNode();
        ways(c, chamber, b);
        Holder.build(c, chamber, b);
        circulation(c, b);
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

    /** From the hot pipe through the brew valve into the chamber above the coffee, and out through the drain valve. */
    private static void ways(Component c, int chamber, Blueprint b) {
        FluidPlan.Passage wide = Blueprint.jet(5e-3, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch feed =
                b.fluid().branch(c.id() + " feed", b.node(c, "upper"), b.node(c, "feed"), wide, FluidPlan.ALWAYS);
        b.fluid().exchange(feed, b.heatNode(c, "path"), PATH_EXCHANGE);
        int brew = b.node(c, "brew");
        FluidPlan.Passage valve = Blueprint.jet(c.get(VALVE), Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch open = b.fluid().branch(c.id() + " brew valve", brew, chamber, valve, b.motion(c, "brew-cam"));
        b.fluid().exchange(open, b.heatNode(c, "bell"), BELL_EXCHANGE);
        Leaks.between(c.id() + " brew valve", brew, chamber, c.get(BREW_SEAL), b);
        int drain = b.node(c, "drain");
        FluidPlan.Passage out = Blueprint.jet(c.get(DRAIN), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id() + " drain valve", chamber, drain, out, b.motion(c, "drain-cam"));
        Leaks.between(c.id() + " drain valve", chamber, drain, c.get(DRAIN_SEAL), b);
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
