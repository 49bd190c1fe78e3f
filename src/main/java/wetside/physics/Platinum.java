package wetside.physics;

/** Platinum resistance thermometers (Pt100, Pt1000). */
public final class Platinum {
    private static final double A = 3.9083e-3;
    private static final double B = -5.775e-7;
    private static final double C = -4.183e-12;

    private Platinum() {}

    /**
     * Resistance.
     *
     * <pre>R = R0 (1 + A t + B t² [+ C (t − 100) t³ below 0 °C])</pre>
     *
     * @param r0 resistance at 0 °C [Ω], 100 or 1000
     * @param temperature [K], 73.15 to 1123.15
     * @return R [Ω]
     *     <p>Validity: class A ±(0.15 + 0.002 |t|) K, class B ±(0.3 + 0.005 |t|) K.
     *     <p>Source: IEC 60751:2008.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double resistance(double r0, double temperature) {
        double t = temperature - 273.15;
        double cold = t < 0 ? C * (t - 100) * t * t * t : 0;
        return r0 * (1 + t * (A + t * B) + cold);
    }

    /**
     * Temperature.
     *
     * <pre>t = [−A + √(A² − 4 B (1 − R/R0))] / (2 B),   refined by Newton below 0 °C</pre>
     *
     * @param r0 resistance at 0 °C [Ω]
     * @param resistance R [Ω], 0.19 to 3.9 R0
     * @return temperature [K]; NaN beyond any platinum thermometer
     *     <p>Validity: as {@link #resistance}.
     *     <p>Source: IEC 60751:2008, turned round.
     *     <p>Checked: SensorsTest.
     */
    public static double temperature(double r0, double resistance) {
        double t = (-A + Math.sqrt(A * A - 4 * B * (1 - resistance / r0))) / (2 * B);
        for (int turn = 0; turn < 5 && t < 0; turn++) {
            double slope = r0 * (A + 2 * B * t + C * (4 * t * t * t - 300 * t * t));
            t -= (resistance(r0, t + 273.15) - resistance) / slope;
        }
        return t + 273.15;
    }
}
