package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.wrongInstallation;

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

/** One of the two pipes through which hot water circulates by itself between a boiler and a group. */
public final class ThermosiphonPipe implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 10e-3, 0.5e-3, 25e-3, Spread.relative(0.03), "inside");
    static final Parameter LENGTH =
            Parameter.usual("length", Dimension.LENGTH, 0.4, 0.05, 3, Spread.relative(0.05), "from end to end");
    static final Parameter BENDS = Parameter.usual(
            "bends",
            Dimension.NUMBER,
            4,
            0,
            40,
            Spread.relative(0.3),
            "loss coefficients of bends and unions, added up");
    static final Parameter RISE = Parameter.usual(
            "rise", Dimension.LENGTH, 0, -1, 1, Spread.absolute(0.005), "height of its end above its beginning");
    static final Parameter AIR = Parameter.condition(
            "air lock", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the circulation that trapped air stops");
    static final Parameter LEAK = Leaks.outward("at a union");

    /** Water drawn through that carries the air away [kg]. */
    private static final double BLED_AFTER = 0.25;
    /** Flow below which air stays where it is [kg/s]. */
    private static final double CARRIES = 3e-3;

    private static final Declaration DECLARATION = new Declaration(
            "thermosiphon pipe",
            List.of(Port.fluid("in", "the hotter end"), Port.fluid("out", "the cooler end")),
            List.of(BORE, LENGTH, BENDS, RISE, AIR, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("narrowed by scale", 1.5, log(BORE, 4e-3, 1.2e-3)),
            wrongInstallation("air-locked", 2.0, set(AIR, 0.85, 1)),
            Fault.of("union leaks", 0.5, log(LEAK, 0.03e-3, 0.3e-3)));

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
        FluidPlan.Passage pipe = Blueprint.pipe(c.get(BORE), c.get(LENGTH), c.get(BENDS), Terms.Liquid.HOT);
        int circulates = b.slots().smooth(c.id() + ".circulates", 1 - c.get(AIR));
        int in = b.node(c, "in");
        FluidPlan.Branch branch =
                b.fluid().branch(c.id(), in, b.node(c, "out"), pipe, FluidPlan.ALWAYS, circulates, c.get(RISE));
        if (c.get(AIR) > 0) {
            b.control((x, dt) -> bleed(x, dt, circulates, branch.flow()));
        }
        Leaks.seen(c, in, c.get(LEAK), b);
    }

    /** Drawing water carries the air away. */
    private static void bleed(double[] x, double dt, int circulates, int flow) {
        if (Math.abs(x[flow]) > CARRIES) {
            x[circulates] = Math.min(1, x[circulates] + dt * Math.abs(x[flow]) / BLED_AFTER);
        }
    }
}
