package wetside.physics;

/**
 * Terms a and b of Δp = a q + b q|q| (q a mass flow) for pipes and orifices: the form in which the plant keeps every passive
 * branch, because it inverts in closed form with a finite slope at rest.
 */
public final class Terms {
    /** Discharge coefficient of a sharp-edged hole: 0.60-0.65 in the handbooks (physics.md §2.3). */
    public static final double SHARP = 0.62;
    /** Pressure difference below which an orifice is taken as laminar, to keep its slope at rest finite [Pa]. */
    private static final double LAMINAR_BELOW = 500;

    private Terms() {}

    /**
     * Water as a pipe or jet sees it.
     *
     * @param rho density [kg/m³]
     * @param mu  dynamic viscosity [Pa s]
     */
    public record Liquid(double rho, double mu) {
        /** 20 °C, 1 atm (IAPWS R6-95/R12-08 as tabled in physics.md §1.3). */
        public static final Liquid COLD = new Liquid(998.21, 1.0016e-3);
        /** 93 °C (same table). */
        public static final Liquid HOT = new Liquid(963.28, 0.3037e-3);
        /** 120 °C (same table). */
        public static final Liquid BOILER = new Liquid(943.11, 0.2320e-3);
    }

    /**
     * Laminar term of a round pipe (Hagen-Poiseuille, in mass flow).
     *
     * <pre>a = 128 μ L / (π D⁴ ρ)</pre>
     *
     * @param bore   inner diameter D [m]
     * @param length L [m]
     * @return a [Pa s/kg]
     * Validity: laminar flow. Source: Hagen-Poiseuille, any handbook. Checked: TermsTest
     */
    public static double pipeLaminar(double bore, double length, Liquid w) {
        return 128 * w.mu() * length / (Math.PI * Math.pow(bore, 4) * w.rho());
    }

    /**
     * Turbulent term of a round pipe with bends.
     *
     * <pre>b = (f L/D + ΣK) / (2 ρ A²)</pre>
     *
     * @param sumK loss coefficients of bends and ends; f is taken as 0.03 (Re about 5000, smooth tube)
     * @return b [Pa s²/kg²]
     * Validity: coarse near transition, where these pipes cost little. Source: Darcy-Weisbach, any handbook. Checked:
     * TermsTest
     */
    public static double pipeTurbulent(double bore, double length, double sumK, Liquid w) {
        double area = Math.PI * bore * bore / 4;
        return (0.03 * length / bore + sumK) / (2 * w.rho() * area * area);
    }

    /**
     * Turbulent term of an orifice.
     *
     * <pre>b = 1 / (2 ρ (Cd A)²)</pre>
     *
     * @param bore diameter [m]
     * @param cd   discharge coefficient
     * @return b [Pa s²/kg²]
     * Validity: free or submerged liquid jets without cavitation. Source: Bernoulli with Cd, any handbook. Checked:
     * TermsTest
     */
    public static double jet(double bore, double cd, Liquid w) {
        double cda = cd * Math.PI * bore * bore / 4;
        return 1 / (2 * w.rho() * cda * cda);
    }

    /**
     * The small laminar term that keeps an orifice's slope finite at rest.
     *
     * <pre>a = √(b · 500 Pa)</pre>
     *
     * Validity: changes flow by less than 1 % above 0.2 bar. Source: regularisation, own. Checked: TermsTest
     */
    public static double jetLaminar(double b) {
        return Math.sqrt(b * LAMINAR_BELOW);
    }

    /**
     * Flow that a pressure difference drives through such a branch, and its slope.
     *
     * <pre>q = 2 Δp/(a + s),  dq/dΔp = 1/s,   s = √(a² + 4 b |Δp|)</pre>
     *
     * This form of the root loses no digits at small flow.
     *
     * @param a    laminar term [Pa s/kg], above 0
     * @param b    turbulent term [Pa s²/kg²], not negative
     * @param drop Δp [Pa], signed
     * @param into receives q [kg/s] (sign of Δp) and dq/dΔp [kg/(s Pa)] (above 0)
     * Validity: wherever a and b hold. Source: root of the quadratic. Checked: TermsTest
     */
    public static void flow(double a, double b, double drop, double[] into) {
        double s = Math.sqrt(a * a + 4 * b * Math.abs(drop));
        into[0] = 2 * drop / (a + s);
        into[1] = 1 / s;
    }
}
