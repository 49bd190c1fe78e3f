package wetside.physics;

/** Valves by their flow coefficient: K_v, and its American cousin C_v. */
public final class FlowCoefficient {
    /** C_v [US gal/min at 1 psi] of a valve with K_v = 1 m³/h at 1 bar. */
    public static final double CV_PER_KV = 1.156;

    /** Density of the water at 15 °C that relative densities refer to [kg/m³], IEC 60534-2-1. */
    private static final double REFERENCE_DENSITY = 999.1;

    private FlowCoefficient() {}

    /**
     * The factor b of Δp = b W|W| for a valve of known K_v.
     *
     * <pre>b = 10⁵ Pa · (3600)² / (ρ · 999.1 kg/m³ · K_v²)</pre>
     *
     * @param kv K_v [m³/h at 1 bar], above 0
     * @param density ρ [kg/m³], above 0
     * @return b [Pa s²/kg²]
     *     <p>Validity: turbulent, not choked.
     *     <p>Source: definition of K_v, IEC 60534-1.
     *     <p>Checked: TermsTest.
     */
    public static double quadratic(double kv, double density) {
        double inSi = kv / 3600;
        return 1e5 / (density * REFERENCE_DENSITY * inSi * inSi);
    }

    /**
     * K_v a liquid flow needs, choked or not.
     *
     * <pre>
     * K_v = Q √((ρ/999.1) / Δp),   Δp ≤ F_L² (p1 − F_F pv)   [m³/h, bar],   F_F = 0.96 − 0.28 √(pv/pc)
     * </pre>
     *
     * @param flow Q [m³/s], above 0
     * @param density ρ [kg/m³], above 0
     * @param upstream absolute p1 [Pa]
     * @param downstream absolute p2 [Pa], below p1
     * @param vapour vapour pressure pv [Pa]
     * @param critical critical pressure pc [Pa]
     * @param recovery F_L [–], 0.5 to 1
     * @return K_v [m³/h at 1 bar]
     *     <p>Validity: turbulent flow, valve as wide as its pipe.
     *     <p>Source: IEC 60534-2-1:2011, §7.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double liquid(
            double flow,
            double density,
            double upstream,
            double downstream,
            double vapour,
            double critical,
            double recovery) {
        double choked = chokedDrop(upstream, vapour, critical, recovery);
        double drop = Math.min(upstream - downstream, choked);
        return flow * 3600 * Math.sqrt(density / REFERENCE_DENSITY / (drop / 1e5));
    }

    /**
     * The pressure drop beyond which a liquid flashing in a valve flows no faster.
     *
     * <pre>Δp = F_L² (p1 − F_F pv),   F_F = 0.96 − 0.28 √(pv/pc)</pre>
     *
     * @param upstream absolute p1 [Pa]
     * @param vapour vapour pressure pv [Pa]
     * @param critical critical pressure pc [Pa]
     * @param recovery F_L [–], 0.5 to 1
     * @return Δp [Pa]
     *     <p>Validity: liquid upstream.
     *     <p>Source: IEC 60534-2-1:2011, §7.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double chokedDrop(double upstream, double vapour, double critical, double recovery) {
        double ff = 0.96 - 0.28 * Math.sqrt(vapour / critical);
        return recovery * recovery * (upstream - ff * vapour);
    }
}
