package wetside.analysis;

import static wetside.analysis.Content.ALKALINITY;
import static wetside.analysis.Content.CALCIUM;
import static wetside.analysis.Content.CHLORIDE;
import static wetside.analysis.Content.CONDUCTIVITY;
import static wetside.analysis.Content.HARDNESS;
import static wetside.analysis.Content.MAGNESIUM;
import static wetside.analysis.Content.NITRATE;
import static wetside.analysis.Content.PH;
import static wetside.analysis.Content.POTASSIUM;
import static wetside.analysis.Content.SILICA;
import static wetside.analysis.Content.SODIUM;
import static wetside.analysis.Content.SULFATE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Constants;
import wetside.water.Equilibrium;

/**
 * A whole water from what was measured. Ions nobody measured are as many as charge balance and conductivity ask for, split
 * by assumed shares; every assumption is listed in {@link #assumed()}.
 */
final class Completion {
    private static final Constants ROOM = ConstantSet.STANDARD.at(298.15);
    private static final String SHARE = "calcium's share of hardness";
    private static final String CHLORIDES = "split of chloride and sulfate";
    private static final String NITRATES = "nitrate's share";
    private static final String POTASSIUMS = "potassium's share";
    private static final String SALTS = "other salts";
    private static final String FORMULA = "the law of conductivity";
    private static final String NO_PH = "pH";
    private static final String NO_SILICA = "silica";

    private final Map<Content, Measured> measured;
    private final Map<String, double[]> assumed = new LinkedHashMap<>();
    private final Map<String, String> stated = new LinkedHashMap<>();
    private final List<Waters.Input> inputs = new ArrayList<>();

    Completion(Map<Content, Measured> measured) {
        this.measured = new EnumMap<>(measured);
        measured.keySet().forEach(c -> inputs.add(new Waters.Input(c.words(), true)));
        if (!has(CALCIUM) && !has(MAGNESIUM) || !has(HARDNESS) && !(has(CALCIUM) && has(MAGNESIUM))) {
            assume(SHARE, 0.6, 0.9, "60 to 90 % of the hardness is calcium");
        }
        int anions = (has(CHLORIDE) ? 0 : 1) + (has(SULFATE) ? 0 : 1) + (has(NITRATE) ? 0 : 1);
        int cations = (has(SODIUM) ? 0 : 1) + (has(POTASSIUM) ? 0 : 1);
        if (!has(CHLORIDE) && !has(SULFATE)) {
            assume(CHLORIDES, 0.3, 0.65, "chloride is 30 to 65 % of chloride and sulfate");
        }
        if (!has(NITRATE) && anions > 1) {
            assume(NITRATES, 0.01, 0.15, "nitrate is 1 to 15 % of the anions not measured");
        }
        if (!has(POTASSIUM) && cations > 1) {
            assume(POTASSIUMS, 0.03, 0.12, "potassium is 3 to 12 % of the alkali metals");
        }
        if (anions > 0 && cations > 0) {
            if (has(CONDUCTIVITY)) {
                assume(FORMULA, -1, 1, "conductivity follows from the ions within 5 %");
            } else {
                assume(SALTS, 0.03, 0.35, "salts beyond hardness and alkalinity are 3 to 35 % of them");
            }
        }
        if (!has(PH)) {
            assume(NO_PH, 7.0, 8.2, "pH between 7.0 and 8.2");
        }
        if (!has(SILICA)) {
            assume(NO_SILICA, 3, 15, "silica 3 to 15 mg/l, less where hardness is below 6 °dH");
        }
    }

    private boolean has(Content c) {
        return measured.containsKey(c);
    }

    private void assume(String what, double low, double high, String words) {
        assumed.put(what, new double[] {low, high});
        stated.put(what, words);
        inputs.add(new Waters.Input(what + " (assumed)", false));
    }

    List<Waters.Input> inputs() {
        return inputs;
    }

    /** In sentences. */
    List<String> assumed() {
        return List.copyOf(stated.values());
    }

    /** Values at chances, in the order of the inputs. */
    private final class Values {
        private final Map<Content, Double> known = new EnumMap<>(Content.class);
        private final Map<String, Double> guessed = new LinkedHashMap<>();

        Values(double[] chances) {
            int i = 0;
            for (Map.Entry<Content, Measured> m : measured.entrySet()) {
                known.put(m.getKey(), m.getValue().at(chances[i++]));
            }
            for (Map.Entry<String, double[]> a : assumed.entrySet()) {
                double[] ends = a.getValue();
                guessed.put(a.getKey(), ends[0] + (ends[1] - ends[0]) * chances[i++]);
            }
        }

