package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.analysis.Blend;
import wetside.analysis.BrewingRange;
import wetside.analysis.Heated;
import wetside.analysis.Ranged;
import wetside.analysis.Waters;
import wetside.feedwater.Verdict.Grade;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;
import wetside.water.Mineral;
import wetside.water.Species;
import wetside.water.TradeIndex;

/** Turns what was computed into verdicts; limits stand here with whose they are. */
final class Verdicts {
    /** Bands of ours for what can fall where no machine is named [mg/l]. */
    private static final double LITTLE = 5;

    private static final double MUCH = 40;

    /** Bands of ours for the time to the descale mark [years]. */
    private static final double SOON = 0.75;

    private static final double LATER = 2;

    /** Thickness of the descale mark [mm]. */
    private static final double MARK = 0.5;

    private final Waters waters;
    private final BrewingRange range;
    private final ConstantSet set;
    private final Optional<Concentration> boiler;
    private final List<Verdict> all = new ArrayList<>();

    Verdicts(Waters waters, BrewingRange range, ConstantSet set, Optional<Concentration> boiler) {
        this.waters = waters;
        this.range = range;
        this.set = set;
        this.boiler = boiler;
    }

    List<Verdict> all() {
        return all;
    }

    private void add(String concern, Grade grade, String value, String reason) {
        all.add(new Verdict(concern, grade, value, reason, Optional.empty()));
    }

    /** The verdict added last, told by one number. */
    private void gauged(String words, double value, double from, double to) {
        Verdict v = all.remove(all.size() - 1);
        all.add(new Verdict(
                v.concern(),
                v.grade(),
                v.value(),
                v.reason(),
                Double.isFinite(value) ? Optional.of(new Verdict.Gauge(words, value, from, to)) : Optional.empty()));
    }

    Verdicts taste() {
        List<String> outside = Blend.outside(waters.middle(), range);
        long out = waters.drawn().stream()
                .filter(c -> !Blend.outside(c, range).isEmpty())
                .count();
        long share = Math.round(100.0 * out / waters.drawn().size());
        List<String> values = new ArrayList<>();
        range.items()
                .forEach((item, ends) -> values.add(item.words() + " "
                        + Said.ranged(
                                waters.of(c -> Blend.value(c, item)),
                                item == BrewingRange.Item.PH ? 1 : 0,
                                item.unit())));
        String odds = waters.drawn().size() < 2 || share == 0 || share == 100
                ? ""
                : " (" + share + " of 100 waters this analysis may mean are outside somewhere)";
        add(
                "taste range",
                outside.isEmpty() ? Grade.GOOD : Grade.WATCH,
                String.join(", ", values),
                (outside.isEmpty()
                                ? "inside " + range.name()
                                : "outside " + range.name() + ": " + String.join(", ", outside))
                        + odds + "; a taste range says nothing of scale");
        range.items().entrySet().stream()
                .filter(e -> e.getKey() == BrewingRange.Item.ALKALINITY
                        || range.items().size() == 1)
                .findFirst()
                .ifPresent(e -> gauged(
                        e.getKey().words() + ", " + e.getKey().unit(),
                        Blend.value(waters.middle(), e.getKey()),
                        e.getValue()[0],
                        e.getValue()[1]));
        return this;
    }

    Verdicts scale(Heated h, Optional<Forecast> forecast, Hot place) {
        String where = "scale, " + place.name();
        double falls = h.potential().middle();
        String value = (falls > 0
                        ? Said.ranged(floored(h.potential()), 0, "mg/l") + " can fall"
                        : "nothing falls; it would take up " + Said.ranged(turned(h.potential()), 0, "mg/l"))
                + " at " + Said.celsius(h.kelvin()) + ", index " + Said.signed(h.index());
        if (forecast.isPresent() && !Double.isNaN(forecast.get().years().middle())) {
            Forecast f = forecast.get();
            double years = f.years().middle();
            add(
                    where,
                    years > LATER ? Grade.GOOD : years > SOON ? Grade.WATCH : Grade.ACT,
                    value,
                    f.hasDate()
                            ? "0.5 mm where it is heated in " + Said.times(f.years())
                                    + (f.years().mainly().isEmpty()
                                            ? ""
                                            : "; hangs on " + f.years().mainly())
                            : "no cake worth a date");
            gauged("mm of scale a year", MARK / years, Double.NEGATIVE_INFINITY, MARK / LATER);
            return this;
        }
        add(
                where,
                falls < LITTLE ? Grade.GOOD : falls < MUCH ? Grade.WATCH : Grade.ACT,
                value,
                String.format(
                        Locale.ROOT,
                        "bands of ours: below %.0f mg/l hardly any, above %.0f much%s",
                        LITTLE,
                        MUCH,
                        h.potential().mainly().isEmpty()
                                ? ""
                                : "; hangs on " + h.potential().mainly()));
        gauged("mg/l that can fall", Math.max(0, falls), Double.NEGATIVE_INFINITY, LITTLE);
        return this;
    }

