package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * A flooded tube through a steam boiler: fresh water at pump pressure inside, the boiler's water outside. At rest it
 * becomes as hot as the boiler and so lies above 100 °C under pressure; while water is drawn it is as cool as the wall
 * lets it be. Assumes: mixed inside (hot and cold layers, which some makers keep apart with an inner pipe, are not told
 * apart); always covered by the boiler's water.
 */
public final class HeatExchangerTube implements Kind {
    static final Parameter VOLUME =
            Parameter.required("volume", Dimension.VOLUME, 0.02e-3, 5e-3, Spread.relative(0.04), "inside");
    static final Parameter FILL = Parameter.usual(
            "filled at start", Dimension.RATIO, 0.996, 0, 1, Spread.EXACT, "share of the volume that is water");
    static final Parameter STIFFNESS = Parameter.usual(
            "stiffness",
            Dimension.PRESSURE,
            0.9e9,
            0.1e9,
            2.2e9,
            Spread.relative(0.2),
            "bulk modulus of water and wall");
    static final Parameter DOME = Parameter.usual(
            "dome",
            Dimension.RATIO,
            0.004,
            0,
            0.3,
            Spread.relative(0.5),
            "share of the volume above its uppermost port, where air stays");
    static final Parameter CONDUCTANCE = Parameter.usual(
            "conductance",
            Dimension.THERMAL_CONDUCTANCE,
            18,
            0.5,
            400,
            Spread.relative(0.15),
            "from the boiler's water to the tube's, clean");
    static final Parameter SURFACE =
            Parameter.usual("surface", Dimension.AREA, 0.03, 0.002, 1, Spread.relative(0.1), "of the tube");
    static final Parameter METAL = Parameter.usual(
            "metal heat capacity", Dimension.HEAT_CAPACITY, 120, 5, 3000, Spread.relative(0.1), "of the tube");
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 5e-3, 0.1e-3, 25e-3, Spread.relative(0.05), "of its inlet");
    static final Parameter SCALE = Parameter.condition(
            "scale", Dimension.LENGTH, 0, 0, 10e-3, Spread.EXACT, "thickness of the layer inside it");
    static final Parameter PINHOLE = Parameter.condition(
            "pinhole", Dimension.LENGTH, 0, 0, 4e-3, Spread.EXACT, "bore of a hole from the tube into the boiler");
    static final Parameter LEAK = Leaks.outward("at its flange");

    private static final double SCALE_CONDUCTIVITY = 1;
    private static final double MIDDLE = 0.5;
    private static final double LOW = 0.12;

    private static final Declaration DECLARATION = new Declaration(
            "heat exchanger tube",
            List.of(
                    Port.fluid("feed", "cold water from the pump"),
                    Port.fluid("upper", "hot pipe to a group, at its top").orPlugged(),
                    Port.fluid("lower", "return pipe from a group").orPlugged(),
                    Port.fluid("boiler", "the boiler's water round it: where a hole would lead"),
                    Port.heat("outside", "the boiler's water")),
            List.of(VOLUME, FILL, STIFFNESS, DOME, CONDUCTANCE, SURFACE, METAL, BORE, SCALE, PINHOLE, LEAK),
            Trait.CLOSED_VESSEL);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("scaled", 2.0, set(SCALE, 0.4e-3, 3e-3), log(BORE, 2.5e-3, 0.5e-3)),
            Fault.of("pinholed into the boiler", 0.2, log(PINHOLE, 0.04e-3, 0.8e-3)),
            Fault.of("flange leaks", 0.6, log(LEAK, 0.03e-3, 0.3e-3)));

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
        int water = b.innerHeatNode();
        int vessel = b.fluid().vessel(c.id(), c.get(VOLUME), c.get(STIFFNESS), c.get(FILL), water);
        wall(c, water, b);
        int inside = b.innerNode();
        b.fluid().takeOff(inside, vessel, MIDDLE);
        FluidPlan.Passage inlet = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.COLD);
        b.fluid().branch(c.id() + " inlet", b.node(c, "feed"), inside, inlet, FluidPlan.ALWAYS);
        open(c, "upper", vessel, 1 - c.get(DOME), b);
        open(c, "lower", vessel, LOW, b);
        Leaks.between(c.id() + " pinhole", inside, b.node(c, "boiler"), c.get(PINHOLE), b);
        Leaks.seen(c, inside, c.get(LEAK), b);
    }

    private static void open(Component c, String port, int vessel, double height, Blueprint b) {
        if (b.isJoined(c, port)) {
            b.fluid().takeOff(b.node(c, port), vessel, height);
        }
    }

    private static void wall(Component c, int water, Blueprint b) {
        int metal = b.innerHeatNode();
        double half = 2 * c.get(CONDUCTANCE);
        double scale = c.get(SCALE) / (SCALE_CONDUCTIVITY * c.get(SURFACE));
        b.heat().capacity(metal, c.get(METAL));
        b.heat().conductance(b.heatNode(c, "outside"), metal, half);
        b.heat().conductance(metal, water, 1 / (1 / half + scale));
    }
}
