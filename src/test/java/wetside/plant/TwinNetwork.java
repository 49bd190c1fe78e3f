package wetside.plant;

import java.util.Random;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;
import wetside.physics.Terms;

/**
 * Pipes of a machine with two boilers, a rotary pump, mains and tank, written down as its kinds would: with numbers of
 * everyday size, or anything that could be.
 */
public final class TwinNetwork {
    public final Slots slots = new Slots();
    public final FluidPlan plan = new FluidPlan(slots);
    public final int airPressure = slots.smooth("surroundings.air pressure", 101325);
    public final int mains = slots.smooth("mains pressure", 4e5);
    public final int stock = slots.smooth("stock", 2);
    public final int fromMains = slots.state("from mains", 1);
    public final int fromTank = slots.state("from tank", 0);
    public final int speed = slots.smooth("speed", 0);
    public final int fill = slots.state("fill", 0);
    public final int lever = slots.state("lever", 0);
    public final int tap = slots.state("tap", 0);
    public final int hotWater = slots.state("hot water", 0);
    public final int breaker = slots.state("breaker", 0);
    public final int gauge;
    public final int groupPressure;
    public final Hydraulics hydraulics;
    public final VesselRow[] rows;
    public final double[] mass = new double[2];
    public final double[] air = new double[2];
    private final int[] flowSlots;
    private final int[] fromVessel;
    private final int[] toVessel;
    private int nodes;

    /** Numbers a machine could have; null is everyday. */
    public TwinNetwork(Random r) {
        int cold = slots.smooth("cold", 293.15);
        int salt = slots.smooth("salt", 0.05);
        int atMains = held("mains", mains, cold, salt, -1);
        int atTank = held("tank", airPressure, cold, salt, stock);
        int selected = node();
        int suction = node();
        int out = node();
        int afterCheck = node();
        int group = node();
        int upper = node();
        int lower = node();
        plan.vessel("brew boiler", 0.75e-3, 1.2e9, 1, 0);
        plan.vessel("steam boiler", 2e-3, 1.2e9, 0.6, 1);
        int brewIn = vessel(0, 0.05);
        int brewTop = vessel(0, 1);
        int brewBack = vessel(0, 0.3);
        int steamIn = vessel(1, 0.1);
        int steamTop = vessel(1, 1);
        int steamLow = vessel(1, 0.4);
        passage("mains hose", atMains, selected, pipe(8e-3, 1.5), fromMains, 0);
        passage("tank hose", atTank, selected, pipe(8e-3, 0.4), fromTank, -0.3);
        passage("strainer", selected, suction, hole(pick(r, 3e-3, 0.2e-3, 5e-3)), -1, 0);
        plan.branch("pump", suction, out, pump(r), speed);
        plan.branch("relief", out, outlet("relief drain"), relief(r), -1);
        plan.branch(
                "check",
                out,
                afterCheck,
                new FluidPlan.OneWay(
                        pick(r, 0.2e5, 0.02e5, 2e5),
                        0.2e5,
                        hole(3e-3).a(),
                        hole(3e-3).b(),
                        checkLeak(r)),
                -1);
        passage("brew feed", afterCheck, brewIn, pipe(4e-3, 0.5), -1, 0);
        plan.branch("expansion valve", afterCheck, outlet("expansion drain"), relief(r), -1);
        passage("fill valve", out, steamIn, hole(1.4e-3), fill, 0);
        passage("upper pipe", brewTop, upper, pipe(8e-3, 0.5), -1, 0.1);
        passage("lower pipe", brewBack, lower, pipe(8e-3, 0.5), -1, 0.2);
        passage("group body", upper, lower, hole(6e-3), -1, 0);
        plan.loop("thermosiphon", upper, lower, 2, 10, 0.12);
        passage("jet", upper, group, hole(pick(r, 0.7e-3, 0.05e-3, 1.5e-3)), -1, 0);
        passage("group valve", group, outlet("cup"), hole(pick(r, 1e-3, 0.05e-3, 4e-3)), lever, -0.1);
        passage("steam tap", steamTop, outlet("tip"), hole(pick(r, 2e-3, 0.5e-3, 4e-3)), tap, 0.1);
        passage("breaker", steamTop, outlet("breaker hole"), hole(2.6e-3), breaker, 0);
        plan.branch(
                "safety valve",
                steamTop,
                outlet("safety blow-off"),
                new FluidPlan.OneWay(
                        pick(r, 1.8e5, 1e5, 3e5), 0.1e5, 1e3, hole(6e-3).b(), 0),
                -1);
        passage("water tap", steamLow, outlet("spout"), hole(1.4e-3), hotWater, 0.1);
        leak(r, "strainer body", suction);
        leak(r, "brew fitting", afterCheck);
        leak(r, "group seal", group);
        leak(r, "steam fitting", steamTop);
        gauge = plan.pressure(out);
        groupPressure = plan.pressure(group);
        hydraulics = Hydraulics.of(plan, slots, nodes);
        rows = plan.vessels().stream().map(VesselRow::of).toArray(VesselRow[]::new);
        flowSlots = plan.branches().stream().mapToInt(FluidPlan.Branch::flow).toArray();
        fromVessel = plan.branches().stream().mapToInt(b -> vesselAt(b.from())).toArray();
        toVessel = plan.branches().stream().mapToInt(b -> vesselAt(b.to())).toArray();
    }

