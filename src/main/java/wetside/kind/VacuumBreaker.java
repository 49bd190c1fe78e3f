package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

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
 * A light piston that lies open on a cold boiler, lets the air out while steam forms, is carried shut by the rush past it,
 * and falls open again when the pressure is gone.
 */
public final class VacuumBreaker implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 2.6e-3, 0.5e-3, 15e-3, Spread.relative(0.05), "round the open piston");
    static final Parameter SEATS = Parameter.usual(
            "seats at", Dimension.PRESSURE, 0.06e5, 0.01e5, 2e5, Spread.relative(0.25), "rush that carries it shut");
    static final Parameter REOPENS = Parameter.usual(
            "reopens at", Dimension.PRESSURE, 0.02e5, -0.2e5, 0.1e5, Spread.relative(0.3), "where it falls open");
    static final Parameter LEAK = Leaks.seat("leak");
    static final Parameter HELD_SHUT =
            Parameter.condition("held shut", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when the piston cannot fall");
    static final Parameter HELD_OPEN =
            Parameter.condition("held open", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when the piston cannot rise");

    private static final Declaration DECLARATION = new Declaration(
            "vacuum breaker",
            List.of(
                    Port.fluid("in", "the boiler"),
                    Port.fluid("out", "to the drain, and where air comes from").toWaste()),
            List.of(BORE, SEATS, REOPENS, LEAK, HELD_SHUT, HELD_OPEN),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("leaks when seated", 4.0, log(LEAK, 0.2e-3, 1.6e-3)),
            Fault.of("stuck shut", 1.0, set(HELD_SHUT, 1)),
            Fault.of("stuck open", 1.0, set(HELD_OPEN, 1)),
            Fault.of("piston stiff, seats late", 0.6, set(SEATS, 0.2e5, 0.5e5)));

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
        boolean falls = c.get(HELD_SHUT) < 0.5;
        boolean rises = c.get(HELD_OPEN) < 0.5;
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        int open = b.slots().state(c.id() + ".open", falls ? 1 : 0);
        int inside = b.fluid().pressure(in);
        int outside = b.fluid().pressure(out);
        b.control((x, dt) -> {
            double rush = x[inside] - x[outside];
            if (rises && rush > c.get(SEATS)) {
                x[open] = 0;
            } else if (falls && rush < c.get(REOPENS)) {
                x[open] = 1;
            }
        });
        FluidPlan.Passage ring = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id(), in, out, ring, open);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
    }
}
