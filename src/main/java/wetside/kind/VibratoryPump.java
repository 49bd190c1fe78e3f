package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.plus;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * A piston thrown back and forth by a coil on half waves of the mains, once a period, between two small valves. The more
 * pressure it works against the less a stroke moves, on a straight line from free flow to where it stalls:
 *
 * <pre>q = q0 s − q0 p / p_stall,   s = share of the stroke</pre>
 *
 * Assumes: the throw of the piston goes with the square of the voltage; the coil warms one lump, which a cut-out on it
 * watches; water passing through cools nothing.
 */
public final class VibratoryPump implements Kind {
    static final Parameter FREE = Parameter.usual(
            "free flow", Dimension.MASS_FLOW, 10.8e-3, 1e-3, 40e-3, Spread.relative(0.06), "against no pressure");
    static final Parameter STALL = Parameter.usual(
            "stall pressure",
            Dimension.PRESSURE,
            16e5,
            2e5,
            30e5,
            Spread.relative(0.05),
            "against which it moves nothing any more");
    static final Parameter FREQUENCY = Parameter.usual(
            "mains frequency", Dimension.FREQUENCY, 50, 40, 70, Spread.EXACT, "strokes per second: one a period");
    static final Parameter VOLTAGE =
            Parameter.usual("rated voltage", Dimension.VOLTAGE, 230, 12, 260, Spread.EXACT, "voltage it is made for");
    static final Parameter POWER = Parameter.usual(
            "rated power", Dimension.POWER, 48, 5, 120, Spread.relative(0.06), "taken at its rated voltage");
    static final Parameter COIL = Parameter.usual(
            "coil resistance",
            Dimension.RESISTANCE,
            190,
            5,
            2000,
            Spread.relative(0.08),
            "at rest, the meter's leads the way its diode lets through");
    static final Parameter TRIPS = Parameter.usual(
            "cut-out trips at", Dimension.TEMPERATURE, 373, 320, 450, Spread.absolute(4), "coil temperature");
    static final Parameter COOLER = Parameter.usual(
            "cut-out resets below",
            Dimension.TEMPERATURE_RISE,
            25,
            2,
            80,
            Spread.absolute(4),
            "how far below its tripping temperature it closes again");
    static final Parameter STROKE = Parameter.condition(
            "stroke", Dimension.RATIO, 1, 0, 1.2, Spread.EXACT, "of the piston, share of a new one's");
    static final Parameter WEAR = Parameter.condition(
            "valve wear", Dimension.NUMBER, 1, 1, 20, Spread.EXACT, "what slips back, as a multiple of new");
    static final Parameter DRAWS = Parameter.condition(
            "current", Dimension.RATIO, 1, 0.1, 4, Spread.EXACT, "taken, as a share of a new one's");
    static final Parameter AIR = Parameter.condition(
            "air in it", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the chamber that only springs back");
    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance in series with coil and diode");
    static final Parameter CONTACT = Ohms.closed("cut-out contact", 0.02, "resistance of the closed cut-out");
    static final Parameter INSULATION = Ohms.open("insulation", Ohms.INSULATION, "from the coil to its frame");
    static final Parameter LEAK = Leaks.outward("at its body or fittings");

    /** What the coil and the iron round it hold and lose [J/K], [W/K]: some minutes of running until it trips. */
    private static final double HOLDS = 150;

    private static final double LOSES = 0.38;
    /** Air leaves with about this much water [kg]. */
    private static final double BLED_AFTER = 0.05;
    /** Share of the rated current that can be heard. */
    private static final double HEARD = 0.2;

    private static final List<String> SOUNDS = List.of("silent", "hums", "buzzes evenly", "rattles");

    private static final Declaration DECLARATION = new Declaration(
            "vibratory pump",
            List.of(
                    Port.fluid("in", "suction"),
                    Port.fluid("out", "pressure"),
                    Port.current("line", "terminal, behind its cut-out"),
                    Port.current("neutral", "terminal"),
                    Port.current("earth", "its frame")),
            List.of(
                    FREE,
                    STALL,
                    FREQUENCY,
                    VOLTAGE,
                    POWER,
                    COIL,
                    TRIPS,
                    COOLER,
                    STROKE,
                    WEAR,
                    DRAWS,
                    AIR,
                    BREAK,
                    CONTACT,
                    INSULATION,
                    LEAK),
            Trait.NEEDS_EARTH);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("worn valves", 3.0, log(WEAR, 1.5, 6)),
            Fault.of("weak", 3.0, set(STROKE, 0.8, 0.45)),
            Fault.of("piston stuck", 0.8, set(STROKE, 0)),
            Fault.of("coil or diode open", 1.5, set(BREAK, Ohms.OPEN)),
            Fault.of("diode shorted", 0.5, set(STROKE, 0.3, 0.1), set(DRAWS, 1.5, 2.2)),
            Fault.of("cut-out open", 1.0, set(CONTACT, Ohms.OPEN)),
            Fault.of("cut-out trips early", 0.5, plus(TRIPS, -25, -50)),
            Fault.wrongInstallation("air-locked", 3.0, set(AIR, 0.96, 1)),
            Fault.of("leaks to its frame", 0.2, log(INSULATION, 20e3, 2)),
            Fault.of("body cracked", 0.8, log(LEAK, 0.05e-3, 0.6e-3)));

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
        Coil coil = coil(c, b);
        int strokes = b.slots().smooth(c.id() + ".strokes", 0);
        int air = b.slots().smooth(c.id() + ".air", c.get(AIR));
        FluidPlan.Branch pump = b.fluid().branch(c.id(), in, b.node(c, "out"), law(c), strokes);
        Leaks.seen(c, in, c.get(LEAK), b);
        double frequency = c.get(FREQUENCY);
        double stroke = c.get(STROKE);
        b.control((x, dt) -> {
            // pumped water takes the air along
            x[air] = Math.max(0, x[air] - dt * Math.max(0, x[pump.flow()]) / BLED_AFTER);
            x[strokes] = frequency * stroke * coil.pull(x) * (1 - x[air]);
        });
        int suction = b.fluid().pressure(in);
        b.choice(c, "sound", SOUNDS, x -> {
            double pull = coil.pull(x);
            boolean loose = x[suction] < 0.4e5 || x[air] > 0.3;
            return pull < HEARD * HEARD ? 0 : stroke * pull < 0.35 ? 1 : loose ? 3 : 2;
        });
    }

    private static FluidPlan.Pump law(Component c) {
        double slip = c.get(FREE) / c.get(STALL) * c.get(WEAR);
        // at rest its valves sit tight: a trickle at brewing pressure
        double seep = Math.sqrt(5e5 / Terms.jet(0.01e-3, Terms.SHARP, Terms.Liquid.COLD)) / 5e5;
        double through = Terms.jet(2.5e-3, Terms.SHARP, Terms.Liquid.COLD);
        double never = 1e9;
        return new FluidPlan.Pump(
                c.get(FREE) / c.get(FREQUENCY), slip, seep * c.get(WEAR), never, 0, 0, 0.1e5, through);
    }

    private static Coil coil(Component c, Blueprint b) {
        int inner = b.innerTerminal();
        int neutral = b.terminal(c, "neutral");
        double running = c.get(VOLTAGE) * c.get(VOLTAGE) / c.get(POWER) / c.get(DRAWS) + c.get(BREAK);
        double rest = c.get(COIL) + c.get(BREAK);
        int ohms = b.slots().state(c.id() + ".ohms", rest);
        int closed = b.slots().state(c.id() + ".cut-out closed", 1);
        CurrentPlan current = b.current();
        current.add(new CurrentPlan.Contact(
                c.id() + " cut-out", b.terminal(c, "line"), inner, closed, c.get(CONTACT), Ohms.OPEN));
        int element = current.add(new CurrentPlan.Varying(c.id() + " coil", inner, neutral, ohms));
        current.add(new CurrentPlan.Resistor(c.id() + " insulation", inner, b.terminal(c, "earth"), c.get(INSULATION)));
        int winding = b.innerHeatNode();
        b.heat().capacity(winding, HOLDS);
        b.heat().conductance(winding, HeatPlan.SURROUNDINGS, LOSES);
        b.heat().source(winding, current.power(element));
        int warm = b.heat().temperature(winding);
        int volts = current.voltage(c.id(), neutral, inner);
        double live = 0.1 * c.get(VOLTAGE);
        double trips = c.get(TRIPS);
        double resets = trips - c.get(COOLER);
        b.control((x, dt) -> {
            // as long as it stands still an ohm-meter sees copper, the mains sees what the moving iron makes of it
            x[ohms] = Math.abs(x[volts]) > live ? running : rest;
            x[closed] = x[warm] > trips ? 0 : x[warm] < resets ? 1 : x[closed];
        });
        double rated = c.get(POWER) / c.get(VOLTAGE) * c.get(DRAWS);
        return new Coil(current.amps(element), rated);
    }

    /** How hard the coil pulls, as a share of what it does at its rated voltage. */
    private record Coil(int amps, double rated) {
        double pull(double[] x) {
            double share = x[amps] / rated;
            return Math.min(1.2, share * share);
        }
    }
}
