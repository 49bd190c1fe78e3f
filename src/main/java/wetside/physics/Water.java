package wetside.physics;

/** The boiling line of water and the properties that do not depend on the phase's own law. */
public final class Water {
    /** Critical temperature [K], IAPWS R2-83. */
    public static final double CRITICAL_TEMPERATURE = 647.096;

    /** Critical pressure [Pa], IAPWS R2-83. */
    public static final double CRITICAL_PRESSURE = 22.064e6;

    /** Critical density [kg/m³], IAPWS R2-83. */
    public static final double CRITICAL_DENSITY = 322;

    // IAPWS R7-97(2012) table 34
    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    private Water() {}

    /**
     * Pressure at which water boils.
     *
     * <pre>p = [2 C / (−B + √(B² − 4 A C))]⁴ MPa,   A, B, C quadratic in ϑ = T + n9/(T − n10)</pre>
     *
     * @param temperature T [K], 273.15 to 647.096; the formula continues smoothly a few kelvin below
     * @return absolute pressure [Pa]; NaN far outside
     *     <p>Validity: within 0.025 % of the scientific formulation.
     *     <p>Source: IAPWS R7-97(2012), equation 30.
     *     <p>Checked: WaterPublishedTest.
     */
    public static double saturationPressure(double temperature) {
        double beta = beta(theta(temperature));
        double square = beta * beta;
        return square * square * 1e6;
    }

    /**
     * Slope of the boiling line.
     *
     * <pre>dp/dT = 4 β³ · dβ/dϑ · dϑ/dT,   from differentiating the biquadratic of equation 29 itself</pre>
     *
     * Exact, and cheaper than a second evaluation.
     *
     * @param temperature T [K], 273.15 to 647
     * @return dp/dT [Pa/K]
     *     <p>Validity: as {@link #saturationPressure}.
     *     <p>Source: IAPWS R7-97(2012), equation 29, differentiated here.
     *     <p>Checked: WaterTest, against differences of the pressure.
     */
    public static double saturationSlope(double temperature) {
        double theta = theta(temperature);
        return slope(temperature, theta, beta(theta));
    }

    /** Pressure into {@code into[at]} and its slope into {@code into[at + 1]}, one evaluation for both. */
    static void saturation(double temperature, double[] into, int at) {
        double theta = theta(temperature);
        double beta = beta(theta);
        double square = beta * beta;
        into[at] = square * square * 1e6;
        into[at + 1] = slope(temperature, theta, beta);
    }

    /**
     * Temperature at which water boils.
     *
     * <pre>T = ½ [n10 + D − √((n10 + D)² − 4 (n9 + n10 D))],   D = 2 G / (−F − √(F² − 4 E G))</pre>
     *
     * @param pressure absolute p [Pa], 611.213 to 22.064e6
     * @return temperature [K]
     * @throws IllegalArgumentException outside that range
     *     <p>Validity: the exact inverse of {@link #saturationPressure}.
     *     <p>Source: IAPWS R7-97(2012), equation 31.
     *     <p>Checked: WaterPublishedTest.
     */
    public static double saturationTemperature(double pressure) {
        WaterState.require(
                pressure >= 611 && pressure <= CRITICAL_PRESSURE * 1.0001, "the boiling line", pressure, Double.NaN);
        double beta = Math.sqrt(Math.sqrt(pressure * 1e-6));
        double e = (beta + N3) * beta + N6;
        double f = (N1 * beta + N4) * beta + N7;
        double g = (N2 * beta + N5) * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
    }

    /**
     * Surface tension of water against its vapour.
     *
     * <pre>σ = 235.8 mN/m · (1 − Tr)^1.256 · [1 − 0.625 (1 − Tr)],   Tr = T / Tc</pre>
     *
     * @param temperature T [K], 273.15 to 647.096
     * @return σ [N/m]
     *     <p>Validity: saturated, pure water.
     *     <p>Source: IAPWS R1-76(2014).
     *     <p>Checked: WaterTransportPublishedTest.
     */
    public static double surfaceTension(double temperature) {
        double fall = 1 - temperature / CRITICAL_TEMPERATURE;
        return 0.2358 * Math.pow(fall, 1.256) * (1 - 0.625 * fall);
    }

    private static double theta(double temperature) {
        return temperature + N9 / (temperature - N10);
    }

    private static double beta(double theta) {
        double a = (theta + N1) * theta + N2;
        double b = (N3 * theta + N4) * theta + N5;
        double c = (N6 * theta + N7) * theta + N8;
        return 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    }

    private static double slope(double temperature, double theta, double beta) {
        double square = beta * beta;
        double byTheta = (2 * theta + N1) * square + (2 * N3 * theta + N4) * beta + 2 * N6 * theta + N7;
        double byBeta = 2 * beta * ((theta + N1) * theta + N2) + (N3 * theta + N4) * theta + N5;
        double apart = temperature - N10;
        return -4e6 * square * beta * byTheta / byBeta * (1 - N9 / (apart * apart));
    }
}
