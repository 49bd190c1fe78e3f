package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
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
 * A group with a piston that a hand lifts against a spring. Lever down: the piston stands at the top, bares the inlet, and water
 * of the boiler runs in above the coffee. Lever let go: the spring drives the piston down on what is there, the pressure falling
 * with it. Assumes: the lever is either down or let go; the chamber is empty of air's own pressure while it fills.
 */
public final class SpringLeverGroup implements Kind {
    static final Parameter STROKE = Parameter.usual(
            "chamber",
            Dimension.MASS,
            0.05,
            0.01,
            0.2,
            Spread.relative(0.04),
            "water one stroke of the piston takes in");
    static final Parameter TOP = Parameter.usual(
            "spring pressure at the top",
            Dimension.PRESSURE,
            9.3e5,
            0.1e5,
            16e5,
            Spread.relative(0.05),
            "on the water, above the air's, as the piston leaves the top");
    static final Parameter BOTTOM = Parameter.usual(
            "spring pressure at the bottom",
            Dimension.PRESSURE,
            4.6e5,
            0.05e5,
            16e5,
            Spread.relative(0.05),
            "the same as the piston arrives at the bottom");
    static final Parameter INLET = Parameter.usual(
            "inlet bore", Dimension.LENGTH, 1.8e-3, 0.1e-3, 10e-3, Spread.relative(0.1), "its holes together");
    static final Parameter NECK = Parameter.usual(
            "neck heat capacity",
            Dimension.HEAT_CAPACITY,
            300,
            20,
            5000,
            Spread.relative(0.1),
            "metal towards the boiler and round the inlet");
    static final Parameter BELL = Parameter.usual(
            "bell heat capacity",
            Dimension.HEAT_CAPACITY,
            1500,
            20,
            9000,
            Spread.relative(0.1),
            "cylinder, rim and filter holder");
    static final Parameter BETWEEN = Parameter.usual(
            "neck to bell", Dimension.THERMAL_CONDUCTANCE, 3, 0.1, 50, Spread.relative(0.15), "conductance");
    static final Parameter LOSS = Parameter.usual(
            "bell loss", Dimension.THERMAL_CONDUCTANCE, 0.6, 0.01, 5, Spread.relative(0.2), "from the bell to the air");
    static final Parameter EXCHANGE = Parameter.usual(
            "bell exchange",
            Dimension.THERMAL_CONDUCTANCE,
            14,
            0.1,
            100,
            Spread.relative(0.2),
            "between passing water and the cylinder");
    static final Parameter LIFT = Parameter.condition(
            "lift", Dimension.RATIO, 1, 0.02, 1, Spread.EXACT, "share of the piston's way the lever still moves it");
    static final Parameter LOWER_SEAL = Leaks.seat("lower seal leak");
    static final Parameter ROD_SEAL = Leaks.seat("upper seal leak");
    static final Parameter FLANGE = Leaks.seat("flange leak");
    static final Parameter INLET_SEAT = Leaks.seat("inlet leak");

    /** What stays under the piston at the bottom and in the screen [kg]. */
    private static final double DEAD = 3e-3;
    /** By how much air left in the chamber presses back until it is full [Pa]. */
    private static final double CUSHION = 0.3e5;
    /** Exchange of the water with the neck as it runs in [W/K]. */
    private static final double NECK_EXCHANGE = 8;
    /** Share of its way at which the piston begins to bare the inlet, and over which it does. */
    private static final double BARES = 0.6;

    private static final double WHOLLY = 0.3;

    private static final Declaration DECLARATION = new Declaration(
            "spring lever group",
            List.of(
                    Port.fluid("feed", "water of the boiler, from below its surface"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.heat("neck", "its metal where it is bolted to the boiler")
                            .orPlugged(),
                    Port.heat("bell", "cylinder and rim").orPlugged()),
            List.of(
                    STROKE,
                    TOP,
                    BOTTOM,
                    INLET,
                    NECK,
                    BELL,
                    BETWEEN,
                    LOSS,
                    EXCHANGE,
                    Holder.SCREEN,
                    Holder.PUCK,
                    LIFT,
                    LOWER_SEAL,
                    ROD_SEAL,
                    INLET_SEAT,
                    FLANGE,
                    Holder.RIM));

    private static final List<Fault> FAULTS = Holder.faultsAnd(
            Fault.of("lower piston seal worn", 5.0, log(LOWER_SEAL, 0.08e-3, 0.8e-3)),
            Fault.of("upper piston seal worn", 4.0, log(ROD_SEAL, 0.08e-3, 0.8e-3)),
            Fault.of("spring weak", 1.0, times(TOP, 0.85, 0.5), times(BOTTOM, 0.8, 0.35)),
            Fault.of("spring broken", 0.3, times(TOP, 0.3, 0.05), times(BOTTOM, 0.15, 0.02)),
            Fault.of("inlet leaks", 1.5, log(INLET_SEAT, 0.05e-3, 0.5e-3)),
            Fault.of("inlet scaled up", 2.0, log(INLET, 0.9e-3, 0.2e-3)),
            Fault.of("flange gasket leaks", 2.0, log(FLANGE, 0.06e-3, 0.6e-3)),
            Fault.of("lever pin worn", 1.0, set(LIFT, 0.8, 0.55)),
            Fault.of("lever pin sheared", 0.3, set(LIFT, 0.1, 0.02)));

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
        int down = b.handle(c, "lever", List.of("up", "down"), 0);
        FluidPlan.Branch out = water(c, chamber, down, b);
        Holder.build(c, chamber, b);
        gasketsRead(c, b);
        int pressure = b.fluid().pressure(chamber);
        b.reading(c, "pressure", Dimension.PRESSURE, 0.2e5, x -> x[pressure] - x[b.atmosphere()]);
        int fastest = b.slots().smooth(c.id() + ".fastest", 0);
        b.control((x, dt) -> x[fastest] = x[down] > 0.5 ? 0 : Math.max(x[fastest], x[out.flow()]));
        b.choice(c, "lever returns", List.of("not at all", "slowly", "flies up"), x -> speed(x[fastest]));
        int pull = pull(c);
        b.choice(c, "pull", List.of("none", "light", "firm"), x -> pull);
    }

