package wetside.kind;

import static wetside.kind.Fault.plus;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** A pellet in a metal case that melts once, when its face gets far too hot, and opens its contact for good. */
public final class ThermalFuse implements Kind {
    static final Parameter MELTS = Parameter.required(
            "melts at", Dimension.TEMPERATURE, 340, 600, Spread.absolute(5), "its temperature when it opens");
    static final Parameter STARTS = Parameter.condition(
            "whole at first", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "1 when found whole, 0 when found blown");

    private static final double WHOLE = 0.01;

    private static final Declaration DECLARATION = new Declaration(
            "thermal fuse",
            List.of(
                    Port.current("1", "one lead"),
                    Port.current("2", "other lead"),
                    Port.heat("face", "what it is clamped to")),
            List.of(MELTS, Disc.SEATING, STARTS));

    private static final List<Fault> FAULTS =
            List.of(Fault.of("blown", 2.5, set(STARTS, 0)), Fault.of("aged", 0.8, plus(MELTS, -35, -75)));

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
        int whole = b.slots().state(c.id() + ".whole", Math.round(c.get(STARTS)));
        b.current()
                .add(new CurrentPlan.Contact(c.id(), b.terminal(c, "1"), b.terminal(c, "2"), whole, WHOLE, Ohms.OPEN));
        b.control(new Pellet(Disc.on(c, b), whole, c.get(MELTS)));
    }

    private record Pellet(int temperature, int whole, double melts) implements Control {
        @Override
        public void act(double[] x, double dt) {
            x[whole] = x[temperature] > melts ? 0 : x[whole];
        }
    }
}
