package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
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
import wetside.physics.Terms;
import wetside.units.Dimension;

/** A rotary vane pump with its bypass built in. The screw of the bypass is set by a gauge, so it is given as that reading. */
public final class RotaryVanePump implements Kind {
    /** Turns per second at which the screw is set. */
    private static final double RATED_SPEED = 1400 / 60.0;
    /** Typical inner leak of a new pump: an eighth of the flow lost at 9 bar [kg/(s Pa)]. */
    private static final double SLIP = 4e-9;

    static final Parameter PER_REV = Parameter.usual(
            "moved per turn",
            Dimension.MASS,
            1.6e-3,
            0.2e-3,
            20e-3,
            Spread.relative(0.05),
            "water per turn of the shaft");
    static final Parameter SET = Parameter.setting(
            "pressure set",
            Dimension.PRESSURE,
            8.5e5,
            1e5,
            16e5,
            Spread.absolute(0.3e5),
            "gauge reading against a blind disc, drawing from a tank");
    static final Parameter BAND = Parameter.usual(
            "bypass band",
            Dimension.PRESSURE,
            0.8e5,
            0.1e5,
            4e5,
            Spread.relative(0.2),
            "rise from the bypass's first opening until it passes the whole flow");
    static final Parameter INLET_SHARE = Parameter.usual(
            "inlet share",
            Dimension.RATIO,
            0.25,
            0,
            1,
            Spread.absolute(0.1),
            "share of the inlet pressure that adds to the outlet pressure when the bypass rules");
    static final Parameter WEAR = Parameter.condition(
            "vane wear", Dimension.NUMBER, 1, 1, 40, Spread.EXACT, "inner leak when turning, as a multiple of new");
    static final Parameter REST_SLIP = Parameter.condition(
            "seep at rest",
            Dimension.LENGTH,
            0.02e-3,
            0.001e-3,
            2e-3,
            Spread.relative(0.3),
            "bore of an orifice that would let as much back past the vanes at rest");
    static final Parameter DELIVERS = Parameter.condition(
            "delivers", Dimension.RATIO, 1, 0, 1, Spread.EXACT, "share of the new flow it still moves");
    static final Parameter SPRING = Parameter.condition(
            "bypass spring", Dimension.RATIO, 1, 0, 3, Spread.EXACT, "force left, as a share of what it was set to");
    static final Parameter BYPASS_LEAK = Leaks.seat("bypass leak");
    static final Parameter LEAK = Leaks.outward("at the shaft seal");

    private static final Declaration DECLARATION = new Declaration(
            "rotary vane pump",
            List.of(
                    Port.fluid("in", "suction"),
                    Port.fluid("out", "pressure"),
                    Port.motion("shaft", "turns per second")),
            List.of(PER_REV, SET, BAND, INLET_SHARE, WEAR, REST_SLIP, DELIVERS, SPRING, BYPASS_LEAK, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("worn vanes", 2.0, log(WEAR, 6, 14)),
            Fault.of("scored by running dry", 1.0, log(WEAR, 6, 30), set(DELIVERS, 0.95, 0.6)),
            Fault.of("broken inside", 0.4, set(DELIVERS, 0)),
            wrongSetting("bypass set low", 3.0, times(SET, 0.88, 0.5)),
            wrongSetting("bypass set high", 2.0, times(SET, 1.15, 1.5)),
            Fault.of("bypass spring weak", 0.6, set(SPRING, 0.85, 0.3)),
            Fault.of("bypass held open by grit", 0.8, log(BYPASS_LEAK, 0.8e-3, 2.2e-3)),
            Fault.of("bypass stuck shut", 0.3, set(SPRING, 1.7, 2.2)),
            Fault.of("shaft seal leaks", 1.5, log(LEAK, 0.03e-3, 0.5e-3)));

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
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        int shaft = b.motion(c, "shaft");
        FluidPlan.Branch pump = b.fluid().branch(c.id(), in, out, law(c), shaft);
        Leaks.between(c.id() + " bypass", out, in, c.get(BYPASS_LEAK), b);
        Leaks.seen(c, in, c.get(LEAK), b);
        int suction = b.fluid().pressure(in);
        b.choice(
                c,
                "sound",
                List.of("silent", "even", "rattles", "laboured"),
                x -> sound(x, shaft, suction, pump.flow()));
    }

    private static FluidPlan.Pump law(Component c) {
        double gain = rated(c) / c.get(BAND);
        double set = (c.get(SET) - c.get(BAND)) * c.get(SPRING);
        // a small seep is laminar: keep the flow the orifice would pass at 5 bar
        double seep = Math.sqrt(5e5 / Terms.jet(c.get(REST_SLIP), Terms.SHARP, Terms.Liquid.COLD)) / 5e5;
        return new FluidPlan.Pump(
                c.get(PER_REV) * c.get(DELIVERS),
                SLIP * c.get(WEAR),
                seep * c.get(WEAR),
                set,
                gain,
                c.get(INLET_SHARE),
                0.05e5,
                Terms.jet(3e-3, Terms.SHARP, Terms.Liquid.COLD));
    }

    /** What a new pump delivers when its screw is being set: all of it goes through the bypass. */
    private static double rated(Component c) {
        return c.get(PER_REV) * RATED_SPEED - SLIP * c.get(SET);
    }

    private static int sound(double[] x, int shaft, int suction, int flow) {
        if (x[shaft] < 1) {
            return 0;
        }
        return x[suction] < 0.4e5 ? 2 : x[shaft] < 0.7 * RATED_SPEED ? 3 : 1;
    }
}
