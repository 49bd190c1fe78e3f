package wetside.plant;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.FluidPlan;
import wetside.physics.Saturation;

/**
 * Natural circulation between a vessel and what hangs on it by two pipes: quasi-steady flow where buoyancy meets friction,
 * found by a few damped turns; as a conductance it joins the heat step.
 */
final class LoopFlow {
    private static final double G = 9.80665;
    private static final double CP = 4200;
    private static final int TURNS = 3;

    private final FluidPlan.Loop loop;
    private final int vessel;
    private final double upperHeight;
    private final double a;
    private final double b;
    private final int[] stalls;
    private final int[] openings;
    private final double[] s = new double[Saturation.SIZE];
    private double flow = 1e-3;
    private double hot;
    private double cold;

    private LoopFlow(FluidPlan.Loop loop, Leg upper, Leg lower) {
        this.loop = loop;
        vessel = upper.vessel;
        upperHeight = upper.height;
        a = upper.a + lower.a;
        b = upper.b + lower.b;
        List<Integer> stall = new ArrayList<>(upper.stalls);
        stall.addAll(lower.stalls);
        stalls = stall.stream().mapToInt(Integer::intValue).toArray();
        List<Integer> open = new ArrayList<>(upper.openings);
        open.addAll(lower.openings);
        openings = open.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Loops whose two pipes reach one vessel; others stand still and are left out. */
    static LoopFlow[] all(FluidPlan plan) {
        List<LoopFlow> found = new ArrayList<>();
        for (FluidPlan.Loop loop : plan.loops()) {
            Leg upper = Leg.follow(plan, loop.upper());
            Leg lower = Leg.follow(plan, loop.lower());
            if (upper != null && lower != null && upper.vessel == lower.vessel) {
                found.add(new LoopFlow(loop, upper, lower));
            }
        }
        return found.toArray(new LoopFlow[0]);
    }

    FluidPlan.Loop loop() {
        return loop;
    }

    int vessel() {
        return vessel;
    }

    /**
     * Heat conductance of the circulation now [W/K].
     *
     * <pre>g H ρ β (Th − Tc) ε = a W + b W²,   ε = 1 − exp(−UA / (W cp))</pre>
     */
    double conductance(double[] x, double warm, double cool, double level) {
        hot = cool;
        cold = cool;
        double free = level > upperHeight - 0.02 ? 1 : 0;
        for (int slot : stalls) {
            free *= x[slot];
        }
        double open = 1;
        for (int slot : openings) {
            open = Math.min(open, x[slot]);
        }
        if (free * open <= 1e-6 || warm <= cool) {
            flow = 0;
            return 0;
        }
        Saturation.at(warm, s);
        double rho = 1 / s[Saturation.LIQUID_VOLUME];
        double beta = s[Saturation.LIQUID_VOLUME_SLOPE] / s[Saturation.LIQUID_VOLUME];
        double drive = G * loop.head() * rho * beta * (warm - cool);
        double w = Math.max(1e-5, x[loop.flow()]);
        double effect = 1;
        for (int turn = 0; turn < TURNS; turn++) {
            effect = 1 - Math.exp(-loop.ua() / (w * CP));
            double dp = drive * effect;
            double aa = a / open;
            double bb = b / (open * open);
            double next = free * 2 * dp / (aa + Math.sqrt(aa * aa + 4 * bb * dp));
            w = Math.sqrt(w * Math.max(1e-9, next));
        }
        flow = w;
        hot = warm;
        effect = 1 - Math.exp(-loop.ua() / (w * CP));
        cold = warm - (warm - cool) * effect;
        return w * CP * effect;
    }

    void show(double[] x) {
        x[loop.flow()] = flow;
        x[loop.hot()] = hot;
        x[loop.cold()] = cold;
    }

    /** One pipe of the loop, followed through passages to the vessel. */
    private static final class Leg {
        private static final int LONGEST = 8;

        int vessel;
        double height;
        double a;
        double b;
        final List<Integer> stalls = new ArrayList<>();
        final List<Integer> openings = new ArrayList<>();

        /** The shortest way through passages from a node to a vessel, or null. */
        static Leg follow(FluidPlan plan, int start) {
            for (int limit = 0; limit <= LONGEST; limit++) {
                Leg leg = new Leg();
                if (leg.walk(plan, start, limit, new boolean[plan.branches().size()])) {
                    return leg;
                }
            }
            return null;
        }

        private boolean walk(FluidPlan plan, int node, int limit, boolean[] used) {
            for (FluidPlan.TakeOff t : plan.takeOffs()) {
                if (t.node() == node) {
                    vessel = t.vessel();
                    height = t.height();
                    return true;
                }
            }
            for (int i = 0; i < used.length && limit > 0; i++) {
                FluidPlan.Branch branch = plan.branches().get(i);
                boolean touches = branch.from() == node || branch.to() == node;
                if (touches && !used[i] && branch.law() instanceof FluidPlan.Passage p) {
                    used[i] = true;
                    if (walk(plan, branch.from() == node ? branch.to() : branch.from(), limit - 1, used)) {
                        add(branch, p);
                        return true;
                    }
                    used[i] = false;
                }
            }
            return false;
        }

        private void add(FluidPlan.Branch branch, FluidPlan.Passage p) {
            a += p.a();
            b += p.b();
            if (branch.stall() != FluidPlan.ALWAYS) {
                stalls.add(branch.stall());
            }
            if (branch.opening() != FluidPlan.ALWAYS) {
                openings.add(branch.opening());
            }
        }
    }
}
