package wetside.plant;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.physics.GasFlow;

/**
 * What stands at both ends of every chain, and so what a chain carries: water, gas (steam and air), or both side by side
 * when the surface is near the height of a take-off. Gas goes through the same passage as water would, by the law of
 * choked and unchoked flow, written as the share r of the water's flow at the same pressures:
 *
 * <pre>
 * r = √(ρ_gas/ρ) Y(p2/p1),   Y = W / (Cd A √(2 ρ_gas Δp))
 * flow through = (1 − φ) + φ r of the water's,   gas share of it = φ r / ((1 − φ) + φ r)
 * </pre>
 *
 * with φ the share of the opening that stands in gas. Held for a solve; see {@link Hydraulics}.
 */
final class Donors {
    /** Rise of the surface over which a take-off passes from gas to water, as a share of the vessel. */
    static final double BAND = 0.01;

    /** Below this a stock no longer gives all that is asked [kg]. */
    static final double LAST_OF_STOCK = 0.02;

    private static final double AIR_DENSITY = 1.2 / 101325;
    private static final double STEAM_DENSITY = 0.6e-5;
    private static final double TRACE = 1e-9;
    private static final double NOTHING = 1e-7;
    private static final int STEPS = 256;
    private static final double[] EXPANSION = expansion();

    private enum Sort {
        VESSEL,
        NODE,
        OUTSIDE,
        STOCK
    }

    private record Place(Sort sort, int index, double height) {}

    private final FlowSystem system;
    private final ChainLaws laws;
    private final Place[] from;
    private final Place[] to;
    private final double[] share;
    private final double[] forward;
    private final double[] back;
    private final double[] wet;
    private final double[] gasAhead;
    private final double[] gasBack;
    private final double[][] told;
    private final double[][] kept;
    private final double[] inflow;
    private final double[] inflowGas;
    private VesselRow[] rows;
    private double[] x;
    private double airRatio;
    private double gas;
    private double surface;

    Donors(FluidPlan plan, List<Chain> chains, FlowSystem system, Map<Integer, Integer> siteOf) {
        this.system = system;
        laws = system.laws;
        Map<Integer, Place> places = new HashMap<>();
        siteOf.forEach((node, site) -> places.put(node, new Place(Sort.NODE, site, 0)));
        plan.takeOffs().forEach(t -> places.put(t.node(), new Place(Sort.VESSEL, t.vessel(), top(t.height()))));
        plan.openings().forEach(o -> places.put(o.node(), new Place(Sort.STOCK, o.stock(), 0)));
        plan.outlets().forEach(o -> places.put(o.node(), new Place(Sort.OUTSIDE, 0, 0)));
        int n = chains.size();
        from = chains.stream().map(c -> places.get(c.from)).toArray(Place[]::new);
        to = chains.stream().map(c -> places.get(c.to)).toArray(Place[]::new);
        share = new double[system.unknowns];
        inflow = new double[system.unknowns];
        inflowGas = new double[system.unknowns];
        forward = new double[n];
        back = new double[n];
        wet = new double[n];
        gasAhead = new double[n];
        gasBack = new double[n];
        told = new double[][] {forward, back, wet, gasAhead, gasBack};
        kept = new double[told.length][n];
    }

    private static double top(double height) {
        return Math.max(BAND, height);
    }

    /** Y over the pressure ratio, from the law of the ideal gas. */
    private static double[] expansion() {
        double[] table = new double[STEPS + 2];
        double[] flow = new double[3];
        for (int k = 0; k < STEPS; k++) {
            double ratio = (double) k / STEPS;
            GasFlow.orifice(1, 1e5, 1, 1e5 * ratio, GasFlow.SATURATED_STEAM, flow);
            table[k] = flow[0] / Math.sqrt(2 * 1e5 * (1 - ratio));
        }
        table[STEPS] = 1;
        table[STEPS + 1] = 1;
        return table;
    }

    private static double expansion(double upstream, double downstream) {
        if (!(downstream < upstream) || upstream <= 0) {
            return 1;
        }
        double at = STEPS * Math.max(0, downstream / upstream);
        int k = (int) at;
        return EXPANSION[k] + (at - k) * (EXPANSION[k + 1] - EXPANSION[k]);
    }

    double share(int site) {
        return share[site];
    }

    void share(int site, double value) {
        share[site] = value;
    }

    void begin(double[] x, VesselRow[] rows, double airPressure) {
        airRatio = Math.sqrt(AIR_DENSITY * airPressure / ChainLaws.DENSITY);
        this.x = x;
        this.rows = rows;
    }

