package wetside.plant;

import java.util.List;
import wetside.blueprint.HeatPlan;
import wetside.blueprint.HeatPlan.Regulator;
import wetside.blueprint.HeatPlan.Sensor;

/**
 * All regulators of a plant inside the heat step. How a regulator's belief moves with each sensor, and which heat source its
 * output drives, is found by asking the circuit, so that swapped wires and dead relays need no words here.
 */
final class Regulators {
    private static final double NUDGE = 0.5;

    private final List<Regulator> regulators;
    private final List<Sensor> sensors;
    private final HeatNodes nodes;
    private final int[] sourceSlots;
    private final double[] base;
    private final double[][] gainOn;
    private final int[] heard;
    private final double[] belief;
    private final double[] u0;
    private final double[] s;
    private final double[] u;
    private final double[] before;
    private final int[] clamp;

    Regulators(HeatPlan plan, HeatNodes nodes, int[] sourceSlots) {
        regulators = plan.regulators();
        sensors = plan.sensors();
        this.nodes = nodes;
        this.sourceSlots = sourceSlots;
        int r = regulators.size();
        base = new double[sourceSlots.length];
        gainOn = new double[r][sourceSlots.length];
        heard = new int[r];
        belief = new double[r];
        u0 = new double[r];
        s = new double[r];
        u = new double[r];
        before = new double[r];
        clamp = new int[r];
    }

    /** Keeps sensor resistances at their nodes' temperatures. */
    void feel(double[] x, double[] t) {
        for (int i = 0; i < sensors.size(); i++) {
            Sensor sensor = sensors.get(i);
            x[sensor.ohms()] = sensor.law().ohms(t[nodes.of(sensor.node())]);
        }
    }

    /** What each regulator believes now; called after the circuit is solved. */
    void believe(double[] x) {
        for (int j = 0; j < regulators.size(); j++) {
            Regulator r = regulators.get(j);
            x[r.shown()] = r.law().temperature(x[r.seen()]);
        }
    }

    /** Which regulators may do anything: one without a supply, its output off, need not know what it would drive. */
    long awake(double[] x) {
        long awake = 0;
        for (int j = 0; j < regulators.size(); j++) {
            Regulator r = regulators.get(j);
            awake |= x[r.powered()] >= 0.5 || x[r.duty()] != 0 ? 1L << j : 0;
        }
        return awake;
    }

    /** Asks the circuit which sensor each regulator hears and what its output drives. Called when a contact changed. */
    void listen(double[] x, double[] t, Circuit circuit) {
        if (awake(x) == 0) {
            return;
        }
        long held = circuit.held();
        for (int j = 0; j < regulators.size(); j++) {
            drives(x, circuit, j);
        }
        circuit.solve(x);
        believe(x);
        java.util.Arrays.fill(heard, -1);
        for (int i = 0; i < sensors.size(); i++) {
            hears(x, t, circuit, i);
        }
        feel(x, t);
        circuit.hold(held);
        circuit.solve(x);
        believe(x);
    }

    private void drives(double[] x, Circuit circuit, int j) {
        int duty = regulators.get(j).duty();
        double now = x[duty];
        x[duty] = 0;
        circuit.solve(x);
        for (int k = 0; k < sourceSlots.length; k++) {
            gainOn[j][k] = -x[sourceSlots[k]];
        }
        x[duty] = 1;
        circuit.solve(x);
        for (int k = 0; k < sourceSlots.length; k++) {
            gainOn[j][k] += x[sourceSlots[k]];
        }
        x[duty] = now;
    }

    private void hears(double[] x, double[] t, Circuit circuit, int i) {
        Sensor sensor = sensors.get(i);
        double[] shown = new double[regulators.size()];
        for (int j = 0; j < shown.length; j++) {
            shown[j] = x[regulators.get(j).shown()];
        }
        double node = t[nodes.of(sensor.node())];
        x[sensor.ohms()] = sensor.law().ohms(node + NUDGE);
        circuit.solve(x);
        for (int j = 0; j < shown.length; j++) {
            Regulator r = regulators.get(j);
            double slope = (r.law().temperature(x[r.seen()]) - shown[j]) / NUDGE;
            if (slope > 0.05) {
                heard[j] = nodes.of(sensor.node());
                belief[j] = slope;
            }
        }
        x[sensor.ohms()] = sensor.law().ohms(node);
        circuit.solve(x);
        believe(x);
    }

