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

/** A calibrated hole that sets how fast water comes to the coffee. */
public final class Jet implements Kind {
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 0.7e-3, 0.02e-3, 3e-3, Spread.relative(0.04), "of the hole");

    private static final Declaration DECLARATION = new Declaration(
            "jet",
            List.of(Port.fluid("in", "from the hot pipe"), Port.fluid("out", "to the brew valve")),
            List.of(BORE));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("blocked by scale", 3.0, log(BORE, 0.45e-3, 0.05e-3)),
            wrongInstallation("left out or too wide", 0.3, set(BORE, 1.1e-3, 3e-3)));

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
        FluidPlan.Passage hole = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id(), b.node(c, "in"), b.node(c, "out"), hole, FluidPlan.ALWAYS);
    }
}
