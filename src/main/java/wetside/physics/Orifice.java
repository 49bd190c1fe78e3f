package wetside.physics;

/** Liquid through a small hole, a jet or a valve. */
public final class Orifice {
    private Orifice() {}

    /**
     * Mass flow through a hole.
     *
     * <pre>W = Cd A √(2 ρ |Δp|),   with the sign of Δp</pre>
     *
     * @param discharge Cd [–], 0.6 (sharp edge) to 0.97 (rounded)
     * @param area A [m²], not negative
     * @param density ρ [kg/m³], above 0
     * @param difference Δp [Pa], upstream less downstream, signed
     * @return W [kg/s], with the sign of Δp
     *     <p>Validity: hole much smaller than the pipe, Re above about 1000, no cavitation.
     *     <p>Source: Torricelli's law with a discharge factor.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double massFlow(double discharge, double area, double density, double difference) {
        return Math.copySign(discharge * area * Math.sqrt(2 * density * Math.abs(difference)), difference);
    }

    /**
     * Discharge factor of a standard orifice plate with corner, flange or D and D/2 tappings.
     *
     * <pre>
     * C = 0.5961 + 0.0261 β² − 0.216 β⁸ + 0.000521 (10⁶ β/Re)^0.7 + (0.0188 + 0.0063 A) β^3.5 (10⁶/Re)^0.3
     *     + (0.043 + 0.080 e^(−10 L1) − 0.123 e^(−7 L1)) (1 − 0.11 A) β⁴/(1 − β⁴) − 0.031 (M − 0.8 M^1.1) β^1.3
     * A = (19 000 β/Re)^0.8,   M = 2 L2/(1 − β)
     * </pre>
     *
     * Too large for the jets of a machine (it needs 12.5 mm); it is here to check the flow law on published plates.
     *
     * @param beta hole over pipe bore β [–], 0.1 to 0.75
     * @param re Reynolds number in the pipe [–], above 5000
     * @param l1 distance of the upstream tapping over D [–], 1 for D and D/2
     * @param l2 distance of the downstream tapping over D [–], 0.47 for D and D/2
     * @return C [–]
     *     <p>Validity: pipe 71 to 1000 mm; within 0.5 %.
     *     <p>Source: Reader-Harris/Gallagher equation, ISO 5167-2:2003 §5.3.2.1.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double plate(double beta, double re, double l1, double l2) {
        double a = Math.pow(19000 * beta / re, 0.8);
        double m = 2 * l2 / (1 - beta);
        double beta4 = WaterState.power(beta, 4);
        return 0.5961
                + 0.0261 * beta * beta
                - 0.216 * beta4 * beta4
                + 0.000521 * Math.pow(1e6 * beta / re, 0.7)
                + (0.0188 + 0.0063 * a) * Math.pow(beta, 3.5) * Math.pow(1e6 / re, 0.3)
                + (0.043 + 0.080 * Math.exp(-10 * l1) - 0.123 * Math.exp(-7 * l1))
                        * (1 - 0.11 * a)
                        * beta4
                        / (1 - beta4)
                - 0.031 * (m - 0.8 * Math.pow(m, 1.1)) * Math.pow(beta, 1.3);
    }
}
