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

/** Passes its feed on for a moment and then pauses, over and over while it has supply: a pump that meters water for steam. */
public final class IntervalTimer implements Kind {
    static final Parameter ON = Parameter.setting(
            "on time", Dimension.TIME, 0.4, 0.05, 600, Spread.relative(0.05), "for which its output is closed");
    static final Parameter PAUSE =
            Parameter.setting("pause", Dimension.TIME, 2.0, 0.05, 3600, Spread.relative(0.05), "between two pulses");
    static final Parameter LEAST = Parameter.condition(
            "works from", Dimension.VOLTAGE, 70, 1, 1000, Spread.relative(0.03), "supply below which it is dead");
    static final Parameter DRAWS = Parameter.usual(
            "supply resistance", Dimension.RESISTANCE, 20e3, 500, 1e6, Spread.relative(0.2), "as the mains sees it");
    static final Parameter CLOSED = Ohms.closed("output on", 0.1, "resistance of its output when closed");
    static final Parameter OPEN = Ohms.open("output off", Ohms.OPEN, "resistance of its output when open");

    private static final Declaration DECLARATION = new Declaration(
            "interval timer",
            List.of(
                    Port.current("feed", "supply, and what its output passes on"),
                    Port.current("neutral", "supply"),
                    Port.current("output", "pulses")),
            List.of(ON, PAUSE, LEAST, DRAWS, CLOSED, OPEN));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("dead", 1.0, set(LEAST, 1000)),
            Fault.of("output stuck on", 0.5, set(OPEN, 0.1)),
            Fault.wrongSetting("pulses too long", 0.3, times(ON, 1.8, 4)),
            Fault.wrongSetting("pauses too long", 0.3, times(PAUSE, 2, 8)));

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
        int feed = b.terminal(c, "feed");
        int neutral = b.terminal(c, "neutral");
        b.current().add(new CurrentPlan.Resistor(c.id() + " supply", feed, neutral, c.get(DRAWS)));
        int closed = b.slots().state(c.id() + ".closed", 0);
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " output", feed, b.terminal(c, "output"), closed, c.get(CLOSED), c.get(OPEN)));
        int powered = b.current().share(c.id() + " supply", feed, neutral, c.get(LEAST));
        int left = b.slots().smooth(c.id() + ".left", 0);
        b.control(new Pulse(powered, closed, left, c.get(ON), c.get(PAUSE)));
    }

    private record Pulse(int powered, int closed, int left, double on, double pause) implements Control {
        private static final double NOW = 1e-6;

        @Override
        public void act(double[] x, double dt) {
            if (x[powered] < 0.5) {
                x[closed] = 0;
                x[left] = 0;
                return;
            }
            x[left] -= dt;
            if (x[left] < NOW) {
                x[closed] = 1 - x[closed];
                x[left] = x[closed] > 0.5 ? on : pause;
            }
        }

        @Override
        public double horizon(double[] x) {
            return x[powered] < 0.5 ? Double.POSITIVE_INFINITY : Math.max(NOW, x[left]);
        }
    }
}
