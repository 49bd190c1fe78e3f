package wetside.plant;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Medium;

/**
 * What the flows carry: enthalpy, air and salt, followed from where water comes from to where it goes. Junctions hold
 * nothing; what meets in one is mixed. Every flux is computed once and booked on both sides.
 */
final class Carried {
    private static final int[] NONE = {};
    private static final double NOTHING = 1e-9;
    /** Gas with less air than this may leave in long steps. */
    private static final double AIRLESS = 1e-3;

    static final int MASS_IN = 0;
    static final int MASS_OUT = 1;
    static final int AIR_IN = 2;
    static final int AIR_OUT = 3;
    static final int ENERGY_IN = 4;
    static final int ENERGY_OUT = 5;
    static final int LINE_MASS = 6;
    static final int LINE_ENERGY = 7;
    static final int LINE_AIR = 8;
    static final int BOOKS = 9;

    private final FluidPlan plan;
    private final Enthalpy enthalpy = new Enthalpy();
    private final int ambient;
    private final VesselState[] vessels;
    private final Hydraulics hydraulics;
    private final HeatNodes heat;
    private final int[] from;
    private final int[] to;
    private final int[] flow;
    private final int[] vesselAt;
    private final int[] openingAt;
    private final int[] outletAt;
    private final int[] storeAt;
    private final int[][] branchesAt;
    private final int[][] branchesOf;
    private final int[] exchangeNode;
    private final double[] exchangeUa;
    private final FluidPlan.Passage[] passages;
    private final int[] opening;
    private final double[] h;
    private final double[] pressure;
    private final double[] air;
    private final double[] salt;
    private final int[] known;
    private final int[] stamp;
    private int round;
    private double dt;

    private final double[] branchH;
    private final double[] branchP;
    private final double[] branchAir;
    private final double[] branchSalt;

    /** Heat from passing water into each heat node [W]. */
    final double[] intoHeat;
    /** Σ q (h − u') at each vessel [W]: how the flows would move its temperature. */
    final double[] advected;
    /** Steam that entered each vessel, less what left it [kg/s]: its latent heat is in {@link #advected}. */
    final double[] steam;
    /** Booked over the run: mass and energy in from openings, out through outlets, left in the lines. */
    final double[] books = new double[BOOKS];

    /** Greatest liquid flow into or out of a vessel, an opening or an outlet during the last step [kg/s]. */
    double busiest;
    /** Greatest share of a vessel's gas that leaves per second [1/s]. */
    double gasTurnover;
    /** Greatest share of what a vessel, a stock or a wall holds of water or heat that passing water changes per second [1/s]. */
    double turnover;

    Carried(Blueprint b, VesselState[] vessels, Hydraulics hydraulics, HeatNodes heat) {
        plan = b.fluid();
        ambient = b.ambient();
        this.vessels = vessels;
        this.hydraulics = hydraulics;
        this.heat = heat;
        int nodes = b.nodeCount(Medium.FLUID);
        List<FluidPlan.Branch> branches = plan.branches();
        int m = branches.size();
        from = branches.stream().mapToInt(FluidPlan.Branch::from).toArray();
        to = branches.stream().mapToInt(FluidPlan.Branch::to).toArray();
        flow = branches.stream().mapToInt(FluidPlan.Branch::flow).toArray();
        vesselAt = filled(nodes);
        plan.takeOffs().forEach(t -> vesselAt[t.node()] = t.vessel());
        openingAt = filled(nodes);
        for (int i = 0; i < plan.openings().size(); i++) {
            openingAt[plan.openings().get(i).node()] = i;
        }
        outletAt = filled(nodes);
        for (int i = 0; i < plan.outlets().size(); i++) {
            outletAt[plan.outlets().get(i).node()] = i;
        }
        storeAt = filled(nodes);
        for (int i = 0; i < plan.stores().size(); i++) {
            storeAt[plan.stores().get(i).node()] = i;
        }
        branchesAt = gathered(nodes, m, i -> from[i], i -> to[i]);
        branchesOf = gathered(vessels.length, m, i -> vesselAt[from[i]], i -> vesselAt[to[i]]);
        exchangeNode = filled(m);
        exchangeUa = new double[m];
        plan.exchanges().forEach(e -> {
            exchangeNode[e.branch()] = heat.of(e.heatNode());
            exchangeUa[e.branch()] = e.ua();
        });
        passages = branches.stream()
                .map(br -> br.law() instanceof FluidPlan.Passage p ? p : null)
                .toArray(FluidPlan.Passage[]::new);
        opening = branches.stream().mapToInt(FluidPlan.Branch::opening).toArray();
        h = new double[nodes];
        pressure = new double[nodes];
        air = new double[nodes];
        salt = new double[nodes];
        known = new int[nodes];
        stamp = new int[m];
        branchH = new double[m];
        branchP = new double[m];
        branchAir = new double[m];
        branchSalt = new double[m];
        intoHeat = new double[heat.count()];
        advected = new double[vessels.length];
        steam = new double[vessels.length];
    }

