package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;
import wetside.physics.GasFlow;
import wetside.physics.Water;

class HydraulicsTest {
    private static final double AIR = 101325;

    @Test
    void balancesWhateverTheMachineAndItsState() {
        Random r = new Random(7);
        int failed = 0;
        double worst = 0;
        for (int i = 0; i < 20_000; i++) {
            TwinNetwork net = new TwinNetwork(r);
            double[] x = net.any(r);
            double before = net.hydraulics.lineMass(x);
            double dt = i % 2 == 0 ? 0.05 : 20;
            if (!net.hydraulics.solve(x, dt, net.rows)) {
                failed++;
            } else {
                worst = Math.max(worst, worstNode(net, x, (net.hydraulics.lineMass(x) - before) / dt));
            }
        }
        assertThat(failed).isZero();
        assertThat(worst).as("imbalance of a node [kg/s]").isLessThan(1e-9 * 8);
    }

    @Test
    void fewStatesNeedTheSlowWay() {
        AnyState any = new AnyState(4000, 3);
        // 190 and 100 when F·d alone chose the length of every step
        assertThat(any.fallbacks).isLessThan(40);
        assertThat(any.iterations(0.99)).isLessThan(75);
    }

    /** Largest imbalance over nodes that hold nothing; what the lines took up is shared out over them. */
    private static double worstNode(TwinNetwork net, double[] x, double takenUp) {
        double[] sum = new double[100];
        boolean[] fixed = new boolean[100];
        net.plan.takeOffs().forEach(t -> fixed[t.node()] = true);
        net.plan.openings().forEach(o -> fixed[o.node()] = true);
        net.plan.outlets().forEach(o -> fixed[o.node()] = true);
        for (FluidPlan.Branch b : net.plan.branches()) {
            sum[b.from()] -= x[b.flow()];
            sum[b.to()] += x[b.flow()];
        }
        double total = -takenUp;
        double most = 0;
        for (int k = 0; k < sum.length; k++) {
            total += fixed[k] ? 0 : sum[k];
            most = fixed[k] ? most : Math.max(most, Math.abs(sum[k]));
        }
        return Math.abs(total) + (Math.abs(takenUp) < 1e-12 ? most : 0);
    }

    @Test
    void anAnswerDoesNotDependOnTheFirstGuess() {
        Random r = new Random(4);
        for (int i = 0; i < 500; i++) {
            TwinNetwork net = new TwinNetwork(r);
            double[] x = net.any(r);
            for (FluidPlan.NodeSlot p : net.plan.pressures()) {
                x[p.slot()] = AIR * (1 + 9 * r.nextDouble());
            }
            for (int valve : new int[] {net.fill, net.tap, net.hotWater, net.breaker}) {
                x[valve] = 0;
            }
            x[net.lever] = 1;
            x[net.fromMains] = 1;
            x[net.mains] = 4e5;
            net.rows[0].at(0.7225, 1e-6, 366, 3500);
            net.rows[1].at(1.15, 1e-6, 397, 6500);
            double[] y = x.clone();
            assertThat(net.hydraulics.solve(x, 1, net.rows)).isTrue();
            for (FluidPlan.NodeSlot p : net.plan.pressures()) {
                y[p.slot()] *= 0.9 + 0.2 * r.nextDouble();
            }
            assertThat(net.hydraulics.solve(y, 1, net.rows)).isTrue();
            // Pressure locked in between shut valves is state, not a guess, so flows are compared; how far gas expands
            // in
            // a branch is taken from the guess until that is 10 % wrong.
            double most = net.plan.branches().stream()
                    .mapToDouble(b -> Math.abs(x[b.flow()]))
                    .max()
                    .orElseThrow();
            for (FluidPlan.Branch b : net.plan.branches()) {
                double q = x[b.flow()];
                assertThat(y[b.flow()]).as(b.name()).isCloseTo(q, within(1e-6 + 0.1 * most));
            }
        }
    }

