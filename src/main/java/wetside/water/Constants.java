package wetside.water;

/** A set of constants at one temperature. Immutable; worth keeping for many waters. */
public final class Constants {
    /** Density of water and its permittivity at the boiling line. */
    private static final double CRITICAL = 647.096;

    final ConstantSet set;
    final double kelvin;
    final double first;
    final double second;
    final double water;
    final double[] pair = new double[Species.ALL.length];
    final double[] linear = new double[Species.ALL.length];
    /** B times the size of the ion. */
    final double[] spread = new double[Species.ALL.length];
    /** A times the square of the charge, for a natural logarithm. */
    final double[] pull = new double[Species.ALL.length];

    private final double[] product = new double[Mineral.values().length];

    Constants(ConstantSet set, double kelvin) {
        this.set = set;
        this.kelvin = kelvin;
        first = Law.FIRST.at(kelvin);
        second = Law.SECOND.at(kelvin);
        water = set.water(kelvin);
        double[] ab = debyeHueckel(kelvin);
        for (Species s : Species.ALL) {
            int i = s.ordinal();
            pair[i] = set.pair(s, kelvin);
            linear[i] = Math.log(10) * set.linear(s);
            spread[i] = ab[1] * set.size(s);
            pull[i] = Math.log(10) * ab[0] * s.charge() * s.charge();
        }
        for (Mineral m : Mineral.values()) {
            product[m.ordinal()] = set.product(m, kelvin);
        }
    }

    public double temperature() {
        return kelvin;
    }

    public ConstantSet set() {
        return set;
    }

    public double product(Mineral m) {
        return product[m.ordinal()];
    }

    /**
     * Slopes of the Debye-Hückel law on the boiling line.
     *
     * <pre>
     * A = B x / (2 ln 10),  B = √(8π N x ρ / 1000),  x = e² / (ε k T)
     * </pre>
     *
     * @param kelvin temperature [K], 273 to 423
     * @return A [√(kg/mol)], B [√(kg/mol)/Å]
     *
     * Source: Bradley and Pitzer 1979 for the permittivity, Wagner and Pruss 2002 for the density, as in checks/water.md
     * section 1.4. Checked: WaterChemistryPublishedTest.
     */
    public static double[] debyeHueckel(double kelvin) {
        double bar = 1.01325 * vapourPressure(kelvin);
        double p = Math.max(1, bar);
        double d = 342.79 * Math.exp(-5.0866e-3 * kelvin + 9.469e-7 * kelvin * kelvin);
        double c = -2.0525 + 3115.9 / (kelvin - 182.89);
        double b = -8032.5 + 4.2142e6 / kelvin + 2.1417 * kelvin;
        double permittivity = d + c * Math.log((b + p) / (b + 1000));
        double x = 1.671008e-3 / (permittivity * kelvin);
        double slopeB = Math.sqrt(8 * Math.PI * 6.02252e23 * x * density(kelvin) / 1000 / 1000);
        return new double[] {slopeB * x / (2 * Math.log(10)), slopeB / 1e8};
    }

    /** Liquid on its boiling line [kg/m³]. */
    static double density(double kelvin) {
        double t = Math.cbrt(1 - kelvin / CRITICAL);
        double t2 = t * t;
        double t5 = t2 * t2 * t;
        double t16 = Math.pow(t, 16);
        double t43 = Math.pow(t, 43);
        double t110 = Math.pow(t, 110);
        return 322
                * (1
                        + 1.99274064 * t
                        + 1.09965342 * t2
                        - 0.510839303 * t5
                        - 1.75493479 * t16
                        - 45.5170352 * t43
                        - 674694.5 * t110);
    }

    /** Of water, near enough for gases over it [atm]. */
    static double vapourPressure(double kelvin) {
        return Math.exp(11.6702 - 3816.44 / (kelvin - 46.13));
    }
}