    private static Ranged floored(Ranged r) {
        return new Ranged(Math.max(0, r.low()), r.middle(), r.high(), r.mainly());
    }

    private static Ranged turned(Ranged r) {
        return new Ranged(Math.max(0, -r.high()), -r.middle(), -r.low(), r.mainly());
    }

    Verdicts sulfate(Heated hottest) {
        double factor = factor();
        Equilibrium at = Equilibrium.at(set, hottest.kelvin());
        Ranged index = waters.of(c -> {
            double i = at.of(c.times(factor)).index(Mineral.ANHYDRITE);
            return Double.isNaN(i) ? -9 : i;
        });
        add(
                "calcium sulfate",
                index.high() < 0 ? Grade.GOOD : index.middle() < 0 ? Grade.WATCH : Grade.ACT,
                index.middle() < -5
                        ? "none"
                        : "index of anhydrite " + Said.signed(index) + " at " + Said.celsius(hottest.kelvin())
                                + concentrated(factor),
                index.high() < 0
                        ? "stays dissolved"
                        : "above 0 it can fall as a hard scale that kitchen acids hardly dissolve; solubility above 120 °C is"
                                + " known to 30 %");
        if (index.middle() > -5) {
            gauged("index of anhydrite", index.middle(), Double.NEGATIVE_INFINITY, 0);
        }
        return this;
    }

    private double factor() {
        return boiler.map(Concentration::used).orElse(1.0);
    }

    private static String concentrated(double factor) {
        return factor > 1.05 ? ", boiled down " + Said.number(factor, 1) + " times" : "";
    }

    /** Limits by a maker of stainless plates: 400 mg/l to 50 °C, 200 to 80 °C, 100 from 100 °C. */
    Verdicts chloride() {
        double factor = factor();
        Ranged chloride = waters.of(c -> c.chloride() * 35.45e3 * factor);
        double limit = Concentration.CHLORIDE;
        add(
                "chloride on steel",
                chloride.high() < 0.5 * limit ? Grade.GOOD : chloride.middle() < limit ? Grade.WATCH : Grade.ACT,
                Said.ranged(chloride, 0, "mg/l") + concentrated(factor),
                "stress cracking of 316L: at most 100 mg/l from 100 °C (data sheet of plate exchangers); poorer steels take less."
                        + " Guidance, no guarantee");
        gauged("chloride, mg/l", chloride.middle(), 0, 0.5 * limit);
        Ranged larson = waters.of(c -> Math.min(99, TradeIndex.larsonSkold(c)));
        add(
                "corrosion index",
                larson.middle() < 0.8 ? Grade.GOOD : larson.middle() < 1.2 ? Grade.WATCH : Grade.ACT,
                "chloride and sulfate per alkalinity " + Said.ranged(larson, 1, "")
                        + (larson.middle() >= 99 ? " or more" : ""),
                "Larson-Skold, for mild steel: below 0.8 unlikely, above 1.2 likely (bands as commonly quoted)");
        if (larson.middle() < 99) {
            gauged("corrosion index", larson.middle(), 0, 0.8);
        }
        return this;
    }