    @Test
    void everyLawHasTheSlopesItSays() {
        Random r = new Random(5);
        for (int i = 0; i < 200; i++) {
            TwinNetwork net = new TwinNetwork(r);
            double[] x = net.any(r);
            ReducedNetwork reduced = ReducedNetwork.of(net.plan);
            ChainLaws laws = new ChainLaws(net.plan, reduced, reduced.chains);
            laws.open(x, AIR);
            for (int k = 0; k < laws.activeCount; k++) {
                int c = laws.active[k];
                laws.carry(c, 0.1 + 0.9 * r.nextDouble(), 0.1 + 0.9 * r.nextDouble(), r.nextDouble());
                checkSlopes(laws, c, 1e4 + 12e5 * r.nextDouble(), 1e4 + 12e5 * r.nextDouble());
                double p = 1e5 + 8e5 * r.nextDouble();
                checkSlopes(laws, c, p, p + 3000 * r.nextGaussian());
            }
        }
    }

    private static void checkSlopes(ChainLaws laws, int c, double from, double to) {
        double h = 0.5;
        double byFrom = (flow(laws, c, from + h, to) - flow(laws, c, from - h, to)) / (2 * h);
        double byTo = (flow(laws, c, from, to + h) - flow(laws, c, from, to - h)) / (2 * h);
        laws.flow(c, from, to);
        assertThat(laws.byFrom[c])
                .isCloseTo(byFrom, within(2e-3 * byFrom + 1e-13))
                .isNotNegative();
        assertThat(laws.byTo[c]).isCloseTo(byTo, within(-2e-3 * byTo + 1e-13)).isNotPositive();
    }

    private static double flow(ChainLaws laws, int c, double from, double to) {
        laws.flow(c, from, to);
        return laws.q[c];
    }

