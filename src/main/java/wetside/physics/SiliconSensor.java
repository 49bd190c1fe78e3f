package wetside.physics;

/** Silicon spreading-resistance sensors (PTC): resistance rises as they warm, about eight per mille a kelvin. */
public final class SiliconSensor {
    private static final double A = 7.874e-3;
    private static final double B = 1.874e-5;
    private static final double ROOM = 298.15;

    private SiliconSensor() {}

    /**
     * Resistance.
     *
     * <pre>R = R25 (1 + A Δ + B Δ²),  Δ = T − 298.15 K</pre>
     *
     * @param r25 resistance at 25 °C [Ω], usually 1000
     * @param temperature T [K], 218.15 to 423.15
     * @return R [Ω]
     *     <p>Validity: −55 to 100 °C; above, real sensors rise less (at 125 °C by about 1 %).
     *     <p>Source: KTY81-110 data sheet, typical ratios; the two coefficients from memory, they give its ratios.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double resistance(double r25, double temperature) {
        double d = temperature - ROOM;
        return r25 * (1 + d * (A + d * B));
    }

    /**
     * Temperature.
     *
     * <pre>Δ = [−A + √(A² − 4 B (1 − R/R25))] / (2 B)</pre>
     *
     * @param r25 resistance at 25 °C [Ω]
     * @param resistance R [Ω], 0.2 to 2.5 R25
     * @return temperature [K]; NaN beyond any such sensor
     *     <p>Validity: as {@link #resistance}.
     *     <p>Source: the same, turned round.
     *     <p>Checked: SensorsTest.
     */
    public static double temperature(double r25, double resistance) {
        return ROOM + (-A + Math.sqrt(A * A - 4 * B * (1 - resistance / r25))) / (2 * B);
    }
}
