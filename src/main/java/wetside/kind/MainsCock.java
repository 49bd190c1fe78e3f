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
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** The cock between the house and the machine's hose. */
public final class MainsCock implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 6e-3, 1e-3, 25e-3, Spread.relative(0.1), "when open, as a sharp orifice");
    static final Parameter START =
            Parameter.setting("position at start", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "0 shut, 1 open");
    static final Parameter OPENS = Parameter.setting(
            "opens to", Dimension.RATIO, 1, 0, 1, Spread.EXACT, "share of its bore it frees when called open");
    static final Parameter LEAK = Leaks.outward("at the stem");

    private static final Declaration DECLARATION = new Declaration(
            "mains cock",
            List.of(Port.fluid("in", "from the house"), Port.fluid("out", "to the machine's hose")),
            List.of(BORE, START, OPENS, LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("left half shut", 4.0, log(OPENS, 0.05, 0.004)),
            wrongInstallation("left shut", 4.0, set(START, 0)),
            Fault.of("stem leaks", 0.5, log(LEAK, 0.03e-3, 0.4e-3)));

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
        int position = b.handle(c, "position", List.of("shut", "open"), (int) Math.round(c.get(START)));
        double bore = c.get(BORE) * Math.sqrt(Math.max(1e-4, c.get(OPENS)));
        FluidPlan.Passage way = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
        double frees = c.get(OPENS);
        b.choice(c, "position", List.of("shut", "half shut", "open"), x -> x[position] < 0.5 ? 0 : frees < 0.7 ? 1 : 2);
        int in = b.node(c, "in");
        b.fluid().branch(c.id(), in, b.node(c, "out"), way, position);
        Leaks.seen(c, in, c.get(LEAK), b);
    }
}
