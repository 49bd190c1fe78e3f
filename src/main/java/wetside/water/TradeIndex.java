package wetside.water;

/** Indices as the trade quotes them: by simple formulas, from few measurements. Rougher than {@link Equilibrium}. */
public final class TradeIndex {
    private static final double[] FAHRENHEIT = {
        32, 40, 50, 60, 70, 80, 86, 90, 100, 110, 120, 130, 140, 150, 160, 170, 176
    };
    private static final double[] FACTOR = {
        2.60, 2.48, 2.34, 2.20, 2.06, 1.95, 1.88, 1.84, 1.74, 1.65, 1.57, 1.48, 1.40, 1.32, 1.26, 1.19, 1.16
    };

    private TradeIndex() {}

    /**
     * pH at which a water would just hold its calcium carbonate, after Langelier, simplified.
     *
     * <pre>
     * pHs = 9.30 + A + B − (C + D),  A = (log TDS − 1) / 10,  B from the handbook's table,
     * C = log Ca − 0.4,  D = log Alk
     * </pre>
     *
     * @param solids     dissolved solids [mg/l]
     * @param calcium    calcium hardness [mg/l as CaCO3]
     * @param alkalinity [mg/l as CaCO3]
     * @param kelvin     temperature [K]
     *
     * Validity: 0 to 80 °C, the table's; beyond it goes on as −13.12 log T + 34.55, joined on. Rougher than the constants it
     * stands for, by 0.1 to 0.2.
     * Source: UFC 3-240-13FN, appendix B; the closed form as quoted on web pages. Checked: WaterChemistryPublishedTest.
     */
    public static double saturationPh(double solids, double calcium, double alkalinity, double kelvin) {
        double a = (Math.log10(solids) - 1) / 10;
        double b = temperatureFactor(kelvin);
        return 9.30 + a + b - (Math.log10(calcium) - 0.4 + Math.log10(alkalinity));
    }

    private static double temperatureFactor(double kelvin) {
        double fahrenheit = (kelvin - 273.15) * 1.8 + 32;
        int last = FAHRENHEIT.length - 1;
        if (fahrenheit >= FAHRENHEIT[last] || fahrenheit <= FAHRENHEIT[0]) {
            int end = fahrenheit <= FAHRENHEIT[0] ? 0 : last;
            double at = (FAHRENHEIT[end] - 32) / 1.8 + 273.15;
            return FACTOR[end] - 13.12 * Math.log10(kelvin / at);
        }
        int i = 1;
        while (FAHRENHEIT[i] < fahrenheit) {
            i++;
        }
        double share = (fahrenheit - FAHRENHEIT[i - 1]) / (FAHRENHEIT[i] - FAHRENHEIT[i - 1]);
        return FACTOR[i - 1] + share * (FACTOR[i] - FACTOR[i - 1]);
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
