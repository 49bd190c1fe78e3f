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
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** A tap worked by hand: for steam or for hot water, alike but for their bore and what their wear looks like. */
public final class Tap implements Kind {
    static final Parameter OPENS = Parameter.condition(
            "opens to", Dimension.RATIO, 1, 1e-4, 1, Spread.EXACT, "share of its bore that comes free");
    static final Parameter DRIP = Leaks.seat("leak");
    static final Parameter STEM = Leaks.outward("at the stem");

    private final Parameter bore;
    private final Declaration declaration;
    private final List<Fault> faults;

    /** @param usualBore of the open seat [m] */
    Tap(String name, double usualBore, Trait... traits) {
        bore = Parameter.usual(
                "bore", Dimension.LENGTH, usualBore, 0.3e-3, 25e-3, Spread.relative(0.1), "of the open seat");
        declaration = new Declaration(
                name,
                List.of(
                        Port.fluid("in", "from the boiler"),
                        Port.fluid("out", "to its spout or wand"),
                        Port.motion("stem", "how far it is opened, 0 to 1: presses a switch on some machines")
                                .orPlugged()),
                List.of(bore, OPENS, DRIP, STEM),
                traits);
        faults = List.of(
                Fault.of("seat worn", 4.0, log(DRIP, 0.05e-3, 0.5e-3)),
                Fault.of("stem seal worn", 2.0, log(STEM, 0.05e-3, 0.5e-3)),
                Fault.of("does not open fully", 0.5, log(OPENS, 0.25, 0.003)));
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    @Override
    public List<Fault> faults() {
        return faults;
    }

    @Override
    public void build(Component c, Blueprint b) {
        int opened = b.handle(c, "opened", 0, 1, 0);
        int stem = b.motion(c, "stem");
        b.control((x, dt) -> x[stem] = x[opened]);
        double free = c.get(bore) * Math.sqrt(c.get(OPENS));
        FluidPlan.Passage seat = Blueprint.jet(free, Terms.SHARP, Terms.Liquid.BOILER);
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        b.fluid().branch(c.id(), in, out, seat, opened);
        Leaks.between(c.id() + " seat", in, out, c.get(DRIP), b);
        Leaks.seen(c, in, c.get(STEM), b);
    }
}
