package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import wetside.analysis.Ranged;
import wetside.analysis.Use;
import wetside.analysis.Waters;
import wetside.water.BoilDown;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Cycles;
import wetside.water.Equilibrium;

/**
 * How far a steam boiler's water is boiled down by a day's use: steam leaves without its salts, hot water takes them along.
 *
 * @param settles  factor it comes to when nobody drains it; infinite where only steam is drawn
 * @param limit    factor it should not pass
 * @param binding  what sets that limit
 * @param interval days of use from fresh water to the limit; infinite where it never gets there
 * @param used     factor the rest is reckoned with: where it settles, or the limit when drained in time
 * @param kept     a kilogram of feed boiled down with its carbon dioxide kept
 * @param lost     the same with the carbon dioxide lost to the steam; a boiler lies between
 * @param brews    whether brewing water comes from this boiler, too
 */
public record Concentration(
        double settles,
        double limit,
        String binding,
        double interval,
        double used,
        BoilDown.Left kept,
        BoilDown.Left lost,
        boolean brews) {
    /** Chloride where water is above 100 °C: limit for 316L plates in a data sheet, checks/water.md section 10 [mg/l]. */
    public static final double CHLORIDE = 100;

    /** Dissolved solids of a low-pressure boiler before it foams and carries over [mg/l]. */
    public static final double SOLIDS = 3500;

    /** Nothing is gained by reckoning further. */
    private static final double MOST = 25;

    /** No drain-off is worth doing for less than this. */
    private static final double LEAST = 1.15;

    public static Concentration of(Waters waters, Hot boiler, Use use, boolean brews, ConstantSet set) {
        double out = 1000 * (use.hotWater() + (brews ? use.brewed() : 0));
        double settles = Cycles.settled(use.steamed(), out);
        Ranged chloride = waters.of(c -> c.chloride() * 35.45e3);
        Ranged solids = waters.of(Concentration::solids);
        double byChloride = CHLORIDE / Math.max(1e-9, chloride.high());
        double bySolids = SOLIDS / Math.max(1e-9, solids.high());
        double limit = Math.min(MOST, Math.min(byChloride, bySolids));
        String binding =
                limit >= MOST ? "nothing in this water" : byChloride < bySolids ? "chloride" : "dissolved solids";
        double interval = Cycles.time(limit, boiler.water(), use.steamed(), out);
        double used = Math.max(1, Math.min(MOST, Math.min(settles, Math.max(LEAST, limit))));
        Equilibrium at = Equilibrium.at(set, boiler.kelvin());
        return new Concentration(
                settles,
                limit,
                binding,
                interval,
                used,
                new BoilDown(at, false, true).by(waters.middle(), used),
                new BoilDown(at, true, true).by(waters.middle(), used),
                brews);
    }

    /** Sum of ions and silica [mg/l]. */
    public static double solids(Composition c) {
        return 1e3
                * (40.078 * c.calcium()
                        + 24.305 * c.magnesium()
                        + 22.99 * c.sodium()
                        + 39.098 * c.potassium()
                        + 35.45 * c.chloride()
                        + 96.06 * c.sulfate()
                        + 62.004 * c.nitrate()
                        + 60.083 * c.silica()
                        + 61.016 * Math.max(0, c.alkalinity()));
    }

    /** Conductivity at 25 °C of the boiler's water, carbon dioxide kept and lost [S/m]. */
    public Ranged conductivity() {
        double a = Conductivity.atRoom(kept.water());
        double b = Conductivity.atRoom(lost.water());
        return new Ranged(Math.min(a, b), (a + b) / 2, Math.max(a, b), "");
    }

    /** Words for what to do. */
    public List<String> doing() {
        List<String> words = new ArrayList<>();
        if (interval == 0) {
            words.add("the water is at the limit before it is boiled: no drain-off helps, treat it or use another");
        } else if (Double.isInfinite(interval)) {
            words.add("the water drawn from it holds it; no drain-off is needed");
        } else {
            words.add(String.format(
                    java.util.Locale.ROOT,
                    "renew the boiler's water every %.0f days of use: draw as much hot water at the tap as the boiler holds,"
                            + " with pauses to refill (owner may; scalding water)",
                    Math.max(1, Math.floor(interval))));
        }
        return words;
    }
}
