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
        double rate = 0;
        double[] fallen = {0};
        for (double step = FIRST_STEP; carbonLeaves && left > end * (1 + 1e-12); step *= WIDEN) {
            double next = Math.max(end, left * (1 - Math.min(step, WIDEST)));
            double middle = (left + next) / 2;
            double whole = stripped(all, left, next, rate, fallen);
            rate = (all.carbon() - whole) / (left - next);
            Composition half = all.withCarbon(stripped(all, left, middle, rate, fallen));
            double halves = stripped(half, middle, next, rate, fallen);
            all = all.withCarbon(Math.max(0, 2 * halves - whole));
            left = next;
        }
        Composition liquid = liquid(all, end, fallen);
        double calciumFallen = all.calcium() - liquid.calcium() * end;
        double sulfate = all.sulfate() - liquid.sulfate() * end;
        return new Left(liquid, calciumFallen - sulfate, sulfate);
    }

    /** Dissolved per kilogram, when {@code all} is what there is dissolved and fallen in the rest {@code left}. */
    private Composition liquid(Composition all, double left, double[] fallen) {
        Composition held = all.times(1 / left);
        if (!falls) {
            return held;
        }
        Composition settled = Precipitation.settled(at, held, fallen[0]);
        fallen[0] = held.calcium() - settled.calcium() - (held.sulfate() - settled.sulfate());
        return settled;
    }

    /**
     * All carbon there is after steam has left, implicit in what is free at its end [mol].
     *
     * @param rate   how much left per steam the step before
     * @param fallen calcite out of a kilogram the last time, a guess that is kept up [mol]
     */
    private double stripped(Composition all, double left, double next, double rate, double[] fallen) {
        Constants k = at.constants();
        double d = WATER / (k.set().henry(k.temperature()) * Constants.vapourPressure(k.temperature()));
        double before = all.carbon();
        double near = Math.max(0, before - rate * (left - next));
        return Roots.close(
                n -> n
                        - before
                        + d
                                * (left - next)
                                * at.of(liquid(all.withCarbon(n), next, fallen)).amount(Species.CO2),
                near,
                0.02 * (before - near) - 1e-6 * before,
                0,
                before,
                1e-11);
    }
}
