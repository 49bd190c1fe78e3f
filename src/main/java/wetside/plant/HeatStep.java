package wetside.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;

/**
 * One linearly implicit step of all heat nodes and vessel contents. Regulators are part of the linear system: their output
 * is u = u0 − s·T of the sensor they hear, so that steps of a minute hold a temperature without chatter.
 */
final class HeatStep {
    private static final int MAX_REDO = 4;
    /** Metal touched by a vessel's content follows it within this time [s]. */
    private static final double WETTED_LAG = 2;

    private final HeatNodes nodes;
    private final Regulators regulators;
    private final int n;
    private final Gauss system;
    private final double[] rhs;
    private final int[] from;
    private final int[] to;
    private final double[] conductance;
    private final HeatPlan.Immersed[] immersed;
    private final int[] vesselOf;
    private final int firstImmersed;
    private final int[] sourceNode;
    private final int[] sourceSlot;
    private final int[] loopHot;
    private final int[] loopCold;
    private final double[] loopConductance;

    /** Result: temperature of every node at the end of the step [K]. */
    final double[] predicted;
    /** Net heat into each node during the step [W], conduction, loops and sources; filled by {@link #fluxes}. */
    final double[] heat;
    /** Heat given to the surroundings [W] and electrical heat taken in [W] during the step. */
    double lost;

    double taken;

    HeatStep(HeatNodes nodes, HeatPlan plan, Regulators regulators, FluidPlan fluid) {
        this.nodes = nodes;
        this.regulators = regulators;
        n = nodes.count();
        rhs = new double[n];
        predicted = new double[n];
        heat = new double[n];
        List<double[]> all = new ArrayList<>();
        plan.conductances().forEach(c -> all.add(new double[] {nodes.of(c.from()), nodes.of(c.to()), c.conductance()}));
        firstImmersed = all.size();
        immersed = plan.immersed().toArray(HeatPlan.Immersed[]::new);
        vesselOf = new int[immersed.length];
        for (int i = 0; i < immersed.length; i++) {
            int content = nodes.of(immersed[i].content());
            vesselOf[i] = nodes.vesselWith(content);
            all.add(new double[] {nodes.of(immersed[i].metal()), content, immersed[i].conductance()});
        }
        for (int v = 0; v < fluid.vessels().size(); v++) {
            if (nodes.wettedBy(v) >= 0) {
                double g = nodes.capacity(nodes.wettedBy(v)) / WETTED_LAG;
                all.add(new double[] {nodes.ofVessel(v), nodes.wettedBy(v), g});
            }
        }
        from = all.stream().mapToInt(c -> (int) (c[0] < 0 ? c[1] : c[0])).toArray();
        to = all.stream().mapToInt(c -> (int) (c[0] < 0 ? -1 : c[1])).toArray();
        conductance = all.stream().mapToDouble(c -> c[2]).toArray();
        sourceNode = plan.sources().stream().mapToInt(s -> nodes.of(s.node())).toArray();
        sourceSlot = plan.sources().stream().mapToInt(HeatPlan.Source::power).toArray();
        loopHot = new int[fluid.loops().size()];
        loopCold = new int[loopHot.length];
        loopConductance = new double[loopHot.length];
        system = new Gauss(coupled(plan, fluid));
    }

    /** Which temperatures a node's balance may look at: those it is joined to, and what a regulator that heats it hears. */
    private BitSet[] coupled(HeatPlan plan, FluidPlan fluid) {
        BitSet[] coupled = new BitSet[n];
        Arrays.setAll(coupled, i -> new BitSet(n));
        for (int k = 0; k < from.length; k++) {
            couple(coupled, from[k], to[k]);
        }
        for (int v = 0; v < fluid.vessels().size(); v++) {
            int content = nodes.ofVessel(v);
            fluid.loops().forEach(l -> couple(coupled, content, nodes.of(l.heatNode())));
        }
        int[] sensed = plan.sensors().stream().mapToInt(s -> nodes.of(s.node())).toArray();
        for (int source : sourceNode) {
            Arrays.stream(sensed).filter(node -> node >= 0).forEach(coupled[source]::set);
        }
        return coupled;
    }

