package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.plus;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.wrongSetting;

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

/**
 * Holds the pressure behind it whatever the mains do before it. It cannot lift the pressure, and it cannot let any back:
 * what creeps past its shut seat stays.
 */
public final class PressureRegulator implements Kind {
    static final Parameter SET = Parameter.setting(
            "set pressure", Dimension.PRESSURE, 2.5e5, 0.2e5, 8e5, Spread.absolute(0.2e5), "held behind it, no flow");
    static final Parameter GAIN = Parameter.usual(
            "stiffness",
            Dimension.NUMBER,
            12,
            2,
            200,
            Spread.relative(0.3),
            "drop across its seat it can hold back, per pressure by which its outlet sags");
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 4e-3, 0.1e-3, 20e-3, Spread.relative(0.1), "of the open seat");
    static final Parameter SPRING = Parameter.condition(
            "spring", Dimension.RATIO, 1, 0.05, 3, Spread.EXACT, "force left, as a share of what it was set to");
    static final Parameter LEAK = Leaks.seat("leak");
    static final Parameter SHELL_LEAK = Leaks.outward("through its diaphragm");

    private static final Declaration DECLARATION = new Declaration(
            "pressure regulator",
            List.of(Port.fluid("in", "from the mains"), Port.fluid("out", "at the held pressure")),
            List.of(SET, GAIN, BORE, SPRING, LEAK, SHELL_LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("creeps", 2.0, log(LEAK, 0.03e-3, 1e-3)),
            Fault.of("seat or sieve clogged", 1.5, log(BORE, 1e-3, 0.15e-3)),
            Fault.of("spring tired", 0.4, set(SPRING, 0.7, 0.15)),
            Fault.of("diaphragm leaks", 0.4, log(SHELL_LEAK, 0.05e-3, 0.6e-3)),
            wrongSetting("set too low", 1.0, plus(SET, -1.2e5, -2.2e5)),
            wrongSetting("set too high", 1.0, plus(SET, 1.2e5, 3.5e5)));

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
        double held = c.get(SET) * c.get(SPRING);
        FluidPlan.Law law = new FluidPlan.Regulator(held, false, c.get(GAIN), seat.a(), seat.b());
        b.fluid().branch(c.id(), in, out, law, FluidPlan.ALWAYS);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
        Leaks.seen(c, out, c.get(SHELL_LEAK), b);
    }
}
