package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongInstallation;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * An impeller with magnets, driven by a jet, and a sensor that pulls its output down for a moment at every magnet. The
 * network knows mean values only, so a train of pulses is the mean conductance it makes: so many hertz, so much of
 * {@link #ONE_HERTZ}. Assumes: the impeller follows at once; below its least flow it stands; backwards it stands too.
 */
public final class FlowMeter implements Kind {
    /** Mean resistance of the output at one pulse a second [Ω Hz]. */
    static final double ONE_HERTZ = 1e6;

    static final Parameter PULSES = Parameter.usual(
            "pulses per litre", Dimension.NUMBER, 1925, 50, 50000, Spread.relative(0.02), "at a flow as in brewing");
    static final Parameter JET = Parameter.usual(
            "jet bore", Dimension.LENGTH, 1.5e-3, 0.05e-3, 8e-3, Spread.relative(0.03), "that drives the impeller");
    static final Parameter LEAST = Parameter.usual(
            "least flow",
            Dimension.MASS_FLOW,
            0.25e-3,
            0,
            0.1,
            Spread.relative(0.3),
            "below which the impeller stands still");
    static final Parameter TURNS = Parameter.condition(
            "turns", Dimension.RATIO, 1, 0, 3, Spread.EXACT, "of the impeller, as a share of what the flow asks for");
    static final Parameter OUTPUT = Ohms.closed("output", 100, "resistance in series with the sensor's output");
    static final Parameter SUPPLY = Parameter.usual(
            "works from", Dimension.VOLTAGE, 4.5, 1, 48, Spread.relative(0.05), "supply below which it is dead");
    static final Parameter LEAK = Leaks.outward("at its lid");

    /** What it draws from its supply, as a resistance [Ω]. */
    private static final double DRAWS = 2400;

    private static final double KG_PER_LITRE = 1;

    private static final Declaration DECLARATION = new Declaration(
            "flow meter",
            List.of(
                    Port.fluid("in", "from the pump"),
                    Port.fluid("out", "to one group"),
                    Port.current("plus", "supply"),
                    Port.current("minus", "supply and pulses"),
                    Port.current("pulse", "pulses to the dosing unit")),
            List.of(PULSES, JET, LEAST, TURNS, OUTPUT, SUPPLY, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("impeller stuck", 2.0, set(TURNS, 0)),
            Fault.of("impeller drags", 2.5, set(TURNS, 0.85, 0.4)),
            Fault.of("sensor dead", 1.0, set(OUTPUT, Ohms.OPEN)),
            Fault.of("jet blocked", 2.0, log(JET, 0.75e-3, 0.2e-3)),
            wrongInstallation("made for other pulses", 0.4, times(PULSES, 1.25, 2)),
            Fault.of("lid leaks", 0.6, log(LEAK, 0.03e-3, 0.3e-3)));

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
        FluidPlan.Passage jet = Blueprint.jet(c.get(JET), Terms.SHARP, Terms.Liquid.COLD);
        int flow = b.fluid()
                .branch(c.id(), in, b.node(c, "out"), jet, FluidPlan.ALWAYS)
                .flow();
        Leaks.seen(c, in, c.get(LEAK), b);
        int plus = b.terminal(c, "plus");
        int minus = b.terminal(c, "minus");
        b.current().add(new CurrentPlan.Resistor(c.id() + " supply", plus, minus, DRAWS));
        int volts = b.current().voltage(c.id() + " supply", minus, plus);
        int ohms = b.slots().smooth(c.id() + ".ohms", Ohms.OPEN);
        b.current().add(new CurrentPlan.Varying(c.id() + " output", b.terminal(c, "pulse"), minus, ohms));
        int turning = b.slots().state(c.id() + ".turning", 0);
        b.control(new Pulses(
                flow,
                volts,
                ohms,
                turning,
                c.get(PULSES) * c.get(TURNS) / KG_PER_LITRE,
                c.get(LEAST),
                c.get(OUTPUT),
                c.get(SUPPLY)));
        double turns = c.get(TURNS);
        b.choice(c, "spin", List.of("stuck", "drags", "spins freely"), x -> turns < 0.05 ? 0 : turns < 0.9 ? 1 : 2);
    }

    private record Pulses(
            int flow, int volts, int ohms, int turning, double perKilogram, double least, double series, double supply)
            implements Control {
        /** A change of resistance below this share is not worth a new solution of the network. */
        private static final double SAME = 0.005;

        @Override
        public void act(double[] x, double dt) {
            double hertz = x[flow] > least && x[volts] >= supply ? perKilogram * x[flow] : 0;
            double now = hertz > 1e-3 ? Math.min(Ohms.OPEN, ONE_HERTZ / hertz + series) : Ohms.OPEN;
            x[turning] = hertz > 1e-3 ? 1 : 0;
            if (Math.abs(now - x[ohms]) > SAME * now) {
                x[ohms] = now;
            }
        }
    }
}
