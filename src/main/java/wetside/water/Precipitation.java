package wetside.water;

/** What falls out of a water, or would dissolve in it, until a mineral is just held; in a closed vessel. */
public final class Precipitation {
    /** Calcium carbonate [mg] per mol. */
    public static final double CALCITE_MILLIGRAMS = 100.087e3;

    private Precipitation() {}

    /**
     * How much calcite a water gives until it is just held.
     *
     * @return [mol/kg]; negative where it would dissolve that much
     */
    public static double calcite(Equilibrium at, Composition c) {
        return calcite(at, c, 0);
    }

    /** @param near a good guess, 0 for none */
    private static double calcite(Equilibrium at, Composition c, double near) {
        double most = 0.999999 * Math.min(c.calcium(), c.carbon());
        if (!(most > 0)) {
            return dissolving(at, c, 0);
        }
        double index = at.of(c).index(Mineral.CALCITE);
        if (index <= 0) {
            return dissolving(at, c, most);
        }
        if (near > 0 && near < most) {
            return Roots.close(
                    x -> -at.of(c.withoutCalcite(x)).index(Mineral.CALCITE), near, 1e-3 * near, 0, most, 1e-12);
        }
        return Roots.increasing(
                x -> -at.of(c.withoutCalcite(x)).index(Mineral.CALCITE), guess(index) * most, 0, most, 1e-12);
    }

    /** A rough beginning: the more it is beyond, the more of what is there comes down. */
    private static double guess(double index) {
        return 0.5 * (1 - Math.pow(10, -index));
    }

    private static double dissolving(Equilibrium at, Composition c, double most) {
        double least = -1e-4;
        while (index(at, c.withoutCalcite(least)) < 0 && least > -1) {
            least *= 2;
        }
        return Roots.increasing(x -> -index(at, c.withoutCalcite(x)), least / 4, least, Math.max(0, most), 1e-12);
    }

    /** As if there were a trace where an ion is absent. */
    private static double index(Equilibrium at, Composition c) {
        double found = at.of(c).index(Mineral.CALCITE);
        return Double.isNaN(found) ? -30 : found;
    }

    /** The water after calcite has fallen out as far as it can; unchanged where nothing falls. */
    public static Composition withoutExcess(Equilibrium at, Composition c) {
        return withoutExcess(at, c, 0);
    }

    private static Composition withoutExcess(Equilibrium at, Composition c, double near) {
        double index = at.of(c).index(Mineral.CALCITE);
        return index > 0 ? c.withoutCalcite(calcite(at, c, near)) : c;
    }

    /**
     * The water after calcite and anhydrite have fallen out as far as they can, each in turn until both are still.
     */
    public static Composition settled(Equilibrium at, Composition c) {
        return settled(at, c, 0);
    }

    /** @param near how much calcite falls, as far as one can guess; 0 where one cannot */
    static Composition settled(Equilibrium at, Composition c, double near) {
        Composition now = c;
        for (int turn = 0; turn < 50; turn++) {
            Composition without = withoutExcess(at, now, turn == 0 ? near : 0);
            Composition next = withoutSulfateExcess(at, without);
            if (next == without || Math.abs(next.calcium() - now.calcium()) <= 1e-9 * now.calcium()) {
                return next;
            }
            now = next;
        }
        return now;
    }

    private static Composition withoutSulfateExcess(Equilibrium at, Composition c) {
        double index = at.of(c).index(Mineral.ANHYDRITE);
        if (!(index > 0)) {
            return c;
        }
        double most = 0.999999 * Math.min(c.calcium(), c.sulfate());
        double x = Roots.increasing(
                y -> -at.of(c.withoutCalciumSulfate(y)).index(Mineral.ANHYDRITE), guess(index) * most, 0, most, 1e-12);
        return c.withoutCalciumSulfate(x);
    }
}
