package wetside.plant;

import java.util.List;
import wetside.blueprint.FluidPlan;

/**
 * The stores' part of the flow network, solved for the pressure at the end of the step like a vessel:
 *
 * <pre>
 * [m(p) − mⁿ]/Δt + Σ out − Σ in = 0
 * </pre>
 *
 * Beyond empty and full a store yields like a line, so that its pressure is never without a slope.
 */
final class StoreBalance {
    private final FluidPlan.Store[] stores;
    private final int first;
    private final double[] empty;
    private final double[] perPressure;
    private final double[] held;
    private final double[] slope;
    private double dt;

    StoreBalance(List<FluidPlan.Store> stores, int first) {
        this.stores = stores.toArray(FluidPlan.Store[]::new);
        this.first = first;
        empty = new double[stores.size()];
        perPressure = new double[stores.size()];
        held = new double[stores.size()];
        slope = new double[stores.size()];
    }

    int count() {
        return stores.length;
    }

    /** Reads springs and contents, and guesses that nothing will flow. */
    void begin(double[] x, double dt, double[] p) {
        this.dt = dt;
        for (int k = 0; k < stores.length; k++) {
            FluidPlan.Store s = stores[k];
            empty[k] = x[s.empty()];
            perPressure[k] = s.stroke() / Math.max(1, x[s.full()] - x[s.empty()]);
            held[k] = x[s.content()];
            double moved = held[k] - s.dead();
            double within = Math.max(0, Math.min(s.stroke(), moved));
            p[first + k] = empty[k] + within / perPressure[k] + (moved - within) / FlowSystem.COMPLIANCE;
        }
    }

    void evaluate(double[] p, double[] f) {
        for (int k = 0; k < stores.length; k++) {
            double beyond = p[first + k] - empty[k];
            double moved = perPressure[k] * beyond;
            double stroke = stores[k].stroke();
            boolean within = moved > 0 && moved < stroke;
            if (!within) {
                double within0 = moved <= 0 ? 0 : stroke;
                moved = within0 + FlowSystem.COMPLIANCE * (beyond - within0 / perPressure[k]);
            }
            f[first + k] += (stores[k].dead() + moved - held[k]) / dt;
            slope[k] = (within ? perPressure[k] : FlowSystem.COMPLIANCE) / dt;
        }
    }

    /** Mass flow a store takes up per pressure [kg/(s Pa)], at the last evaluation. */
    double slope(int site) {
        return slope[site - first];
    }
}
