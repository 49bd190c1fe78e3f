package wetside.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wetside.machine.Node;
import wetside.units.Dimension;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Constants;
import wetside.water.Equilibrium;
import wetside.water.Recipe;
import wetside.water.Species;
import wetside.water.Treatment;

/**
 * A way to treat a water, with what it costs.
 *
 * @param how   in a few words
 * @param note  what a person must know of it, such as how near a blend comes; may be empty
 */
public record Conditioning(String name, String how, UnaryOperator<Composition> treat, Costs costs, String note) {
    private static final Constants ROOM = ConstantSet.STANDARD.at(298.15);

    /** Salt used by a softener per salt that would do in theory: a moderate dose. */
    private static final double SALT_EXCESS = 1 / 0.56;

    private static final double SALT_KG_PER_EQ = 0.05844;

    /** Cost of a year of a water's litres. */
    @FunctionalInterface
    public interface Costs {
        Expense of(Composition raw, Composition treated, double litres, Prices prices);
    }

    public static final Conditioning NONE =
            new Conditioning("as it comes", "untreated", c -> c, (r, t, l, p) -> Expense.NONE, "");

    /** Softening by sodium; {@code leak} of the hardness comes through. */
    public static Conditioning softening(String name, double leak) {
        return new Conditioning(
                name,
                "softened by sodium, " + percent(leak) + " of the hardness passes",
                Treatment.softening(leak)::of,
                (raw, treated, litres, p) -> Expense.NONE.and(
                        "salt",
                        2 * (raw.hardness() - treated.hardness()) * litres * SALT_KG_PER_EQ * SALT_EXCESS * p.salt()),
                "");
    }

    /** Hydrogen exchange of a share of what could be, a share going round. */
    public static Conditioning decarbonising(String name, double done, double bypass) {
        return new Conditioning(
                name,
                "decarbonised by a cartridge, " + percent(done) + " done, " + percent(bypass) + " goes round it",
                Treatment.hydrogenExchange(done).bypassedBy(bypass)::of,
                (raw, treated, litres, p) -> Expense.NONE.and(
                        "cartridges",
                        (raw.alkalinity() - treated.alkalinity()) * litres / p.capacity() * p.cartridge()),
                "");
    }

    /** What a membrane lets through of a water, for its share of one-charged ions. */
    public static UnaryOperator<Composition> membrane(double held) {
        return raw -> {
            double free = new Equilibrium(ROOM).of(raw).amount(Species.CO2);
            double passes = 1 - held;
            return Treatment.reverseOsmosis(passes, passes / 3, free).of(raw);
        };
    }

    public static Conditioning reverseOsmosis(String name, double held, double bypass, String note) {
        UnaryOperator<Composition> membrane = membrane(held);
        return new Conditioning(
                name,
                "reverse osmosis holding " + percent(held) + ", " + percent(bypass) + " goes round it",
                raw -> raw.mixedWith(membrane.apply(raw), bypass),
                (raw, treated, litres, p) -> Expense.NONE
                        .and("membrane", p.membrane())
                        .and("water let off", litres * (1 - bypass) * p.reject() / 1000 * p.water()),
                note);
    }

    /** Reverse osmosis, then minerals towards the middle of a range. */
    public static Conditioning recipe(String name, double held, Composition raw, BrewingRange range) {
        Recipe recipe = Recipe.nearest(membrane(held).apply(raw), target(range), Recipe.Limits.USUAL);
        Composition added = Composition.PURE;
        for (var e : recipe.added().entrySet()) {
            added = added.plus(e.getKey().dissolved(e.getValue()));
        }
        Composition salts = added;
        double grams = recipe.added().entrySet().stream()
                .mapToDouble(e -> e.getValue() * e.getKey().grams())
                .sum();
        UnaryOperator<Composition> membrane = membrane(held);
        return new Conditioning(
                name,
                "reverse osmosis, then minerals",
                c -> membrane.apply(c).plus(salts),
                (r, t, litres, p) -> Expense.NONE
                        .and("membrane", p.membrane())
                        .and("water let off", litres * p.reject() / 1000 * p.water())
                        .and("minerals", grams * litres / 1000 * p.minerals()),
                String.join(
                        ", ",
                        recipe.added().entrySet().stream()
                                .map(e -> String.format(
                                        Locale.ROOT,
                                        "%.0f mg/l %s",
                                        1e3 * e.getValue() * e.getKey().grams(),
                                        e.getKey().words()))
                                .toList()));
    }