    /** For every place the branches that begin or end there, in order; below 0 is no place. */
    private static int[][] gathered(int places, int branches, IntUnaryOperator from, IntUnaryOperator to) {
        int[][] gathered = new int[places][];
        Arrays.fill(gathered, NONE);
        for (int i = 0; i < branches; i++) {
            int a = from.applyAsInt(i);
            int b = to.applyAsInt(i);
            if (a >= 0) {
                gathered[a] = with(gathered[a], i);
            }
            if (b >= 0 && b != a) {
                gathered[b] = with(gathered[b], i);
            }
        }
        return gathered;
    }

    private static int[] with(int[] some, int next) {
        int[] more = Arrays.copyOf(some, some.length + 1);
        more[some.length] = next;
        return more;
    }

    private static int[] filled(int n) {
        int[] array = new int[n];
        Arrays.fill(array, -1);
        return array;
    }

    /** Follows all flows of the step just solved and books them. */
    void move(double[] x, double[] t, double atmosphere, double dt) {
        round++;
        Arrays.fill(intoHeat, 0);
        Arrays.fill(advected, 0);
        Arrays.fill(steam, 0);
        busiest = 0;
        gasTurnover = 0;
        turnover = 0;
        this.dt = dt;
        for (int v = 0; v < vessels.length; v++) {
            vessels[v].offerAir(dt, airAsked(v, x));
        }
        for (FluidPlan.Store s : plan.stores()) {
            mix(s.node(), x, t, atmosphere);
        }
        for (FluidPlan.Outlet o : plan.outlets()) {
            x[o.water()] = 0;
            x[o.steam()] = 0;
        }
        for (int i = 0; i < from.length; i++) {
            double q = x[flow[i]];
            if (q > NOTHING || q < -NOTHING) {
                carry(i, x, t, atmosphere);
                int donor = q > 0 ? from[i] : to[i];
                int taker = q > 0 ? to[i] : from[i];
                give(i, donor, Math.abs(q), x, atmosphere, dt);
                take(i, taker, Math.abs(q), x, atmosphere, dt);
            }
        }
    }

    /** Gas that leaves a vessel in this step, all ways together [kg/s]. */
    private double airAsked(int vessel, double[] x) {
        double sum = 0;
        for (int i : branchesOf[vessel]) {
            double q = x[flow[i]];
            if (vesselAt[q > 0 ? from[i] : to[i]] == vessel) {
                sum += Math.abs(q) * hydraulics.gasShare(i);
            }
        }
        return sum;
    }

