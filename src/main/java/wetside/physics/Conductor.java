package wetside.physics;

/** Resistance of copper wire and of water between electrodes. */
public final class Conductor {
    /** Resistivity of annealed copper at 20 °C [Ω m], IEC 60028. */
    public static final double COPPER = 1.7241e-8;

    private static final double COPPER_RISE = 0.00393;
    private static final double WATER_RISE = 0.02;

    private Conductor() {}

    /**
     * Resistance of a copper wire.
     *
     * <pre>R = ρ20 L/A · [1 + 0.00393 (T − 293.15 K)]</pre>
     *
     * @param length L [m]
     * @param area cross-section A [m²], above 0
     * @param temperature T [K], 220 to 470
     * @return R [Ω]
     *     <p>Validity: annealed copper; stranding adds 2 to 4 %.
     *     <p>Source: IEC 60028.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double copper(double length, double area, double temperature) {
        return COPPER * length / area * (1 + COPPER_RISE * (temperature - 293.15));
    }

    /**
     * Resistance of water between an electrode and the boiler.
     *
     * <pre>R = K / (κ25 [1 + 0.02 (T − 298.15 K)])</pre>
     *
     * @param cell cell constant K of the geometry [1/m], above 0
     * @param conductivity κ25 of the water at 25 °C [S/m], above 0
     * @param temperature T of the water [K], 273 to 420
     * @return R [Ω]
     *     <p>Validity: dilute tap water; the 2 %/K is a round figure (1.7 to 2.3).
     *     <p>Source: ISO 7888 practice (temperature factor from memory).
     *     <p>Checked: SensorsTest.
     */
    public static double electrode(double cell, double conductivity, double temperature) {
        return cell / (conductivity * (1 + WATER_RISE * (temperature - 298.15)));
    }
}
