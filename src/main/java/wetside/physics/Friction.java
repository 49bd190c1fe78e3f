package wetside.physics;

/** Friction of water in pipes: the Darcy friction factor f and the pressure it costs. */
public final class Friction {
    private static final double EIGHT_TO_12 = 68719476736.0;

    private Friction() {}

    /**
     * Pressure drop of laminar flow in a round pipe.
     *
     * <pre>Δp = 128 μ L Q / (π D⁴)</pre>
     *
     * @param flow Q [m³/s], signed
     * @param length L [m], above 0
     * @param bore D [m], above 0
     * @param viscosity μ [Pa·s], above 0
     * @return Δp [Pa], with the sign of the flow
     *     <p>Validity: Reynolds number below about 2000, L much longer than D.
     *     <p>Source: Hagen–Poiseuille; White, Fluid Mechanics, §6.4.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double laminar(double flow, double length, double bore, double viscosity) {
        return 128 * viscosity * length * flow / (Math.PI * power4(bore));
    }

    /**
     * Reynolds number of a mass flow in a round pipe.
     *
     * <pre>Re = 4 |W| / (π D μ)</pre>
     *
     * @param massFlow W [kg/s]
     * @param bore D [m], above 0
     * @param viscosity μ [Pa·s], above 0
     * @return Re [–], not negative
     *     <p>Validity: any.
     *     <p>Source: definition.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double reynolds(double massFlow, double bore, double viscosity) {
        return 4 * Math.abs(massFlow) / (Math.PI * bore * viscosity);
    }

    /**
     * Friction factor in every regime by one smooth formula.
     *
     * <pre>
     * f = 8 [(8/Re)¹² + (A + B)^−1.5]^(1/12)
     * A = [2.457 ln(1 / ((7/Re)^0.9 + 0.27 ε/D))]¹⁶,   B = (37 530/Re)¹⁶
     * </pre>
     *
     * Chosen for the plant because most flows of a small appliance are laminar or in transition, and it has no seam.
     *
     * @param re Reynolds number [–], above 0
     * @param roughness ε/D [–], 0 to 0.05
     * @return Darcy friction factor f [–]
     *     <p>Validity: within a few per cent of Colebrook for Re > 4000; transition is only a plausible bridge.
     *     <p>Source: S. W. Churchill, Chemical Engineering 84(24), 1977, p. 91.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double churchill(double re, double roughness) {
        double log = -Math.log(Math.pow(7 / re, 0.9) + 0.27 * roughness);
        double a = WaterState.power(2.457 * log, 16);
        double b = WaterState.power(37530 / re, 16);
        return 8 * Math.pow(WaterState.power(8 / re, 12) + Math.pow(a + b, -1.5), 1 / 12.0);
    }

    /**
     * Friction factor of turbulent flow, implicit.
     *
     * <pre>1/√f = −2 log10(ε/(3.7 D) + 2.51/(Re √f))</pre>
     *
     * @param re Reynolds number [–], above 3000
     * @param roughness ε/D [–], 0 to 0.05
     * @return Darcy friction factor f [–], iterated to rounding
     *     <p>Validity: turbulent flow, commercial pipe.
     *     <p>Source: C. F. Colebrook, J. Inst. Civ. Eng. 11, 1939, p. 133.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double colebrook(double re, double roughness) {
        double x = 1 / Math.sqrt(haaland(re, roughness));
        for (int turn = 0; turn < 50; turn++) {
            double inner = roughness / 3.7 + 2.51 * x / re;
            double residual = x + 2 * Math.log10(inner);
            double step = residual / (1 + 2 / Math.log(10) * 2.51 / re / inner);
            x -= step;
            if (Math.abs(step) < 1e-14 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }

    /**
     * Friction factor of turbulent flow, explicit.
     *
     * <pre>f = 0.25 / [log10(ε/(3.7 D) + 5.74/Re^0.9)]²</pre>
     *
     * @param re Reynolds number [–], 4000 to 1e8
     * @param roughness ε/D [–], 1e-6 to 0.05
     * @return Darcy friction factor f [–]
     *     <p>Validity: within 3 % of Colebrook.
     *     <p>Source: Swamee and Jain, J. Hydraulics Div. ASCE 102, 1976, p. 657.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double swameeJain(double re, double roughness) {
        double log = Math.log10(roughness / 3.7 + 5.74 / Math.pow(re, 0.9));
        return 0.25 / (log * log);
    }

    /**
     * Friction factor of turbulent flow, explicit.
     *
     * <pre>1/√f = −1.8 log10[6.9/Re + (ε/(3.7 D))^1.11]</pre>
     *
     * @param re Reynolds number [–], 4000 to 1e8
     * @param roughness ε/D [–], 0 to 0.05
     * @return Darcy friction factor f [–]
     *     <p>Validity: within 2 % of Colebrook.
     *     <p>Source: S. E. Haaland, J. Fluids Eng. 105, 1983, p. 89.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double haaland(double re, double roughness) {
        double root = -1.8 * Math.log10(6.9 / re + Math.pow(roughness / 3.7, 1.11));
        return 1 / (root * root);
    }

    /**
     * Friction factor in three pieces: laminar, a cubic bridge, Swamee–Jain.
     *
     * <pre>
     * Re ≤ 2000: 64/Re;   Re ≥ 4000: Swamee–Jain;   between: X1 + R (X2 + R (X3 + R X4)), R = Re/2000
     * </pre>
     *
     * Here to compare with water-network programs, which use it; the plant uses {@link #churchill}.
     *
     * @param re Reynolds number [–], above 0
     * @param roughness ε/D [–], 0 to 0.05
     * @return Darcy friction factor f [–]
     *     <p>Validity: continuous with continuous slope at 4000; the slope jumps slightly at 2000.
     *     <p>Source: Dunlop 1991, as given in the EPANET 2.2 users manual, §12.1.1.
     *     <p>Checked: FrictionPublishedTest.
     */
    public static double dunlop(double re, double roughness) {
        if (re <= 2000) {
            return 64 / re;
        }
        if (re >= 4000) {
            return swameeJain(re, roughness);
        }
        double y2 = roughness / 3.7 + 5.74 / Math.pow(4000, 0.9);
        double y3 = -2 * Math.log10(y2);
        double fa = 1 / (y3 * y3);
        double fb = fa * (2 - 3.6 / Math.log(10) * 5.74 / Math.pow(4000, 0.9) / (y2 * y3));
        double r = re / 2000;
        double x2 = 0.128 - 17 * fa + 2.5 * fb;
        double x3 = -0.128 + 13 * fa - 2 * fb;
        double x4 = 0.032 - 3 * fa + 0.5 * fb;
        return 7 * fa - fb + r * (x2 + r * (x3 + r * x4));
    }

