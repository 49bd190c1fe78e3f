package wetside.plant;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The vessels' part of the flow network:
 *
 * <pre>
 * [M(z, M_a + Δt Σ q_air) − Mⁿ]/Δt + Σ out − Σ in = 0     (water substance in the sums)
 * p − z − Δt B Σ q_steam = 0                              (flows in)
 * </pre>
 *
 * where z is the pressure the vessel would have if steam brought and took no heat, and B dp/dm by that heat: two mild
 * equations in place of one that is steep when little air is left. The second is eliminated from the linear system.
 */
final class VesselBalance {
    final int count;
    final double[] z;
    final double[] dz;
    private final ChainLaws laws;
    private final int[] from;
    private final int[] to;
    /** Chains that begin or end at a vessel. */
    private final int[] chains;

    private final double[] gasForward;
    private final double[] gasBack;
    private final double[] steam;
    private final double[] air;
    private final double[] off;
    private final double[] storage;
    private final double[] perAir;
    private final double[] frozen;
    private VesselRow[] rows;
    private double dt;

    VesselBalance(int count, ChainLaws laws, int[] from, int[] to) {
        this.count = count;
        this.laws = laws;
        this.from = from;
        this.to = to;
        chains = IntStream.range(0, laws.count)
                .filter(c -> from[c] < count || to[c] < count)
                .toArray();
        gasForward = new double[laws.count];
        gasBack = new double[laws.count];
        z = new double[count];
        dz = new double[count];
        steam = new double[count];
        air = new double[count];
        off = new double[count];
        storage = new double[count];
        perAir = new double[count];
        frozen = new double[count];
    }

    void begin(double dt, VesselRow[] rows) {
        this.dt = dt;
        this.rows = rows;
    }

    /** Share of a chain's mass flow that is gas, forwards and backwards. */
    void gas(int c, double forward, double back) {
        gasForward[c] = forward;
        gasBack[c] = back;
    }

    double gas(int c) {
        return laws.q[c] >= 0 ? gasForward[c] : gasBack[c];
    }

    /** Turns the sums of flows in {@code f} into the first balance. */
    void evaluate(double[] p, double[] f) {
        Arrays.fill(steam, 0);
        Arrays.fill(air, 0);
        for (int c : chains) {
            double gas = gas(c);
            if (gas > 0) {
                enters(from[c], c, -laws.q[c] * gas);
                enters(to[c], c, laws.q[c] * gas);
            }
        }
        for (int v = 0; v < count; v++) {
            VesselRow row = rows[v];
            f[v] += air[v] + (row.massAt(z[v], airAfter(v, row.air)) - row.mass) / dt;
            off[v] = p[v] - z[v] - dt * row.boil * (steam[v] - row.assumed);
            storage[v] = row.byPressure / dt;
            perAir[v] *= -row.byAir;
        }
    }

    private void enters(int site, int c, double flow) {
        if (site < count) {
            double share = airShare(site, c, flow);
            air[site] += flow * share;
            steam[site] += flow * (1 - share);
        }
    }

    /** Air in gas that enters (or leaves, below 0) a vessel. What comes from a line may be air, which is felt most. */
    private double airShare(int vessel, int c, double entering) {
        if (entering < 0) {
            return rows[vessel].airShare;
        }
        int donor = from[c] == vessel ? to[c] : from[c];
        return donor < count ? rows[donor].airShare : 1;
    }

    /** Air in a vessel when the step ends; leaves in {@link #perAir} how it follows the flow. It never quite runs out. */
    private double airAfter(int v, double before) {
        double change = dt * air[v];
        if (change >= 0) {
            perAir[v] = 1;
            return before + change;
        }
        double spare = before - Flash.LEAST_AIR + 1e-12;
        double left = spare / (spare - change);
        perAir[v] = left * left;
        return Flash.LEAST_AIR + spare * left;
    }

    /** Corrects, for gas, the rows of a matrix in which all flows count once. */
    void weigh(double[] a, int[] fromFrom, int[] fromTo, int[] toFrom, int[] toTo) {
        for (int c : chains) {
            double gas = gas(c);
            if (gas > 0) {
                if (from[c] < count) {
                    double more = gas * weight(c, from[c], -laws.q[c]);
                    a[fromFrom[c]] += more * laws.byFrom[c];
                    a[fromTo[c]] += more * laws.byTo[c];
                }
                if (to[c] < count) {
                    double more = gas * weight(c, to[c], laws.q[c]);
                    a[toTo[c]] -= more * laws.byTo[c];
                    a[toFrom[c]] -= more * laws.byFrom[c];
                }
            }
        }
    }

    /** How much more a mass of gas counts in a vessel's row than a mass of water. */
    private double weight(int c, int vessel, double entering) {
        double share = airShare(vessel, c, entering);
        double asSteam = 1 + storage[vessel] * dt * rows[vessel].boil;
        return share * perAir[vessel] + (1 - share) * asSteam - 1;
    }

    /** The step of z that belongs to a step of the pressures. */
    void follow(double[] d) {
        for (int v = 0; v < count; v++) {
            dz[v] = d[v] + off[v];
        }
        for (int c : chains) {
            double gas = gas(c);
            if (gas > 0) {
                double change = gas * (laws.byFrom[c] * at(d, from[c]) + laws.byTo[c] * at(d, to[c]));
                steamEnters(from[c], c, -laws.q[c], -change);
                steamEnters(to[c], c, laws.q[c], change);
            }
        }
    }

    private static double at(double[] d, int site) {
        return site < d.length ? d[site] : 0;
    }

    private void steamEnters(int vessel, int c, double flow, double change) {
        if (vessel < count) {
            dz[vessel] -= dt * rows[vessel].boil * (1 - airShare(vessel, c, flow)) * change;
        }
    }

    /** Part of F·d. */
    double along(double[] f, double[] d) {
        double sum = 0;
        for (int v = 0; v < count; v++) {
            sum += both(v, f) * d[v];
        }
        return sum;
    }

    /** Both balances of a vessel as one [kg/s]. */
    private double both(int v, double[] f) {
        return (f[v] + frozen[v] * off[v]) / (1 + frozen[v] * dt * rows[v].boil);
    }

    /** Sum of the imbalances [kg/s]. */
    double size(double[] f) {
        double sum = 0;
        for (int v = 0; v < count; v++) {
            sum += Math.abs(both(v, f));
        }
        return sum;
    }

    /** Holds what weighs the two balances against each other while a step is searched along. */
    void freeze() {
        System.arraycopy(storage, 0, frozen, 0, count);
    }

    /** How far a vessel's pressure is from what its steam makes it [Pa]. */
    double off(int vessel) {
        return off[vessel];
    }

    /** Mass flow a vessel takes up per pressure [kg/(s Pa)]. */
    double storage(int vessel) {
        return storage[vessel];
    }
}
