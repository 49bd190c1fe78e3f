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

/**
 * A heavy brew group with a brew valve and a drain valve lifted by a cam, kept hot by water that circulates through it.
 * Its metal is two lumps: the path the water takes, and the bell with rim and filter holder.
 */
public final class LeverGroup implements Kind {
    static final Parameter VALVE =
            Parameter.usual("valve bore", Dimension.LENGTH, 3.5e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "brew valve");
    static final Parameter DRAIN =
            Parameter.usual("drain bore", Dimension.LENGTH, 2.5e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "drain valve");
    static final Parameter BREW_SEAL = Leaks.seat("brew valve leak");
    static final Parameter DRAIN_SEAL = Leaks.seat("drain valve leak");

    private static final Declaration DECLARATION = new Declaration(
            "lever group",
            List.of(
                    Port.fluid("upper", "hot pipe from the boiler"),
                    Port.fluid("lower", "return pipe to the boiler"),
                    Port.fluid("feed", "to the jet"),
                    Port.fluid("brew", "from the jet to the brew valve"),
                    Port.fluid("cup", "through the filter holder"),
                    Port.fluid("drain", "below the drain valve").toWaste(),
                    Port.motion("brew-cam", "lift of the brew valve, 0 to 1"),
                    Port.motion("drain-cam", "lift of the drain valve, 0 to 1"),
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
                    VALVE,
                    DRAIN,
                    Holder.SCREEN,
                    Holder.PUCK,
                    BREW_SEAL,
                    DRAIN_SEAL,
                    Holder.RIM));

    private static final List<Fault> FAULTS = Holder.faultsAnd(
            Fault.of("brew valve seal worn", 2.0, log(BREW_SEAL, 0.03e-3, 0.6e-3)),
            Fault.of("drain valve seal worn", 2.0, log(DRAIN_SEAL, 0.05e-3, 0.8e-3)));

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
        ways(c, chamber, b);
        Holder.build(c, chamber, b);
    }

    /** From the jet through the brew valve into the chamber above the coffee, and out through the drain valve. */
    private static void ways(Component c, int chamber, Blueprint b) {
        int brew = b.node(c, "brew");
        FluidPlan.Passage valve = Blueprint.jet(c.get(VALVE), Terms.SHARP, Terms.Liquid.HOT);
        FluidPlan.Branch open = b.fluid().branch(c.id() + " brew valve", brew, chamber, valve, b.motion(c, "brew-cam"));
        CirculatedHead.passesBell(c, open, b);
        Leaks.between(c.id() + " brew valve", brew, chamber, c.get(BREW_SEAL), b);
        int drain = b.node(c, "drain");
        FluidPlan.Passage out = Blueprint.jet(c.get(DRAIN), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id() + " drain valve", chamber, drain, out, b.motion(c, "drain-cam"));
        Leaks.between(c.id() + " drain valve", chamber, drain, c.get(DRAIN_SEAL), b);
    }
}
