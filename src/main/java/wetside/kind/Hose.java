package wetside.kind;

import static wetside.kind.Fault.log;

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

/** A braided hose. */
public final class Hose implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 6e-3, 1e-3, 25e-3, Spread.relative(0.05), "inside");
    static final Parameter LENGTH =
            Parameter.usual("length", Dimension.LENGTH, 0.4, 0.02, 10, Spread.relative(0.1), "from end to end");
    static final Parameter FREE = Parameter.condition(
            "free", Dimension.RATIO, 1, 0.001, 1, Spread.EXACT, "share of the bore's area left where it is narrowest");
    static final Parameter LEAK = Leaks.outward("through the wall or an end");

    private static final Declaration DECLARATION = new Declaration(
            "hose",
            List.of(Port.fluid("in", "one end"), Port.fluid("out", "other end")),
            List.of(BORE, LENGTH, FREE, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("end leaks", 0.8, log(LEAK, 0.03e-3, 0.4e-3)),
            Fault.of("burst", 0.15, log(LEAK, 1.2e-3, 4e-3)),
            Fault.wrongInstallation("kinked", 0.5, log(FREE, 0.03, 0.002)));

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
        FluidPlan.Passage tube = Blueprint.pipe(c.get(BORE), c.get(LENGTH), 1.5, Terms.Liquid.COLD);
        FluidPlan.Passage narrow = Blueprint.jet(c.get(BORE) * Math.sqrt(c.get(FREE)), Terms.SHARP, Terms.Liquid.COLD);
        FluidPlan.Passage both =
                c.get(FREE) < 1 ? new FluidPlan.Passage(tube.a() + narrow.a(), tube.b() + narrow.b()) : tube;
        int look = c.get(FREE) > 0.3 ? 0 : 1;
        b.choice(c, "course", List.of("free", "kinked"), x -> look);
        int in = b.node(c, "in");
        b.fluid().branch(c.id(), in, b.node(c, "out"), both, FluidPlan.ALWAYS);
        Leaks.seen(c, in, c.get(LEAK), b);
    }
}
