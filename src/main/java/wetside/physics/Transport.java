package wetside.physics;

/** How water and steam resist flow and conduct heat. */
public final class Transport {
    // IAPWS R12-08 table 1
    private static final double[] DILUTE = {1.67752, 2.20462, 0.6366564, -0.241605};

    /** Factors H_ij, row i (temperature), column j (density), IAPWS R12-08 table 2. */
    private static final double[][] DENSE = {
        {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
        {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
        {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
        {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
        {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
        {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4},
    };

    // IAPWS R15-11 table 1
    private static final double[] GAS = {2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4};

    /** Factors L_ij, row i (temperature), column j (density), IAPWS R15-11 table 2. */
    private static final double[][] FLUID = {
        {1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258},
        {2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245},
        {2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816},
        {-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0},
        {-2.7203370, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842},
    };

    private Transport() {}

    /**
     * Dynamic viscosity of water or steam.
     *
     * <pre>μ = 1 µPa·s · μ0(Tr) · exp[ρr Σ (1/Tr − 1)^i Σ H_ij (ρr − 1)^j]</pre>
     *
     * The industrial form, without the critical enhancement (below 0.1 % anywhere in a boiler).
     *
     * @param density ρ [kg/m³], 0 to 1200
     * @param temperature T [K], 273.15 to 1173.15
     * @return μ [Pa·s]
     *     <p>Validity: within 1 % for the liquid to 430 K.
     *     <p>Source: IAPWS R12-08, equations 11 and 12.
     *     <p>Checked: WaterTransportPublishedTest.
     */
    public static double viscosity(double density, double temperature) {
        double tr = temperature / Water.CRITICAL_TEMPERATURE;
        double dilute = 100 * Math.sqrt(tr) / polynomial(DILUTE, 1 / tr);
        double rho = density / Water.CRITICAL_DENSITY;
        return 1e-6 * dilute * Math.exp(rho * dense(DENSE, 1 / tr - 1, rho - 1));
    }

    /**
     * Thermal conductivity of water or steam.
     *
     * <pre>λ = 1 mW/(m K) · λ0(Tr) · exp[ρr Σ (1/Tr − 1)^i Σ L_ij (ρr − 1)^j]</pre>
     *
     * Without the critical enhancement.
     *
     * @param density ρ [kg/m³], 0 to 1200
     * @param temperature T [K], 273.15 to 1173.15
     * @return λ [W/(m K)]
     *     <p>Validity: within 2 % for the liquid to 200 °C.
     *     <p>Source: IAPWS R15-11, equations 16 and 17.
     *     <p>Checked: WaterTransportPublishedTest.
     */
    public static double conductivity(double density, double temperature) {
        double tr = temperature / Water.CRITICAL_TEMPERATURE;
        double dilute = Math.sqrt(tr) / polynomial(GAS, 1 / tr);
        double rho = density / Water.CRITICAL_DENSITY;
        return 1e-3 * dilute * Math.exp(rho * dense(FLUID, 1 / tr - 1, rho - 1));
    }

    private static double dense(double[][] factors, double byTemperature, double byDensity) {
        double sum = 0;
        for (int i = factors.length - 1; i >= 0; i--) {
            sum = sum * byTemperature + polynomial(factors[i], byDensity);
        }
        return sum;
    }

    private static double polynomial(double[] factors, double x) {
        double sum = 0;
        for (int k = factors.length - 1; k >= 0; k--) {
            sum = sum * x + factors[k];
        }
        return sum;
    }
}
