package wetside.plant;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.FluidPlan;

/**
 * The laws of all chains in flat arrays: set for a step from the state array, then asked for flow and slopes at trial
 * pressures. Every law rises with the pressure upstream and falls with the pressure downstream.
 *
 * <pre>
 * passage     Δp = a q + b q|q|   ⇒   q = 2 Δp / (a + s),  dq/dΔp = 1/s,  s = √(a² + 4 b |Δp|)
 * one way     the same with the drive e(Δp − crack), plus leak Δp
 * regulator   the same with the drive e(min(Δp, gain · what the held side is off))
 * pump        {@link PumpLaw}
 * e(x) = 0 (x ≤ 0), x²/2w (x &lt; w), x − w/2
 * </pre>
 *
 * The rounding e has compact support, so that what is shut carries exactly nothing.
 */
final class ChainLaws {
    private static final double SHUT = 1e17;
    static final double DENSITY = 998.2;
    static final double GRAVITY = 9.80665;
    /** Below this opening a valve is shut. */
    static final double LEAST_OPENING = 1e-6;

    private static final double LEAST_A = 10;
    private static final double LEAST_BAND = 10;
    private static final double REST_LAMINAR = 500;
    private static final double REGULATOR_BAND = 1e3;

    private static final int PASSAGE = 0;
    private static final int ONE_WAY = 1;
    private static final int REGULATOR = 2;
    private static final int PUMP = 3;

    private record Opening(int slot, double a, double b) {}

    final int count;
    private final int[] type;
    private final double[] fixedA;
    private final double[] fixedB;
    private final Opening[][] openings;
    private final int[] shift;
    private final double[] crack;
    private final double[] band;
    private final double[] leak;
    private final double[] gain;
    private final boolean[] upstream;
    private final PumpLaw[] pump;
    final double[] weight;
    private final double[] a;
    private final double[] b;
    private final double[] aForward;
    private final double[] bForward;
    private final double[] aBack;
    private final double[] bBack;
    private final double[] leakForward;
    private final double[] leakBack;
    private final double[] drive;
    private final double[] head;
    private final double[] throughForward;
    private final double[] throughBack;
    private final double[] wet;
    private final boolean[] stale;
    /** Chains that are not shut, the first {@link #activeCount} of them. */
    final int[] active;

    int activeCount;
    private final int[] passages;
    private int passageCount;
    private final int[] others;
    private int otherCount;
    private final boolean[] leftOut;
    private double air = 101325;
    /** Result of {@link #flow}: mass flow [kg/s] and its slopes with the pressures at both ends [kg/(s Pa)]. */
    final double[] q;

    final double[] byFrom;
    final double[] byTo;

    ChainLaws(FluidPlan plan, ReducedNetwork net, List<Chain> chains) {
        count = chains.size();
        type = new int[count];
        fixedA = new double[count];
        fixedB = new double[count];
        openings = new Opening[count][];
        shift = new int[count];
        crack = new double[count];
        band = new double[count];
        leak = new double[count];
        gain = new double[count];
        upstream = new boolean[count];
        pump = new PumpLaw[count];
        weight = new double[count];
        a = new double[count];
        b = new double[count];
        aForward = new double[count];
        bForward = new double[count];
        aBack = new double[count];
        bBack = new double[count];
        leakForward = new double[count];
        leakBack = new double[count];
        drive = new double[count];
        head = new double[count];
        throughForward = new double[count];
        throughBack = new double[count];
        wet = new double[count];
        stale = new boolean[count];
        active = new int[count];
        passages = new int[count];
        others = new int[count];
        leftOut = new boolean[count];
        q = new double[count];
        byFrom = new double[count];
        byTo = new double[count];
        for (int c = 0; c < count; c++) {
            compile(plan, net, chains.get(c), c);
        }
    }

