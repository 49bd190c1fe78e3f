package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * A block of metal with an element cast in and a narrow channel through it: water takes on the block's heat while it
 * passes, the less of it the faster it flows. Its first half warms water as a pipe does, its second half is a small vessel
 * in which water may boil away; what of that is dry passes hardly any heat. Assumes: metal of one temperature; scale lies
 * evenly on the wall.
 */
public final class Thermoblock implements Kind {
    static final Parameter POWER =
            Parameter.required("rated power", Dimension.POWER, 50, 5000, Spread.relative(0.05), "at the rated voltage");
    static final Parameter VOLTAGE = Parameter.usual(
            "rated voltage", Dimension.VOLTAGE, 230, 12, 480, Spread.EXACT, "voltage the power is stated for");
    static final Parameter METAL = Parameter.usual(
            "heat capacity", Dimension.HEAT_CAPACITY, 700, 20, 2e4, Spread.relative(0.1), "of the metal");
    static final Parameter LOSS = Parameter.usual(
            "loss", Dimension.THERMAL_CONDUCTANCE, 0.6, 0.05, 20, Spread.relative(0.15), "from the metal to the air");
    static final Parameter VOLUME = Parameter.usual(
            "channel volume", Dimension.VOLUME, 12e-6, 2e-6, 500e-6, Spread.relative(0.05), "inside the channel");
    static final Parameter FILL = Parameter.usual(
            "filled at start", Dimension.RATIO, 0.9, 0, 1, Spread.absolute(0.05), "share of the channel that is water");
    static final Parameter BORE = Parameter.usual(
            "channel bore",
            Dimension.LENGTH,
            1.6e-3,
            0.3e-3,
            10e-3,
            Spread.relative(0.05),
            "of an orifice that would hold back as much, clean");
    static final Parameter EXCHANGE = Parameter.usual(
            "exchange", Dimension.THERMAL_CONDUCTANCE, 50, 1, 1000, Spread.relative(0.15), "from clean wall to water");
    static final Parameter WALL = Parameter.usual(
            "channel wall", Dimension.AREA, 0.012, 0.0005, 0.5, Spread.relative(0.1), "surface under water");
    static final Parameter SCALE = Parameter.condition(
            "scale", Dimension.LENGTH, 0, 0, 5e-3, Spread.EXACT, "thickness of the cake on its wall");
    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance in series with its element");
    static final Parameter INSULATION =
            Ohms.open("insulation", Ohms.INSULATION, "from the middle of its element to the metal");
    static final Parameter LEAK = Leaks.outward("at a fitting or the joint");

    private static final double SCALE_CONDUCTIVITY = 1;
    private static final double STIFFNESS = 0.3e9;
    /** Least bore scale leaves [m]. */
    private static final double PINHOLE = 0.1e-3;

    /** Bore of the hot fitting [m], and the level of the channel it lets off from. */
    private static final double FITTING = 4e-3;

    private static final double OUT_AT = 0.75;
    private static final double MIDDLE = 0.5;

    private static final Declaration DECLARATION = new Declaration(
            "thermoblock",
            List.of(
                    Port.fluid("in", "cold water"),
                    Port.fluid("out", "hot water or steam"),
                    Port.current("1", "terminal, usually towards the line"),
                    Port.current("2", "terminal, usually towards the neutral"),
                    Port.current("earth", "its metal"),
                    Port.heat("metal", "what thermostats, sensors and fuses are clamped to")
                            .orPlugged()),
            List.of(POWER, VOLTAGE, METAL, LOSS, VOLUME, FILL, BORE, EXCHANGE, WALL, SCALE, BREAK, INSULATION, LEAK),
            Trait.NEEDS_EARTH,
            Trait.CLOSED_VESSEL);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("channel scaled up", 5.0, set(SCALE, 0.4e-3, 0.7e-3)),
            Fault.of("element open", 1.5, set(BREAK, Ohms.OPEN)),
            Fault.of("element leaks to earth", 0.8, log(INSULATION, 50e3, 300)),
            Fault.of("element shorted to the metal", 0.3, set(INSULATION, 1)),
            Fault.of("joint leaks", 1.0, log(LEAK, 0.03e-3, 0.4e-3)));

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
        int metal = b.heatNode(c, "metal");
        b.heat().capacity(metal, c.get(METAL));
        b.heat().conductance(metal, HeatPlan.SURROUNDINGS, c.get(LOSS));
        int skin = b.heat().temperature(metal);
        b.reading(c, "temperature", Dimension.TEMPERATURE, 2, x -> x[skin]);
        element(c, metal, b);
        channel(c, metal, b);
    }

    private static void element(Component c, int metal, Blueprint b) {
        double half = c.get(VOLTAGE) * c.get(VOLTAGE) / c.get(POWER) / 2;
        int middle = b.innerTerminal();
        warms(c.id() + " first half", b.terminal(c, "1"), middle, half + c.get(BREAK), metal, b);
        warms(c.id() + " second half", middle, b.terminal(c, "2"), half, metal, b);
        b.current()
                .add(new CurrentPlan.Resistor(
                        c.id() + " insulation", middle, b.terminal(c, "earth"), c.get(INSULATION)));
    }

    private static void warms(String name, int from, int to, double ohms, int metal, Blueprint b) {
        int element = b.current().add(new CurrentPlan.Resistor(name, from, to, ohms));
        b.heat().source(metal, b.current().power(element));
    }

    private static void channel(Component c, int metal, Blueprint b) {
        double cake = c.get(SCALE) / (SCALE_CONDUCTIVITY * c.get(WALL) / 2);
        double exchange = 1 / (2 / c.get(EXCHANGE) + cake);
        double bore = Math.max(PINHOLE, c.get(BORE) - 2 * c.get(SCALE));
        FluidPlan.Passage way = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.HOT);
        int content = b.innerHeatNode();
        int vessel = b.fluid().vessel(c.id() + " channel", c.get(VOLUME), STIFFNESS, c.get(FILL), content);
        b.heat().immersed(new HeatPlan.Immersed(metal, content, exchange, 0, OUT_AT));
        int entry = b.innerNode();
        b.fluid().takeOff(entry, vessel, 0);
        FluidPlan.Branch in = b.fluid().branch(c.id() + " channel", b.node(c, "in"), entry, way, FluidPlan.ALWAYS);
        b.fluid().exchange(in, metal, exchange);
        int exit = b.innerNode();
        b.fluid().takeOff(exit, vessel, OUT_AT);
        FluidPlan.Passage fitting = Blueprint.jet(FITTING, Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id() + " fitting", exit, b.node(c, "out"), fitting, FluidPlan.ALWAYS);
        int joint = b.innerNode();
        b.fluid().takeOff(joint, vessel, MIDDLE);
        Leaks.seen(c, joint, c.get(LEAK), b);
    }
}
