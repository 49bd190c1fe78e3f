package wetside.analysis;

import wetside.machine.Node;
import wetside.units.Dimension;

/**
 * What a machine does on a day it is on.
 *
 * @param brewed   through groups, flushes included [m³ a day]
 * @param steamed  drawn as steam [kg a day]
 * @param hotWater drawn at the tap [m³ a day]
 * @param days     days in a year
 * @param said     false where nobody has said: a household
 */
public record Use(double brewed, double steamed, double hotWater, double days, boolean said) {
    public static final Use HOUSEHOLD = new Use(0.8e-3, 0.12, 0.3e-3, 330, false);

    static Use read(Node node) {
        node.only("brewed", "steamed", "hot water", "days");
        Use u = new Use(
                node.quantity("brewed", Dimension.VOLUME),
                node.quantity("steamed", Dimension.MASS),
                node.quantity("hot water", Dimension.VOLUME),
                node.quantity("days", Dimension.NUMBER, 330),
                true);
        if (u.brewed < 0 || u.steamed < 0 || u.hotWater < 0 || !(u.days > 0 && u.days <= 366)) {
            node.problem("amounts are for a day and not negative, days from 1 to 366");
        }
        return u;
    }

    /** Water taken in in a year [m³]. */
    public double yearly() {
        return (brewed + steamed / 1000 + hotWater) * days;
    }

    public String words() {
        return String.format(
                java.util.Locale.ROOT,
                "%s l brewed, %s kg as steam, %s l hot water a day, %.0f days a year%s",
                short3(brewed * 1e3),
                short3(steamed),
                short3(hotWater * 1e3),
                days,
                said ? "" : " (assumed: a household)");
    }

    private static String short3(double v) {
        return java.math.BigDecimal.valueOf(v)
                .round(new java.math.MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
