package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.analysis.Content;
import wetside.water.Cycles;
import wetside.water.Salt;

class WaterPracticePublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Water in practice");

    @Test
    void a_unitsOfHardnessAndAlkalinity() {
        String source = "definitions of the degrees with IUPAC abridged atomic masses";
        double calcite = Content.HARDNESS.unit("mg/l CaCO3").orElseThrow();
        unit("1 °dH [mg/l CaCO3]", source, 17.848, Content.HARDNESS.unit("°dH").orElseThrow() / calcite);
        unit("1 °fH [mg/l CaCO3]", source, 10, Content.HARDNESS.unit("°fH").orElseThrow() / calcite);
        unit(
                "1 °Clark [mg/l CaCO3]",
                source,
                14.254,
                Content.HARDNESS.unit("°Clark").orElseThrow() / calcite);
        unit(
                "1 grain per US gallon [mg/l CaCO3]",
                source,
                17.118,
                Content.HARDNESS.unit("gpg").orElseThrow() / calcite);
        double degree = Content.HARDNESS.unit("°dH").orElseThrow();
        unit("1 mmol/l [°dH]", source, 5.608, Content.HARDNESS.unit("mmol/l").orElseThrow() / degree);
        double meq = Content.ALKALINITY.unit("meq/l").orElseThrow();
        unit(
                "1 meq/l alkalinity [mg/l CaCO3]",
                source,
                50.0435,
                meq / Content.ALKALINITY.unit("mg/l CaCO3").orElseThrow());
        unit(
                "1 meq/l alkalinity [mg/l HCO3]",
                source,
                61.016,
                meq / Content.ALKALINITY.unit("mg/l HCO3").orElseThrow());
        unit(
                "1 meq/l alkalinity [°dH]",
                source,
                2.804,
                meq / Content.ALKALINITY.unit("°dKH").orElseThrow());
        String table = "table of a water laboratory (aqua-chem), and the atomic masses";
        unit(
                "calcium as CaCO3 [mg per mg]",
                table,
                2.4973,
                Content.CALCIUM.unit("mg/l").orElseThrow() / calcite);
        unit(
                "magnesium as CaCO3 [mg per mg]",
                table,
                4.1180,
                Content.MAGNESIUM.unit("mg/l").orElseThrow() / calcite);
        double half = calcite * 2;
        unit(
                "sodium as CaCO3 [mg per mg]",
                table,
                2.1768,
                Content.SODIUM.unit("mg/l").orElseThrow() / half);
        unit(
                "chloride as CaCO3 [mg per mg]",
                table,
                1.4117,
                Content.CHLORIDE.unit("mg/l").orElseThrow() / half);
        unit(
                "sulfate as CaCO3 [mg per mg]",
                table,
                1.0419,
                2 * Content.SULFATE.unit("mg/l").orElseThrow() / half);
    }

    private static void unit(String quantity, String source, double expected, double computed) {
        published.check(quantity, source, expected, computed, Tolerance.relative(3e-4), "rounding of atomic masses");
    }

    @Test
    void b_gramsOfSaltsPerMillimol() {
        String source = "IUPAC abridged atomic masses, checks of this project";
        double[] printed = {147.01, 172.16, 246.47, 203.30, 84.01, 100.11, 58.44};
        Salt[] salts = {
            Salt.CALCIUM_CHLORIDE,
            Salt.CALCIUM_SULFATE,
            Salt.MAGNESIUM_SULFATE,
            Salt.MAGNESIUM_CHLORIDE,
            Salt.SODIUM_BICARBONATE,
            Salt.POTASSIUM_BICARBONATE,
            Salt.SODIUM_CHLORIDE
        };
        for (int i = 0; i < salts.length; i++) {
            published.check(
                    salts[i].words() + " [g/mol]",
                    source,
                    printed[i],
                    salts[i].grams(),
                    Tolerance.absolute(0.01),
                    "printed");
        }
    }

    @Test
    void c_boilersDrained() {
        String source = "UFC 3-240-13FN (2005), equations 5 to 8";
        published.check(
                "cycles at feed 5000, drained 250", source, 20, Cycles.settled(4750, 250), Tolerance.digit(1), "exact");
        published.check(
                "drained at 5.0 kg/s steam and 20 cycles [kg/s]",
                source,
                0.26,
                5.0 / (20 - 1),
                Tolerance.digit(0.01),
                "printed; the same balance turned round");
        published.check("cycles with that", source, 20, Cycles.settled(5.0, 5.0 / 19), Tolerance.digit(1), "exact");
    }

    @Test
    void d_waterBetweenRegenerations() {
        String source = "Chem-Aqua, sizing of softeners: 6 ft³ of 30 kgr/ft³ on 6.9 grains";
        double gallons = Cycles.between(6, 30_000, 6.9);
        published.check("water a cycle [US gal]", source, 26087, gallons, Tolerance.digit(1), "printed");
        double litresResin = 6 * 28.316847;
        double litres = Cycles.between(litresResin, 30 * 2.2884, 6.9 * 0.0171181);
        published.check(
                "the same in litres [l]",
                source,
                26087 * 3.785412,
                litres,
                Tolerance.relative(1e-3),
                "by 1 kgr/ft³ = 2.288 g/l as CaCO3");
    }
}
