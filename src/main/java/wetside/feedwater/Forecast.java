package wetside.feedwater;

import java.util.SplittableRandom;
import wetside.analysis.Ranged;
import wetside.analysis.Use;
import wetside.analysis.Waters;
import wetside.water.BoilDown;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;
import wetside.water.Precipitation;

/**
 * Scale to come at one hot place. What falls is thermodynamics; where it sticks is assumed, with wide ranges.
 *
 * @param falls   calcium carbonate and sulfate a year [kg]
 * @param element growth on what heats [m/a]; NaN without a known surface
 * @param wall    growth on walls and probe [m/a]; NaN where it is no vessel
 * @param jet     growth on the wall of a jet [m/a]; NaN where there is none
 * @param years   until the cake on the element is as thick as {@link #MARK}
 * @param litres  heated until then
 */
public record Forecast(Hot place, Ranged falls, Ranged element, Ranged wall, Ranged jet, Ranged years, Ranged litres) {
    /** A cake this thick is noticed and should come off: where the twin's fault begins [m]. */
    public static final double MARK = 0.5e-3;

    /** Share of what falls that sticks to what heats; the rest goes to walls or lies loose. */
    static final double[] ON_ELEMENT = {0.25, 0.7};

    /** Share of the rest that sticks to walls. */
    static final double[] ON_WALLS = {0.1, 0.5};

    /** Share of what the brewing water can drop that sticks in the jet. */
    static final double[] IN_JET = {5e-5, 8e-4};

    /** Of the cake, pores included [kg/m³]. */
    static final double[] DENSITY = {1600, 2500};

    /** Length of a jet [m]. */
    private static final double JET_LENGTH = 3e-3;

    private static final double SULFATE = 0.13614;
    private static final double CALCITE = 0.100087;

    /** What was drawn beside the water. */
    private record Luck(double kept, double element, double walls, double jet, double density) {
        static Luck middle() {
            return new Luck(0.5, 0.5, 0.5, 0.5, 0.5);
        }

        static double between(double[] ends, double share) {
            return ends[0] + (ends[1] - ends[0]) * share;
        }

        /** For shares that may differ by more than they are. */
        static double manifold(double[] ends, double share) {
            return ends[0] * Math.pow(ends[1] / ends[0], share);
        }
    }

    /** In the same order for every water, so that waters can be compared. */
    private static Luck[] luck(int n) {
        double[][] u = new double[5][n];
        SplittableRandom r = new SplittableRandom(11);
        for (double[] row : u) {
            int[] cells = new int[n];
            for (int k = 0; k < n; k++) {
                int j = r.nextInt(k + 1);
                cells[k] = cells[j];
                cells[j] = k;
            }
            for (int k = 0; k < n; k++) {
                row[k] = (cells[k] + r.nextDouble()) / n;
            }
        }
        Luck[] all = new Luck[n];
        for (int k = 0; k < n; k++) {
            all[k] = new Luck(u[0][k], u[1][k], u[2][k], u[3][k], u[4][k]);
        }
        return all;
    }

    /** Water that is heated and goes on; {@code share} of what is brewed passes here. */
    public static Forecast brewing(Waters waters, Hot place, Use use, double share, double jetBore, ConstantSet set) {
        Equilibrium at = Equilibrium.at(set, place.kelvin());
        double litres = share * use.brewed() * 1000 * use.days();
        return of(waters, place, litres, jetBore, (c, luck) -> CALCITE * Math.max(0, Precipitation.calcite(at, c)));
    }

    /** Water that turns to steam where it passes, and leaves all its lime. */
    public static Forecast flashing(Waters waters, Hot place, Use use) {
        return of(
                waters, place, use.steamed() * use.days(), Double.NaN, (c, luck) -> CALCITE * Math.max(0, limiting(c)));
    }