    /** Works out what branch {@code i} carries, upstream first. */
    private void carry(int i, double[] x, double[] t, double atmosphere) {
        if (stamp[i] == round) {
            return;
        }
        stamp[i] = round;
        double q = x[flow[i]];
        int donor = q > 0 ? from[i] : to[i];
        if (vesselAt[donor] >= 0) {
            fromVessel(i, vessels[vesselAt[donor]], hydraulics.gasShare(i), Math.abs(q));
            branchP[i] = x[vessels[vesselAt[donor]].vessel.pressure()];
        } else if (openingAt[donor] >= 0) {
            FluidPlan.Opening o = plan.openings().get(openingAt[donor]);
            branchH[i] = enthalpy.ofLiquid(x[o.temperature()], x[o.pressure()]);
            branchAir[i] = 0;
            branchSalt[i] = x[o.conductivity()];
            branchP[i] = x[o.pressure()];
        } else if (outletAt[donor] >= 0) {
            branchH[i] = VesselState.airEnthalpy(x[ambient]);
            branchAir[i] = 1;
            branchSalt[i] = 0;
            branchP[i] = atmosphere;
        } else {
            mix(donor, x, t, atmosphere);
            branchH[i] = h[donor];
            branchAir[i] = air[donor];
            branchSalt[i] = salt[donor];
            branchP[i] = pressure[donor];
        }
        if (passages[i] != null) {
            double o = opening[i] < 0 ? 1 : x[opening[i]];
            branchP[i] = Math.max(atmosphere, branchP[i] - ChainLaws.drop(passages[i], o, Math.abs(q)));
        }
        if (exchangeNode[i] >= 0) {
            exchange(i, Math.abs(q), t, branchP[i]);
        }
    }

    /** Temperature of what branch {@code i} last carried [K]: its water's, since air counts little. */
    double temperature(int i, double pressure) {
        return enthalpy.temperature(branchH[i] / Math.max(1e-6, 1 - branchAir[i]), pressure);
    }

    private void fromVessel(int i, VesselState v, double gas, double q) {
        // a small steam space may be blown out within a step: no more air leaves than is there
        double share = Math.min(gas * v.airShareOfGas(), (v.air - Flash.LEAST_AIR) / (q * dt));
        branchAir[i] = share;
        branchH[i] = (1 - gas) * v.liquidEnthalpy() + gas * v.gasEnthalpy();
        branchSalt[i] = (1 - gas) * v.conductivity();
    }

    private void mix(int node, double[] x, double[] t, double atmosphere) {
        if (known[node] == round) {
            return;
        }
        known[node] = round;
        double sum = 0;
        double sumH = 0;
        double sumAir = 0;
        double sumSalt = 0;
        double least = Double.POSITIVE_INFINITY;
        if (storeAt[node] >= 0) {
            FluidPlan.Store s = plan.stores().get(storeAt[node]);
            sum = x[s.content()] / dt;
            sumH = x[s.enthalpy()] / dt;
            sumAir = x[s.air()] / dt;
            sumSalt = x[s.salt()] / dt;
        }
        for (int i : branchesAt[node]) {
            double q = to[i] == node ? x[flow[i]] : -x[flow[i]];
            if (q > NOTHING) {
                carry(i, x, t, atmosphere);
                sum += q;
                sumH += q * branchH[i];
                sumAir += q * branchAir[i];
                sumSalt += q * branchSalt[i];
                least = Math.min(least, branchP[i]);
            }
        }
        if (sum > 0) {
            h[node] = sumH / sum;
            air[node] = sumAir / sum;
            salt[node] = sumSalt / sum;
            pressure[node] = least < Double.POSITIVE_INFINITY ? least : atmosphere;
        } else {
            // the few milligrams a line itself gives when its pressure falls: taken as standing at room temperature
            h[node] = enthalpy.ofLiquid(x[ambient], atmosphere);
            air[node] = 0;
            salt[node] = 0;
            pressure[node] = atmosphere;
        }
    }

