package wetside.feedwater;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;

/** Sentences about waters with their measures as a reader wants them: hardness is computed as lime, shown as asked for. */
public final class WaterWords {
    private static final Pattern LIME =
            Pattern.compile("(\\d+(?:\\.\\d+)?(?: (?:→|to|and|or) \\d+(?:\\.\\d+)?)?) mg/l CaCO3( \\([^)]*\\))?");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    private WaterWords() {}

    public static String in(Display units, String text) {
        Unit lime = Dimension.HARDNESS.unit("mg/l CaCO3").orElseThrow();
        Unit wanted = units.unit(Dimension.HARDNESS);
        String turned = LIME.matcher(text).replaceAll(m -> {
            String range = m.group(2) == null ? "" : m.group(2);
            return Matcher.quoteReplacement(
                    numbers(m.group(1), lime, wanted) + " " + wanted.symbol() + numbers(range, lime, wanted));
        });
        return units.prose(turned);
    }

    private static String numbers(String text, Unit from, Unit to) {
        return NUMBER.matcher(text).replaceAll(n -> figures(to.fromSi(from.toSi(Double.parseDouble(n.group())))));
    }

    /** With as many figures as an analysis of water deserves. */
    public static String figures(double v) {
        double size = Math.abs(v);
        if (size < 0.005) {
            return "0";
        }
        return String.format(Locale.ROOT, size >= 10 ? "%.0f" : size >= 1 ? "%.1f" : "%.2f", v)
                .replace('-', '−');
    }
}
