package wetside.water;

/** The ions of an analysis as a conductivity meter meets them: whole, at the pH of the sample near 25 °C. */
final class Ions {
    static final int COUNT = 9;
    static final double[] CHARGE = {2, 2, 1, 1, 1, 2, 1, 1, 2};

    /** Limiting conductivity per equivalent at 25 °C [S cm²/eq], in the order of {@link #amounts}. */
    static final double[] LIMIT = {59.47, 53.0, 50.08, 73.48, 76.31, 80.0, 71.42, 44.5, 69.3};

    /** Of λ and of A, each of second degree in °C, and B; [mS/cm per mol/kg]. */
    static final double[][] OVER_TEMPERATURE = {
        {.009645, 1.984, 62.28, .03174, 2.334, 132.3, 2.8},
        {.01068, 1.695, 57.16, .02453, 1.915, 80.5, 2.1},
        {.003763, .877, 26.23, .00027, 1.141, 32.07, 1.7},
        {.003046, 1.261, 40.70, .00535, .9316, 22.59, 1.5},
        {.003817, 1.337, 40.99, .00613, .9469, 22.01, 1.5},
        {.01037, 2.838, 82.37, .03324, 5.889, 193.5, 2.6},
        {.001925, 1.214, 39.9, .00118, .5045, 23.31, 0.1},
        {.000614, .9048, 21.14, -.00503, .8957, 10.97, 0.1},
        {-.000326, 2.998, 64.03, -.00181, 5.542, 120.2, 2.3},
    };

    private static final Constants ROOM = ConstantSet.STANDARD.at(298.15);

    /** Ca, Mg, Na, K, Cl, SO4, NO3, HCO3, CO3 [mol/kg]. */
    final double[] amounts;

    private Ions(double... amounts) {
        this.amounts = amounts;
    }

    /** Alkalinity as bicarbonate and carbonate: above pH 8.3 there is less carbon than alkalinity. */
    static Ions of(Composition c) {
        double carbonate = Math.max(0, Math.min(c.alkalinity() - c.carbon(), c.alkalinity() / 2));
        if (c.carbon() > 0 && c.alkalinity() > 0) {
            Solution s = new Equilibrium(ROOM).of(c);
            carbonate =
                    s.amount(Species.CO3) + s.amount(Species.CACO3) + s.amount(Species.MGCO3) + s.amount(Species.NACO3);
        }
        double bicarbonate = Math.max(0, c.alkalinity() - 2 * carbonate);
        return new Ions(
                c.calcium(),
                c.magnesium(),
                c.sodium(),
                c.potassium(),
                c.chloride(),
                c.sulfate(),
                c.nitrate(),
                bicarbonate,
                carbonate);
    }

    /** Ionic strength [mol/kg]. */
    double strength() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += CHARGE[i] * CHARGE[i] * amounts[i];
        }
        return sum / 2;
    }
}
