package wetside.analysis;

import wetside.machine.Node;
import wetside.units.Dimension;

/**
 * What things cost, in the money of the place; every figure here is an assumption that a sheet may change.
 *
 * @param water          mains water and its drain [a m³]
 * @param salt           for softening [a kg]
 * @param minerals       food-grade salts [a kg]
 * @param bottled        water bought in bottles [a l]
 * @param cartridge      an exchanger cartridge
 * @param capacity       what it exchanges [eq]
 * @param membrane       membrane and filters of reverse osmosis [a year]
 * @param reject         water let off per water made
 * @param said           whether a sheet gave any of them
 */
public record Prices(
        double water,
        double salt,
        double minerals,
        double bottled,
        double cartridge,
        double capacity,
        double membrane,
        double reject,
        boolean said) {
    /** Equivalents in a litre at 10 degrees [eq]. */
    private static final double AT_TEN = 200 / 56077.4;

    /** A cartridge rated 1500 l at 10 degrees of what it takes out. */
    public static final Prices ASSUMED = new Prices(5, 0.8, 12, 0.35, 70, 1500 * AT_TEN, 80, 2, false);

    static Prices read(Node node) {
        node.only(
                "water per m3",
                "salt per kg",
                "minerals per kg",
                "bottled water per l",
                "cartridge",
                "cartridge litres at 10 °dH",
                "membrane per year",
                "reject per litre");
        Prices a = ASSUMED;
        return new Prices(
                money(node, "water per m3", a.water),
                money(node, "salt per kg", a.salt),
                money(node, "minerals per kg", a.minerals),
                money(node, "bottled water per l", a.bottled),
                money(node, "cartridge", a.cartridge),
                money(node, "cartridge litres at 10 °dH", a.capacity / AT_TEN) * AT_TEN,
                money(node, "membrane per year", a.membrane),
                money(node, "reject per litre", a.reject),
                true);
    }

    private static double money(Node node, String name, double usual) {
        double v = node.quantity(name, Dimension.NUMBER, usual);
        if (v < 0 || name.startsWith("cartridge l") && v == 0) {
            node.need(name).problem("this is above 0");
        }
        return v;
    }
}
