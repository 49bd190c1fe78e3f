package wetside.plant;

/**
 * Moves a plant on in time with steps as long as its own change allows: rejected and redone when temperatures bend or steam
 * pressure jumps too much, cut to find the moment a contact, a valve or a probe changes, and landing exactly on timers.
 */
public final class Stepper {
    private static final double LEAST = 0.01;
    private static final double FIRST = 0.1;
    private static final double MOST = 30;
    /** The same where nothing is heated and hardly anything flows [s]. */
    private static final double MOST_AT_REST = 1800;
    /** Water that may drip in such a step [kg]. */
    private static final double DRIPPED = 5e-4;
    /** Heat that leaks through insulations is none [W]. */
    private static final double HEATED = 1;
    /** Aimed-at bend of any temperature within a step [K]. */
    private static final double TOLERANCE = 0.06;
    /** What switches by itself does so at most this late [s]. */
    private static final double MOMENT = 0.25;

    private static final double PRESSURE_AIM = 0.05e5;
    private static final double PRESSURE_REJECT = 0.15e5;
    /** Above this liquid flow [kg/s] levels and lines are followed at half-second steps. */
    private static final double BUSY = 1e-3;

    private static final double TRICKLE = 5e-5;
    /** Flows that change by less than this share in a step go on as they are. */
    private static final double STEADY = 0.01;
    /** What has gone on for some time is followed in steps of this share of it. */
    private static final double PATIENCE = 1.0 / 20;
    /** Share of a vessel's water, a stock or a wall's heat that may be renewed in such a step. */
    private static final double RENEWED = 0.5;
    /** Share of a vessel's gas that may leave in one step. */
    private static final double GAS_LEAVES = 0.6;

    private final Plant plant;
    private final Plant.Snapshot saved;
    private final double[] predictedSlope;
    private double fineness = 1;
    private double next = FIRST;
    private boolean isMoved = true;
    private double time;
    private double steadySince;
    /** When something is expected to switch by itself. */
    private double awaited = Double.NEGATIVE_INFINITY;

    private long steps;
    private long rejected;
    private long unsolved;

    public Stepper(Plant plant) {
        this.plant = plant;
        saved = plant.save();
        predictedSlope = new double[plant.temperatures.length];
    }

    public double time() {
        return time;
    }

    public void time(double seconds) {
        time = seconds;
    }

    public long steps() {
        return steps;
    }

    public long rejected() {
        return rejected;
    }

    /** Accepted steps in which water and steam found no balance. */
    public long unsolved() {
        return unsolved;
    }

    /** Takes finer steps than usual: every limit on a step's length and error times {@code share} (0 to 1). */
    public void fineness(double share) {
        fineness = share;
    }

    /** Says that an operator has moved something: contacts and controls settle and steps begin small again. */
    public void moved() {
        plant.settle();
        isMoved = true;
        next = FIRST;
        awaited = Double.NEGATIVE_INFINITY;
        steadySince = time;
    }

    /** Takes one step of at most {@code most} seconds. */
    public void advance(double most) {
        if (isMoved) {
            // once for all that was moved at the same moment
            plant.circuitChanged();
            isMoved = false;
        }
        double dt = Math.min(Math.min(next, most), Math.max(LEAST, plant.horizon()));
        if (most - dt < LEAST) {
            dt = most;
        }
        plant.store(saved);
        while (true) {
            System.arraycopy(plant.slopes, 0, predictedSlope, 0, predictedSlope.length);
            boolean solved = plant.step(dt);
            double error = error(dt);
            boolean emptied = emptied(dt) || plant.overdrawn();
            boolean rough = error > 4 * TOLERANCE * fineness || pressureJump() > PRESSURE_REJECT * fineness;
            if (dt > LEAST && (!solved || rough || emptied)) {
                dt = redo(Math.max(LEAST, dt * 0.4));
                continue;
            }
            boolean jumped = plant.act(dt);
            if (jumped && dt > MOMENT * fineness) {
                double moment = plant.jumpedAt(saved, dt, MOMENT * fineness / 8);
                dt = redo(Math.max(MOMENT * fineness, moment - MOMENT * fineness / 2));
                awaited = time + moment;
                continue;
            }
            accept(dt, error, jumped, solved);
            if (!jumped && time < awaited + 2 * MOMENT * fineness) {
                next = Math.min(next, MOMENT * fineness);
            }
            return;
        }
    }

    /** More gas left a vessel than the step's beginning can answer for: its air would run short of the books. */
    private boolean emptied(double dt) {
        return plant.carried().gasTurnover * dt > GAS_LEAVES;
    }

    private double redo(double dt) {
        rejected++;
        plant.restore(saved);
        return dt;
    }

    private void accept(double dt, double error, boolean jumped, boolean solved) {
        time += dt;
        steps++;
        if (!solved) {
            unsolved++;
        }
        if (plant.carried().busiest <= TRICKLE || plant.flowsChanged(saved, STEADY)) {
            steadySince = time;
        }
        if (jumped) {
            awaited = Double.NEGATIVE_INFINITY;
            plant.settle();
            plant.circuitMayHaveChanged();
            next = FIRST;
            return;
        }
        double grow = Math.max(0.3, Math.min(3, 0.85 * Math.sqrt(TOLERANCE * fineness / Math.max(1e-9, error))));
        double jump = pressureJump();
        if (jump > 0) {
            grow = Math.min(grow, PRESSURE_AIM * fineness / jump);
        }
        next = Math.max(LEAST, Math.min(cap() * fineness, dt * Math.max(0.3, grow)));
    }

    /** Half the greatest bend of a temperature over the step [K]; heated metal counts a tenth. */
    private double error(double dt) {
        double worst = 0;
        for (int i = 0; i < predictedSlope.length; i++) {
            double bend = Math.abs(plant.slopes[i] - predictedSlope[i]) * dt / 2;
            worst = Math.max(worst, bend * plant.weight(i));
        }
        return worst;
    }

    private double pressureJump() {
        double worst = 0;
        for (int v = 0; v < plant.vessels().length; v++) {
            VesselState state = plant.vessels()[v];
            if (state.level() < 0.97) {
                worst = Math.max(worst, Math.abs(state.pressure() - saved.pressure(plant, v)));
            }
        }
        return worst;
    }

    private double cap() {
        double flow = plant.carried().busiest;
        double cap = MOST;
        if (plant.heatStep().taken < HEATED) {
            cap = Math.max(cap, Math.min(MOST_AT_REST, DRIPPED / flow));
        }
        if (flow > BUSY) {
            cap = steady(1);
        } else if (flow > TRICKLE) {
            cap = steady(10);
        }
        double turnover = plant.carried().gasTurnover;
        return turnover > 0 ? Math.min(cap, Math.max(0.05, 0.3 / turnover)) : cap;
    }

    /** The longest step while water flows [s]: longer than {@code least} where it has long been flowing as it does. */
    private double steady(double least) {
        double renewed = RENEWED / plant.carried().turnover;
        double most = plant.heatStep().taken < HEATED ? MOST_AT_REST : MOST;
        return Math.max(least, Math.min(Math.min(most, renewed), PATIENCE * (time - steadySince)));
    }
}
