package wetside.kind;

import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

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

/**
 * Two-pole house breaker against overload, short circuit and residual current. Assumes: trips at once above five times
 * its rating, warms up with the square of the current below that; a residual current counts at seven tenths of its
 * rating, as such devices are usually made.
 */
public final class Breaker implements Kind {
    static final Parameter RATING =
            Parameter.usual("rating", Dimension.CURRENT, 16, 0.5, 63, Spread.EXACT, "current it carries for ever");
    static final Parameter RESIDUAL = Parameter.usual(
            "residual rating",
            Dimension.CURRENT,
            0.03,
            0.001,
            1e3,
            Spread.relative(0.1),
            "difference between line and neutral that trips it for certain");
    static final Parameter STARTS = Parameter.condition(
            "on at first", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "1 when found switched on, 0 when off or tripped");

    private static final double WARMING = 60;
    private static final double AT_ONCE = 5;
    private static final double CARRIES = 1.3;
    private static final double RESIDUAL_SHARE = 0.7;

    private static final Declaration DECLARATION = new Declaration(
            "breaker",
            List.of(
                    Port.current("line in", "from the house"),
                    Port.current("line out", "to the machine"),
                    Port.current("neutral in", "from the house"),
                    Port.current("neutral out", "to the machine")),
            List.of(RATING, RESIDUAL, STARTS));

    private static final List<Fault> FAULTS = List.of(
            Fault.wrongInstallation("off or tripped", 3.0, set(STARTS, 0)),
            Fault.of("trips below its rating", 0.3, times(RATING, 0.5, 0.15)));

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
        int lever = b.handle(c, "lever", List.of("off", "on"), (int) Math.round(c.get(STARTS)));
        CurrentPlan current = b.current();
        int line = current.add(pole(c, b, lever, "line"));
        int neutral = current.add(pole(c, b, lever, "neutral"));
        b.control(new Trip(
                lever,
                current.amps(line),
                current.amps(neutral),
                b.slots().smooth(c.id() + ".bimetal", 0),
                c.get(RATING),
                c.get(RESIDUAL) * RESIDUAL_SHARE));
        b.choice(c, "lever", List.of("off", "on"), x -> x[lever]);
    }

    private static CurrentPlan.Contact pole(Component c, Blueprint b, int lever, String name) {
        return new CurrentPlan.Contact(
                c.id() + " " + name,
                b.terminal(c, name + " in"),
                b.terminal(c, name + " out"),
                lever,
                Ohms.CLOSED,
                Ohms.OPEN);
    }

    /** Lets the lever fall. {@code warmth} is the bimetal's bend as a share of what trips it. */
    private record Trip(int lever, int line, int neutral, int warmth, double rating, double residual)
            implements Control {
        @Override
        public void act(double[] x, double dt) {
            double load = Math.max(Math.abs(x[line]), Math.abs(x[neutral])) / rating;
            double end = (load / CARRIES) * (load / CARRIES);
            x[warmth] = end + (x[warmth] - end) * Math.exp(-dt / WARMING);
            boolean trips = x[warmth] > 1 || load > AT_ONCE || Math.abs(x[line] + x[neutral]) > residual;
            if (trips && x[lever] > 0.5) {
                x[lever] = 0;
            }
        }
    }
}
