package wetside.physics;

/** Dry air at one atmosphere, as it carries heat away from pipes and boilers. */
public final class Air {
    /** Specific gas constant [J/(kg K)]. */
    public static final double GAS_CONSTANT = 287.05;

    /** Heat capacity at constant pressure [J/(kg K)], within 1 % from 0 to 200 °C. */
    public static final double HEAT_CAPACITY = 1008;

    private Air() {}

    /**
     * Dynamic viscosity of air.
     *
     * <pre>μ = 1.716·10⁻⁵ Pa·s · (T/273.15)^1.5 · (273.15 + 110.4)/(T + 110.4)</pre>
     *
     * @param temperature T [K], 200 to 1500
     * @return μ [Pa·s]
     *     <p>Validity: within 2 %.
     *     <p>Source: Sutherland's law; White, Viscous Fluid Flow, table 1-2.
     *     <p>Checked: HeatPublishedTest.
     */
    public static double viscosity(double temperature) {
        return sutherland(temperature, 1.716e-5, 110.4);
    }

    /**
     * Thermal conductivity of air.
     *
     * <pre>λ = 0.0241 W/(m K) · (T/273.15)^1.5 · (273.15 + 194)/(T + 194)</pre>
     *
     * @param temperature T [K], 200 to 1500
     * @return λ [W/(m K)]
     *     <p>Validity: within 3 %.
     *     <p>Source: Sutherland's law; White, Viscous Fluid Flow, table 1-3.
     *     <p>Checked: HeatPublishedTest.
     */
    public static double conductivity(double temperature) {
        return sutherland(temperature, 0.0241, 194);
    }

    private static double sutherland(double temperature, double atIce, double constant) {
        double ratio = temperature / 273.15;
        return atIce * ratio * Math.sqrt(ratio) * (273.15 + constant) / (temperature + constant);
    }
}
