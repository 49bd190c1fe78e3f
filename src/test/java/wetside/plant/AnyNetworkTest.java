package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;
import wetside.physics.Terms;

/** Networks nobody would build: whatever is joined to whatever, it compiles, balances, and conserves. */
class AnyNetworkTest {
    private static final class Net {
        final Slots slots = new Slots();
        final FluidPlan plan = new FluidPlan(slots);
        final List<Integer> valves = new ArrayList<>();
        final List<Integer> speeds = new ArrayList<>();
        final boolean[] fixed;
        final Hydraulics hydraulics;
        final VesselRow[] rows;

        Net(Random r) {
            slots.smooth("surroundings.air pressure", 101325);
            int nodes = 4 + r.nextInt(16);
            fixed = new boolean[nodes + 20];
            int next = nodes;
            int supply = slots.smooth("supply", 101325 + 5e5 * r.nextDouble());
            int cold = slots.smooth("cold", 293);
            fixed[0] = true;
            plan.open(0, supply, cold, cold, -1);
            for (int k = 0; k < 2; k++) {
                fixed[1 + k] = true;
                plan.outlet("outlet " + k, 1 + k);
            }
            int vessels = r.nextInt(4);
            for (int v = 0; v < vessels; v++) {
                plan.vessel("vessel " + v, 0.3e-3 + 2e-3 * r.nextDouble(), 1.2e9, 0.5, v);
                for (int k = 0; k < 1 + r.nextInt(3); k++) {
                    fixed[next] = true;
                    plan.takeOff(next++, v, r.nextDouble());
                }
            }
            for (int b = 0; b < nodes + r.nextInt(2 * nodes); b++) {
                branch(r, "branch " + b, r.nextInt(next), r.nextInt(next));
            }
            for (int k = 0; k < 3; k++) {
                plan.pressure(r.nextInt(next));
            }
            hydraulics = Hydraulics.of(plan, slots, next);
            rows = plan.vessels().stream().map(VesselRow::of).toArray(VesselRow[]::new);
        }

        private void branch(Random r, String name, int from, int to) {
            double bore = TwinNetwork.log(r, 0.1e-3, 8e-3);
            FluidPlan.Passage hole = Blueprint.jet(bore, Terms.SHARP, Terms.Liquid.COLD);
            double rise = r.nextInt(3) == 0 ? 0.3 * r.nextGaussian() : 0;
            int slot = FluidPlan.ALWAYS;
            FluidPlan.Law law = hole;
            switch (r.nextInt(8)) {
                case 0, 1 -> {
                    slot = slots.state(name + " valve", 1);
                    valves.add(slot);
                }
                case 2, 3 ->
                    law = new FluidPlan.OneWay(
                            TwinNetwork.log(r, 1e3, 9e5), 0.1e5, hole.a(), hole.b(), r.nextInt(3) == 0 ? 1e-11 : 0);
                case 4 -> {
                    slot = slots.smooth(name + " speed", 0);
                    speeds.add(slot);
                    law = new FluidPlan.Pump(1.6e-3, 5e-9, 1e-11, 8e5, 4e-7, r.nextDouble(), 0.05e5, hole.b());
                }
                case 5 ->
                    law = new FluidPlan.Regulator(
                            TwinNetwork.log(r, 0.5e5, 8e5), r.nextBoolean(), 50, hole.a(), hole.b());
                default -> law = Blueprint.pipe(bore * 2, 0.1 + r.nextDouble(), 1, Terms.Liquid.COLD);
            }
            plan.branch(name, from, to, law, slot, FluidPlan.ALWAYS, rise);
        }

        double[] any(Random r) {
            double[] x = slots.firstValues();
            valves.forEach(v -> x[v] = r.nextInt(3) == 0 ? 0 : r.nextDouble());
            speeds.forEach(s -> x[s] = r.nextInt(3) == 0 ? 0 : 25 * r.nextDouble());
            for (FluidPlan.NodeSlot p : plan.pressures()) {
                x[p.slot()] = TwinNetwork.log(r, 0.5e5, 12e5);
            }
            for (int v = 0; v < rows.length; v++) {
                double mass = 960 * plan.vessel(v).volume() * r.nextDouble();
                rows[v].at(mass + 1e-4, TwinNetwork.log(r, 1e-9, 1e-3), 280 + 120 * r.nextDouble(), 500 + 4200 * mass);
            }
            return x;
        }

        /** Over nodes that hold nothing but what their line takes up. */
        double worstImbalance(double[] x, double[] was, double dt) {
            double[] sum = new double[fixed.length];
            for (FluidPlan.Branch b : plan.branches()) {
                sum[b.from()] -= x[b.flow()];
                sum[b.to()] += x[b.flow()];
            }
            double most = 0;
            for (int k = 0; k < sum.length; k++) {
                int slot = slots.find("node " + k + ".pressure");
                boolean kept = slots.find("node " + k + ".gas share") >= 0;
                double takenUp = kept ? FlowSystem.COMPLIANCE * (x[slot] - was[slot]) / dt : 0;
                most = fixed[k] ? most : Math.max(most, Math.abs(sum[k] - takenUp));
            }
            return most;
        }
    }

    @Test
    void compilesBalancesAndConserves() {
        Random r = new Random(1);
        int failed = 0;
        for (int i = 0; i < 4000; i++) {
            Net net = new Net(r);
            double[] x = net.any(r);
            double[] was = x.clone();
            if (!net.hydraulics.solve(x, 5, net.rows)) {
                failed++;
                continue;
            }
            assertThat(net.worstImbalance(x, was, 5)).as("network %d", i).isLessThan(1e-9);
            for (double value : x) {
                assertThat(value).isFinite();
            }
        }
        assertThat(failed).isZero();
    }
}
