package wetside.kind;

import static wetside.kind.Fault.set;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** A tray without a drain, in which tubes end. What it cannot hold runs over its edge; it is emptied by hand. */
public final class DripTray implements Kind {
    static final Parameter CAPACITY =
            Parameter.usual("capacity", Dimension.MASS, 0.8, 0.05, 10, Spread.relative(0.05), "up to its edge");
    static final Parameter START = Parameter.usual(
            "filled at start", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the capacity, as it is found");
    static final Parameter HOLDS =
            Parameter.condition("holds", Dimension.RATIO, 1, 0, 1, Spread.EXACT, "share of the capacity it keeps in");

    private static final List<String> WAYS = List.of("a", "b", "c");

    private static final Declaration DECLARATION = new Declaration(
            "drip tray",
            List.of(
                    Port.fluid("a", "a tube that ends in it").orPlugged(),
                    Port.fluid("b", "another").orPlugged(),
                    Port.fluid("c", "a third").orPlugged()),
            List.of(CAPACITY, START, HOLDS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("cracked", 0.5, set(HOLDS, 0.5, 0.02)), Fault.wrongSetting("left full", 10.0, set(START, 0.9, 1)));

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
        List<FluidPlan.Outlet> ends = new ArrayList<>();
        for (String way : WAYS) {
            ends.add(above(c, way, b));
        }
        double first = c.get(START) * c.get(CAPACITY);
        int content = b.slots().smooth(c.id() + ".content", first);
        int hand = b.handle(c, "tray", List.of("as it is", "emptied"), 0);
        double most = c.get(CAPACITY) * c.get(HOLDS);
        int over = b.slots().smooth(c.id() + ".over", Math.max(0, first - most));
        b.control(new Filling(ends.toArray(FluidPlan.Outlet[]::new), content, over, hand, most));
        b.reading(c, "water", Dimension.MASS, 0.03, x -> x[content]);
        b.choice(c, "looks", List.of("empty", "some water", "full"), x -> looks(x[content], c.get(CAPACITY)));
        b.choice(c, "edge", List.of("dry", "has run over"), x -> x[over] > 5e-3 ? 1 : 0);
    }

    /** What ends over the tray, if it comes before the tray in the machine file; else the open end of the tray's own port. */
    private static FluidPlan.Outlet above(Component c, String way, Blueprint b) {
        int node = b.node(c, way);
        return b.fluid().outlets().stream()
                .filter(o -> o.node() == node)
                .findFirst()
                .orElseGet(() -> b.fluid().outlet(c.id() + " " + way, node));
    }

    private static int looks(double content, double capacity) {
        return content < 0.02 ? 0 : content < 0.9 * capacity ? 1 : 2;
    }

    private record Filling(FluidPlan.Outlet[] ends, int content, int over, int hand, double most) implements Control {
        @Override
        public void act(double[] x, double dt) {
            for (FluidPlan.Outlet end : ends) {
                x[content] += x[end.water()] * dt;
            }
            if (x[hand] > 0) {
                x[content] = 0;
                x[over] = 0;
                x[hand] = 0;
            }
            if (x[content] > most) {
                x[over] += x[content] - most;
                x[content] = most;
            }
        }
    }
}
