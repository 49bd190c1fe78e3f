package wetside.physics;

/** The standard atmosphere: what the open air presses with, and how that changes with height. */
public final class Atmosphere {
    /** Standard pressure at sea level [Pa] (ISO 2533). */
    public static final double SEA_LEVEL = 101325;

    private static final double T0 = 288.15;
    private static final double LAPSE = 0.0065;
    private static final double EXPONENT = 9.80665 * 0.0289644 / (8.31432 * LAPSE);

    private Atmosphere() {}

    /**
     * Air pressure at a height above the sea.
     *
     * <pre>p = p0 (1 − L z / T0)^(g M / (R L)),   p0 = 101 325 Pa, T0 = 288.15 K, L = 6.5 K/km</pre>
     *
     * The machine's gauges read zero at this pressure and its boiler opens to it, so water boils where it equals the
     * saturation pressure.
     *
     * @param height geopotential height z [m], -2000 to 11 000
     * @return absolute pressure [Pa]
     *     <p>Validity: troposphere; the day's weather moves it by ±3 %.
     *     <p>Source: ISO 2533:1975, standard atmosphere, layer 0.
     *     <p>Checked: AtmospherePublishedTest.
     */
    public static double pressure(double height) {
        return SEA_LEVEL * Math.pow(1 - LAPSE * height / T0, EXPONENT);
    }
}
