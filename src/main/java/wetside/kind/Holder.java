package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongSetting;

import java.util.List;
import java.util.stream.Stream;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * What every brew group has below its chamber: the screen, what hangs under it (nothing, coffee, a blind disc) and the
 * gasket round the rim. A kind with a port {@code cup} adds these parameters and faults to its own.
 */
final class Holder {
    static final Parameter SCREEN = Parameter.usual(
            "screen bore", Dimension.LENGTH, 5e-3, 0.05e-3, 15e-3, Spread.relative(0.1), "all its holes together");
    static final Parameter PUCK = Parameter.setting(
            "puck flow",
            Dimension.MASS_FLOW,
            2.2e-3,
            0.05e-3,
            15e-3,
            Spread.relative(0.3),
            "through coffee as usually ground, at 9 bar");
    static final Parameter RIM = Leaks.seat("rim leak");

    /** For groups that let their pressure off through a valve: what was pressed into coffee and headspace comes back. */
    static final Parameter HEADSPACE = Parameter.usual(
            "headspace",
            Dimension.MASS,
            8e-3,
            1e-3,
            30e-3,
            Spread.relative(0.2),
            "water that basket, coffee and the air above it take up at 9 bar");

    /** Water that clings to chamber and screen [kg]. */
    private static final double WET = 1e-3;

    /** More than any pump reaches, so that the cake yields on one straight line [Pa]. */
    private static final double FULL = 16e5;

    private static final double ATMOSPHERE = 101325;

    private static final List<Fault> FAULTS = List.of(
            Fault.of("rim gasket worn", 5.0, log(RIM, 0.1e-3, 1e-3)),
            Fault.of("screen clogged", 3.0, log(SCREEN, 0.7e-3, 0.15e-3)),
            wrongSetting("coffee ground too fine", 8.0, times(PUCK, 0.5, 0.05)),
            wrongSetting("coffee ground too coarse", 6.0, times(PUCK, 1.8, 4)));

    private Holder() {}

    /** The faults of screen, coffee and gasket, and those of the group itself. */
    static List<Fault> faultsAnd(Fault... own) {
        return Stream.concat(FAULTS.stream(), Stream.of(own)).toList();
    }

    /** The chamber takes up {@link #HEADSPACE} under pressure and gives it back when let off. */
    static void springs(Component c, int chamber, Blueprint b) {
        FluidPlan.Store room =
                b.fluid().store(c.id() + " headspace", chamber, WET, c.get(HEADSPACE) * FULL / 9e5, ATMOSPHERE);
        b.control((x, dt) -> {
            x[room.empty()] = x[b.atmosphere()];
            x[room.full()] = x[b.atmosphere()] + FULL;
        });
    }

    /** Readings of the metal a person touches: {@code temperature} and {@code touch}. */
    static void felt(Component c, int bell, Blueprint b) {
        int skin = b.heat().temperature(bell);
        b.reading(c, "temperature", Dimension.TEMPERATURE, 1.5, x -> x[skin]);
        b.choice(c, "touch", List.of("cold", "warm", "hot"), x -> x[skin] < 308 ? 0 : x[skin] < 333 ? 1 : 2);
    }

    /** From the chamber above the coffee to the port {@code cup} and past the rim; handle {@code holds}, reading {@code rim}. */
    static void build(Component c, int chamber, Blueprint b) {
        int holds = b.handle(c, "holds", List.of("nothing", "puck", "blind disc"), 0);
        int bare = b.slots().state(c.id() + ".bare", 1);
        int coffee = b.slots().state(c.id() + ".coffee", 0);
        b.control((x, dt) -> {
            x[bare] = x[holds] == 0 ? 1 : 0;
            x[coffee] = x[holds] == 1 ? 1 : 0;
        });
        FluidPlan.Passage screen = Blueprint.jet(c.get(SCREEN), Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Passage puck = new FluidPlan.Passage(9e5 / c.get(PUCK), screen.b());
        int cup = b.node(c, "cup");
        b.fluid().branch(c.id() + " screen", chamber, cup, screen, bare);
        b.fluid().branch(c.id() + " puck", chamber, cup, puck, coffee);
        int edge = b.innerNode();
        FluidPlan.Outlet rim = b.fluid().outlet(c.id() + " rim", edge);
        Leaks.between(c.id() + " rim", chamber, edge, c.get(RIM), b);
        b.choice(c, "rim", Leaks.WETNESS, x -> Leaks.wetness(x[rim.water()]));
    }
}
