package wetside.analysis;

import java.util.LinkedHashMap;
import java.util.Map;
import wetside.machine.Node;

/**
 * What a water to brew coffee with is held against.
 *
 * @param name  whose range it is
 * @param items name of an item to its least and most, in the units of {@link Item}
 */
public record BrewingRange(String name, Map<Item, double[]> items) {
    /** What a range can be about. */
    public enum Item {
        CALCIUM("calcium hardness", "mg/l CaCO3", Content.CALCIUM),
        HARDNESS("hardness", "mg/l CaCO3", Content.HARDNESS),
        ALKALINITY("alkalinity", "mg/l CaCO3", Content.ALKALINITY),
        PH("pH", "", Content.PH),
        SODIUM("sodium", "mg/l", Content.SODIUM);

        private final String words;
        private final String unit;
        private final Content content;

        Item(String words, String unit, Content content) {
            this.words = words;
            this.unit = unit;
            this.content = content;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }

        public Content content() {
            return content;
        }
    }

    /**
     * The open standard of the trade. It says "at or near" 40 mg/l of alkalinity and 10 mg/l of sodium; how near is ours: 30
     * to 50, and up to 30.
     *
     * <p>Source: SCAA Standard "Water for Brewing Specialty Coffee", as archived on the association's site.
     */
    public static final BrewingRange STANDARD = new BrewingRange("SCAA water for brewing", standard());

    private static Map<Item, double[]> standard() {
        Map<Item, double[]> m = new LinkedHashMap<>();
        m.put(Item.CALCIUM, new double[] {17, 85});
        m.put(Item.ALKALINITY, new double[] {30, 50});
        m.put(Item.PH, new double[] {6.5, 7.5});
        m.put(Item.SODIUM, new double[] {0, 30});
        return m;
    }

    static BrewingRange read(Node node) {
        Map<Item, double[]> m = new LinkedHashMap<>();
        node.entries().forEach((name, value) -> {
            if (name.equals("name")) {
                return;
            }
            for (Item item : Item.values()) {
                if (item.words.equals(name)) {
                    double[] ends = ends(value, item);
                    if (ends != null) {
                        m.put(item, ends);
                    }
                    return;
                }
            }
            value.unknown("a brewing range is about calcium hardness, hardness, alkalinity, pH, sodium", "");
        });
        return new BrewingRange(node.text("name", "the range of this sheet"), m);
    }

    private static double[] ends(Node value, Item item) {
        String[] parts = value.text().split(" to ", 2);
        try {
            if (parts.length == 2) {
                String unit = parts[1].replaceFirst("^[0-9.]+\\s*", "");
                String low = parts[0].matches(".*[^0-9. ].*") ? parts[0] : parts[0] + " " + unit;
                double from = Measured.parse(low, item.content).value();
                double to = Measured.parse(parts[1], item.content).value();
                if (to >= from) {
                    double one = item.content.unit(item.unit).orElseThrow();
                    return new double[] {from / one, to / one};
                }
            }
            value.problem("a range is written like \"17 to 85 " + item.unit + "\"");
        } catch (Measured.NotAMeasure e) {
            value.problem(e.getMessage());
        }
        return null;
    }

    /** The middle of an item, in mol or equivalents. */
    double middle(Item item) {
        double[] ends = items.get(item);
        return ends == null
                ? Double.NaN
                : (ends[0] + ends[1]) / 2 * item.content.unit(item.unit).orElseThrow();
    }
}
