package wetside.run;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wetside.units.Dimension;
import wetside.units.Quantity;

/** Quantities as scenarios write them, each read once: the same few come again in every run. */
final class Said {
    private static final Map<Words, Double> READ = new ConcurrentHashMap<>();

    private record Words(String text, Dimension dimension) {}

    private Said() {}

    /**
     * In SI.
     *
     * @throws wetside.units.NotAQuantity as {@link Quantity#parse} does
     */
    static double si(String text, Dimension dimension) {
        return READ.computeIfAbsent(
                new Words(text, dimension), w -> Quantity.parse(text, dimension).si());
    }
}
