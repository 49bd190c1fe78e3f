package wetside.kind;

import wetside.blueprint.Control;
import wetside.machine.Component;

/** The speed of a {@link Motor} and the resistance it shows to the mains while it turns, and to an ohmmeter at rest. */
final class MotorTurning implements Control {
    /** Longest step of the speed while it changes [s]. */
    private static final double FINE = 0.02;
    /** The plant is asked to look meanwhile as often as this [s], or when the speed share has changed by so much. */
    private static final double LOOK = 0.1;

    private static final double CHANGED = 0.05;

    /** Change of speed share per second that no longer matters. */
    private static final double SETTLED = 3e-4;

    /** Share of the rated voltage from which it counts as live. */
    private static final double LIVE = 0.1;

    private final Places at;
    private final double voltage;
    private final double speed;
    private final double rest;
    private final double stalled;
    private final double running;
    private final double broken;
    private final double time;
    private final double start;
    private final double friction;

    /** Slots of the motor. */
    record Places(int volts, int ohms, int live, int share, int shaft) {}

    private MotorTurning(Component c, Places at) {
        this.at = at;
        voltage = c.get(Motor.VOLTAGE);
        speed = c.get(Motor.SPEED);
        rest = c.get(Motor.WINDING);
        stalled = voltage / c.get(Motor.STALLED);
        running = voltage / c.get(Motor.RUNNING);
        broken = c.get(Motor.BREAK);
        time = c.get(Motor.SPIN_UP);
        double capacitor = c.get(Motor.CAPACITOR);
        double without = c.get(Motor.WITHOUT);
        start = without + (1 - without) * capacitor * capacitor;
        friction = c.get(Motor.FRICTION);
    }

    static MotorTurning of(Component c, Places at) {
        return new MotorTurning(c, at);
    }

    @Override
    public void act(double[] x, double dt) {
        double v = Math.abs(x[at.volts]) / voltage;
        boolean live = v > LIVE;
        x[at.live] = live ? 1 : 0;
        double s = x[at.share];
        double left = dt;
        while (left > 0 && Math.abs(pull(s, v)) > SETTLED) {
            double step = Math.min(left, FINE);
            s = Math.max(0, Math.min(1, s + step * pull(s, v)));
            left -= step;
        }
        x[at.share] = s < 1e-3 && !live ? 0 : s;
        x[at.shaft] = x[at.share] * speed;
        double now = broken + (live ? stalled + (running - stalled) * s : rest);
        if (Math.abs(now - x[at.ohms]) > 0.02 * now) {
            x[at.ohms] = now;
        }
    }

    /** Change of speed share per second: torque over inertia; bearings hold it at rest until torque beats them. */
    private double pull(double s, double v) {
        // an open winding has no torque whatever its terminals say
        double torque = broken > 1e6 ? 0 : v * v * (start + (1 - start) * s * s) * (1 - s);
        double braked = torque - (v > LIVE ? friction : friction + s);
        return s <= 0 && braked < 0 ? 0 : braked / time;
    }

    @Override
    public double horizon(double[] x) {
        double v = Math.abs(x[at.volts]) / voltage;
        double pull = Math.abs(pull(x[at.share], v));
        return pull > SETTLED ? Math.max(LOOK, CHANGED / pull) : Double.POSITIVE_INFINITY;
    }
}
