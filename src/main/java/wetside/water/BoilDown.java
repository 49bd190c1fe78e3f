package wetside.water;

/**
 * A water that is boiled down at one temperature: steam leaves, what is dissolved stays.
 *
 * @param at           the temperature
 * @param carbonLeaves whether carbon dioxide leaves with the steam in balance with the liquid, or stays; a boiler lies
 *                     between
 * @param falls        whether calcite and anhydrite fall out as soon as they can
 */
public record BoilDown(Equilibrium at, boolean carbonLeaves, boolean falls) {
    /** Mol of water in a kilogram. */
    private static final double WATER = 55.508;

    /** Steps of steam as shares of what is left: small while free carbon dioxide leaves in a rush, then wider. */
    private static final double FIRST_STEP = 2e-5;

    private static final double WIDEN = 1.5;
    private static final double WIDEST = 0.04;

    /**
     * What is left of a kilogram.
     *
     * @param water   per kilogram of itself
     * @param calcite fallen out [mol per kg of feed]
     * @param sulfate calcium sulfate fallen out [mol per kg of feed]
     */
    public record Left(Composition water, double calcite, double sulfate) {}

    /**
     * Boils a kilogram of feed down.
     *
     * <pre>
     * d(n C) / d(steam) = −D m(CO2),  D = 55.508 / (K_H p_w)
     * </pre>
     *
     * The equation is stiff (D is some thousands: a thousandth of the water as steam takes most free carbon dioxide along)
     * and is stepped implicitly, each step once whole and once in halves to be of second order.
     *
     * @param factor by how much the rest is concentrated, 1 or more
     *
     * Source: checks/water.md section 6. Checked: WaterChemistryPublishedTest.
     */
    public Left by(Composition feed, double factor) {
        Composition all = feed;
        double left = 1;
        double end = 1 / factor;
        for (double step = FIRST_STEP; carbonLeaves && left > end * (1 + 1e-12); step *= WIDEN) {
            double next = Math.max(end, left * (1 - Math.min(step, WIDEST)));
            double middle = (left + next) / 2;
            double whole = stripped(all, left, next);
            double halves = stripped(all.withCarbon(stripped(all, left, middle)), middle, next);
            all = all.withCarbon(Math.max(0, 2 * halves - whole));
            left = next;
        }
        Composition liquid = liquid(all, end);
        double calciumFallen = all.calcium() - liquid.calcium() * end;
        double sulfate = all.sulfate() - liquid.sulfate() * end;
        return new Left(liquid, calciumFallen - sulfate, sulfate);
    }

    /** Dissolved per kilogram, when {@code all} is what there is dissolved and fallen in the rest {@code left}. */
    private Composition liquid(Composition all, double left) {
        Composition held = all.times(1 / left);
        return falls ? Precipitation.settled(at, held) : held;
    }

    /** All carbon there is after steam has left, implicit in what is free at its end [mol]. */
    private double stripped(Composition all, double left, double next) {
        Constants k = at.constants();
        double d = WATER / (k.set().henry(k.temperature()) * Constants.vapourPressure(k.temperature()));
        double before = all.carbon();
        return Roots.increasing(
                n -> n
                        - before
                        + d
                                * (left - next)
                                * at.of(liquid(all.withCarbon(n), next)).amount(Species.CO2),
                before * 0.999,
                0,
                before,
                1e-13);
    }
}
