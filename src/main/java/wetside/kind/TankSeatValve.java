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

    static final Parameter FOUND = Parameter.condition(
            "pushed home as found",
            Dimension.RATIO,
            1,
            0.001,
            1,
            Spread.EXACT,
            "how far, until somebody pushes it home");
    static final Parameter GAP = Parameter.condition(
            "air gap as found",
            Dimension.LENGTH,
            0,
            0,
            4e-3,
            Spread.EXACT,
            "lets in air beside the seal until somebody pushes the tank home");
    static final Parameter LEAK = Leaks.outward("past the seal");

    /** No suction lifts a seal that the tank sits on [Pa]. */
    private static final double CLOSED = 1e7;

    private static final Declaration DECLARATION = new Declaration(
            "tank seat valve",
            List.of(Port.fluid("in", "the tank's opening"), Port.fluid("out", "to the suction hose")),
            List.of(BORE, OPENS, AIR, FOUND, GAP, LEAK));

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("tank not pushed home", 5.0, log(FOUND, 0.02, 0.002), log(GAP, 0.2e-3, 1.5e-3)),
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
        int tank = b.handle(c, "tank", List.of("as found", "pushed home"), 0);
        int free = b.slots().state(c.id() + ".pushed open", c.get(FOUND));
        int tight = b.slots().state(c.id() + ".gap closed", 0);
        b.control((x, dt) -> {
            boolean home = x[tank] > 0.5;
            x[free] = home ? 1 : c.get(FOUND);
            x[tight] = home ? CLOSED : 0;
        });
        b.fluid().branch(c.id(), b.node(c, "in"), out, way, free);
        int look = c.get(OPENS) > 0.3 ? 0 : 1;
        b.choice(c, "opening", List.of("clean", "clogged"), x -> look);
        AirIn.through(c, "gap", out, c.get(GAP), tight, b);
        AirIn.through(c, out, c.get(AIR), b);
        Leaks.seen(c, out, c.get(LEAK), b);
    }
}