    /**
     * Water that is boiled down.
     *
     * @param brews whether brewing water passes here, and nowhere else
     */
    public static Forecast steaming(
            Waters waters, Hot place, Use use, Concentration concentration, boolean brews, ConstantSet set) {
        Equilibrium at = Equilibrium.at(set, place.kelvin());
        double litres = (use.steamed() + 1000 * (use.hotWater() + (brews ? use.brewed() : 0))) * use.days();
        BoilDown down = new BoilDown(at, false, true);
        double least = limiting(waters.middle());
        return of(waters, place, litres, Double.NaN, (c, luck) -> {
            BoilDown.Left kept = down.by(c, concentration.used());
            double lost = least > 0 ? concentration.lost().calcite() * limiting(c) / least : 0;
            double calcite = kept.calcite() + (Math.max(lost, kept.calcite()) - kept.calcite()) * luck.kept;
            return CALCITE * Math.max(0, calcite) + SULFATE * Math.max(0, kept.sulfate());
        });
    }

    /** Calcite there can be at most when all carbon dioxide leaves. */
    private static double limiting(Composition c) {
        return Math.min(c.calcium(), Math.max(0, c.alkalinity()) / 2);
    }

    /** What falls from a kilogram of water [kg]. */
    @FunctionalInterface
    private interface Falling {
        double of(Composition c, Luck luck);
    }

    private static Forecast of(Waters waters, Hot place, double litres, double bore, Falling falling) {
        int n = waters.drawn().size();
        Luck[] luck = luck(n);
        double[][] all = new double[5][n];
        double[] middle = new double[5];
        for (int k = -1; k < n; k++) {
            Luck l = k < 0 ? Luck.middle() : luck[k];
            double kg =
                    litres * falling.of(k < 0 ? waters.middle() : waters.drawn().get(k), l);
            double sticks = Luck.between(ON_ELEMENT, l.element);
            double density = Luck.between(DENSITY, l.density);
            double element = kg * sticks / (density * place.surface());
            double walls = kg
                    * (1 - sticks)
                    * Luck.between(ON_WALLS, l.walls)
                    / (density * 5.5 * Math.pow(place.volume(), 2 / 3.0));
            double jet = kg * Luck.manifold(IN_JET, l.jet) / (density * Math.PI * bore * JET_LENGTH);
            double years = element > 1e-7 ? MARK / element : MARK / 1e-7;
            double[] values = {kg, element, walls, jet, Double.isNaN(element) ? Double.NaN : years};
            for (int i = 0; i < values.length; i++) {
                if (k < 0) {
                    middle[i] = values[i];
                } else {
                    all[i][k] = values[i];
                }
            }
        }
        Ranged[] r = new Ranged[5];
        for (int i = 0; i < r.length; i++) {
            r[i] = waters.ranged(middle[i], all[i]);
        }
        return new Forecast(place, r[0], r[1], r[2], r[3], r[4], r[4].times(litres));
    }

    /** Both in one vessel, which is heated now for one, now for the other. */
    public Forecast with(Forecast other) {
        Ranged both = sum(element, other.element);
        Ranged until = new Ranged(until(both.high()), until(both.middle()), until(both.low()), years.mainly());
        double litresA = litres.middle() / years.middle() + other.litres.middle() / other.years.middle();
        return new Forecast(
                place,
                sum(falls, other.falls),
                both,
                sum(wall, other.wall),
                Double.isNaN(jet.middle()) ? other.jet : jet,
                until,
                until.times(litresA));
    }

    private static double until(double rate) {
        return MARK / Math.max(1e-7, rate);
    }

    private static Ranged sum(Ranged a, Ranged b) {
        return new Ranged(a.low() + b.low(), a.middle() + b.middle(), a.high() + b.high(), a.mainly());
    }

    /** No cake worth a date within this many years. */
    public static final double NEVER = 50;

    public boolean hasDate() {
        return !Double.isNaN(years.middle()) && years.middle() < NEVER;
    }
}