    /** Bands of makers of copper-brazed exchangers. */
    Verdicts copper(Equilibrium room) {
        Ranged ph = waters.of(c -> room.of(c).ph());
        Ranged hco3 = waters.of(c -> 61.016e3 * Math.max(0, c.alkalinity()));
        Ranged free = waters.of(c -> 44.009e3 * room.of(c).amount(Species.CO2));
        Ranged ratio = waters.of(Verdicts::bicarbonatePerSulfate);
        List<String> why = new ArrayList<>();
        boolean bad = ph.middle() < 6 || free.middle() > 20;
        if (ph.middle() < 7.5 || ph.middle() > 9) {
            why.add("pH is best between 7.5 and 9, under 6 not at all");
        }
        if (hco3.middle() < 70) {
            why.add("bicarbonate under 70 mg/l protects little");
        } else if (hco3.middle() > 300) {
            why.add("bicarbonate over 300 mg/l");
        }
        if (ratio.middle() < 1) {
            why.add("less bicarbonate than sulfate: pits in hot copper"
                    + (ph.middle() < 7.4 ? ", more so below pH 7.4" : ""));
        }
        if (free.middle() > 5) {
            why.add("free carbon dioxide is good under 5 mg/l, bad over 20");
        }
        if (waters.middle().sulfate() * 96.06e3 > 70) {
            why.add("sulfate over 70 mg/l");
        }
        add(
                "copper and brass",
                why.isEmpty() ? Grade.GOOD : bad ? Grade.ACT : Grade.WATCH,
                "pH " + Said.ranged(ph, 1, "") + ", bicarbonate " + Said.ranged(hco3, 0, "mg/l") + ", free CO2 "
                        + Said.ranged(free, 0, "mg/l"),
                (why.isEmpty() ? "inside all bands" : String.join("; ", why))
                        + " (bands as makers of copper-brazed exchangers print them)");
        gauged("pH", ph.middle(), 7.5, 9);
        return this;
    }

    private static double bicarbonatePerSulfate(Composition c) {
        double sulfate = 96.06 * c.sulfate();
        return sulfate > 0 ? Math.min(99, 61.016 * Math.max(0, c.alkalinity()) / sulfate) : 99;
    }

    Verdicts probe(Optional<Blindness> blindness, Ranged conductivity) {
        if (blindness.isEmpty()) {
            return this;
        }
        Blindness b = blindness.get();
        Blindness.Sight sight = b.sight(conductivity);
        String filmed = Double.isInfinite(b.filmed())
                ? "with a middling film of scale on it, it would see no water, however salty"
                : "with a middling film of scale on it, under " + Said.number(1e4 * b.filmed(), 0);
        add(
                "level probe",
                switch (sight) {
                    case SEEN -> Grade.GOOD;
                    case DOUBTFUL -> Grade.WATCH;
                    case BLIND -> Grade.ACT;
                },
                "this water has " + Said.microsiemens(conductivity) + "; the probe is blind under "
                        + Said.microsiemens(b.clean()) + " (found with the twin)",
                switch (sight) {
                    case SEEN ->
                        "it sees this water, and would until pure water dilutes it to "
                                + Said.number(100 * b.clean().high() / conductivity.middle(), 0) + " %; " + filmed;
                    case DOUBTFUL -> "some machines within tolerances would not see it; " + filmed;
                    case BLIND ->
                        "the fill will not stop by itself: the boiler overfills until the board gives up, and there is no"
                                + " steam. Lead some raw water round the filter or add minerals";
                });
        gauged(
                "conductivity, µS/cm",
                1e4 * conductivity.middle(),
                1e4 * b.clean().high(),
                Double.POSITIVE_INFINITY);
        return this;
    }

    Verdicts boiler() {
        boiler.ifPresent(b -> {
            boolean endless = Double.isInfinite(b.interval());
            add(
                    "boiler's concentration",
                    endless ? Grade.GOOD : b.interval() > 14 ? Grade.WATCH : Grade.ACT,
                    (Double.isInfinite(b.settles())
                                    ? "rises without end (only steam is drawn)"
                                    : "settles at " + Said.number(b.settles(), 1) + " times the feed")
                            + "; " + Said.microsiemens(b.conductivity()) + " at 25 °C when boiled down "
                            + Said.number(b.used(), 1) + " times",
                    (b.limit() >= 25
                                    ? "no limit within 25 times"
                                    : "limit " + Said.number(b.limit(), 1) + " times, by " + b.binding())
                            + "; " + String.join("; ", b.doing()));
        });
        return this;
    }

    static Ranged conductivity(Waters waters) {
        return waters.of(Conductivity::atRoom);
    }
}