    @Test
    void theSparseSolverSolves() {
        SparseLu lu = new SparseLu(3, new int[][] {{0, 1}, {1, 2}});
        double[][] m = {{4, -1, 0}, {-2, 5, -1}, {0, -1, 3}};
        double[] f = {1, -2, 0.5};
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                lu.a[lu.at(i, j)] = m[i][j];
            }
        }
        assertThat(lu.solve(f, x)).isTrue();
        for (int i = 0; i < 3; i++) {
            double left = m[i][0] * x[0] + m[i][1] * x[1] + m[i][2] * x[2];
            assertThat(left).isCloseTo(-f[i], within(1e-14));
        }
    }

    @Test
    void newtonsStepIsTheOneTheBalanceAsksFor() {
        Random r = new Random(9);
        int rows = 0;
        int wrong = 0;
        for (int i = 0; i < 500; i++) {
            TwinNetwork net = new TwinNetwork(r);
            FlowSystem s = net.hydraulics.begin(net.any(r), i % 2 == 0 ? 0.05 : 20, net.rows);
            double[] d = new double[s.unknowns];
            s.evaluate();
            assertThat(s.step(d)).isTrue();
            double[] balance = s.f.clone();
            double most = 0;
            for (int v = 0; v < s.vessels.count; v++) {
                most = Math.max(most, Math.abs(s.vessels.dz[v]));
            }
            most = Math.max(most, Arrays.stream(d).map(Math::abs).max().orElseThrow());
            double share = 0.01 / most;
            for (int k = 0; k < d.length; k++) {
                s.p[k] += share * d[k];
            }
            for (int v = 0; v < s.vessels.count; v++) {
                s.vessels.z[v] += share * s.vessels.dz[v];
            }
            s.evaluate();
            for (int k = 0; k < d.length; k++) {
                double went = (balance[k] - s.f[k]) / share;
                double noise = 1e-9 + 1e-15 * (Math.abs(balance[k]) + 1) / share;
                rows++;
                wrong += Math.abs(went - balance[k]) > 0.01 * Math.abs(balance[k]) + noise ? 1 : 0;
            }
        }
        assertThat(wrong).as("rows beside a kink, of %d", rows).isLessThan(rows / 100);
    }

    private static double[] settled(TwinNetwork net, double[] x, double seconds) {
        for (double t = 0; t < seconds; t += 0.5) {
            assertThat(net.step(x, 0.5)).isTrue();
        }
        return x;
    }

    private static double flow(TwinNetwork net, double[] x, String name) {
        return net.plan.branches().stream()
                .filter(b -> b.name().equals(name))
                .mapToDouble(b -> x[b.flow()])
                .findFirst()
                .orElseThrow();
    }

    @Test
    void mainsPressureReachesTheBoilerPastTheStoppedPump() {
        TwinNetwork net = new TwinNetwork(null);
        net.warm();
        double[] x = settled(net, net.rest(), 60);
        assertThat(x[net.gauge]).isCloseTo(4e5 - 0.05e5, within(0.04e5));
        assertThat(net.rows[0].pressure()).isCloseTo(x[net.gauge] - 0.2e5, within(0.11e5));
    }

    @Test
    void aBlindGroupShowsTheBypassSettingMoreOnMains() {
        TwinNetwork net = new TwinNetwork(null);
        double tank = blind(net, 0);
        double mains = blind(net, 1);
        assertThat(tank - AIR).as("set 8.2 bar plus what the bypass needs").isBetween(8.3e5, 9.4e5);
        assertThat(mains - tank).as("a quarter of the mains pressure").isCloseTo(0.25 * 3e5, within(0.3e5));
    }

    private static double blind(TwinNetwork net, double onMains) {
        double[] x = net.rest();
        x[net.fromMains] = onMains;
        x[net.fromTank] = 1 - onMains;
        x[net.speed] = 23;
        net.warm();
        return settled(net, x, 60)[net.gauge];
    }

    @Test
    void theCheckKeepsPressureAndShutMeansNothingFlows() {
        TwinNetwork net = new TwinNetwork(null);
        net.warm();
        double[] x = net.rest();
        x[net.speed] = 23;
        settled(net, x, 60);
        double before = net.rows[0].pressure();
        x[net.speed] = 0;
        x[net.fromMains] = 0;
        net.step(x, 0.5);
        assertThat(flow(net, x, "check")).isZero();
        assertThat(flow(net, x, "steam tap")).isZero();
        assertThat(net.rows[0].pressure()).isGreaterThan(before - 0.1e5);
    }

    @Test
    void anEmptyTankGivesNothing() {
        TwinNetwork net = new TwinNetwork(null);
        double[] x = net.rest();
        x[net.fromMains] = 0;
        x[net.fromTank] = 1;
        x[net.speed] = 23;
        x[net.lever] = 1;
        net.warm();
        settled(net, x, 5);
        assertThat(flow(net, x, "tank hose")).isGreaterThan(0.003);
        x[net.stock] = 0;
        settled(net, x, 5);
        assertThat(flow(net, x, "tank hose")).isLessThan(1e-5);
        assertThat(x[net.gauge]).isLessThan(3e5);
    }

    @Test
    void theSteamTapBlowsByTheLawOfGases() {
        TwinNetwork net = new TwinNetwork(null);
        net.warm();
        double[] x = net.rest();
        x[net.tap] = 1;
        settled(net, x, 20);
        double p = net.rows[1].pressure();
        double[] law = new double[3];
        GasFlow.orifice(0.62 * Math.PI / 4 * 4e-6, p, 1 / net.rows[1].gasDensity, AIR, GasFlow.SATURATED_STEAM, law);
        // The jet's laminar term, there to keep its slope finite at rest, takes 3 %.
        assertThat(flow(net, x, "steam tap")).isCloseTo(law[0], within(0.05 * law[0]));
        assertThat(share(net, "steam tap")).isEqualTo(1);
    }

    private static double share(TwinNetwork net, String name) {
        int k = 0;
        while (!net.plan.branches().get(k).name().equals(name)) {
            k++;
        }
        return net.hydraulics.gasShare(k);
    }

    @Test
    void steamSagsByTheHeatItTakes() {
        TwinNetwork net = new TwinNetwork(null);
        double[] x = net.rest();
        x[net.tap] = 1;
        net.warm();
        net.rows[0].at(0.72, 1e-5, 366, 3500);
        net.rows[1].at(1.15, 1e-6, 397, 6500);
        double before = net.rows[1].pressure();
        net.hydraulics.solve(x, 2, net.rows);
        double lost = 2 * flow(net, x, "steam tap");
        double latent = 2.193e6;
        double expected = Water.saturationSlope(397) * latent * lost / 6500;
        assertThat(before - net.rows[1].pressure()).isCloseTo(expected, within(0.03 * expected));
    }

    @Test
    void anOverfullBoilerLiftsItsSafetyValveWithWater() {
        TwinNetwork net = new TwinNetwork(null);
        double[] x = net.rest();
        x[net.speed] = 23;
        x[net.fill] = 1;
        net.warm();
        settled(net, x, 60);
        assertThat(net.rows[1].level()).isGreaterThan(0.99);
        assertThat(share(net, "safety valve")).isLessThan(0.05);
        assertThat(flow(net, x, "safety valve")).isCloseTo(flow(net, x, "fill valve"), within(2e-3));
    }

    @Test
    void aColdBoilerDrawsAirThroughTheBreaker() {
        TwinNetwork net = new TwinNetwork(null);
        double[] x = net.rest();
        x[net.breaker] = 1;
        net.rows[0].at(0.72, 1e-5, 366, 3500);
        net.rows[1].at(1.15, 1e-6, 340, 6500);
        assertThat(net.rows[1].pressure()).isLessThan(0.4e5);
        net.hydraulics.solve(x, 0.05, net.rows);
        double in = -flow(net, x, "breaker");
        assertThat(in).isBetween(0.2e-3, 2e-3);
        assertThat(share(net, "breaker")).isEqualTo(1);
        assertThat(net.rows[1].pressure())
                .as("the air that came in, and nothing else, raises the pressure")
                .isCloseTo(
                        Water.saturationPressure(340) + (1e-6 + 0.05 * in) * 287.05 * 340 / (2e-3 - 1.15 * 1.0212e-3),
                        within(150.0));
    }

    @Test
    void seriesAndDeadEndsAreGoneFromTheSystem() {
        TwinNetwork net = new TwinNetwork(null);
        long nodes = net.plan.branches().stream()
                .flatMap(b -> java.util.stream.Stream.of(b.from(), b.to()))
                .distinct()
                .count();
        assertThat(nodes).isGreaterThan(25);
        assertThat(net.hydraulics.size()).isLessThanOrEqualTo(8);
    }

    @Test
    void aGaugeAtTheEndOfALineReadsWhatTheLineHangsOn() {
        Slots slots = new Slots();
        FluidPlan plan = new FluidPlan(slots);
        plan.vessel("boiler", 2e-3, 1.2e9, 0.6, 0);
        plan.takeOff(0, 0, 1);
        plan.branch("capillary", 0, 1, new FluidPlan.Passage(1e6, 0), FluidPlan.ALWAYS);
        plan.branch("more capillary", 1, 2, new FluidPlan.Passage(1e6, 0), FluidPlan.ALWAYS);
        plan.branch("round", 2, 3, new FluidPlan.Passage(1e6, 0), FluidPlan.ALWAYS);
        plan.branch("and round", 3, 2, new FluidPlan.Passage(1e6, 0), FluidPlan.ALWAYS);
        int gauge = plan.pressure(2);
        int inTheRound = plan.pressure(3);
        Hydraulics hydraulics = Hydraulics.of(plan, slots, 4);
        double[] x = slots.firstValues();
        VesselRow row = VesselRow.of(plan.vessel(0));
        row.at(1.1, 1e-6, 397, 6500);
        assertThat(hydraulics.solve(x, 1, new VesselRow[] {row})).isTrue();
        assertThat(x[gauge]).isCloseTo(row.pressure(), within(1.0));
        assertThat(x[inTheRound]).isCloseTo(row.pressure(), within(1.0));
        assertThat(hydraulics.size()).isEqualTo(1);
    }

    @Test
    void aCopiedStateGoesOnAsTheOriginal() {
        TwinNetwork a = new TwinNetwork(null);
        double[] x = a.rest();
        x[a.speed] = 23;
        x[a.lever] = 1;
        a.warm();
        settled(a, x, 10);
        TwinNetwork b = new TwinNetwork(null);
        double[] y = x.clone();
        System.arraycopy(a.mass, 0, b.mass, 0, 2);
        System.arraycopy(a.air, 0, b.air, 0, 2);
        settled(a, x, 3);
        settled(b, y, 3);
        assertThat(Arrays.equals(x, y)).isTrue();
    }
}