    /**
     * Passing water and a wall come closer: Q = W cp ε ΔT for liquid, condensation at the wall for steam. Water above 100 °C
     * stays water as long as the pressure it is under holds it; a pump on the way there is not counted.
     */
    private void exchange(int i, double q, double[] t, double under) {
        int node = exchangeNode[i];
        double water = 1 - branchAir[i];
        double hot = enthalpy.temperature(branchH[i] / Math.max(1e-6, water), under);
        double boil = enthalpy.boiling(under);
        double heatFlow;
        if (hot >= boil - 0.01 && t[node] < boil) {
            double most = q * Math.max(0, branchH[i] - water * enthalpy.ofLiquid(t[node], under));
            heatFlow = Math.min(exchangeUa[i] * (hot - t[node]), most);
        } else {
            double w = q * Enthalpy.CP;
            double felt = w * (1 - Math.exp(-exchangeUa[i] / w));
            heatFlow = felt * (hot - t[node]);
            if (heat.capacity(node) > 0) {
                turnover = Math.max(turnover, felt / heat.capacity(node));
            }
        }
        branchH[i] -= heatFlow / q;
        intoHeat[node] += heatFlow;
    }

    private void give(int i, int node, double q, double[] x, double atmosphere, double dt) {
        // heat given to a wall on the way left after the donor: the donor gave the enthalpy before the exchange
        double hGiven = branchH[i];
        if (exchangeNode[i] >= 0) {
            hGiven = donorEnthalpy(i, node, x);
        }
        if (vesselAt[node] >= 0) {
            VesselState v = vessels[vesselAt[node]];
            note(q, v, hydraulics.gasShare(i));
            v.book(-q * dt, branchAir[i], hGiven, branchSalt[i]);
            advected[vesselAt[node]] -= q * (hGiven - v.energyPerMass(branchAir[i]));
            steam[vesselAt[node]] -= q * Math.max(0, hydraulics.gasShare(i) - branchAir[i]);
        } else if (openingAt[node] >= 0) {
            FluidPlan.Opening o = plan.openings().get(openingAt[node]);
            if (o.stock() >= 0) {
                turnover = Math.max(turnover, q / x[o.stock()]);
                x[o.stock()] = Math.max(0, x[o.stock()] - q * dt);
            }
            books[MASS_IN] += q * dt;
            books[ENERGY_IN] += q * hGiven * dt;
            busiest = Math.max(busiest, q);
        } else if (outletAt[node] >= 0) {
            books[AIR_IN] += q * dt;
            books[ENERGY_IN] += q * hGiven * dt;
        } else if (storeAt[node] >= 0) {
            hold(plan.stores().get(storeAt[node]), -q * dt, hGiven, air[node], salt[node], x);
            busiest = Math.max(busiest, q);
        } else {
            books[LINE_MASS] -= q * dt * (1 - branchAir[i]);
            books[LINE_AIR] -= q * dt * branchAir[i];
            books[LINE_ENERGY] -= q * hGiven * dt;
        }
    }

    private static void hold(FluidPlan.Store s, double mass, double each, double air, double salt, double[] x) {
        x[s.content()] += mass;
        x[s.enthalpy()] += mass * each;
        x[s.air()] += mass * air;
        x[s.salt()] += mass * (1 - air) * salt;
    }

    /** Water at rest in every store, as warm as the room. */
    void fillStores(double[] x, double atmosphere) {
        for (FluidPlan.Store s : plan.stores()) {
            x[s.enthalpy()] = x[s.content()] * enthalpy.ofLiquid(x[ambient], atmosphere);
        }
    }

    private double donorEnthalpy(int i, int node, double[] x) {
        if (vesselAt[node] >= 0) {
            VesselState v = vessels[vesselAt[node]];
            double gas = hydraulics.gasShare(i);
            return (1 - gas) * v.liquidEnthalpy() + gas * v.gasEnthalpy();
        }
        if (openingAt[node] >= 0) {
            FluidPlan.Opening o = plan.openings().get(openingAt[node]);
            return enthalpy.ofLiquid(x[o.temperature()], x[o.pressure()]);
        }
        return outletAt[node] >= 0 ? VesselState.airEnthalpy(x[ambient]) : h[node];
    }

