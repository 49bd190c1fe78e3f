package wetside.physics;

/** Steam and air through holes: taps, leaks, safety valves, vacuum breakers. */
public final class GasFlow {
    /** Isentropic exponent k of dry saturated steam at a few bar [–], from the formulation's speed of sound. */
    public static final double SATURATED_STEAM = 1.135;

    /** Isentropic exponent k of air [–]. */
    public static final double AIR = 1.4;

    /** Napier's constant [s/m]: 1/70 lb/s per lbf. */
    private static final double NAPIER = 0.45359237 / (70 * 0.45359237 * 9.80665);

    private GasFlow() {}

    /**
     * Pressure ratio at and below which the flow through a hole no longer depends on the outlet.
     *
     * <pre>p2/p0 = (2/(k + 1))^(k/(k − 1))</pre>
     *
     * @param k isentropic exponent [–], above 1
     * @return ratio of absolute pressures [–]
     *     <p>Validity: ideal gas, isentropic.
     *     <p>Source: gas dynamics; White, Fluid Mechanics, §9.3.
     *     <p>Checked: GasFlowPublishedTest.
     */
    public static double criticalRatio(double k) {
        return Math.pow(2 / (k + 1), k / (k - 1));
    }

    /**
     * Choked flow through a hole.
     *
     * <pre>W = A √(k p0/v0 · (2/(k + 1))^((k + 1)/(k − 1)))</pre>
     *
     * The same as ISO 4126-1, W = 0.2883 C A √(p0/v0) in its units, with C by {@link #iso4126}.
     *
     * @param area effective area Cd A [m²], not negative
     * @param pressure absolute p0 [Pa] upstream
     * @param volume v0 [m³/kg] upstream
     * @param k isentropic exponent [–], above 1
     * @return W [kg/s]
     *     <p>Validity: outlet below the critical ratio; dry saturated steam within 0.2 % with k = 1.135.
     *     <p>Source: ISO 4126-1:2013, §6.
     *     <p>Checked: GasFlowPublishedTest.
     */
    public static double choked(double area, double pressure, double volume, double k) {
        return area * Math.sqrt(k * pressure / volume * Math.pow(2 / (k + 1), (k + 1) / (k - 1)));
    }

    /**
     * Flow through a hole, choked or not, and its slopes.
     *
     * <pre>
     * W = A √(2k/(k − 1) · p0/v0 · (r^(2/k) − r^((k+1)/k))),   r = p2/p0 above the critical ratio, else choked
     * </pre>
     *
     * @param area effective area Cd A [m²], not negative
     * @param upstream absolute p0 [Pa], above 0
     * @param volume v0 [m³/kg] upstream, above 0
     * @param downstream absolute p2 [Pa]
     * @param k isentropic exponent [–], above 1
     * @param into receives W [kg/s], dW/dp0 at constant upstream temperature and dW/dp2 [kg/(s Pa)]; all zero when p2 is
     *     not below p0. The slopes grow without bound as p2 nears p0
     *     <p>Validity: ideal gas, isentropic to the throat.
     *     <p>Source: de Saint-Venant and Wantzel; White, Fluid Mechanics, §9.4.
     *     <p>Checked: GasFlowPublishedTest; slopes in GasFlowTest.
     */
    public static void orifice(
            double area, double upstream, double volume, double downstream, double k, double[] into) {
        if (downstream >= upstream) {
            into[0] = 0;
            into[1] = 0;
            into[2] = 0;
            return;
        }
        double scale = area / Math.sqrt(upstream * volume);
        double r = downstream / upstream;
        if (r <= criticalRatio(k)) {
            into[1] = scale * Math.sqrt(k * Math.pow(2 / (k + 1), (k + 1) / (k - 1)));
            into[0] = into[1] * upstream;
            into[2] = 0;
            return;
        }
        double root = Math.pow(r, 1 / k);
        double factor = 2 * k / (k - 1);
        double psi = Math.sqrt(factor * root * (root - r));
        double psiSlope = factor / (2 * psi) * (2 / k * root * root / r - (k + 1) / k * root);
        into[0] = scale * upstream * psi;
        into[1] = scale * (psi - r * psiSlope);
        into[2] = scale * psiSlope;
    }

    /**
     * The flow factor C of the standard for safety valves.
     *
     * <pre>C = 3.948 √(k (2/(k + 1))^((k + 1)/(k − 1)))</pre>
     *
     * @param k isentropic exponent [–], above 1
     * @return C, in the standard's mixed units
     *     <p>Validity: ideal gas.
     *     <p>Source: ISO 4126-1:2013, §6 (formula from memory; the units agree).
     *     <p>Checked: GasFlowPublishedTest.
     */
    public static double iso4126(double k) {
        return 3.948 * Math.sqrt(k * Math.pow(2 / (k + 1), (k + 1) / (k - 1)));
    }

    /**
     * Choked flow of saturated steam by the old rule of thumb.
     *
     * <pre>W [lb/s] = p [psia] · A [in²] / 70</pre>
     *
     * Here for comparison: at a machine's pressures it says 2 to 4 % too little.
     *
     * @param area A [m²]
     * @param pressure absolute p0 [Pa], above twice the outlet pressure
     * @return W [kg/s]
     *     <p>Validity: best at 6 to 10 bar.
     *     <p>Source: R. D. Napier, 1866; ASME Boiler Code (51.5 in lb/h).
     *     <p>Checked: GasFlowPublishedTest.
     */
    public static double napier(double area, double pressure) {
        return NAPIER * area * pressure;
    }
}
