package wetside.plant;

import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;

/** The fluid network of one machine, compiled; one object per thread, its state is in the state array. */
public final class Hydraulics {
    private final Convergence convergence = new Convergence();

    private Hydraulics() {}

    /**
     * Compiles a network. Call it before the state array is made: pressures and gas shares of the nodes that stay are
     * given slots of their own, so that copying the state array copies everything.
     *
     * @param nodeCount how many fluid nodes were numbered
     * @throws IllegalArgumentException when the network cannot be, e.g. two vessels are one node
     */
    public static Hydraulics of(FluidPlan plan, Slots slots, int nodeCount) {
        return new Hydraulics();
    }

    /**
     * Flows and pressures at the end of a step. Openings, speeds, held pressures and stocks are read from the state; flow
     * of every branch and every demanded pressure are written to it (pressures of nodes at a vessel too: see {@link
     * #slotsAt}).
     *
     * @param x  state array
     * @param dt length of the step [s]
     * @param v  the vessels in the plan's order, each set for this step
     * @return false when some node does not balance; see {@link #convergence}
     */
    public boolean solve(double[] x, double dt, VesselRow[] v) {
        throw new UnsupportedOperationException("not yet");
    }

    /** Share of a branch's mass flow in the last solve that is gas (steam and air), 0..1, as it left its donor. */
    public double gasShare(int branch) {
        return 0;
    }

    /** The demanded pressure slots of nodes that open into a vessel, to be overwritten when the flash knows better. */
    public int[] slotsAt(int vessel) {
        return new int[0];
    }

    /** Mass in the lines' own compliance for a state [kg]; changes of it belong in a mass balance. */
    public double lineMass(double[] x) {
        return 0;
    }

    public Convergence convergence() {
        return convergence;
    }
}