    private void take(int i, int node, double q, double[] x, double atmosphere, double dt) {
        if (vesselAt[node] >= 0) {
            VesselState v = vessels[vesselAt[node]];
            v.book(q * dt, branchAir[i], branchH[i], branchSalt[i]);
            advected[vesselAt[node]] += q * (branchH[i] - v.energyPerMass(branchAir[i]));
            busiest = Math.max(busiest, q * (1 - branchAir[i]));
            turnover = Math.max(turnover, q * (1 - branchAir[i]) / v.water);
        } else if (openingAt[node] >= 0) {
            FluidPlan.Opening o = plan.openings().get(openingAt[node]);
            double water = q * dt * (1 - branchAir[i]);
            if (o.stock() >= 0) {
                x[o.stock()] += water;
            }
            books[MASS_IN] -= water;
            books[AIR_OUT] += q * dt - water;
            books[ENERGY_IN] -= q * branchH[i] * dt;
        } else if (outletAt[node] >= 0) {
            leave(i, plan.outlets().get(outletAt[node]), q, x, atmosphere, dt);
        } else if (storeAt[node] >= 0) {
            hold(plan.stores().get(storeAt[node]), q * dt, branchH[i], branchAir[i], branchSalt[i], x);
            busiest = Math.max(busiest, q);
        } else {
            books[LINE_MASS] += q * dt * (1 - branchAir[i]);
            books[LINE_AIR] += q * dt * branchAir[i];
            books[LINE_ENERGY] += q * branchH[i] * dt;
        }
    }

    private void leave(int i, FluidPlan.Outlet o, double q, double[] x, double atmosphere, double dt) {
        double water = q * (1 - branchAir[i]);
        books[MASS_OUT] += water * dt;
        books[AIR_OUT] += q * branchAir[i] * dt;
        books[ENERGY_OUT] += q * branchH[i] * dt;
        if (water < NOTHING) {
            return;
        }
        double each = branchH[i] / Math.max(1e-6, 1 - branchAir[i]);
        double vapour = enthalpy.vapourShare(each, atmosphere);
        double liquid = water * (1 - vapour);
        double mixed = x[o.water()] + x[o.steam()];
        double temperature = enthalpy.temperature(each, atmosphere);
        x[o.temperature()] = (x[o.temperature()] * mixed + temperature * water) / (mixed + water);
        x[o.water()] += liquid;
        x[o.steam()] += water - liquid;
        x[o.total()] += liquid * dt;
        busiest = Math.max(busiest, liquid);
    }

    /** Whether any flow is now another than it was, by a share of the busiest. */
    boolean changed(double[] was, double[] now, double share) {
        for (int slot : flow) {
            if (Math.abs(now[slot] - was[slot]) > share * busiest) {
                return true;
            }
        }
        return false;
    }

    private void note(double q, VesselState v, double gas) {
        busiest = Math.max(busiest, q * (1 - gas));
        turnover = Math.max(turnover, q * (1 - gas) / v.water);
        if (gas > 0 && v.airShareOfGas() > AIRLESS) {
            gasTurnover = Math.max(gasTurnover, q * gas / v.gasMass());
        }
    }

    void save(double[] into) {
        System.arraycopy(books, 0, into, 0, BOOKS);
        System.arraycopy(intoHeat, 0, into, BOOKS, intoHeat.length);
        System.arraycopy(advected, 0, into, BOOKS + intoHeat.length, advected.length);
        System.arraycopy(steam, 0, into, BOOKS + intoHeat.length + advected.length, steam.length);
    }

    void load(double[] saved) {
        System.arraycopy(saved, 0, books, 0, BOOKS);
        System.arraycopy(saved, BOOKS, intoHeat, 0, intoHeat.length);
        System.arraycopy(saved, BOOKS + intoHeat.length, advected, 0, advected.length);
        System.arraycopy(saved, BOOKS + intoHeat.length + advected.length, steam, 0, steam.length);
    }
}
