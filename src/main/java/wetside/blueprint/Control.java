package wetside.blueprint;

/**
 * Something that looks at the machine and acts: fill logic, a cam, a bimetal, a needle that lags. It keeps no fields that
 * change: all memory is in slots.
 */
public interface Control {
    /**
     * Looks at the state after a step and acts on slots. Called again with {@code dt = 0} until no state slot changes, so it
     * must settle.
     *
     * @param x  the state array
     * @param dt length of the step just taken [s]; 0 when called to settle
     */
    void act(double[] x, double dt);

    /** Time until a timer of this control ends by itself [s]; the plant steps exactly onto it. */
    default double horizon(double[] x) {
        return Double.POSITIVE_INFINITY;
    }
}
