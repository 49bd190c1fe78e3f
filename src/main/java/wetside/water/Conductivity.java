package wetside.water;

/** How well a water conducts. */
public final class Conductivity {
    private static final double ROOM = 298.15;
    private static final double DAVIES_A = 0.509;

    private Conductivity() {}

    /**
     * Conductivity at 25 °C from the ions of an analysis, not split into pairs.
     *
     * <pre>
     * κ = Σ z c Λ0 γ^α,  log γ = −A z² (√I / (1 + √I) − 0.3 I),
     * α = 0.6 / √z where I &lt; 0.36 z, else √I / z
     * </pre>
     *
     * @param c dissolved, its carbon and alkalinity included
     * @return [S/m]
     *
     * Validity: to I = 1 mol/kg; within about 3 % of a full model on thirty natural waters, and fresh waters in the field
     * scatter by 5 to 10 %.
     * Source: form after Appelo 2010, from memory; limiting conductivities of the CRC Handbook (HCO3, CO3, NO3 from memory).
     * Checked: WaterChemistryPublishedTest.
     */
    public static double atRoom(Composition c) {
        Ions ions = Ions.of(c);
        double strength = ions.strength();
        double sum = 0;
        for (int i = 0; i < Ions.COUNT; i++) {
            double z = Ions.CHARGE[i];
            double root = Math.sqrt(strength);
            double log = -DAVIES_A * z * z * (root / (1 + root) - 0.3 * strength);
            double alpha = strength < 0.36 * z ? 0.6 / Math.sqrt(z) : root / z;
            sum += z * ions.amounts[i] * Ions.LIMIT[i] * Math.pow(10, alpha * log);
        }

        return 0.1 * sum;
    }

    /**
     * Conductivity at a temperature, by each ion's own law.
     *
     * <pre>
     * κ = Σ c (λ(t) − A(t) √I / (1 + B √I)),  λ and A of second degree in t
     * </pre>
     *
     * @param kelvin temperature [K]
     * @return [S/m]
     *
     * Validity: measured from 0 to 95 °C; above it goes on by its polynomials and is good to perhaps 10 %.
     * Source: McCleskey, Nordstrom, Ryan and Ball 2012, Geochim. Cosmochim. Acta 77:369, coefficients in checks/water.md
     * section 4.3. Checked: WaterChemistryPublishedTest.
     */
    public static double at(Composition c, double kelvin) {
        Ions ions = Ions.of(c);
        double t = kelvin - 273.15;
        double root = Math.sqrt(ions.strength());
        double sum = 0;
        for (int i = 0; i < Ions.COUNT; i++) {
            double[] p = Ions.OVER_TEMPERATURE[i];
            double limit = (p[0] * t + p[1]) * t + p[2];
            double slope = (p[3] * t + p[4]) * t + p[5];
            sum += ions.amounts[i] * (limit - slope * root / (1 + p[6] * root));
        }
        return 0.1 * sum;
    }

    /** Conductivity at a temperature per conductivity at 25 °C, of this water. */
    public static double ratio(Composition c, double kelvin) {
        double room = at(c, ROOM);
        return room > 0 ? at(c, kelvin) / room : 1;
    }
}
