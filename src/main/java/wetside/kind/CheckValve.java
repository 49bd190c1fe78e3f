package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.plus;
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

/** Spring and poppet: lets water through one way. */
public final class CheckValve implements Kind {
    static final Parameter CRACK = Parameter.usual(
            "cracking pressure",
            Dimension.PRESSURE,
            0.2e5,
            0.01e5,
            10e5,
            Spread.relative(0.3),
            "pressure difference at which it begins to open");
    static final Parameter BORE = Parameter.usual(
            "bore",
            Dimension.LENGTH,
            3e-3,
            0.5e-3,
            15e-3,
            Spread.relative(0.1),
            "of the open seat, as a sharp orifice");
    static final Parameter LEAK = Parameter.condition(
            "leak", Dimension.LENGTH, 0, 0, 3e-3, Spread.EXACT, "bore of an orifice that would leak as much when shut");

    private static final Declaration DECLARATION = new Declaration(
            "check valve",
            List.of(Port.fluid("in", "where water comes from"), Port.fluid("out", "where it must not come back from")),
            List.of(CRACK, BORE, LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("held open by grit or scale", 2.0, log(LEAK, 0.05e-3, 1e-3)),
            Fault.of("stuck shut", 0.2, plus(CRACK, 0.8e5, 1.8e5), set(BORE, 0.5e-3)));

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
        FluidPlan.Passage seat = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.COLD);
        b.fluid()
                .branch(
                        c.id(),
                        in,
                        out,
                        new FluidPlan.OneWay(c.get(CRACK), 0.2e5, seat.a(), seat.b(), 0),
                        FluidPlan.ALWAYS);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
    }
}