    private static void couple(BitSet[] coupled, int i, int j) {
        if (j >= 0) {
            coupled[i].set(j);
            coupled[j].set(i);
        }
    }

    int[] sourceSlots() {
        return sourceSlot;
    }

    /** Ties circulation {@code i} to the content of its vessel and what hangs on it; sets its present conductance [W/K]. */
    void loop(int i, int vesselNode, int metalNode, double ua) {
        loopHot[i] = vesselNode;
        loopCold[i] = metalNode;
        loopConductance[i] = ua;
    }

    /** Metal in the water passes heat as far as the water covers it. */
    void cover(VesselState[] vessels) {
        for (int i = 0; i < immersed.length; i++) {
            if (vesselOf[i] >= 0) {
                conductance[firstImmersed + i] = immersed[i].at(vessels[vesselOf[i]].level());
            }
        }
    }

    /**
     * Predicts the temperatures after {@code dt}.
     *
     * @param t       temperatures now [K]
     * @param c       heat capacities now [J/K], zero for massless nodes
     * @param advected heat brought by flows, as power at present temperature [W]
     */
    void predict(double[] x, double[] t, double[] c, double[] advected, double[] slope, double ambient, double dt) {
        regulators.prepare(x, t, slope, dt);
        for (int redo = 0; redo < MAX_REDO; redo++) {
            assemble(x, t, c, advected, ambient, dt);
            system.solve(rhs, predicted);
            if (!regulators.settle(x, predicted)) {
                break;
            }
        }
        regulators.commit(x, dt);
    }

    private void assemble(double[] x, double[] t, double[] c, double[] advected, double ambient, double dt) {
        double[][] a = system.a;
        system.clear();
        for (int i = 0; i < n; i++) {
            a[i][i] = c[i] / dt + 1e-9;
            rhs[i] = c[i] / dt * t[i] + advected[i] + 1e-9 * t[i];
        }
        for (int k = 0; k < from.length; k++) {
            couple(from[k], to[k], conductance[k], ambient);
        }
        for (int k = 0; k < loopHot.length; k++) {
            couple(loopHot[k], loopCold[k], loopConductance[k], ambient);
        }
        for (int k = 0; k < sourceNode.length; k++) {
            rhs[sourceNode[k]] += regulators.fixedPower(k);
        }
        regulators.addTo(a, rhs, sourceNode);
    }

    private void couple(int i, int j, double g, double ambient) {
        double[][] a = system.a;
        a[i][i] += g;
        if (j < 0) {
            rhs[i] += g * ambient;
        } else {
            a[j][j] += g;
            a[i][j] -= g;
            a[j][i] -= g;
        }
    }

    /** Heat flows at the predicted temperatures, each computed once and applied to both sides. */
    void fluxes(double ambient) {
        Arrays.fill(heat, 0);
        lost = 0;
        taken = 0;
        for (int k = 0; k < from.length; k++) {
            double hot = predicted[from[k]];
            double q = conductance[k] * (hot - (to[k] < 0 ? ambient : predicted[to[k]]));
            heat[from[k]] -= q;
            if (to[k] < 0) {
                lost += q;
            } else {
                heat[to[k]] += q;
            }
        }
        for (int k = 0; k < loopHot.length; k++) {
            double q = loopConductance[k] * (predicted[loopHot[k]] - predicted[loopCold[k]]);
            heat[loopHot[k]] -= q;
            heat[loopCold[k]] += q;
        }
        for (int k = 0; k < sourceNode.length; k++) {
            double p = regulators.power(k);
            heat[sourceNode[k]] += p;
            taken += p;
        }
    }
}