    private int node() {
        return nodes++;
    }

    private int held(String name, int pressure, int temperature, int salt, int store) {
        int node = node();
        plan.open(node, pressure, temperature, salt, store);
        return node;
    }

    private int outlet(String name) {
        int node = node();
        plan.outlet(name, node);
        return node;
    }

    private int vessel(int vessel, double height) {
        int node = node();
        plan.takeOff(node, vessel, height);
        return node;
    }

    private void passage(String name, int from, int to, FluidPlan.Passage law, int opening, double rise) {
        plan.branch(name, from, to, law, opening, FluidPlan.ALWAYS, rise);
    }

    private void leak(Random r, String name, int node) {
        if (r == null) {
            passage(name + " leak", node, outlet(name + " drips"), hole(0.02e-3), -1, 0);
        } else if (r.nextInt(3) == 0) {
            passage(name + " leak", node, outlet(name + " drips"), hole(log(r, 0.01e-3, 6e-3)), -1, 0);
        }
    }

    private static FluidPlan.Passage pipe(double bore, double length) {
        return Blueprint.pipe(bore, length, 1.5, Terms.Liquid.COLD);
    }

    private static FluidPlan.Passage hole(double bore) {
        return Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
    }

    private static double pick(Random r, double usual, double least, double most) {
        return r == null ? usual : log(r, least, most);
    }

    static double log(Random r, double least, double most) {
        return least * Math.pow(most / least, r.nextDouble());
    }

    private static double checkLeak(Random r) {
        return r == null || r.nextBoolean() ? 0 : log(r, 1e-13, 1e-8);
    }

    private static FluidPlan.Pump pump(Random r) {
        return new FluidPlan.Pump(
                1.6e-3,
                pick(r, 6e-9, 1e-10, 1e-7),
                pick(r, 1e-10, 1e-13, 1e-8),
                8.2e5,
                pick(r, 4e-7, 1e-8, 1e-5),
                r == null ? 0.25 : r.nextDouble(),
                0.05e5,
                hole(3e-3).b());
    }

    private static FluidPlan.OneWay relief(Random r) {
        double set = pick(r, 11e5, 1e5, 16e5);
        return new FluidPlan.OneWay(set, 0.2e5, 0.5e5 / 0.03, 1e5 / (0.05 * 0.05), 0);
    }

    /** Content of both boilers, moved on by {@link #step}: brew boiler full at 93 °C, steam boiler at 124 °C. */
    public void warm() {
        mass[0] = 0.72;
        air[0] = 1e-5;
        mass[1] = 1.15;
        air[1] = 1e-6;
    }

    /** A step at constant temperatures; what flows is moved. */
    public boolean step(double[] x, double dt) {
        rows[0].at(mass[0], air[0], 366, 3500);
        rows[1].at(mass[1], air[1], 397, 6500);
        boolean balanced = hydraulics.solve(x, dt, rows);
        for (int k = 0; k < flowSlots.length; k++) {
            double flow = x[flowSlots[k]];
            move(fromVessel[k], -flow, hydraulics.gasShare(k), dt);
            move(toVessel[k], flow, hydraulics.gasShare(k), dt);
        }
        return balanced;
    }

    private int vesselAt(int node) {
        return plan.takeOffs().stream()
                .filter(t -> t.node() == node)
                .mapToInt(FluidPlan.TakeOff::vessel)
                .findFirst()
                .orElse(-1);
    }

    private void move(int vessel, double flow, double gas, double dt) {
        if (vessel >= 0) {
            double share = gas * (flow < 0 ? rows[vessel].airShare : 1);
            mass[vessel] += dt * flow * (1 - share);
            air[vessel] = Math.max(Flash.LEAST_AIR, air[vessel] + dt * flow * share);
        }
    }

    /** A state array at rest. */
    public double[] rest() {
        return slots.firstValues();
    }

    /** Any state: valves, speed, supply and every node's pressure. */
    double[] any(Random r) {
        double[] x = rest();
        x[mains] = 101325 + r.nextDouble() * 6e5;
        x[stock] = r.nextInt(4) == 0 ? 0.03 * r.nextDouble() : 2;
        x[fromMains] = r.nextInt(3) == 0 ? 1 : 0;
        x[fromTank] = r.nextInt(3) == 0 ? 1 : 0;
        x[speed] = r.nextInt(3) == 0 ? 0 : 25 * 1.1 * r.nextDouble();
        for (int valve : new int[] {fill, lever, tap, hotWater, breaker}) {
            x[valve] = r.nextInt(3) == 0 ? 1 : r.nextInt(3) == 0 ? r.nextDouble() : 0;
        }
        for (FluidPlan.NodeSlot p : plan.pressures()) {
            x[p.slot()] = log(r, 0.02e5, 20e5);
        }
        for (int v = 0; v < rows.length; v++) {
            double t = 274.15 + 139 * r.nextDouble();
            double volume = plan.vessel(v).volume();
            double liquid = r.nextInt(3) == 0 ? 0.997 + 0.004 * r.nextDouble() : r.nextDouble();
            rows[v].at(1e-4 + volume * liquid * 960, log(r, 1e-9, 2e-3), t, 500 + 4200 * volume * liquid * 960);
        }
        return x;
    }
}
