package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Port;
import wetside.physics.Terms;

/**
 * A heavy brew group kept hot by water that circulates through it, without valves of its own: a three-way valve screwed to
 * it lets the water on to the coffee.
 */
public final class ThermosiphonGroup implements Kind {
    /** Where water passes from the valve to the bell, as a sharp orifice [m]. */
    private static final double BORE = 4e-3;

    private static final Declaration DECLARATION = new Declaration(
            "thermosiphon group",
            List.of(
                    Port.fluid("upper", "hot pipe from boiler or exchanger"),
                    Port.fluid("lower", "return pipe"),
                    Port.fluid("feed", "to jet and brew valve"),
                    Port.fluid("in", "from the brew valve"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.heat("path", "metal round the water path").orPlugged(),
                    Port.heat("bell", "bell and rim").orPlugged()),
            List.of(
                    CirculatedHead.PATH,
                    CirculatedHead.BELL,
                    CirculatedHead.PATH_TO_BELL,
                    CirculatedHead.PATH_LOSS,
                    CirculatedHead.BELL_LOSS,
                    CirculatedHead.CIRCULATION,
                    CirculatedHead.HEAD,
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
        CirculatedHead.build(c, b);
        int chamber = b.innerNode();
        FluidPlan.Passage bore = Blueprint.jet(BORE, Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch in = b.fluid().branch(c.id() + " bell", b.node(c, "in"), chamber, bore, FluidPlan.ALWAYS);
        CirculatedHead.passesBell(c, in, b);
        Holder.springs(c, chamber, b);
        Holder.build(c, chamber, b);
    }
}
