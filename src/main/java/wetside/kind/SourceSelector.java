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

/** A cock that lets the pump draw from the tank or from the mains. */
public final class SourceSelector implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 6e-3, 1e-3, 25e-3, Spread.relative(0.1), "of either way, as a sharp orifice");
    static final Parameter START = Parameter.setting(
            "position at start", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "where the pointer stands: 0 tank, 1 mains");
    static final Parameter TURNED = Parameter.setting(
            "turned over", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when the pointer stands at the other source");
    static final Parameter REVERSED = Parameter.setting(
            "pointer reversed", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when it opens what it does not point at");
    static final Parameter BETWEEN = Parameter.setting(
            "left between", Dimension.RATIO, 0, 0, 0.9, Spread.EXACT, "share of the turn that is missing");
    static final Parameter LEAK = Leaks.seat("leak");

    private static final Declaration DECLARATION = new Declaration(
            "source selector",
            List.of(
                    Port.fluid("tank", "from the tank"),
                    Port.fluid("mains", "from the mains"),
                    Port.fluid("out", "to the pump"),
                    Port.motion("pointer", "1 when mains is selected, 0 for the tank")
                            .orPlugged()),
            List.of(BORE, START, TURNED, REVERSED, BETWEEN, LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("pointer fitted the wrong way", 0.6, set(REVERSED, 1)),
            wrongInstallation("set to the other source", 3.0, set(TURNED, 1)),
            wrongInstallation("left between the two", 1.0, set(BETWEEN, 0.3, 0.7)),
            Fault.of("leaks between the two", 0.4, log(LEAK, 0.1e-3, 1.2e-3)));

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
        int start = (int) Math.round(c.get(START));
        int first = c.get(TURNED) > 0.5 ? 1 - start : start;
        int pointer = b.handle(c, "pointer", List.of("tank", "mains"), first);
        int tankWay = b.slots().state(c.id() + ".tank way", 0);
        int mainsWay = b.slots().state(c.id() + ".mains way", 0);
        int motion = b.motion(c, "pointer");
        boolean reversed = c.get(REVERSED) > 0.5;
        double between = c.get(BETWEEN);
        b.control((x, dt) -> {
            boolean mains = x[pointer] > 0.5 != reversed;
            x[tankWay] = mains ? between : 1 - between;
            x[mainsWay] = mains ? 1 - between : between;
            x[motion] = mains ? 1 : 0;
        });
        b.choice(c, "pointer", List.of("tank", "between", "mains"), x -> between > 0 ? 1 : 2 * x[pointer]);
        FluidPlan.Passage way = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.COLD);
        int out = b.node(c, "out");
        b.fluid().branch(c.id() + " tank way", b.node(c, "tank"), out, way, tankWay);
        b.fluid().branch(c.id() + " mains way", b.node(c, "mains"), out, way, mainsWay);
        Leaks.between(c.id(), b.node(c, "mains"), b.node(c, "tank"), c.get(LEAK), b);
    }
}
