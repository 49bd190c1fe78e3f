package wetside.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.analysis.BrewingRange;
import wetside.analysis.Conditioning;
import wetside.analysis.Content;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Said;
import wetside.feedwater.SaltBottles;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;
import wetside.water.Recipe;
import wetside.water.Salt;

/** Grams of food-grade salts for a brewing water. */
@Command(
        name = "recipe",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Salts that make a brewing water from reverse-osmosis water, nearest to a target under limits.")
final class WaterRecipeCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            paramLabel = "SHEET",
            arity = "0..1",
            description = "the water before the membrane; pure water if not said")
    private String sheet;

    @Option(names = "--held", paramLabel = "SHARE", description = "what the membrane holds back (default: 96 %%)")
    private String held = "96 %";

    @Option(names = "--calcium", paramLabel = "C", description = "wanted, e.g. \"50 mg/l CaCO3\"")
    private String calcium;

    @Option(names = "--magnesium", paramLabel = "C", description = "wanted, e.g. \"25 mg/l CaCO3\"")
    private String magnesium;

    @Option(names = "--alkalinity", paramLabel = "C", description = "wanted, e.g. \"40 mg/l CaCO3\"")
    private String alkalinity;

    @Option(names = "--chloride-most", paramLabel = "C", description = "limit (default: 40 mg/l)")
    private String chloride;

    @Option(names = "--sodium-most", paramLabel = "C", description = "limit (default: 30 mg/l)")
    private String sodium;

    @Option(names = "--sulfate-most", paramLabel = "C", description = "limit (default: 60 mg/l)")
    private String sulfate;

    @Option(names = "--litres", paramLabel = "N", description = "size of the batch (default: 10)")
    private double litres = 10;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    WaterRecipeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!(litres > 0 && litres <= 10_000)) {
            throw new BadArgument("--litres is a number above 0 and up to 10000");
        }
        Composition base = Composition.PURE;
        BrewingRange range = BrewingRange.STANDARD;
        String from = "pure water";
        if (sheet != null) {
            WaterSheet read = WaterSheet.read(Path.of(sheet));
            base = Conditioning.membrane(share(held)).apply(read.waters().middle());
            range = read.range();
            from = read.title() + ", through a membrane that holds " + held;
        }
        Recipe.Target usual = Conditioning.target(range);
        Recipe.Target target = new Recipe.Target(
                wanted("--calcium", calcium, Content.CALCIUM, usual.calcium()),
                wanted("--magnesium", magnesium, Content.MAGNESIUM, usual.magnesium()),
                wanted("--alkalinity", alkalinity, Content.ALKALINITY, usual.alkalinity()));
        Recipe.Limits l = Recipe.Limits.USUAL;
        Recipe.Limits limits = new Recipe.Limits(
                wanted("--sodium-most", sodium, Content.SODIUM, l.sodium()),
                l.potassium(),
                wanted("--chloride-most", chloride, Content.CHLORIDE, l.chloride()),
                wanted("--sulfate-most", sulfate, Content.SULFATE, l.sulfate()),
                l.salts());
        Recipe recipe = Recipe.nearest(base, target, limits);
        if (json) {
            console.result(Json.print(json(recipe, target)));
        } else {
            print(recipe, target, from);
        }
        return far(recipe, target).isEmpty() ? 0 : Wetside.FINDINGS;
    }

    private static double share(String text) {
        try {
            double v = wetside.units.Quantity.parse(text, wetside.units.Dimension.RATIO)
                    .si();
            if (v >= 0 && v < 1) {
                return v;
            }
        } catch (wetside.units.NotAQuantity e) {
            throw new BadArgument("--held: " + e.getMessage());
        }
        throw new BadArgument("--held is a share from 0 to 99.9 %");
    }

    private static double wanted(String option, String said, Content content, double usual) {
        return said == null ? usual : WaterSheet.value(content, said, m -> new BadArgument(option + ": " + m));
    }

    /** What the recipe misses by more than 2 mg/l, and why. */
    private static List<String> far(Recipe recipe, Recipe.Target target) {
        List<String> far = new ArrayList<>();
        Composition w = recipe.water();
        miss(far, "calcium", w.calcium(), target.calcium(), 100.087e3);
        miss(far, "magnesium", w.magnesium(), target.magnesium(), 100.087e3);
        miss(far, "alkalinity", w.alkalinity(), target.alkalinity(), 50.0435e3);
        return far;
    }

    private static void miss(List<String> far, String name, double got, double wanted, double unit) {
        if (Math.abs(got - wanted) * unit > 2) {
            far.add(String.format(
                    Locale.ROOT, "%s comes to %.0f instead of %.0f mg/l CaCO3", name, got * unit, wanted * unit));
        }
    }

    private void print(Recipe recipe, Recipe.Target target, String from) {
        console.line(String.format(
                Locale.ROOT,
                "From %s to calcium %.0f, magnesium %.0f, alkalinity %.0f mg/l CaCO3",
                from,
                target.calcium() * 100.087e3,
                target.magnesium() * 100.087e3,
                target.alkalinity() * 50.0435e3));
        console.line("");
        List<String> far = far(recipe, target);
        if (!far.isEmpty()) {
            String why = recipe.binding().isEmpty()
                    ? "the water has more already than is wanted"
                    : String.join(" and ", recipe.binding()) + " is in the way";
            console.text("", "This target cannot be reached: " + String.join(", ", far) + "; " + why + ".");
            console.line("");
        }
        Table grams = new Table("lrr");
        grams.row("food-grade salt", Said.short2(litres) + " l, g", "mg/l");
        recipe.added()
                .forEach((salt, mol) -> grams.row(
                        salt.words() + " " + salt.formula(),
                        Said.number(mol * salt.grams() * litres, 2),
                        Said.number(mol * salt.grams() * 1e3, 0)));
        grams.print(console, "  ");
        console.line("");
        console.line("As concentrates, 5 ml of each bottle to a litre of water:");
        SaltBottles.of(recipe).forEach(b -> console.text("  ", b.words()));
        console.line("");
        Composition w = recipe.water();
        Equilibrium room = Equilibrium.at(ConstantSet.STANDARD, 298.15);
        console.text(
                "",
                String.format(
                        Locale.ROOT,
                        "It makes: pH %.1f freshly mixed and closed, %.1f after standing open; %.0f µS/cm; sodium %.0f,"
                                + " chloride %.0f, sulfate %.0f mg/l. Weigh on a scale that shows 0.01 g; only salts sold for food.",
                        room.of(w).ph(),
                        room.openTo(w, wetside.water.Treatment.AIR).ph(),
                        1e4 * Conductivity.atRoom(w),
                        22990 * w.sodium(),
                        35450 * w.chloride(),
                        96060 * w.sulfate()));
    }

    private Map<String, Object> json(Recipe recipe, Recipe.Target target) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("litres", litres);
        Map<String, Object> salts = new LinkedHashMap<>();
        for (Map.Entry<Salt, Double> e : recipe.added().entrySet()) {
            salts.put(e.getKey().words(), Json.number(e.getValue() * e.getKey().grams() * litres));
        }
        m.put("grams", salts);
        m.put("misses", far(recipe, target));
        m.put("binding", recipe.binding());
        m.put("water", WaterJson.composition(recipe.water()));
        return m;
    }
}
