package wetside.physics;

/** What a temperature controller does with the error it sees, and what pulsed power does to the temperature. */
public final class Regulation {
    private Regulation() {}

    /**
     * One sample of proportional and integral action with limits.
     *
     * <pre>u = Kc (e + I/Ti),   I grows by e Δt unless u is at a limit and e pushes it further out</pre>
     *
     * Holding the integral at the limits keeps a long warm-up from winding it up.
     *
     * @param tuning Kc, Ti; the derivative part is not used
     * @param error e, set point less measured [K]
     * @param step Δt since the last sample [s]
     * @param low lowest output
     * @param high highest output
     * @param memory I in {@code memory[0]} [K s]; updated
     * @return u, within the limits
     *     <p>Validity: Δt much below Ti.
     *     <p>Source: ISA standard form; conditional integration as in any control text.
     *     <p>Checked: ControlPublishedTest; RegulationTest.
     */
    public static double proportionalIntegral(
            Tuning tuning, double error, double step, double low, double high, double[] memory) {
        double integral = memory[0] + error * step;
        double output = tuning.gain() * (error + integral / tuning.integralTime());
        if (output > high && error > 0 || output < low && error < 0) {
            output = tuning.gain() * (error + memory[0] / tuning.integralTime());
        } else {
            memory[0] = integral;
        }
        return Math.min(high, Math.max(low, output));
    }

    /**
     * Swing of a temperature under pulsed power, once periodic.
     *
     * <pre>Δ = K (1 − e^(−dT/τ)) (1 − e^(−(1−d)T/τ)) / (1 − e^(−T/τ))</pre>
     *
     * @param rise K, steady rise at full power [K]
     * @param tau τ of the body [s], above 0
     * @param period T of the pulses [s], above 0
     * @param duty d, share of the time on [–], 0 to 1
     * @return peak-to-peak swing [K] about the mean K d
     *     <p>Validity: first-order body.
     *     <p>Source: periodic solution of the first-order equation.
     *     <p>Checked: ControlPublishedTest.
     */
    public static double ripple(double rise, double tau, double period, double duty) {
        return -rise
                * Math.expm1(-duty * period / tau)
                * Math.expm1(-(1 - duty) * period / tau)
                / Math.expm1(-period / tau);
    }
}