    /** Tells the laws what is carried at the system's pressures. */
    void carry() {
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            double pFrom = system.p[system.from[c]];
            double pTo = system.p[system.to[c]];
            double f = through(from[c], pFrom, pTo);
            double gasForward = gas;
            double dry = surface;
            double b = through(to[c], pTo, pFrom);
            forward[c] = f;
            back[c] = b;
            wet[c] = 1 - Math.min(dry, surface);
            gasAhead[c] = gasForward;
            gasBack[c] = gas;
            tell(c);
        }
    }

    private void tell(int c) {
        laws.carry(c, forward[c], back[c], wet[c]);
        system.vessels.gas(c, gasAhead[c], gasBack[c]);
    }

    /** Keeps what was last told to the laws. */
    void keep() {
        for (int k = 0; k < told.length; k++) {
            System.arraycopy(told[k], 0, kept[k], 0, told[k].length);
        }
    }

    /** Tells the laws again what was kept. */
    void restore() {
        for (int k = 0; k < told.length; k++) {
            System.arraycopy(kept[k], 0, told[k], 0, told[k].length);
        }
        for (int k = 0; k < laws.activeCount; k++) {
            tell(laws.active[k]);
        }
    }

    /** Largest relative error in what a flowing chain was taken to let through, now that pressures are known. */
    double error() {
        double most = 0;
        for (int k = 0; k < laws.activeCount; k++) {
            int c = laws.active[k];
            double flow = laws.q[c];
            boolean ahead = flow >= 0;
            double was = ahead ? forward[c] : back[c];
            Place donor = ahead ? from[c] : to[c];
            if (Math.abs(flow) > NOTHING && !(was == 1 && isWater(donor))) {
                double pFrom = system.p[system.from[c]];
                double pTo = system.p[system.to[c]];
                double now = ahead ? through(donor, pFrom, pTo) : through(donor, pTo, pFrom);
                most = Math.max(most, Math.abs(now / was - 1));
            }
        }
        return most;
    }

    private boolean isWater(Place place) {
        return switch (place.sort) {
            case VESSEL -> place.height <= rows[place.index].level;
            case NODE -> share[place.index] < TRACE;
            case STOCK -> true;
            case OUTSIDE -> false;
        };
    }

    /** Share of the water's flow that comes from a place; leaves {@link #gas} and {@link #surface}. */
    private double through(Place place, double here, double there) {
        gas = 0;
        surface = 0;
        if (place.sort == Sort.OUTSIDE) {
            gas = 1;
            surface = 1;
            return airRatio * expansion(here, there);
        }
        if (place.sort == Sort.STOCK) {
            return place.index < 0 ? 1 : smooth(x[place.index] / LAST_OF_STOCK);
        }
        if (isWater(place)) {
            return 1;
        }
        if (place.sort == Sort.VESSEL) {
            VesselRow row = rows[place.index];
            return mixed(smooth((place.height - row.level) / BAND), row.gasDensity, here, there);
        }
        double s = share[place.index];
        double r = ratio(STEAM_DENSITY * Math.max(1e3, here), here, there);
        return mixed(s / (s + r * (1 - s)), r);
    }

    private double mixed(double dry, double density, double here, double there) {
        return mixed(dry, ratio(density, here, there));
    }

    private double mixed(double dry, double r) {
        double sum = 1 - dry + dry * r;
        surface = dry;
        gas = dry * r / sum;
        return sum;
    }

    private static double ratio(double density, double here, double there) {
        return Math.sqrt(density / ChainLaws.DENSITY) * expansion(here, there);
    }

    private static double smooth(double t) {
        return t <= 0 ? 0 : t >= 1 ? 1 : t * t * (3 - 2 * t);
    }

    /** What the nodes now contain, from what flows into them. */
    void mix() {
        for (int turn = 0; turn < 2; turn++) {
            Arrays.fill(inflow, 0);
            Arrays.fill(inflowGas, 0);
            for (int k = 0; k < laws.activeCount; k++) {
                int c = laws.active[k];
                double flow = laws.q[c];
                int site = flow >= 0 ? system.to[c] : system.from[c];
                if (system.isNode(site)) {
                    double size = Math.abs(flow);
                    inflow[site] += size;
                    inflowGas[site] += size * leaving(c);
                }
            }
            for (int k = system.firstNode; k < system.unknowns; k++) {
                if (inflow[k] > 1e-9) {
                    share[k] = inflowGas[k] / inflow[k];
                }
            }
        }
    }

    private double leaving(int c) {
        Place donor = laws.q[c] >= 0 ? from[c] : to[c];
        return donor.sort == Sort.NODE ? share[donor.index] : system.vessels.gas(c);
    }
}