    /** The middle of a range as a recipe's target; hardness it does not split is three parts calcium, one magnesium. */
    public static Recipe.Target target(BrewingRange range) {
        double ca = range.middle(BrewingRange.Item.CALCIUM);
        double hard = range.middle(BrewingRange.Item.HARDNESS);
        double alkalinity = range.middle(BrewingRange.Item.ALKALINITY);
        double calcium = Double.isNaN(ca) ? (Double.isNaN(hard) ? 0.5e-3 : 0.75 * hard) : ca;
        double magnesium = Double.isNaN(hard) ? 0 : Math.max(0, hard - calcium);
        return new Recipe.Target(calcium, magnesium, Double.isNaN(alkalinity) ? 0.8e-3 : alkalinity);
    }

    public static Conditioning mixing(String name, String otherName, Composition other, double share) {
        return new Conditioning(
                name,
                percent(share) + " of it with " + percent(1 - share) + " of " + otherName,
                raw -> raw.mixedWith(other, share),
                (raw, treated, litres, p) -> Expense.NONE.and("bought water", litres * (1 - share) * p.bottled()),
                "");
    }

    public static Conditioning boiling(String name) {
        return new Conditioning(
                name,
                "boiled in an open kettle, poured off what fell, cooled",
                Treatment.boilingOff(ConstantSet.STANDARD)::of,
                (r, t, l, p) -> Expense.NONE.and("electricity (0.12 kWh a litre at 0.3)", 0.12 * 0.3 * l),
                "scalding water; by hand, for small amounts only");
    }

    /** The usual ones for a water and a range, where a sheet names none. */
    public static List<Conditioning> usual(Composition raw, BrewingRange range) {
        List<Conditioning> all = new ArrayList<>();
        all.add(softening("softener", 0.02));
        Blend filter = Blend.nearest(raw, range, s -> decarbonising("", 0.9, s).treat());
        all.add(decarbonising("cartridge", 0.9, filter.share()).noted(filter.said()));
        Blend membrane =
                Blend.nearest(raw, range, s -> reverseOsmosis("", 0.96, s, "").treat());
        all.add(reverseOsmosis("membrane", 0.96, membrane.share(), membrane.said()));
        all.add(recipe("recipe", 0.96, raw, range));
        all.add(boiling("boiled"));
        return all;
    }

    Conditioning noted(String words) {
        return new Conditioning(name, how, treat, costs, words);
    }

    /** One entry of a sheet's treatments, for its water at its middle. */
    static Optional<Conditioning> read(String name, Node node, Path sheet, Composition raw, BrewingRange range) {
        node.only("softening", "decarbonising", "reverse osmosis", "bypass", "recipe", "mix with", "share", "boiling");
        double bypass = share(node, "bypass", 0);
        if (node.has("softening")) {
            return Optional.of(softening(name, share(node, "softening", 0)));
        }
        if (node.has("decarbonising")) {
            return Optional.of(decarbonising(name, share(node, "decarbonising", 0), bypass));
        }
        if (node.has("reverse osmosis")) {
            double held = share(node, "reverse osmosis", 0);
            if (node.yes("recipe", false)) {
                return Optional.of(recipe(name, held, raw, range));
            }
            return Optional.of(reverseOsmosis(name, held, bypass, ""));
        }
        if (node.has("mix with")) {
            String other = node.text("mix with");
            double share = share(node, "share", Double.NaN);
            if (Double.isNaN(share)) {
                node.problem("\"share\" is missing: how much of this water is in the mixture");
                return Optional.empty();
            }
            Path beside = sheet.toAbsolutePath().resolveSibling(other);
            if (beside.equals(sheet.toAbsolutePath())) {
                node.need("mix with").problem("a water cannot be mixed with itself");
                return Optional.empty();
            }
            if (!java.nio.file.Files.isRegularFile(beside)) {
                node.need("mix with").problem("there is no water sheet " + other + " beside this one");
                return Optional.empty();
            }
            WaterSheet with = WaterSheet.read(beside, 2);
            return Optional.of(mixing(name, with.title(), with.waters().middle(), share));
        }
        if (node.yes("boiling", false)) {
            return Optional.of(boiling(name));
        }
        node.problem("a treatment is one of softening, decarbonising, reverse osmosis, mix with, boiling");
        return Optional.empty();
    }

    private static double share(Node node, String what, double usual) {
        double v = node.quantity(what, Dimension.RATIO, usual);
        if (v < 0 || v > 1) {
            node.need(what).problem("a share lies between 0 and 100 %");
            return 0;
        }
        return v;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
