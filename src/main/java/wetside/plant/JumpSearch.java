package wetside.plant;

import java.util.List;
import wetside.blueprint.Control;

/**
 * Finds when within a step something switched by itself, without solving the plant again: all that moves smoothly is taken to
 * have moved straight from the step's beginning to its end, and the controls look at points between.
 */
final class JumpSearch {
    private final Control[] controls;
    private final int[] states;
    private final double[] ended;
    private final double[] looked;

    /**
     * @param states slots that jump
     * @param size   of the state array
     */
    JumpSearch(List<Control> controls, int[] states, int size) {
        this.controls = controls.toArray(Control[]::new);
        this.states = states;
        ended = new double[size];
        looked = new double[size];
    }

    /** Keeps what a step ended with, before the controls have acted on it. */
    void keep(double[] x) {
        System.arraycopy(x, 0, ended, 0, ended.length);
    }

    /**
     * Seconds into the step after which the controls act otherwise than at its beginning, at the end of {@code within}.
     *
     * @param began  state at the step's beginning
     * @param dt     its length [s], at the end of which something switched
     * @param within how closely it is looked for [s]
     */
    double moment(double[] began, double dt, double within) {
        double low = 0;
        double high = dt;
        while (high - low > within) {
            double middle = 0.5 * (low + high);
            if (switches(began, middle / dt, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private boolean switches(double[] began, double share, double dt) {
        for (int i = 0; i < looked.length; i++) {
            // what stays is not moved by rounding, nor what is endless
            looked[i] = began[i] == ended[i] ? began[i] : began[i] + share * (ended[i] - began[i]);
        }
        for (Control c : controls) {
            c.act(looked, dt);
        }
        for (int i : states) {
            if (looked[i] != began[i]) {
                return true;
            }
        }
        return false;
    }
}
