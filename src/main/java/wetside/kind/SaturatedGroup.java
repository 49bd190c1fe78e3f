package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.times;

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
 * A group head that is one room with its brew boiler: a neck wide enough that boiler water stands in the head and rises
 * and sinks through it. What the head loses to the air the boiler's water brings at once, so that it stays near the
 * boiler's temperature. The water it holds belongs to the boiler's volume.
 */
public final class SaturatedGroup implements Kind {
    static final Parameter HEAD = Parameter.usual(
            "head heat capacity",
            Dimension.HEAT_CAPACITY,
            900,
            20,
            5000,
            Spread.relative(0.1),
            "of the metal that stands in boiler water");
    static final Parameter BELL = Parameter.usual(
            "bell heat capacity",
            Dimension.HEAT_CAPACITY,
            500,
            20,
            9000,
            Spread.relative(0.1),
            "bell, rim and filter holder");
    static final Parameter BETWEEN = Parameter.usual(
            "head to bell", Dimension.THERMAL_CONDUCTANCE, 10, 0.1, 100, Spread.relative(0.15), "conductance");
    static final Parameter HEAD_LOSS = Parameter.usual(
            "head loss", Dimension.THERMAL_CONDUCTANCE, 0.2, 0.01, 5, Spread.relative(0.2), "from the head to the air");
    static final Parameter BELL_LOSS = Parameter.usual(
            "bell loss",
            Dimension.THERMAL_CONDUCTANCE,
            0.25,
            0.01,
            5,
            Spread.relative(0.2),
            "from the bell to the air");
    static final Parameter STANDING = Parameter.usual(
            "neck exchange",
            Dimension.THERMAL_CONDUCTANCE,
            30,
            0.1,
            300,
            Spread.relative(0.2),
            "between the boiler's water and the head, by the water that rises and sinks in the neck");
    static final Parameter NECK = Parameter.usual(
            "neck bore", Dimension.LENGTH, 20e-3, 0.5e-3, 80e-3, Spread.relative(0.05), "between boiler and head");
    static final Parameter LEAK = Leaks.outward("at the flange to the boiler");

    /** Exchange of the brewed water with the head and with the bell [W/K]. */
    private static final double HEAD_EXCHANGE = 12;

    private static final double BELL_EXCHANGE = 2;
    /** Ways drilled in the head, as a sharp orifice [m]. */
    private static final double WAY = 4e-3;

    private static final Declaration DECLARATION = new Declaration(
            "saturated group",
            List.of(
                    Port.fluid("boiler", "neck to the brew boiler"),
                    Port.fluid("out", "from the head to the brew valve"),
                    Port.fluid("in", "from the brew valve to the screen"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.heat("water", "content of the brew boiler"),
                    Port.heat("head", "metal round the standing water").orPlugged(),
                    Port.heat("bell", "bell and rim").orPlugged()),
            List.of(
                    HEAD,
                    BELL,
                    BETWEEN,
                    HEAD_LOSS,
                    BELL_LOSS,
                    STANDING,
                    NECK,
                    LEAK,
                    Holder.SCREEN,
                    Holder.PUCK,
                    Holder.RIM,
                    Holder.HEADSPACE));

    private static final List<Fault> FAULTS = Holder.faultsAnd(
            Fault.of("neck narrowed by scale", 0.7, times(STANDING, 0.35, 0.02), log(NECK, 6e-3, 1.5e-3)),
            Fault.of("flange gasket leaks", 0.7, log(LEAK, 0.03e-3, 0.4e-3)));

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
        int head = b.heatNode(c, "head");
        int bell = b.heatNode(c, "bell");
        metal(c, head, bell, b);
        int boiler = b.node(c, "boiler");
        FluidPlan.Passage neck = Blueprint.jet(c.get(NECK), Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch through = b.fluid().branch(c.id() + " neck", boiler, b.node(c, "out"), neck, FluidPlan.ALWAYS);
        b.fluid().exchange(through, head, HEAD_EXCHANGE);
        int chamber = b.innerNode();
        FluidPlan.Passage way = Blueprint.jet(WAY, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch down = b.fluid().branch(c.id() + " bell", b.node(c, "in"), chamber, way, FluidPlan.ALWAYS);
        b.fluid().exchange(down, bell, BELL_EXCHANGE);
        Holder.build(c, chamber, b);
        Holder.springs(c, chamber, b);
        Leaks.seen(c, boiler, c.get(LEAK), b);
    }

    private static void metal(Component c, int head, int bell, Blueprint b) {
        b.heat().capacity(head, c.get(HEAD));
        b.heat().capacity(bell, c.get(BELL));
        b.heat().conductance(b.heatNode(c, "water"), head, c.get(STANDING));
        b.heat().conductance(head, bell, c.get(BETWEEN));
        b.heat().conductance(head, HeatPlan.SURROUNDINGS, c.get(HEAD_LOSS));
        b.heat().conductance(bell, HeatPlan.SURROUNDINGS, c.get(BELL_LOSS));
        Holder.felt(c, bell, b);
        int inside = b.heat().temperature(head);
        b.reading(c, "head temperature", Dimension.TEMPERATURE, 1.5, x -> x[inside]);
    }
}
