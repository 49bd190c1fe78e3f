package wetside.kind;

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

/** A slow cartridge fuse: melts above about one and a half times its rating, the sooner the higher the current. */
public final class Fuse implements Kind {
    static final Parameter RATING =
            Parameter.required("rating", Dimension.CURRENT, 0.03, 32, Spread.EXACT, "current it carries for ever");
    static final Parameter STARTS = Parameter.condition(
            "whole at first", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "1 when found whole, 0 when found blown");

    private static final double CARRIES = 1.5;
    private static final double WARMING = 10;

    private static final Declaration DECLARATION = new Declaration(
            "fuse", List.of(Port.current("1", "one end"), Port.current("2", "other end")), List.of(RATING, STARTS));

    private static final List<Fault> FAULTS = List.of(Fault.of("blown", 0.8, set(STARTS, 0)));

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
        int wire = b.handle(c, "cartridge", List.of("blown", "whole"), (int) Math.round(c.get(STARTS)));
        int link = b.current()
                .add(new CurrentPlan.Contact(c.id(), b.terminal(c, "1"), b.terminal(c, "2"), wire, 0.05, Ohms.OPEN));
        b.control(new Melt(wire, b.current().amps(link), b.slots().smooth(c.id() + ".warmth", 0), c.get(RATING)));
    }

    private record Melt(int wire, int amps, int warmth, double rating) implements Control {
        @Override
        public void act(double[] x, double dt) {
            double load = x[amps] / (CARRIES * rating);
            x[warmth] = load * load + (x[warmth] - load * load) * Math.exp(-dt / WARMING);
            boolean melts = x[warmth] > 1 || Math.abs(load) > 10;
            if (melts && x[wire] > 0.5) {
                x[wire] = 0;
            }
        }
    }
}
