package wetside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Constants;
import wetside.water.Equilibrium;

/**
 * How much to lead round a treatment so that the blend comes nearest to a range.
 *
 * @param share round it, 0 to 1
 * @param said  how near it comes and why no nearer; empty when it is inside
 */
public record Blend(double share, String said) {
    private static final Constants ROOM = ConstantSet.STANDARD.at(298.15);
    private static final int STEPS = 100;

    public static Blend nearest(
            Composition raw, BrewingRange range, DoubleFunction<UnaryOperator<Composition>> treatment) {
        double best = Double.POSITIVE_INFINITY;
        double share = 0;
        for (int i = 0; i <= STEPS; i++) {
            double s = i / (double) STEPS;
            double off = off(treatment.apply(s).apply(raw), range);
            if (off < best - 1e-12) {
                best = off;
                share = s;
            }
        }
        List<String> outside = outside(treatment.apply(share).apply(raw), range);
        return new Blend(share, outside.isEmpty() ? "" : said(raw, range, outside, share));
    }

    private static String said(Composition raw, BrewingRange range, List<String> outside, double share) {
        String why = share == 0
                ? "already all of it is treated"
                : share == 1 ? "already all of it goes round" : "one share cannot set several things at once";
        return "the nearest blend leaves " + String.join(" and ", outside) + "; " + why;
    }

    /** Distance from a range in its widths, with a little pull to the middle so that the answer is one. */
    private static double off(Composition c, BrewingRange range) {
        double sum = 0;
        for (var e : range.items().entrySet()) {
            if (e.getKey() == BrewingRange.Item.PH) {
                continue;
            }
            double v = value(c, e.getKey());
            double[] ends = e.getValue();
            double width = Math.max(1e-9, ends[1] - ends[0]);
            double out = Math.max(0, Math.max(ends[0] - v, v - ends[1])) / width;
            double middle = (v - (ends[0] + ends[1]) / 2) / width;
            sum += out * out + 1e-3 * middle * middle;
        }
        return sum;
    }

    /** Items outside the range, each with its value and the end it misses. */
    public static List<String> outside(Composition c, BrewingRange range) {
        List<String> outside = new ArrayList<>();
        range.items().forEach((item, ends) -> {
            double v = value(c, item);
            if (v < ends[0] - 1e-9 || v > ends[1] + 1e-9) {
                String unit = item.unit().isEmpty() ? "" : " " + item.unit();
                String shape = item == BrewingRange.Item.PH ? "%s %.1f%s (%s %.1f)" : "%s %.0f%s (%s %.0f)";
                outside.add(String.format(
                        Locale.ROOT,
                        shape,
                        item.words(),
                        v,
                        unit,
                        v < ends[0] ? "least" : "most",
                        v < ends[0] ? ends[0] : ends[1]));
            }
        });
        return outside;
    }

    /** A water's value of an item, in its unit. */
    public static double value(Composition c, BrewingRange.Item item) {
        double unit = item.content().unit(item.unit()).orElseThrow();
        return switch (item) {
            case CALCIUM -> c.calcium() / unit;
            case HARDNESS -> c.hardness() / unit;
            case ALKALINITY -> c.alkalinity() / unit;
            case SODIUM -> c.sodium() / unit;
            case PH -> new Equilibrium(ROOM).of(c).ph();
        };
    }
}