    private void compile(FluidPlan plan, ReducedNetwork net, Chain chain, int c) {
        List<Opening> valves = new ArrayList<>();
        double rise = 0;
        shift[c] = FluidPlan.ALWAYS;
        for (int k = 0; k < chain.links.size(); k++) {
            FluidPlan.Branch branch = plan.branches().get(chain.links.get(k).branch());
            rise += net.rise(chain.links.get(k));
            if (!(branch.law() instanceof FluidPlan.Passage passage)) {
                special(branch, c);
            } else if (branch.opening() == FluidPlan.ALWAYS) {
                fixedA[c] += passage.a();
                fixedB[c] += passage.b();
            } else {
                valves.add(new Opening(branch.opening(), passage.a(), passage.b()));
            }
        }
        openings[c] = valves.toArray(Opening[]::new);
        weight[c] = DENSITY * GRAVITY * rise;
        fixedA[c] = Math.max(LEAST_A, fixedA[c]);
        a[c] = fixedA[c];
        b[c] = fixedB[c];
        drive[c] = crack[c];
        stale[c] = true;
    }

    private void special(FluidPlan.Branch branch, int c) {
        shift[c] = branch.opening();
        if (branch.law() instanceof FluidPlan.OneWay law) {
            type[c] = ONE_WAY;
            crack[c] = law.crack();
            band[c] = Math.max(LEAST_BAND, law.band());
            leak[c] = law.leak();
            fixedA[c] += law.a();
            fixedB[c] += law.b();
        } else if (branch.law() instanceof FluidPlan.Regulator law) {
            type[c] = REGULATOR;
            crack[c] = law.set();
            band[c] = REGULATOR_BAND;
            gain[c] = law.gain();
            upstream[c] = law.upstream();
            fixedA[c] += law.a();
            fixedB[c] += law.b();
        } else if (branch.law() instanceof FluidPlan.Pump law) {
            type[c] = PUMP;
            pump[c] = new PumpLaw(law);
            fixedB[c] = law.restB();
            fixedA[c] = Math.sqrt(law.restB() * REST_LAMINAR);
            if (branch.opening() == FluidPlan.ALWAYS) {
                throw new IllegalArgumentException("pump '" + branch.name() + "' needs a slot with its speed");
            }
        }
    }

    /** Reads openings, shifts and speeds; forgets what stood at the ends. */
    void open(double[] x, double airPressure) {
        air = airPressure;
        activeCount = 0;
        passageCount = 0;
        otherCount = 0;
        for (int c = 0; c < count; c++) {
            if (openings[c].length > 0) {
                valves(c, x);
            }
            if (shift[c] >= 0) {
                drive[c] = type[c] == PUMP ? Math.max(0, x[shift[c]]) : crack[c] + x[shift[c]];
            }
            if (a[c] < SHUT) {
                enlist(c);
            } else {
                q[c] = 0;
                byFrom[c] = 0;
                byTo[c] = 0;
            }
        }
    }

    private void enlist(int c) {
        active[activeCount++] = c;
        if (leftOut[c]) {
            return;
        }
        if (type[c] == PASSAGE) {
            passages[passageCount++] = c;
        } else {
            others[otherCount++] = c;
        }
    }

    /** Chains that {@link #flows} leaves as they are. */
    void leaveOut(int[] chains) {
        for (int c : chains) {
            leftOut[c] = true;
        }
    }

    /** Flows and slopes of all chains for the pressures of all sites. */
    void flows(double[] p, int[] from, int[] to) {
        for (int k = 0; k < passageCount; k++) {
            int c = passages[k];
            passage(c, p[from[c]] - p[to[c]] - head[c]);
        }
        for (int k = 0; k < otherCount; k++) {
            int c = others[k];
            flow(c, p[from[c]], p[to[c]]);
        }
    }

    private void valves(int c, double[] x) {
        double sumA = fixedA[c];
        double sumB = fixedB[c];
        for (Opening valve : openings[c]) {
            double o = x[valve.slot];
            if (!(o > LEAST_OPENING)) {
                sumA = SHUT;
                break;
            }
            double inverse = 1 / Math.min(1, o);
            sumA += valve.a * inverse;
            sumB += valve.b * inverse * inverse;
        }
        stale[c] |= sumA != a[c] || sumB != b[c];
        a[c] = sumA;
        b[c] = sumB;
    }