        double of(Content c, double otherwise) {
            return known.getOrDefault(c, otherwise);
        }

        double of(String what, double otherwise) {
            return guessed.getOrDefault(what, otherwise);
        }
    }

    /** The water with every input at a chance. */
    Composition water(double[] chances) {
        Values v = new Values(chances);
        double[] hard = hardness(v);
        double alkalinity = v.of(ALKALINITY, Double.NaN);
        double silica = v.of(SILICA, v.of(NO_SILICA, 0) / 60.083e3 * Math.min(1, (hard[0] + hard[1]) / 1.07e-3));
        Composition bare = new Composition(
                hard[0],
                hard[1],
                v.of(SODIUM, 0),
                v.of(POTASSIUM, 0),
                v.of(CHLORIDE, 0),
                v.of(SULFATE, 0),
                v.of(NITRATE, 0),
                silica,
                alkalinity,
                alkalinity * 1.02);
        Composition whole = filled(v, bare, others(v, bare));
        return new Equilibrium(ROOM).sampled(whole, v.of(PH, v.of(NO_PH, 7.5)));
    }

    private double[] hardness(Values v) {
        double share = v.of(SHARE, 0.75);
        double all = v.of(HARDNESS, Double.NaN);
        double ca = v.of(CALCIUM, Double.NaN);
        double mg = v.of(MAGNESIUM, Double.NaN);
        if (has(CALCIUM) && has(MAGNESIUM)) {
            return new double[] {ca, mg};
        }
        if (has(CALCIUM)) {
            return new double[] {ca, has(HARDNESS) ? Math.max(0, all - ca) : ca * (1 - share) / share};
        }
        if (has(MAGNESIUM)) {
            return new double[] {has(HARDNESS) ? Math.max(0, all - mg) : mg * share / (1 - share), mg};
        }
        return new double[] {all * share, all * (1 - share)};
    }

    /** Equivalents of salts nobody measured, beyond what charge balance needs [eq/kg]. */
    private double others(Values v, Composition bare) {
        if (assumed.containsKey(SALTS)) {
            return v.of(SALTS, 0.2) * Math.max(bare.cations(), bare.anions());
        }
        if (!assumed.containsKey(FORMULA)) {
            return 0;
        }
        double wanted = v.of(CONDUCTIVITY, 0) * (1 + 0.025 * Measured.normal((v.of(FORMULA, 0) + 1) / 2));
        double low = 0;
        double high = 0.05;
        double atLow = Conductivity.atRoom(filled(v, bare, 0));
        if (atLow >= wanted) {
            return 0;
        }
        double atHigh = Conductivity.atRoom(filled(v, bare, high));
        for (int i = 0; i < 30 && high - low > 1e-8; i++) {
            double t = low + (high - low) * Math.max(0.02, Math.min(0.98, (wanted - atLow) / (atHigh - atLow)));
            double at = Conductivity.atRoom(filled(v, bare, t));
            if (at < wanted) {
                low = t;
                atLow = at;
            } else {
                high = t;
                atHigh = at;
            }
        }
        return (low + high) / 2;
    }

    /** With what charge balance asks for, and {@code salts} more of both signs. */
    private Composition filled(Values v, Composition bare, double salts) {
        double owed = bare.anions() - bare.cations();
        boolean anions = !has(CHLORIDE) || !has(SULFATE) || !has(NITRATE);
        boolean cations = !has(SODIUM) || !has(POTASSIUM);
        double more = cations ? Math.max(0, owed) + (anions ? salts : 0) : 0;
        double less = anions ? Math.max(0, -owed) + (cations ? salts : 0) : 0;
        double potassium = has(POTASSIUM) ? 0 : has(SODIUM) ? 1 : v.of(POTASSIUMS, 0.07);
        double nitrate = has(NITRATE) ? 0 : has(CHLORIDE) && has(SULFATE) ? 1 : v.of(NITRATES, 0.08);
        double chloride = has(CHLORIDE) ? 0 : has(SULFATE) ? 1 : v.of(CHLORIDES, 0.5);
        return bare.plus(new Composition(
                0,
                0,
                more * (1 - potassium),
                more * potassium,
                less * (1 - nitrate) * chloride,
                less * (1 - nitrate) * (1 - chloride) / 2,
                less * nitrate,
                0,
                0,
                0));
    }
}
