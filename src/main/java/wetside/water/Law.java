package wetside.water;

/**
 * An equilibrium constant over temperature.
 *
 * <pre>
 * log K = a + b T + c / T + d log T + e / T² + f T²
 * </pre>
 */
record Law(double a, double b, double c, double d, double e, double f) {
    /** CO2 + H2O = H + HCO3, the same in both sets. */
    static final Law FIRST = of(-356.3094, -0.06091964, 21834.37, 126.8339, -1684915);

    /** HCO3 = H + CO3, the same in both sets. */
    static final Law SECOND = of(-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9);

    private static final double GAS = 8.314462e-3;
    private static final double KILOCALORIE = 4.184;
    private static final double ROOM = 298.15;

    static Law of(double a, double b, double c, double d, double e) {
        return new Law(a, b, c, d, e, 0);
    }

    static Law constant(double log) {
        return of(log, 0, 0, 0, 0);
    }

    /** From its value at 25 °C and a heat of reaction that does not change. */
    static Law vantHoff(double atRoom, double kilocaloriesPerMole) {
        double slope = kilocaloriesPerMole * KILOCALORIE / (Math.log(10) * GAS);
        return of(atRoom + slope / ROOM, 0, -slope, 0, 0);
    }

    /** Two reactions one after the other. */
    Law and(Law next) {
        return new Law(a + next.a, b + next.b, c + next.c, d + next.d, e + next.e, f + next.f);
    }

    double log(double kelvin) {
        return a + b * kelvin + c / kelvin + d * Math.log10(kelvin) + e / (kelvin * kelvin) + f * kelvin * kelvin;
    }

    double at(double kelvin) {
        return Math.pow(10, log(kelvin));
    }
}
