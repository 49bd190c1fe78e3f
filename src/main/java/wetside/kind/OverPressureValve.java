package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;
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

/** Lets water out of a shut-in boiler that grows while it is heated, and stops a pump that is set too high. */
public final class OverPressureValve implements Kind {
    static final Parameter SET = Parameter.setting(
            "set pressure", Dimension.PRESSURE, 11.5e5, 2e5, 25e5, Spread.absolute(0.5e5), "where it begins to open");
    static final Parameter BAND = Parameter.usual(
            "band",
            Dimension.PRESSURE,
            0.6e5,
            0.05e5,
            5e5,
            Spread.relative(0.3),
            "further rise until it is fully open");
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 3e-3, 0.2e-3, 15e-3, Spread.relative(0.1), "of the open seat");
    static final Parameter SPRING = Parameter.condition(
            "spring", Dimension.RATIO, 1, 0.1, 5, Spread.EXACT, "force left, as a share of what it was set to");
    static final Parameter LEAK = Leaks.seat("leak");

    private static final Declaration DECLARATION = new Declaration(
            "over-pressure valve",
            List.of(
                    Port.fluid("in", "the pressure side"),
                    Port.fluid("out", "to the drain").toWaste()),
            List.of(SET, BAND, BORE, SPRING, LEAK),
            Trait.RELIEF);

    private static final List<Fault> FAULTS = List.of(
            wrongSetting("set low", 2.0, times(SET, 0.75, 0.45)),
            wrongSetting("set high", 1.0, times(SET, 1.3, 2)),
            Fault.of("spring tired", 0.7, set(SPRING, 0.78, 0.45)),
            Fault.of("held open by grit", 1.5, log(LEAK, 0.1e-3, 1.2e-3)),
            Fault.of("stuck shut", 0.5, set(SPRING, 1.8, 2.5)));

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
        FluidPlan.Passage seat = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.HOT);
        double opens = c.get(SET) * c.get(SPRING);
        b.fluid()
                .branch(
                        c.id(),
                        in,
                        out,
                        new FluidPlan.OneWay(opens, c.get(BAND), seat.a(), seat.b(), 0),
                        FluidPlan.ALWAYS);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
    }
}