    private static void metal(Component c, Blueprint b) {
        int neck = b.heatNode(c, "neck");
        int bell = b.heatNode(c, "bell");
        b.heat().capacity(neck, c.get(NECK));
        b.heat().capacity(bell, c.get(BELL));
        b.heat().conductance(neck, bell, c.get(BETWEEN));
        b.heat().conductance(bell, HeatPlan.SURROUNDINGS, c.get(LOSS));
        Holder.felt(c, bell, b);
    }

    /** Boiler, inlet, the chamber under the piston, and on to what hangs below; returns the way out. */
    private static FluidPlan.Branch water(Component c, int chamber, int down, Blueprint b) {
        int feed = b.node(c, "feed");
        int cylinder = b.innerNode();
        double lift = c.get(LIFT);
        double top = c.get(BOTTOM) + lift * (c.get(TOP) - c.get(BOTTOM));
        FluidPlan.Store store = b.fluid()
                .store(
                        c.id() + " cylinder",
                        cylinder,
                        DEAD,
                        lift * c.get(STROKE),
                        b.slots().first(b.atmosphere()));
        int bared = b.slots().state(c.id() + ".inlet open", 0);
        double opens = Math.max(0, Math.min(1, (lift - BARES) / WHOLLY));
        b.control(new Piston(store, down, bared, b.atmosphere(), opens, c.get(BOTTOM), top));
        FluidPlan.Passage holes = Blueprint.jet(c.get(INLET), Terms.SHARP, Terms.Liquid.BOILER);
        FluidPlan.Branch inlet = b.fluid().branch(c.id() + " inlet", feed, cylinder, holes, bared);
        b.fluid().exchange(inlet, b.heatNode(c, "neck"), NECK_EXCHANGE);
        Leaks.between(c.id() + " lower seal", feed, cylinder, c.get(LOWER_SEAL), b);
        FluidPlan.Passage seat = Blueprint.jet(c.get(INLET_SEAT), Terms.SHARP, Terms.Liquid.BOILER);
        if (c.get(INLET_SEAT) > 0) {
            FluidPlan.OneWay lip = new FluidPlan.OneWay(0, 1e3, seat.a(), seat.b(), 0);
            b.fluid().branch(c.id() + " inlet leak", feed, cylinder, lip, FluidPlan.ALWAYS);
        }
        FluidPlan.Passage wide = Blueprint.jet(6e-3, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch out = b.fluid().branch(c.id() + " cylinder", cylinder, chamber, wide, FluidPlan.ALWAYS);
        b.fluid().exchange(out, b.heatNode(c, "bell"), c.get(EXCHANGE));
        return out;
    }

    private static void gasketsRead(Component c, Blueprint b) {
        wet(c, "rod", c.get(ROD_SEAL), b);
        wet(c, "flange", c.get(FLANGE), b);
    }

    private static void wet(Component c, String what, double bore, Blueprint b) {
        if (bore <= 0) {
            b.choice(c, what, Leaks.WETNESS, x -> 0);
            return;
        }
        FluidPlan.Passage gap = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.BOILER);
        int flow = b.fluid()
                .branch(
                        c.id() + " " + what + " leak",
                        b.node(c, "feed"),
                        b.floor().node(),
                        gap,
                        FluidPlan.ALWAYS)
                .flow();
        b.choice(c, what, Leaks.WETNESS, x -> Leaks.wetness(x[flow]));
    }

    /** How the lever came back when it was last let go, from how fast the piston drove water out at most [kg/s]. */
    private static int speed(double fastest) {
        return fastest < 1e-4 ? 0 : fastest < 12e-3 ? 1 : 2;
    }

    /** How hard the spring pulls on the lever in the hand. */
    private static int pull(Component c) {
        double felt = c.get(LIFT) < 0.5 ? 0 : c.get(TOP);
        return felt < 3e5 ? 0 : felt < 7e5 ? 1 : 2;
    }

    /** Down: the chamber is held open and fills against little. Let go: the spring stands on what is in it. */
    private record Piston(
            FluidPlan.Store store, int down, int bared, int atmosphere, double opens, double bottom, double top)
            implements Control {
        @Override
        public void act(double[] x, double dt) {
            boolean held = x[down] > 0.5;
            x[bared] = held ? opens : 0;
            x[store.empty()] = x[atmosphere] + (held ? 0 : bottom);
            x[store.full()] = x[atmosphere] + (held ? CUSHION : top);
        }
    }
}
