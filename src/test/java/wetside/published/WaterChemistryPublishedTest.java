package wetside.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.water.BoilDown;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Constants;
import wetside.water.Equilibrium;
import wetside.water.Mineral;
import wetside.water.Precipitation;
import wetside.water.Solution;
import wetside.water.TradeIndex;

class WaterChemistryPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Water chemistry");

    private static final String USGS = "USGS PHREEQC, 15 waters at 15 to 134 °C, run for this project";
    private static final List<WaterTable> WATERS = WaterTable.read("water-reference.csv");

    @Test
    void a_debyeHueckelSlopes() {
        String source = "PHREEQC's equations (Bradley and Pitzer 1979, Wagner and Pruss 2002), computed independently";
        double[][] table = {{25, .5100, .3285}, {93, .5895, .3408}, {121, .6346, .3467}, {140, .6697, .3510}};
        for (double[] row : table) {
            double[] ab = Constants.debyeHueckel(row[0] + 273.15);
            published.check(
                    "A at %.0f °C".formatted(row[0]), source, row[1], ab[0], Tolerance.absolute(1e-4), "printed");
            published.check(
                    "B at %.0f °C".formatted(row[0]), source, row[2], ab[1], Tolerance.absolute(1e-4), "printed");
        }
    }

    @Test
    void b_closedHeating() {
        for (ConstantSet set : ConstantSet.values()) {
            boolean standard = set == ConstantSet.STANDARD;
            double index = standard ? 0.005 : 0.01;
            String why = "as close as an independent program came, doubled";
            worst("pH", set, index, why, "pH_T", s -> s.ph());
            worst("calcite index", set, index, why, "SI_calcite", s -> s.index(Mineral.CALCITE));
            worst("anhydrite index", set, index, why, "SI_anhydrite", s -> s.index(Mineral.ANHYDRITE));
            worst("gypsum index", set, index, why, "SI_gypsum", s -> s.index(Mineral.GYPSUM));
            worst("aragonite index", set, index, why, "SI_aragonite", s -> s.index(Mineral.ARAGONITE));
            double[] largest = {0};
            WATERS.stream().filter(w -> w.set() == set).forEach(w -> {
                double found = Precipitation.calcite(Equilibrium.at(set, w.kelvin()), w.analysis());
                largest[0] = Math.max(
                        largest[0],
                        Math.abs(found * Precipitation.CALCITE_MILLIGRAMS - w.number("CCPP_mg_CaCO3_per_kg_signed")));
            });
            published.check(
                    "largest difference in precipitation potential [mg/kg], 105 rows, " + set.source(),
                    USGS,
                    0,
                    largest[0],
                    Tolerance.absolute(standard ? 0.3 : 0.6),
                    "as close as an independent program came, doubled");
        }
    }

    private static void worst(
            String what, ConstantSet set, double allowed, String why, String column, ToDoubleFunction<Solution> value) {
        double largest = 0;
        int rows = 0;
        for (WaterTable w : WATERS) {
            if (w.set() == set && w.has(column)) {
                Solution s = Equilibrium.at(set, w.kelvin()).of(w.analysis());
                double found = value.applyAsDouble(s);
                if (w.number("in_SO4_mgL") > 0 || !Double.isNaN(found)) {
                    largest = Math.max(largest, Math.abs(found - w.number(column)));
                    rows++;
                }
            }
        }
        assertThat(rows).isGreaterThan(80);
        published.check(
                "largest difference in %s, %d rows, %s".formatted(what, rows, set.source()),
                USGS,
                0,
                largest,
                Tolerance.absolute(allowed),
                why);
    }

    @Test
    void c_boilingDown() {
        String source = "USGS PHREEQC, two waters boiled down at 125 °C, run for this project";
        Map<String, Composition> feeds = new HashMap<>();
        Map<String, double[]> largest = new HashMap<>();
        for (WaterTable row : WaterTable.read("water-evaporation.csv")) {
            Equilibrium at = Equilibrium.at(row.set(), row.kelvin());
            Composition feed = feeds.computeIfAbsent(row.text("database") + row.text("water_id"), k -> feed(row, at));
            String mode = row.text("mode");
            BoilDown.Left left = new BoilDown(at, mode.startsWith("stripped"), mode.endsWith("ppt"))
                    .by(feed, row.number("CF_actual"));
            Solution s = at.of(left.water());
            double[] w = largest.computeIfAbsent(mode, k -> new double[3]);
            w[0] = Math.max(w[0], Math.abs(s.ph() - row.number("pH_T")));
            if (row.has("SI_calcite")) {
                w[1] = Math.max(w[1], Math.abs(s.index(Mineral.CALCITE) - row.number("SI_calcite")));
            }
            double fallen = row.number("calcite_precipitated_mmol_per_kg_FEED");
            w[2] = Math.max(w[2], Math.abs(left.calcite() * 1e3 - fallen));
        }
        assertThat(largest).hasSize(4);
        largest.forEach((mode, w) -> {
            String why = "feeds known by their totals; potassium and nitrate were not printed";
            published.check("largest difference in pH, " + mode, source, 0, w[0], Tolerance.absolute(0.01), why);
            published.check("… in calcite index, " + mode, source, 0, w[1], Tolerance.absolute(0.02), why);
            published.check("… in calcite fallen [mmol/kg], " + mode, source, 0, w[2], Tolerance.absolute(0.005), why);
        });
    }

    /** The first row of a water says its totals; silica is found from its index. */
    private static Composition feed(WaterTable row, Equilibrium at) {
        double ca = row.number("Ca_total_mmol_kgw") / 1e3;
        double mg = row.number("Mg_total_mmol_kgw") / 1e3;
        double na = row.number("Na_total_mmol_kgw") / 1e3;
        double cl = row.number("Cl_total_mmol_kgw") / 1e3;
        double sulfate = row.number("SO4_total_mmol_kgw") / 1e3;
        double alkalinity = row.number("alkalinity_meq_kgw") / 1e3;
        double missing = cl + 2 * sulfate + alkalinity - 2 * ca - 2 * mg - na;
        double carbon = row.number("DIC_mmol_kgw") / 1e3;
        double silica = 0;
        for (int turn = 0; turn < 20 && row.has("SI_SiO2_amorphous"); turn++) {
            Composition c = new Composition(
                    ca,
                    mg,
                    na,
                    Math.max(0, missing),
                    cl,
                    sulfate,
                    Math.max(0, -missing),
                    silica + 1e-9,
                    alkalinity,
                    carbon);
            double off = row.number("SI_SiO2_amorphous") - at.of(c).index(Mineral.AMORPHOUS_SILICA);
            silica = (silica + 1e-9) * Math.pow(10, off);
        }
        return new Composition(
                ca, mg, na, Math.max(0, missing), cl, sulfate, Math.max(0, -missing), silica, alkalinity, carbon);
    }

    @Test
    void d_standardWatersOfDin38404() {
        for (WaterTable w : WaterTable.read("din38404_checks.csv")) {
            boolean older = w.has("DIN_SI");
            Composition c = new Composition(
                    w.number("Ca_mmolL") / 1e3,
                    w.number("Mg_mmolL") / 1e3,
                    w.number("Na_mmolL") / 1e3,
                    w.number("K_mmolL") / 1e3,
                    w.number("Cl_mmolL") / 1e3,
                    w.number("SO4_mmolL") / 1e3,
                    w.number("NO3_mmolL") / 1e3,
                    0,
                    older ? 0 : (w.number("KS43_mmolL") - 0.05) / 1e3,
                    0);
            String source = older ? "DIN 38404-10:1995-04, table 6" : "DIN 38404-10:2012-12, table 4";
            String name = " of water " + w.text("no");
            Equilibrium judged = Equilibrium.at(ConstantSet.STANDARD, w.number("T_judged_C") + 273.15);
            Composition sample = older
                    ? withCarbon(c, w)
                    : Equilibrium.at(ConstantSet.STANDARD, w.number("T_measured_C") + 273.15)
                            .sampled(c, w.number("pH_measured"));
            Solution s = judged.of(sample);
            if (older) {
                published.check(
                        "pH" + name,
                        source,
                        w.number("DIN_pH_at_Tjudged"),
                        s.ph(),
                        Tolerance.absolute(0.012),
                        "printed to 0.01");
                published.check(
                        "calcite index" + name,
                        source,
                        w.number("DIN_SI"),
                        s.index(Mineral.CALCITE),
                        Tolerance.absolute(0.03),
                        "other constants for the same reactions");
            } else if (w.has("DIN_I_mmolL")) {
                published.check(
                        "ionic strength" + name + " [mmol/l]",
                        source,
                        w.number("DIN_I_mmolL"),
                        s.ionicStrength() * 1e3,
                        Tolerance.absolute(0.03),
                        "mol per litre taken as per kilogram");
            }
        }
    }

    /** The older table gives carbon and pH; alkalinity is what makes that pH. */
    private static Composition withCarbon(Composition c, WaterTable w) {
        Equilibrium measured = Equilibrium.at(ConstantSet.STANDARD, w.number("T_measured_C") + 273.15);
        double carbon = w.number("DIC_mmolL(2012 rows: own)") / 1e3;
        double low = 0;
        double high = 2 * carbon;
        for (int i = 0; i < 60; i++) {
            double alkalinity = (low + high) / 2;
            Composition tried = alkaline(c, alkalinity, carbon);
            if (measured.of(tried).ph() < w.number("pH_measured")) {
                low = alkalinity;
            } else {
                high = alkalinity;
            }
        }
        return alkaline(c, low, carbon);
    }

    private static Composition alkaline(Composition c, double alkalinity, double carbon) {
        return new Composition(
                c.calcium(),
                c.magnesium(),
                c.sodium(),
                c.potassium(),
                c.chloride(),
                c.sulfate(),
                c.nitrate(),
                0,
                alkalinity,
                carbon);
    }

    @Test
    void e_conductivityOfPotassiumChloride() {
        double[][] table = {{1e-4, 14.9}, {1e-3, 146.9}, {0.01, 1412}, {0.1, 12890}};
        for (double[] row : table) {
            Composition c = new Composition(0, 0, 0, row[0], row[0], 0, 0, 0, 0, 0);
            String what = "KCl %s mol/l [µS/cm]".formatted(row[0]);
            String source = "Standard Methods 2510, table I";
            published.check(
                    what, source, row[1], Conductivity.atRoom(c) * 1e4, Tolerance.relative(0.005), "form of the law");
            published.check(
                    what + ", by each ion's own law",
                    source,
                    row[1],
                    Conductivity.at(c, 298.15) * 1e4,
                    Tolerance.relative(0.01),
                    "form of the law");
        }
    }

    @Test
    void f_langelierOfTheHandbook() {
        String source = "UFC 3-240-13FN (2005), examples B-1 and B-2";
        double saturation = TradeIndex.saturationPh(1000, 500, 100, (120 - 32) / 1.8 + 273.15);
        String why = "printed to 0.01";
        published.check("pH of saturation", source, 6.77, saturation, Tolerance.absolute(0.011), why);
        published.check(
                "Langelier", source, 1.43, TradeIndex.langelier(8.2, saturation), Tolerance.absolute(0.011), why);
        published.check("Ryznar", source, 5.34, TradeIndex.ryznar(8.2, saturation), Tolerance.absolute(0.011), why);
        Composition c = new Composition(0, 0, 0, 0, 2 / 35.45e3, 150 / 96.06e3, 0, 0, 200 / 50.0435e3, 0);
        published.check(
                "Larson-Skold, Cl 2, SO4 150, alkalinity 200 mg/l",
                "tests of an open water-treatment package, see checks/water.md 3.4",
                0.8,
                TradeIndex.larsonSkold(c),
                Tolerance.absolute(0.05),
                "printed to 0.1");
    }

    @Test
    void g_aBlendOfTwoWaters() {
        String source = "USGS PHREEQC, W25 and W13 half and half, run for this project";
        Composition blend = water("W25").mixedWith(water("W13"), 0.5);
        published.check("carbon [mmol/kg]", source, 2.4117, blend.carbon() * 1e3, Tolerance.absolute(1e-3), "printed");
        double[][] table = {{25, 6.779, -0.983}, {93, 6.800, -0.129}, {121, 6.936, 0.331}};
        for (double[] row : table) {
            Solution s = Equilibrium.at(ConstantSet.STANDARD, row[0] + 273.15).of(blend);
            String at = " at %.0f °C".formatted(row[0]);
            published.check("pH" + at, source, row[1], s.ph(), Tolerance.absolute(0.005), "as above");
            published.check(
                    "calcite index" + at,
                    source,
                    row[2],
                    s.index(Mineral.CALCITE),
                    Tolerance.absolute(0.005),
                    "as above");
        }
    }

    private static Composition water(String id) {
        return WATERS.stream()
                .filter(w -> w.text("water_id").equals(id) && w.set() == ConstantSet.STANDARD)
                .findFirst()
                .orElseThrow()
                .analysis();
    }

    /** Salts into pure water [mmol/kg], closed: calcium, magnesium, sodium, potassium, chloride, sulfate, alkalinity, carbon. */
    @Test
    void h_saltsInPureWater() {
        String source = "USGS PHREEQC, salts in pure water, run for this project";
        salts(source, "CaCl2 .5, MgSO4 .3, NaHCO3 .8", new double[] {.5, .3, .8, 0, 1, .3, .8, .8}, 8.144, -0.273, 274);
        salts(source, "MgSO4 .7, KHCO3 .8", new double[] {0, .7, 0, .8, 0, .7, .8, .8}, 8.177, Double.NaN, 249);
        salts(source, "CaCO3 .5, CO2 .55", new double[] {.5, 0, 0, 0, 0, 0, 1, 1.05}, 7.598, -0.655, 98);
        salts(source, "NaHCO3 1.0, MgSO4 .6, CaSO4 .2", new double[] {.2, .6, 1, 0, 0, .8, 1, 1}, 8.165, -0.583, 282);
    }

    private static void salts(String source, String name, double[] m, double ph, double index, double conductivity) {
        Composition c = new Composition(m[0], m[1], m[2], m[3], m[4], m[5], 0, 0, m[6], m[7]).times(1e-3);
        Solution s = Equilibrium.at(ConstantSet.STANDARD, 298.15).of(c);
        published.check("pH, " + name, source, ph, s.ph(), Tolerance.absolute(0.005), "as above");
        if (!Double.isNaN(index)) {
            published.check(
                    "calcite index, " + name,
                    source,
                    index,
                    s.index(Mineral.CALCITE),
                    Tolerance.absolute(0.005),
                    "as above");
        }
        published.check(
                "conductivity, " + name + " [µS/cm]",
                source,
                conductivity,
                Conductivity.atRoom(c) * 1e4,
                Tolerance.relative(0.05),
                "what the law is good for beside a full model");
    }
}