    /**
     * Pressure drop of a straight pipe in every regime, and its slope.
     *
     * <pre>Δp = f(Re) · L/D · ρ V²/2  =  f·Re · Re · μ² L / (2 ρ D³),   f by Churchill</pre>
     *
     * Written with f·Re, which tends to 64, so that rest is no special case.
     *
     * @param massFlow W [kg/s], signed
     * @param length L [m], above 0
     * @param bore D [m], above 0
     * @param roughness ε/D [–], 0 to 0.05
     * @param density ρ [kg/m³], above 0
     * @param viscosity μ [Pa·s], above 0
     * @param into receives Δp [Pa] (sign of the flow) and dΔp/dW [Pa s/kg] (positive)
     *     <p>Validity: as {@link #churchill}.
     *     <p>Source: Darcy–Weisbach with Churchill 1977.
     *     <p>Checked: FrictionPublishedTest; slope in FrictionTest.
     */
    public static void pipe(
            double massFlow,
            double length,
            double bore,
            double roughness,
            double density,
            double viscosity,
            double[] into) {
        double byFlow = 4 / (Math.PI * bore * viscosity);
        double re = Math.max(Math.abs(massFlow) * byFlow, 1e-9);
        double c = Math.pow(7 / re, 0.9);
        double inner = c + 0.27 * roughness;
        double log = -Math.log(inner);
        double a15 = 2.457 * WaterState.power(2.457 * log, 15);
        double b = WaterState.power(37530 / re, 16);
        double sum = a15 * log + b;
        double sumSlope = (16 * a15 * 0.9 * c / inner - 16 * b) / re;
        double rough = WaterState.power(re, 12) * Math.pow(sum, -1.5);
        double all = EIGHT_TO_12 + rough;
        double fRe = 8 * Math.pow(all, 1 / 12.0);
        double fReSlope = fRe / (12 * all) * rough * (12 / re - 1.5 * sumSlope / sum);
        double scale = viscosity * viscosity * length / (2 * density * bore * bore * bore);
        into[0] = fRe * massFlow * byFlow * scale;
        into[1] = (fRe + fReSlope * re) * byFlow * scale;
    }

    private static double power4(double x) {
        return x * x * x * x;
    }
}
