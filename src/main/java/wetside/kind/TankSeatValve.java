package wetside.kind;

import static wetside.kind.Fault.log;
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

/** The spring valve a tank opens when pushed home, with the silicone seal round it. */
public final class TankSeatValve implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore",
            Dimension.LENGTH,
            5e-3,
            1e-3,
            15e-3,
            Spread.relative(0.1),
            "when the tank is home, as a sharp orifice");
    static final Parameter OPENS = Parameter.condition(
            "pushed open", Dimension.RATIO, 1, 0.001, 1, Spread.EXACT, "share of its bore that is free");
    static final Parameter AIR = Parameter.condition(
            "air gap", Dimension.LENGTH, 0, 0, 4e-3, Spread.EXACT, "bore of an orifice that would let in as much air");

    static final Parameter LEAK = Leaks.outward("past the seal");

    private static final Declaration DECLARATION = new Declaration(
            "tank seat valve",
            List.of(Port.fluid("in", "the tank's opening"), Port.fluid("out", "to the suction hose")),
            List.of(BORE, OPENS, AIR, LEAK));

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("tank not pushed home", 5.0, log(OPENS, 0.02, 0.002), log(AIR, 0.2e-3, 1.5e-3)),
            Fault.of("seal worn", 1.0, log(LEAK, 0.06e-3, 0.5e-3), log(AIR, 0.1e-3, 1e-3)),
            Fault.of("clogged", 0.7, log(OPENS, 0.04, 0.003)));

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
        double bore = c.get(BORE) * Math.sqrt(c.get(OPENS));
        FluidPlan.Passage way = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), b.node(c, "in"), out, way, FluidPlan.ALWAYS);
        AirIn.through(c, out, c.get(AIR), b);
        Leaks.seen(c, out, c.get(LEAK), b);
    }
}
