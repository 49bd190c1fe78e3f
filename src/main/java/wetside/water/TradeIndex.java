package wetside.water;

/** Indices as the trade quotes them: by simple formulas, from few measurements. Rougher than {@link Equilibrium}. */
public final class TradeIndex {
    private TradeIndex() {}

    /**
     * pH at which a water would just hold its calcium carbonate, after Langelier, simplified.
     *
     * <pre>
     * pHs = 9.30 + A + B − (C + D),  A = (log TDS − 1) / 10,  B = −13.12 log T + 34.55,
     * C = log Ca − 0.4,  D = log Alk
     * </pre>
     *
     * @param solids     dissolved solids [mg/l]
     * @param calcium    calcium hardness [mg/l as CaCO3]
     * @param alkalinity [mg/l as CaCO3]
     * @param kelvin     temperature [K]
     *
     * Validity: 0 to about 80 °C; reads 0.2 low when cold and 0.1 high when hot against its own constants.
     * Source: UFC 3-240-13FN, appendix B; closed form of B as quoted on web pages. Checked: WaterChemistryPublishedTest.
     */
    public static double saturationPh(double solids, double calcium, double alkalinity, double kelvin) {
        double a = (Math.log10(solids) - 1) / 10;
        double b = -13.12 * Math.log10(kelvin) + 34.55;
        return 9.30 + a + b - (Math.log10(calcium) - 0.4 + Math.log10(alkalinity));
    }

    /** Langelier: above 0 lime can fall out. */
    public static double langelier(double ph, double saturationPh) {
        return ph - saturationPh;
    }

    /** Ryznar: below 6 scale, above 7 a water that takes. */
    public static double ryznar(double ph, double saturationPh) {
        return 2 * saturationPh - ph;
    }

    /**
     * How much more chloride and sulfate there is than bicarbonate that would hold them off: below 0.8 unlikely to corrode
     * mild steel, above 1.2 likely.
     *
     * <pre>
     * (Cl + SO4) / (HCO3 + CO3), in equivalents
     * </pre>
     *
     * @return infinite for a water with those and no alkalinity
     *
     * Source: Larson and Skold; definition in 35 Illinois Administrative Code 604.900, bands from memory. Checked:
     * WaterChemistryPublishedTest.
     */
    public static double larsonSkold(Composition c) {
        double acids = c.chloride() + 2 * c.sulfate();
        return acids == 0 ? 0 : acids / Math.max(0, c.alkalinity());
    }
}