    /**
     * What stands at the ends of a chain.
     *
     * @param forward share of the liquid's flow that comes through forwards at the same pressures; 0 shuts that way
     * @param back    the same backwards
     * @param wet     share of the water's weight that acts over the chain's rise
     */
    void carry(int c, double forward, double back, double wet) {
        double f = Math.max(1e-12, forward);
        double r = Math.max(1e-12, back);
        if (!stale[c] && f == throughForward[c] && r == throughBack[c] && wet == this.wet[c]) {
            return;
        }
        stale[c] = false;
        double byF = f == 1 ? 1 : 1 / f;
        double byR = r == 1 ? 1 : 1 / r;
        aForward[c] = Math.min(SHUT, a[c] * byF);
        bForward[c] = b[c] * byF * byF;
        aBack[c] = Math.min(SHUT, a[c] * byR);
        bBack[c] = b[c] * byR * byR;
        leakForward[c] = leak[c] * f;
        leakBack[c] = leak[c] * r;
        throughForward[c] = f;
        throughBack[c] = r;
        this.wet[c] = wet;
        head[c] = weight[c] * wet;
    }

    /** Flow and slopes of a chain between two pressures. */
    void flow(int c, double from, double to) {
        double x = from - to - head[c];
        switch (type[c]) {
            case PASSAGE -> passage(c, x);
            case ONE_WAY -> oneWay(c, x);
            case REGULATOR -> regulator(c, x, from, to);
            default -> pump(c, from, to + head[c]);
        }
    }

    private void passage(int c, double x) {
        boolean forward = x >= 0;
        double la = forward ? aForward[c] : aBack[c];
        double s = Math.sqrt(la * la + 4 * (forward ? bForward[c] : bBack[c]) * Math.abs(x));
        double inverse = 1 / (s * (la + s));
        q[c] = 2 * x * s * inverse;
        double slope = (la + s) * inverse;
        byFrom[c] = slope;
        byTo[c] = -slope;
    }

    private void oneWay(int c, double x) {
        double slope = x > 0 ? leakForward[c] : leakBack[c];
        double flow = slope * x;
        double over = x - drive[c];
        if (over > 0) {
            double w = band[c];
            double e = drive(over, w);
            double s = Math.sqrt(aForward[c] * aForward[c] + 4 * bForward[c] * e);
            flow += 2 * e / (aForward[c] + s);
            slope += opening(over, w) / s;
        }
        q[c] = flow;
        byFrom[c] = slope;
        byTo[c] = -slope;
    }

    private void regulator(int c, double x, double from, double to) {
        double off = gain[c] * (upstream[c] ? from - air - drive[c] : drive[c] + air - to);
        double w = band[c];
        double apart = off - x;
        double share = apart >= w ? 1 : apart <= -w ? 0 : (apart + w) / (2 * w);
        double least = share == 1 ? x : share == 0 ? off : off - share * share * w;
        q[c] = 0;
        byFrom[c] = 0;
        byTo[c] = 0;
        if (least <= 0) {
            return;
        }
        double e = drive(least, w);
        double s = Math.sqrt(aForward[c] * aForward[c] + 4 * bForward[c] * e);
        double slope = opening(least, w) / s;
        q[c] = 2 * e / (aForward[c] + s);
        byFrom[c] = slope * (share + (upstream[c] ? (1 - share) * gain[c] : 0));
        byTo[c] = -slope * (share + (upstream[c] ? 0 : (1 - share) * gain[c]));
    }

    private void pump(int c, double in, double out) {
        PumpLaw law = pump[c];
        law.between(in, out, air, drive[c], throughForward[c], aForward[c], bForward[c]);
        q[c] = law.flow;
        byFrom[c] = law.byIn;
        byTo[c] = law.byOut;
    }

    /** The rounded drive e(x) of a valve that opens over a band, x above 0. */
    static double drive(double x, double band) {
        return x < band ? x * x / (2 * band) : x - band / 2;
    }

    /** de/dx. */
    static double opening(double x, double band) {
        return x < band ? x / band : 1;
    }

    boolean isShut(int c) {
        return a[c] >= SHUT;
    }

    boolean isPump(int c) {
        return type[c] == PUMP;
    }

    /** Share of the water's flow that came through in the direction of the last flow. */
    double through(int c) {
        return q[c] >= 0 ? throughForward[c] : throughBack[c];
    }

    /** Share of the water's weight that acted over the chain's rise. */
    double wet(int c) {
        return wet[c];
    }

    /** Pressure drop of one passage at a flow [Pa], for pressures inside a chain. */
    static double drop(FluidPlan.Passage law, double opening, double flow) {
        double inverse = 1 / Math.max(LEAST_OPENING, Math.min(1, opening));
        return (law.a() * inverse + law.b() * inverse * inverse * Math.abs(flow)) * flow;
    }
}
