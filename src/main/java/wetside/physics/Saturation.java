package wetside.physics;

/**
 * Boiling water and its vapour, fast and smooth: what the plant calls in its inner loop.
 *
 * <p>Polynomials in x = (T − 383.15 K) / 110 K fitted to IAPWS-IF97 over 0 to 220 °C; only the pressure is region 4
 * itself. They continue smoothly a few kelvin beyond either end, so that a search for a temperature may stray there.
 */
public final class Saturation {
    /** Where {@link #at} puts the pressure [Pa]; every property is followed by its slope with temperature. */
    public static final int PRESSURE = 0;

    /** dp/dT [Pa/K]. */
    public static final int PRESSURE_SLOPE = 1;

    /** Volume of the liquid v' [m³/kg]. */
    public static final int LIQUID_VOLUME = 2;

    /** dv'/dT [m³/(kg K)]. */
    public static final int LIQUID_VOLUME_SLOPE = 3;

    /** Volume of the vapour v'' [m³/kg]. */
    public static final int VAPOUR_VOLUME = 4;

    /** dv''/dT [m³/(kg K)]. */
    public static final int VAPOUR_VOLUME_SLOPE = 5;

    /** Internal energy of the liquid u' [J/kg]. */
    public static final int LIQUID_ENERGY = 6;

    /** du'/dT [J/(kg K)]. */
    public static final int LIQUID_ENERGY_SLOPE = 7;

    /** Internal energy of the vapour u'' [J/kg]. */
    public static final int VAPOUR_ENERGY = 8;

    /** du''/dT [J/(kg K)]. */
    public static final int VAPOUR_ENERGY_SLOPE = 9;

    /** How long the array given to {@link #at} must be. */
    public static final int SIZE = 10;

    /** End of the fit [K]. */
    private static final double HOTTEST = 495;
    /** Of steam at constant volume, well above the boiling line [J/(kg K)]. */
    private static final double STEAM_HEAT = 1550;

    static final double CENTRE = 383.15;
    static final double HALF = 110;

    // Written by SaturationFit in the tests; powers of x. v' in 1e-3 m³/kg, u in MJ/kg, p v''/(R T), ln of mPa·s.
    private static final double[] V_LIQUID = {
        1.051581154616e+00,
        9.276620736942e-02,
        3.751109363830e-02,
        2.973798489611e-03,
        5.084912536844e-03,
        -4.378597393730e-04,
        5.161781802121e-05,
        2.715811199794e-04,
        9.514961998649e-04,
        -5.982258423742e-04
    };

    private static final double[] U_LIQUID = {
        4.612147534819e-01,
        4.651527583091e-01,
        8.523604746912e-03,
        4.684234287927e-03,
        8.795333706350e-04,
        3.377919406754e-04,
        -1.922932565361e-04,
        2.819418417668e-04
    };

    private static final double[] U_VAPOUR = {
        2.517670539418e+00,
        1.257684163230e-01,
        -2.796442627441e-02,
        -1.342328977404e-02,
        -1.108671225747e-03,
        1.594282226455e-03,
        -4.705566679215e-04,
        -7.112829376403e-04
    };

    private static final double[] Z_VAPOUR = {
        9.805656586301e-01,
        -4.757159372881e-02,
        -4.334022366680e-02,
        -1.479810951554e-02,
        2.035810381442e-03,
        1.956595411823e-03,
        -8.546822149040e-04,
        -6.205235858010e-04
    };

    private static final double[] LOG_VISCOSITY = {
        -1.368014248217e+00,
        -1.062123161286e+00,
        4.727945068728e-01,
        -2.103685854464e-01,
        8.702391198492e-02,
        -1.353299375861e-02,
        1.098623113489e-02,
        -5.831506924618e-02,
        3.598333352525e-02
    };

    private Saturation() {}

