package wetside.kind;

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
 * A group head without valves and without circulation of its own: bolted to a boiler or fed by a pipe, a solenoid valve
 * before it. Its metal is two lumps: the flange the water passes, and the bell with rim and filter holder. What keeps it
 * hot is a contact of its flange with the boiler, and the water that passes.
 */
public final class SolenoidGroup implements Kind {
    static final Parameter FLANGE = Parameter.usual(
            "flange heat capacity",
            Dimension.HEAT_CAPACITY,
            350,
            20,
            5000,
            Spread.relative(0.1),
            "metal round the water path");
    static final Parameter BELL = Parameter.usual(
            "bell heat capacity",
            Dimension.HEAT_CAPACITY,
            700,
            20,
            9000,
            Spread.relative(0.1),
            "bell, rim and filter holder");
    static final Parameter BETWEEN = Parameter.usual(
            "flange to bell", Dimension.THERMAL_CONDUCTANCE, 5, 0.1, 50, Spread.relative(0.15), "conductance");
    static final Parameter FLANGE_LOSS = Parameter.usual(
            "flange loss",
            Dimension.THERMAL_CONDUCTANCE,
            0.1,
            0.01,
            5,
            Spread.relative(0.2),
            "from the flange to the air");
    static final Parameter BELL_LOSS = Parameter.usual(
            "bell loss", Dimension.THERMAL_CONDUCTANCE, 0.3, 0.01, 5, Spread.relative(0.2), "from the bell to the air");
    static final Parameter FLANGE_EXCHANGE = Parameter.usual(
            "flange exchange",
            Dimension.THERMAL_CONDUCTANCE,
            8,
            0.1,
            100,
            Spread.relative(0.2),
            "between passing water and flange");
    static final Parameter BELL_EXCHANGE = Parameter.usual(
            "bell exchange",
            Dimension.THERMAL_CONDUCTANCE,
            2,
            0.1,
            100,
            Spread.relative(0.2),
            "between passing water and bell");

    /** Where water passes through the head, as a sharp orifice [m]. */
    private static final double BORE = 4e-3;

    private static final Declaration DECLARATION = new Declaration(
            "solenoid group",
            List.of(
                    Port.fluid("in", "from the brew valve"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.heat("flange", "metal round the water path: what bolts to a boiler")
                            .orPlugged(),
                    Port.heat("bell", "bell and rim").orPlugged()),
            List.of(
                    FLANGE,
                    BELL,
                    BETWEEN,
                    FLANGE_LOSS,
                    BELL_LOSS,
                    FLANGE_EXCHANGE,
                    BELL_EXCHANGE,
                    Holder.SCREEN,
                    Holder.PUCK,
                    Holder.RIM,
                    Holder.HEADSPACE));

    private static final List<Fault> FAULTS = Holder.faultsAnd();

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
        int flange = b.heatNode(c, "flange");
        int bell = b.heatNode(c, "bell");
        b.heat().capacity(flange, c.get(FLANGE));
        b.heat().capacity(bell, c.get(BELL));
        b.heat().conductance(flange, bell, c.get(BETWEEN));
        b.heat().conductance(flange, HeatPlan.SURROUNDINGS, c.get(FLANGE_LOSS));
        b.heat().conductance(bell, HeatPlan.SURROUNDINGS, c.get(BELL_LOSS));
        Holder.felt(c, bell, b);
        int neck = b.innerNode();
        int chamber = b.innerNode();
        FluidPlan.Passage bore = Blueprint.jet(BORE, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch in = b.fluid().branch(c.id() + " flange", b.node(c, "in"), neck, bore, FluidPlan.ALWAYS);
        b.fluid().exchange(in, flange, c.get(FLANGE_EXCHANGE));
        FluidPlan.Branch down = b.fluid().branch(c.id() + " bell", neck, chamber, bore, FluidPlan.ALWAYS);
        b.fluid().exchange(down, bell, c.get(BELL_EXCHANGE));
        Holder.springs(c, chamber, b);
        Holder.build(c, chamber, b);
    }
}
