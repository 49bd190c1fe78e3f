package wetside.machine;

import wetside.units.Dimension;

/**
 * One typed number of a kind. Declared once, as a constant in the kind's file; that declaration yields the check in
 * machine files, the schema, the reference table, tolerances of draws and the handle by which faults move it.
 *
 * @param name      as written in machine files, plain words
 * @param dimension what it measures; SI inside
 * @param usual     value when the file is silent, NaN when the file must say
 * @param min       least value that makes sense
 * @param max       greatest value that makes sense
 * @param spread    tolerance when the file gives none
 * @param use       who may set it
 * @param meaning   one line for the reference
 */
public record Parameter(
        String name,
        Dimension dimension,
        double usual,
        double min,
        double max,
        Spread spread,
        Use use,
        String meaning) {
    /** Where a value comes from. */
    public enum Use {
        /** Fixed by the part as built. */
        BUILD,
        /** Turned, keyed or bent by a technician: a wrong setting is a cause of its own. */
        SETTING,
        /** How worn or broken it is: whole when the file is silent; faults move it. */
        CONDITION
    }

    public static Parameter required(String name, Dimension d, double min, double max, Spread spread, String meaning) {
        return new Parameter(name, d, Double.NaN, min, max, spread, Use.BUILD, meaning);
    }

    public static Parameter usual(
            String name, Dimension d, double usual, double min, double max, Spread spread, String meaning) {
        return new Parameter(name, d, usual, min, max, spread, Use.BUILD, meaning);
    }

    public static Parameter setting(
            String name, Dimension d, double usual, double min, double max, Spread spread, String meaning) {
        return new Parameter(name, d, usual, min, max, spread, Use.SETTING, meaning);
    }

    public static Parameter condition(
            String name, Dimension d, double whole, double min, double max, Spread spread, String meaning) {
        return new Parameter(name, d, whole, min, max, spread, Use.CONDITION, meaning);
    }

    public boolean mustBeGiven() {
        return Double.isNaN(usual);
    }
}
