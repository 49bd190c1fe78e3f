package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.Slots;
import wetside.machine.Component;

/**
 * What a {@link DosingUnit} does. A key that is newly pressed starts to pour, or stops what is poured. A dose ends when its
 * pulses have come, or after the longest pour; pouring on without pulses makes the lamp flash. After the key "programme" the
 * next pour lasts until a key is pressed, and what was counted is the dose from then on. A key found pressed when the supply
 * comes is not counted as pressed.
 */
final class Dosing implements Control {
    private static final int ONE = 1;
    private static final int TWO = 2;
    private static final int CONTINUOUS = 3;
    private static final int PROGRAMME = 4;

    /** A pulse rate above this is no impeller but a bridged input [Hz]; below the other nothing turns. */
    private static final double FASTEST = 1000;

    private static final double SLOWEST = 0.02;

    /** How often it looks while pouring [s], and while pulses come as they came before. */
    private static final double LOOK = 0.25;

    private static final double LOOK_STEADY = 1;
    /** Pulses whose rate changes by less than this share from look to look come as they came before. */
    private static final double STEADY = 0.01;

    private final Inputs in;
    private final Outputs out;
    private final Memory memory;
    private final double least;
    private final double longest;
    private final double patience;

    /** Slots read: supply voltage, and the resistance keys and pulses show. */
    record Inputs(int supply, int keys, int pulses) {}

    /** Slots of the outputs: pours or not, share of the time the lamp is lit. */
    record Outputs(int pours, int lamp) {}

    /**
     * State slots and timers.
     *
     * @param key     the key it sees pressed, 0 for none
     * @param mode    what it pours for, 0 for nothing
     * @param learns  the next pour, or this one, sets the dose
     * @param count   pulses of this pour; {@code lasted}: seconds of it; {@code silent}: seconds without pulses
     * @param rate    pulses a second when it looked last; {@code evenly}: 1 where they were as many the time before
     * @param one     pulses of one dose; {@code two}: of two
     */
    private record Memory(
            int powered,
            int key,
            int mode,
            int learns,
            int count,
            int lasted,
            int silent,
            int rate,
            int evenly,
            int one,
            int two) {}

    private Dosing(Component c, Inputs in, Outputs out, Memory memory) {
        this.in = in;
        this.out = out;
        this.memory = memory;
        least = c.get(Electronics.LEAST);
        longest = c.get(DosingUnit.LONGEST);
        patience = c.get(DosingUnit.PATIENCE);
    }

    static Dosing of(Component c, Blueprint b, Inputs in) {
        Slots s = b.slots();
        String id = c.id() + ".";
        Outputs out = new Outputs(s.state(id + "pours", 0), s.state(id + "lamp share", 0));
        Memory memory = new Memory(
                s.state(id + "powered", 0),
                s.state(id + "key seen", 0),
                s.state(id + "mode", 0),
                s.state(id + "learns", 0),
                s.smooth(id + "count", 0),
                s.smooth(id + "pouring since", 0),
                s.smooth(id + "silent since", 0),
                s.smooth(id + "pulse rate", 0),
                s.smooth(id + "pulses come evenly", 0),
                s.smooth(id + "one dose", c.get(DosingUnit.ONE)),
                s.smooth(id + "two doses", c.get(DosingUnit.TWO)));
        return new Dosing(c, in, out, memory);
    }

    Outputs outputs() {
        return out;
    }

    @Override
    public void act(double[] x, double dt) {
        boolean was = x[memory.powered] > 0.5;
        boolean powered = x[in.supply] >= least;
        x[memory.powered] = powered ? 1 : 0;
        if (powered) {
            count(x, dt);
            int key = key(x[in.keys]);
            if (was && key != 0 && key != (int) x[memory.key]) {
                press(x, key);
            }
            x[memory.key] = key;
            end(x);
        } else {
            x[memory.mode] = 0;
            x[memory.learns] = 0;
        }
        x[out.pours] = x[memory.mode] > 0.5 ? 1 : 0;
        x[out.lamp] = powered ? (flashes(x) ? 0.5 : 1) : 0;
    }

    private void count(double[] x, double dt) {
        if (x[memory.mode] > 0.5 && dt > 0) {
            double hertz = hertz(x);
            x[memory.evenly] = Math.abs(hertz - x[memory.rate]) <= STEADY * hertz ? 1 : 0;
            x[memory.rate] = hertz;
            x[memory.count] += hertz * dt;
            x[memory.lasted] += dt;
            x[memory.silent] = hertz > 0 ? 0 : x[memory.silent] + dt;
        }
    }

    private double hertz(double[] x) {
        double hertz = FlowMeter.ONE_HERTZ / x[in.pulses];
        return hertz > FASTEST || hertz < SLOWEST ? 0 : hertz;
    }

    /** The key whose resistor is nearest by ratio, 0 when none is near. */
    private static int key(double ohms) {
        for (int k = 0; k < KeyPad.OHMS.size(); k++) {
            double ratio = ohms / KeyPad.OHMS.get(k);
            if (ratio > 0.7 && ratio < 1.4) {
                return k + 1;
            }
        }
        return 0;
    }

    private void press(double[] x, int key) {
        if (x[memory.mode] > 0.5) {
            learn(x);
            x[memory.mode] = 0;
        } else if (key == PROGRAMME) {
            x[memory.learns] = x[memory.learns] > 0.5 ? 0 : 1;
        } else {
            x[memory.mode] = key;
            x[memory.count] = 0;
            x[memory.lasted] = 0;
            x[memory.silent] = 0;
        }
    }

    private void learn(double[] x) {
        if (x[memory.learns] > 0.5 && x[memory.mode] != CONTINUOUS && x[memory.count] >= 1) {
            x[x[memory.mode] == ONE ? memory.one : memory.two] = x[memory.count];
        }
        x[memory.learns] = 0;
    }

    private void end(double[] x) {
        boolean over = x[memory.mode] > 0.5 && x[memory.lasted] >= longest - 1e-9;
        if (over || left(x) <= 1e-9) {
            x[memory.mode] = 0;
            x[memory.learns] = 0;
        }
    }

    /** Pulses still to come, endless while no dose is poured. */
    private double left(double[] x) {
        int mode = (int) x[memory.mode];
        if (mode != ONE && mode != TWO || x[memory.learns] > 0.5) {
            return Double.POSITIVE_INFINITY;
        }
        return x[mode == ONE ? memory.one : memory.two] - x[memory.count];
    }

    private boolean flashes(double[] x) {
        return x[memory.learns] > 0.5 || x[memory.mode] > 0.5 && x[memory.silent] >= patience - 1e-9;
    }

    @Override
    public double horizon(double[] x) {
        if (x[memory.mode] < 0.5) {
            return Double.POSITIVE_INFINITY;
        }
        double soon = longest - x[memory.lasted];
        double hertz = hertz(x);
        double left = left(x);
        if (left < Double.POSITIVE_INFINITY) {
            soon = Math.min(soon, x[memory.evenly] > 0.5 ? LOOK_STEADY : LOOK);
        }
        if (hertz > 0) {
            soon = Math.min(soon, left / hertz);
        } else if (x[memory.silent] < patience) {
            soon = Math.min(soon, patience - x[memory.silent]);
        }
        return Math.max(1e-3, soon);
    }
}
