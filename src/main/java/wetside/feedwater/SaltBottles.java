package wetside.feedwater;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.water.Recipe;
import wetside.water.Salt;

/**
 * Bottles of concentrate for a recipe. Calcium, sulfate and bicarbonate are kept apart, or gypsum or lime would fall out in
 * the bottle.
 *
 * @param words what goes into it, or why something does not
 */
public record SaltBottles(String words) {
    /** Litres one litre of concentrate makes, at 5 ml a litre. */
    public static final int MAKES = 200;

    /** Gypsum dissolves to about this much [g/l]. */
    private static final double GYPSUM = 2.4;

    private enum Bottle {
        CALCIUM("calcium"),
        MAGNESIUM("magnesium"),
        BUFFER("bicarbonate"),
        GYPSUM("gypsum");

        private final String word;

        Bottle(String word) {
            this.word = word;
        }
    }

    private static Bottle bottle(Salt salt) {
        return switch (salt) {
            case CALCIUM_CHLORIDE -> Bottle.CALCIUM;
            case CALCIUM_SULFATE -> Bottle.GYPSUM;
            case MAGNESIUM_SULFATE, MAGNESIUM_CHLORIDE -> Bottle.MAGNESIUM;
            case SODIUM_BICARBONATE, POTASSIUM_BICARBONATE, SODIUM_CHLORIDE -> Bottle.BUFFER;
        };
    }

    public static List<SaltBottles> of(Recipe recipe) {
        Map<Bottle, List<String>> contents = new EnumMap<>(Bottle.class);
        recipe.added().forEach((salt, mol) -> {
            double grams = mol * salt.grams() * MAKES;
            contents.computeIfAbsent(bottle(salt), b -> new ArrayList<>())
                    .add(String.format(Locale.ROOT, "%.1f g %s", grams, salt.words()));
            if (salt == Salt.CALCIUM_SULFATE && grams > GYPSUM) {
                contents.get(Bottle.GYPSUM).set(0, "too much to dissolve in a bottle: weigh it into each batch");
            }
        });
        List<SaltBottles> all = new ArrayList<>();
        contents.forEach(
                (bottle, list) -> all.add(new SaltBottles(bottle.word + " bottle: " + String.join(" and ", list)
                        + (list.get(0).startsWith("too") ? "" : " made up to 1 l with pure water"))));
        return all;
    }
}
