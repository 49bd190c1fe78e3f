package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.Slots;
import wetside.machine.Component;

/**
 * What the {@link ControlBoard} decides. It starts to fill when the probe has been dry for its patience, stops when the
 * probe has been wet for as long, and gives up when one fill lasts too long, until it is switched off. Steam may heat once
 * the probe has been found wet since switching on and while no fill was given up; nothing runs or heats on an empty tank.
 */
final class FillLogic implements Control {
    static final List<String> MESSAGES =
            List.of("dark", "ready", "tank empty", "filling steam boiler", "steam boiler fill gave up");

    /** Inputs read as closed below this [Ω]. */
    private static final double CLOSED = 3e3;

    /** How often it looks at the probe while water runs [s]. */
    private static final double LOOK = 0.5;

    private final Inputs in;
    private final Outputs out;
    private final Memory memory;
    private final double least;
    private final double threshold;
    private final double patience;
    private final double longest;

    /** Slots read: supply voltage and the resistance each input sees. */
    record Inputs(int supply, int probe, int tank, int brew) {}

    /** State slots of the outputs. */
    record Outputs(int pump, int fill, int brewHeat, int steamHeat) {}

    /**
     * State slots and timers.
     *
     * @param calling it wants water
     * @param filled  the probe has been found wet since switching on
     * @param gaveUp  one fill lasted too long
     * @param wet     what the probe said last
     * @param since   for how long the probe has said that [s]
     * @param filling for how long water has been let in [s]
     */
    private record Memory(
            int powered, int water, int calling, int filled, int gaveUp, int wet, int since, int filling) {}

    private FillLogic(Component c, Inputs in, Outputs out, Memory memory) {
        this.in = in;
        this.out = out;
        this.memory = memory;
        least = c.get(Electronics.LEAST);
        threshold = c.get(ControlBoard.THRESHOLD);
        patience = c.get(ControlBoard.DEBOUNCE);
        longest = c.get(ControlBoard.FILL_LIMIT);
    }

    static FillLogic of(Component c, Blueprint b, Inputs in) {
        Slots s = b.slots();
        String id = c.id() + ".";
        Outputs out = new Outputs(
                s.state(id + "pump output", 0),
                s.state(id + "fill output", 0),
                s.state(id + "brew heat output", 0),
                s.state(id + "steam heat output", 0));
        Memory memory = new Memory(
                s.state(id + "powered", 0),
                s.state(id + "water in tank", 0),
                s.state(id + "calling for water", 0),
                s.state(id + "found filled", 0),
                s.state(id + "gave up", 0),
                s.state(id + "probe wet", 0),
                s.smooth(id + "probe same since", 0),
                s.smooth(id + "filling since", 0));
        return new FillLogic(c, in, out, memory);
    }

    Outputs outputs() {
        return out;
    }

    @Override
    public void act(double[] x, double dt) {
        boolean powered = x[in.supply] >= least;
        x[memory.powered] = powered ? 1 : 0;
        x[memory.water] = x[in.tank] < CLOSED ? 1 : 0;
        if (!powered) {
            forget(x);
        } else {
            listen(x, dt);
            decide(x);
        }
        drive(x, powered);
    }

    private void forget(double[] x) {
        x[memory.calling] = 0;
        x[memory.filled] = 0;
        x[memory.gaveUp] = 0;
        x[memory.since] = 0;
        x[memory.filling] = 0;
    }

    /** Timers: how long the probe has said the same, how long water has been let in. */
    private void listen(double[] x, double dt) {
        boolean wet = x[in.probe] < threshold;
        boolean same = wet == (x[memory.wet] > 0.5);
        x[memory.since] = same ? x[memory.since] + dt : 0;
        x[memory.wet] = wet ? 1 : 0;
        x[memory.filling] = x[out.fill] > 0.5 ? x[memory.filling] + dt : 0;
    }

    private void decide(double[] x) {
        boolean sure = x[memory.since] >= patience - 1e-9;
        boolean wet = x[memory.wet] > 0.5;
        if (sure) {
            x[memory.calling] = wet ? 0 : 1;
            if (wet) {
                x[memory.filled] = 1;
            }
        }
        if (x[memory.filling] >= longest - 1e-9) {
            x[memory.gaveUp] = 1;
        }
    }

    private void drive(double[] x, boolean powered) {
        boolean ready = powered && x[memory.water] > 0.5;
        boolean gaveUp = x[memory.gaveUp] > 0.5;
        boolean fills = ready && x[memory.calling] > 0.5 && !gaveUp;
        boolean brews = ready && x[in.brew] < CLOSED;
        x[out.fill] = fills ? 1 : 0;
        x[out.pump] = fills || brews ? 1 : 0;
        x[out.brewHeat] = ready ? 1 : 0;
        x[out.steamHeat] = ready && x[memory.filled] > 0.5 && !gaveUp ? 1 : 0;
    }

    @Override
    public double horizon(double[] x) {
        if (x[memory.powered] < 0.5) {
            return Double.POSITIVE_INFINITY;
        }
        boolean wet = x[memory.wet] > 0.5;
        boolean settled = wet ? x[memory.filled] > 0.5 && x[memory.calling] < 0.5 : x[memory.calling] > 0.5;
        double soon = settled ? Double.POSITIVE_INFINITY : patience - x[memory.since];
        if (x[out.fill] > 0.5) {
            soon = Math.min(soon, Math.min(LOOK, longest - x[memory.filling]));
        }
        return Math.max(soon, 1e-3);
    }

    /** Index into {@link #MESSAGES}. */
    double message(double[] x) {
        if (x[memory.powered] < 0.5) {
            return 0;
        }
        if (x[memory.water] < 0.5) {
            return 2;
        }
        if (x[memory.gaveUp] > 0.5) {
            return 4;
        }
        return x[out.fill] > 0.5 ? 3 : 1;
    }
}