    /**
     * Pressure, volumes and internal energies of boiling water and its vapour, each with its slope.
     *
     * <pre>p by region 4;  v', u', u'' polynomials in x;  v'' = Z(x) R T / p</pre>
     *
     * Allocates nothing. Pressure and volumes are consistent with each other and smooth, so Newton's method may run on
     * any combination of them.
     *
     * @param temperature T [K], 272 to 495; beyond, for a vessel boiled dry, continued as a gas of constant heat
     * @param into filled by the constants of this class, length {@link #SIZE}
     *     <p>Validity: against IAPWS-IF97 over 0 to 220 °C: v' within 3e-6, v'' within 5e-6 of the value, u' within
     *     12 J/kg, u'' within 4 J/kg, p exact.
     *     <p>Source: fitted here to IAPWS R7-97(2012).
     *     <p>Checked: SaturationTest.
     */
    public static void at(double temperature, double[] into) {
        if (temperature > HOTTEST) {
            beyond(temperature, into);
        } else {
            fitted(temperature, into);
        }
    }

    /** So that a vessel boiled dry has a temperature: steam as a gas whose volume and latent heat stay as they were. */
    private static void beyond(double temperature, double[] into) {
        fitted(HOTTEST, into);
        double over = temperature - HOTTEST;
        into[PRESSURE_SLOPE] = into[PRESSURE] / HOTTEST;
        into[PRESSURE] += into[PRESSURE_SLOPE] * over;
        into[LIQUID_VOLUME_SLOPE] = 0;
        into[VAPOUR_VOLUME_SLOPE] = 0;
        into[LIQUID_ENERGY] += STEAM_HEAT * over;
        into[LIQUID_ENERGY_SLOPE] = STEAM_HEAT;
        into[VAPOUR_ENERGY] += STEAM_HEAT * over;
        into[VAPOUR_ENERGY_SLOPE] = STEAM_HEAT;
    }

    private static void fitted(double temperature, double[] into) {
        Water.saturation(temperature, into, PRESSURE);
        double x = (temperature - CENTRE) / HALF;
        polynomial(V_LIQUID, x, 1e-3, into, LIQUID_VOLUME);
        polynomial(U_LIQUID, x, 1e6, into, LIQUID_ENERGY);
        polynomial(U_VAPOUR, x, 1e6, into, VAPOUR_ENERGY);
        polynomial(Z_VAPOUR, x, WaterState.GAS_CONSTANT, into, VAPOUR_VOLUME);
        double byPressure = 1 / into[PRESSURE];
        double zr = into[VAPOUR_VOLUME];
        double volume = zr * temperature * byPressure;
        into[VAPOUR_VOLUME] = volume;
        into[VAPOUR_VOLUME_SLOPE] = (into[VAPOUR_VOLUME_SLOPE] * temperature + zr) * byPressure
                - volume * into[PRESSURE_SLOPE] * byPressure;
    }

    /**
     * Viscosity of boiling water; a few bar more change it by less than 0.1 %.
     *
     * <pre>μ = exp(polynomial in x)</pre>
     *
     * @param temperature T [K], 272 to 495
     * @return μ [Pa·s]
     *     <p>Validity: within 0.03 % of IAPWS R12-08 over 0 to 220 °C.
     *     <p>Source: fitted here to IAPWS R12-08 and R7-97(2012).
     *     <p>Checked: SaturationTest.
     */
    public static double liquidViscosity(double temperature) {
        double x = (temperature - CENTRE) / HALF;
        double log = 0;
        for (int k = LOG_VISCOSITY.length - 1; k >= 0; k--) {
            log = log * x + LOG_VISCOSITY[k];
        }
        return 1e-3 * Math.exp(log);
    }

    /** For the test that fits them anew: v', u', u'', Z, ln μ. */
    static double[][] coefficients() {
        return new double[][] {V_LIQUID, U_LIQUID, U_VAPOUR, Z_VAPOUR, LOG_VISCOSITY};
    }

    private static void polynomial(double[] c, double x, double scale, double[] into, int at) {
        double value = c[c.length - 1];
        double slope = 0;
        for (int k = c.length - 2; k >= 0; k--) {
            slope = slope * x + value;
            value = value * x + c[k];
        }
        into[at] = scale * value;
        into[at + 1] = scale / HALF * slope;
    }
}