    /** Sets up u = u0 − s·T for a step of {@code dt}. */
    void prepare(double[] x, double[] t, double[] slope, double dt) {
        for (int j = 0; j < u.length; j++) {
            Regulator r = regulators.get(j);
            double shown = x[r.shown()];
            before[j] = x[r.duty()];
            if (x[r.powered()] < 0.5 || Double.isNaN(shown)) {
                pin(j, 0);
                continue;
            }
            double k = r.gain() * (1 + dt / r.reset());
            double node = heard[j] < 0 ? 0 : t[heard[j]];
            s[j] = heard[j] < 0 ? 0 : k * belief[j];
            u0[j] = k * (x[r.set()] - shown) + s[j] * node + x[r.integral()];
            double ahead = heard[j] < 0 ? 0 : node + dt * slope[heard[j]];
            double guess = u0[j] - s[j] * ahead;
            clamp[j] = guess > 1 ? 1 : guess < 0 ? -1 : 0;
            u[j] = guess > 1 ? 1 : guess < 0 ? 0 : guess;
        }
        for (int k = 0; k < base.length; k++) {
            base[k] = x[sourceSlots[k]];
            for (int j = 0; j < u.length; j++) {
                base[k] -= before[j] * gainOn[j][k];
            }
        }
    }

    private void pin(int j, double value) {
        s[j] = 0;
        u0[j] = value;
        u[j] = value;
        clamp[j] = 2;
    }

    double fixedPower(int k) {
        double p = base[k];
        for (int j = 0; j < u.length; j++) {
            p += gainOn[j][k] * (clamp[j] == 0 ? u0[j] : u[j]);
        }
        return p;
    }

    void addTo(double[][] a, double[] rhs, int[] sourceNode) {
        for (int j = 0; j < u.length; j++) {
            if (clamp[j] == 0 && heard[j] >= 0) {
                for (int k = 0; k < sourceNode.length; k++) {
                    a[sourceNode[k]][heard[j]] += gainOn[j][k] * s[j];
                }
            }
        }
    }

    /** Outputs at the predicted temperatures; true when a clamp has to change and the step be solved again. */
    boolean settle(double[] x, double[] predicted) {
        boolean again = false;
        for (int j = 0; j < u.length; j++) {
            if (clamp[j] == 2) {
                continue;
            }
            double free = u0[j] - (heard[j] < 0 ? 0 : s[j] * predicted[heard[j]]);
            int should = free > 1 ? 1 : free < 0 ? -1 : 0;
            u[j] = Math.max(0, Math.min(1, free));
            if (should != clamp[j]) {
                clamp[j] = should;
                again = true;
            }
        }
        return again;
    }

    /** Writes outputs and integral parts; the integral stands still while the output is clamped outwards. */
    void commit(double[] x, double dt) {
        for (int j = 0; j < u.length; j++) {
            Regulator r = regulators.get(j);
            x[r.duty()] = u[j];
            if (clamp[j] == 2) {
                x[r.integral()] = 0;
            } else if (clamp[j] == 0) {
                // u = K e + I + (K dt/Ti) e, so the new integral is u − K e with e = (u − I) / (K (1 + dt/Ti))
                double e = (u[j] - x[r.integral()]) / (r.gain() * (1 + dt / r.reset()));
                x[r.integral()] = Math.max(-1, Math.min(1, u[j] - r.gain() * e));
            }
        }
    }

    double power(int k) {
        double p = base[k];
        for (int j = 0; j < u.length; j++) {
            p += gainOn[j][k] * u[j];
        }
        return p;
    }
}
