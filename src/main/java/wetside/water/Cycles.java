package wetside.water;

/** How far a vessel is boiled down whose steam leaves its salts behind, and how long an exchanger lasts. */
public final class Cycles {
    private Cycles() {}

    /**
     * Factor a vessel settles at.
     *
     * <pre>CF = F / B,  F = E + B</pre>
     *
     * @param steam   E, leaving without salts, in the unit of
     * @param drained B, leaving with them
     * @return infinite where nothing is drained
     *
     * Source: UFC 3-240-13FN, equations 5 to 8. Checked: WaterPracticePublishedTest.
     */
    public static double settled(double steam, double drained) {
        return drained > 0 ? (steam + drained) / drained : Double.POSITIVE_INFINITY;
    }

    /**
     * Time from fresh water to a factor.
     *
     * <pre>CF(t) = CF∞ − (CF∞ − 1) e^(−B t / M);  without B: CF(t) = 1 + E t / M</pre>
     *
     * @param factor  to be reached
     * @param mass    M held
     * @param steam   E, per unit of time
     * @param drained B, per unit of time
     * @return infinite where it is never reached
     *
     * Source: balance of what is dissolved. Checked: WaterPracticePublishedTest, ConcentrationTest.
     */
    public static double time(double factor, double mass, double steam, double drained) {
        if (factor <= 1) {
            return 0;
        }
        double settles = settled(steam, drained);
        if (!(steam > 0) || settles <= factor) {
            return Double.POSITIVE_INFINITY;
        }
        return drained > 0
                ? mass / drained * Math.log((settles - 1) / (settles - factor))
                : mass * (factor - 1) / steam;
    }

    /**
     * Water an exchanger treats between two regenerations, in the unit of volume of the resin.
     *
     * <pre>V = resin · capacity / taken out</pre>
     *
     * @param resin    volume
     * @param capacity taken out by a litre of resin, such as [g/l as CaCO3]
     * @param taken    out of a litre of water, in the same unit
     *
     * Source: definition. Checked: WaterPracticePublishedTest.
     */
    public static double between(double resin, double capacity, double taken) {
        return taken > 0 ? resin * capacity / taken : Double.POSITIVE_INFINITY;
    }
}
