package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.units.Dimension;

/**
 * Single-phase motor with its capacitor. Torque as a share of the rated starting torque is
 *
 * <pre>v² [a + (1 − a) s²] (1 − s) − f,   a = a0 + (1 − a0) c²</pre>
 *
 * with speed s as a share of synchronous speed, voltage v and capacitance c as shares of their ratings, friction f. A fit
 * of the usual course, not a machine model: the capacitor starts it, the main winding alone carries it on. Assumes the
 * load does not brake it; an ohmmeter sees the winding at rest, the mains sees what turns.
 */
public final class Motor implements Kind {
    static final Parameter VOLTAGE =
            Parameter.usual("rated voltage", Dimension.VOLTAGE, 230, 12, 260, Spread.EXACT, "voltage it is made for");
    static final Parameter SPEED =
            Parameter.usual("speed", Dimension.ROTATION, 23.8, 5, 60, Spread.relative(0.01), "without load");
    static final Parameter WINDING = Parameter.usual(
            "winding resistance", Dimension.RESISTANCE, 16, 1, 500, Spread.relative(0.08), "at rest, cold");
    static final Parameter RUNNING = Parameter.usual(
            "running current", Dimension.CURRENT, 1, 0.05, 20, Spread.relative(0.1), "at its rated voltage");
    static final Parameter STALLED = Parameter.usual(
            "stalled current", Dimension.CURRENT, 3.2, 0.1, 60, Spread.relative(0.1), "at its rated voltage");
    static final Parameter SPIN_UP = Parameter.usual(
            "spin-up time", Dimension.TIME, 0.3, 0.02, 10, Spread.relative(0.2), "time constant of a healthy start");
    static final Parameter CAPACITOR = Parameter.condition(
            "capacitance left",
            Dimension.RATIO,
            1,
            0,
            1.2,
            Spread.relative(0.05),
            "of the capacitor, share of its rating");
    static final Parameter WITHOUT = Parameter.usual(
            "starting torque without capacitor",
            Dimension.RATIO,
            0.004,
            0,
            0.2,
            Spread.relative(0.2),
            "share of the torque with it");
    static final Parameter FRICTION = Parameter.condition(
            "friction", Dimension.RATIO, 0.002, 0, 10, Spread.relative(0.3), "of bearings, share of starting torque");
    static final Parameter BREAK = Ohms.closed("break", 0.01, "resistance in series with the winding");
    static final Parameter LEAK = Ohms.open("insulation", Ohms.INSULATION, "from the winding to the frame");

    private static final List<String> SOUNDS = List.of("silent", "runs", "labours", "hums");

    private static final Declaration DECLARATION = new Declaration(
            "motor",
            List.of(
                    Port.current("line", "terminal"),
                    Port.current("neutral", "terminal"),
                    Port.current("earth", "its frame"),
                    Port.motion("shaft", "what it turns")),
            List.of(VOLTAGE, SPEED, WINDING, RUNNING, STALLED, SPIN_UP, CAPACITOR, WITHOUT, FRICTION, BREAK, LEAK),
            Trait.NEEDS_EARTH);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("capacitor weak", 1.5, log(CAPACITOR, 0.35, 0.05)),
            Fault.of("capacitor dead", 1.2, set(CAPACITOR, 0)),
            Fault.of("seized", 0.5, set(FRICTION, 5)),
            Fault.of("bearings stiff", 0.6, set(FRICTION, 0.06, 0.3)),
            Fault.of("winding open", 0.4, set(BREAK, Ohms.OPEN)),
            Fault.of("winding leaks to its frame", 0.3, log(LEAK, 20e3, 2)));

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
        int line = b.terminal(c, "line");
        int neutral = b.terminal(c, "neutral");
        int ohms = b.slots().smooth(c.id() + ".ohms", c.get(WINDING) + c.get(BREAK));
        CurrentPlan current = b.current();
        int winding = current.add(new CurrentPlan.Varying(c.id() + " winding", line, neutral, ohms));
        current.add(new CurrentPlan.Resistor(c.id() + " insulation", line, b.terminal(c, "earth"), c.get(LEAK)));
        int share = b.slots().smooth(c.id() + ".speed share", 0);
        int live = b.slots().state(c.id() + ".live", 0);
        int volts = current.voltage(c.id(), neutral, line);
        MotorTurning turning =
                MotorTurning.of(c, new MotorTurning.Places(volts, ohms, live, share, b.motion(c, "shaft")));
        b.control(turning);
        int amps = current.amps(winding);
        double heard = 0.3 * c.get(RUNNING);
        b.choice(c, "sound", SOUNDS, x -> Math.abs(x[amps]) < heard ? 0 : sound(x[share]));
    }

    private static int sound(double share) {
        if (share < 0.4) {
            return 3;
        }
        return share < 0.93 ? 2 : 1;
    }
}
