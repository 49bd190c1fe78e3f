package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongSetting;

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
 * A hot-water tap that mixes cold water into what comes from the boiler, so that it neither boils nor spits. A
 * non-return valve in each of its two ways keeps boiler and cold line apart, also while the tap is shut.
 */
public final class MixingTap implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 3.5e-3, 0.3e-3, 25e-3, Spread.relative(0.1), "of the open seat, for both waters");
    static final Parameter HOT = Parameter.usual(
            "hot bore", Dimension.LENGTH, 1.4e-3, 0.3e-3, 25e-3, Spread.relative(0.05), "of the way for boiler water");
    static final Parameter COLD = Parameter.setting(
            "cold bore",
            Dimension.LENGTH,
            0.85e-3,
            0.05e-3,
            10e-3,
            Spread.relative(0.05),
            "that the mixing screw leaves to the cold water");
    static final Parameter CRACK = Parameter.usual(
            "cracking pressure", Dimension.PRESSURE, 0.05e5, 0.005e5, 1e5, Spread.relative(0.3), "of its non-returns");
    static final Parameter OPENS = Parameter.condition(
            "opens to", Dimension.RATIO, 1, 1e-4, 1, Spread.EXACT, "share of its bore that comes free");
    static final Parameter HOT_BACK = Leaks.seat("hot non-return leak");
    static final Parameter COLD_BACK = Leaks.seat("cold non-return leak");
    static final Parameter DRIP = Leaks.seat("leak");
    static final Parameter STEM = Leaks.outward("at the stem");

    private static final double BAND = 0.05e5;

    private static final Declaration DECLARATION = new Declaration(
            "mixing tap",
            List.of(
                    Port.fluid("hot", "from low down in the boiler"),
                    Port.fluid("cold", "from the cold line"),
                    Port.fluid("out", "to its spout")),
            List.of(BORE, HOT, COLD, CRACK, OPENS, HOT_BACK, COLD_BACK, DRIP, STEM),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("non-return to the boiler leaks", 2.0, log(HOT_BACK, 0.03e-3, 0.5e-3)),
            Fault.of("non-return to the cold line leaks", 2.0, log(COLD_BACK, 0.05e-3, 1e-3)),
            Fault.of("seat worn", 4.0, log(DRIP, 0.05e-3, 0.5e-3)),
            Fault.of("stem seal worn", 2.0, log(STEM, 0.05e-3, 0.5e-3)),
            Fault.of("does not open fully", 0.5, log(OPENS, 0.1, 0.002)),
            Fault.of("cold way blocked by scale", 1.0, times(COLD, 0.5, 0.1)),
            wrongSetting("mixed too cold", 1.5, times(COLD, 1.6, 3)));

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
        int opened = b.handle(c, "opened", 0, 1, 0);
        int mixed = b.innerNode();
        way(c, "hot", Blueprint.jet(c.get(HOT), Terms.SHARP, Terms.Liquid.BOILER), c.get(HOT_BACK), mixed, b);
        way(c, "cold", Blueprint.jet(c.get(COLD), Terms.SHARP, Terms.Liquid.COLD), c.get(COLD_BACK), mixed, b);
        FluidPlan.Passage seat = Blueprint.jet(c.get(BORE) * Math.sqrt(c.get(OPENS)), Terms.SHARP, Terms.Liquid.BOILER);
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), mixed, out, seat, opened);
        Leaks.between(c.id() + " seat", mixed, out, c.get(DRIP), b);
        Leaks.seen(c, mixed, c.get(STEM), b);
    }

    /** From one of the two inlets past its non-return valve to where the waters meet. */
    private static void way(Component c, String port, FluidPlan.Passage bore, double back, int mixed, Blueprint b) {
        int in = b.node(c, port);
        FluidPlan.Law law = new FluidPlan.OneWay(c.get(CRACK), BAND, bore.a(), bore.b(), 0);
        b.fluid().branch(c.id() + " " + port + " way", in, mixed, law, FluidPlan.ALWAYS);
        Leaks.between(c.id() + " " + port + " way", in, mixed, back, b);
    }
}
