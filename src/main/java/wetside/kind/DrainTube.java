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

/** The tube that leads what valves let off to the drip tray, where it can be seen. */
public final class DrainTube implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 5e-3, 0.3e-3, 25e-3, Spread.relative(0.05), "inside");
    static final Parameter LENGTH =
            Parameter.usual("length", Dimension.LENGTH, 0.4, 0.02, 5, Spread.relative(0.1), "from end to end");
    static final Parameter FREE = Parameter.condition(
            "free", Dimension.RATIO, 1, 0.001, 1, Spread.EXACT, "share of the bore's area left where it is narrowest");
    static final Parameter OFF = Parameter.condition(
            "gap at its upper end",
            Dimension.LENGTH,
            0,
            0,
            8e-3,
            Spread.EXACT,
            "bore of a hole that lets as much past");

    private static final Declaration DECLARATION = new Declaration(
            "drain tube",
            List.of(
                    Port.fluid("in", "upper end; the lower end hangs over the drip tray"),
                    Port.fluid("over", "the tray it hangs over").orPlugged()),
            List.of(BORE, LENGTH, FREE, OFF));

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("kinked", 0.5, log(FREE, 0.02, 0.002)),
            wrongInstallation("slipped off", 0.8, set(OFF, 6e-3, 8e-3), set(FREE, 0.001)));

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
        FluidPlan.Passage tube = Blueprint.pipe(c.get(BORE), c.get(LENGTH), 2, Terms.Liquid.HOT);
        FluidPlan.Passage narrow = Blueprint.jet(c.get(BORE) * Math.sqrt(c.get(FREE)), Terms.SHARP, Terms.Liquid.HOT);
        int in = b.node(c, "in");
        int end = b.node(c, "over");
        FluidPlan.Passage both = new FluidPlan.Passage(tube.a() + narrow.a(), tube.b() + narrow.b());
        b.fluid().branch(c.id(), in, end, both, FluidPlan.ALWAYS);
        Outflow.readings(c, b.fluid().outlet(c.id(), end), b);
        Leaks.seen(c, in, c.get(OFF), b);
    }
}
