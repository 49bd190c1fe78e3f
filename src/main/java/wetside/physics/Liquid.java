package wetside.physics;

/** Liquid water: region 1 of the industrial formulation IAPWS-IF97. */
public final class Liquid {
    private static final double P_STAR = 16.53e6;
    private static final double T_STAR = 1386;

    /** Exponents I, J and factor n, IAPWS R7-97(2012) table 2. */
    private static final double[][] TERMS = {
        {0, -2, 0.14632971213167},
        {0, -1, -0.84548187169114},
        {0, 0, -0.37563603672040e1},
        {0, 1, 0.33855169168385e1},
        {0, 2, -0.95791963387872},
        {0, 3, 0.15772038513228},
        {0, 4, -0.16616417199501e-1},
        {0, 5, 0.81214629983568e-3},
        {1, -9, 0.28319080123804e-3},
        {1, -7, -0.60706301565874e-3},
        {1, -1, -0.18990068218419e-1},
        {1, 0, -0.32529748770505e-1},
        {1, 1, -0.21841717175414e-1},
        {1, 3, -0.52838357969930e-4},
        {2, -3, -0.47184321073267e-3},
        {2, 0, -0.30001780793026e-3},
        {2, 1, 0.47661393906987e-4},
        {2, 3, -0.44141845330846e-5},
        {2, 17, -0.72694996297594e-15},
        {3, -4, -0.31679644845054e-4},
        {3, 0, -0.28270797985312e-5},
        {3, 6, -0.85205128120103e-9},
        {4, -5, -0.22425281908000e-5},
        {4, -2, -0.65171222895601e-6},
        {4, 10, -0.14341729937924e-12},
        {5, -8, -0.40516996860117e-6},
        {8, -11, -0.12734301741641e-8},
        {8, -6, -0.17424871230634e-9},
        {21, -29, -0.68762131295531e-18},
        {23, -31, 0.14478307828521e-19},
        {29, -38, 0.26335781662795e-22},
        {30, -39, -0.11947622640071e-22},
        {31, -40, 0.18228094581404e-23},
        {32, -41, -0.93537087292458e-25}
    };

    private Liquid() {}

    /**
     * State of liquid water.
     *
     * <pre>g/(R T) = Σ n (7.1 − π)^I (τ − 1.222)^J,   π = p / 16.53 MPa, τ = 1386 K / T</pre>
     *
     * All properties follow from one Gibbs energy, so they agree with one another exactly.
     *
     * @param pressure absolute p [Pa], from saturation to 1e8 (a little below saturation the metastable liquid follows)
     * @param temperature T [K], 273.15 to 623.15
     * @return volume, energies, heat capacity, sound speed and coefficients
     * @throws IllegalArgumentException outside that range
     *     <p>Validity: v within 0.001 %, h within 0.1 kJ/kg below 200 °C.
     *     <p>Source: IAPWS R7-97(2012), equation 7.
     *     <p>Checked: WaterPublishedTest.
     */
    public static WaterState state(double pressure, double temperature) {
        WaterState.require(
                temperature >= 273.149 && temperature <= 623.151 && pressure > 0 && pressure <= 1.0001e8,
                "the liquid law",
                pressure,
                temperature);
        double pi = pressure / P_STAR;
        double tau = T_STAR / temperature;
        double a = 7.1 - pi;
        double b = tau - 1.222;
        double g = 0;
        double gp = 0;
        double gpp = 0;
        double gt = 0;
        double gtt = 0;
        double gpt = 0;
        for (double[] term : TERMS) {
            double i = term[0];
            double j = term[1];
            double part = term[2] * WaterState.power(a, (int) i) * WaterState.power(b, (int) j);
            g += part;
            gp -= part * i / a;
            gpp += part * i * (i - 1) / (a * a);
            gt += part * j / b;
            gtt += part * j * (j - 1) / (b * b);
            gpt -= part * i * j / (a * b);
        }
        return WaterState.of(pressure, temperature, pi, tau, g, gp, gpp, gt, gtt, gpt);
    }

    /**
     * Temperature of liquid water from its enthalpy.
     *
     * <pre>T: h(p, T) = h</pre>
     *
     * Solved by Newton on the forward law rather than by a separate backward equation, so that it returns exactly.
     *
     * @param pressure absolute p [Pa], up to 1e8
     * @param enthalpy h [J/kg], 0 to 1.67e6
     * @return temperature [K]
     * @throws IllegalArgumentException if no liquid has this enthalpy
     *     <p>Validity: as {@link #state}.
     *     <p>Source: IAPWS R7-97(2012), equation 7.
     *     <p>Checked: WaterPublishedTest, against the backward equation's table within its stated 25 mK.
     */
    public static double temperature(double pressure, double enthalpy) {
        double temperature = Math.min(600, 273.15 + Math.max(0, enthalpy) / 4200);
        for (int turn = 0; turn < 40; turn++) {
            WaterState state = state(pressure, temperature);
            double step = (enthalpy - state.enthalpy()) / state.heatCapacity();
            temperature += step;
            if (Math.abs(step) < 1e-9) {
                return temperature;
            }
        }
        throw new IllegalArgumentException("no liquid water has " + enthalpy + " J/kg at " + pressure + " Pa");
    }
}
