package wetside.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Measures inside sentences, as another reader wants them: "hold it at 9 bar" becomes "hold it at 131 psi". Sentences of
 * procedures, cards and walks are written once, in the units of the trade; whoever shows them turns them here.
 */
final class Prose {
    private static final String NUMBER = "[-−+]?\\d+(?:[.,]\\d+)?";
    /** Numbers joined by what stands in ranges, then one unit for all of them. */
    private static final Pattern MEASURE =
            Pattern.compile("(?<![\\w.,])((?:± ?)?" + NUMBER + "(?:(?: ?(?:to|and|or|–|→|±) ?|, )" + NUMBER
                    + ")*)[ \\u00a0\\u202f](bar|mbar|°C|K|ml/min|l/min|ml|l|°dH)(?![\\w/°])");

    private static final Pattern ONE = Pattern.compile("(± ?)?(" + NUMBER + ")");
    private static final Map<String, Dimension> SORTS = Map.of(
            "bar", Dimension.PRESSURE,
            "mbar", Dimension.PRESSURE,
            "°C", Dimension.TEMPERATURE,
            "K", Dimension.TEMPERATURE_RISE,
            "ml/min", Dimension.VOLUME_FLOW,
            "l/min", Dimension.VOLUME_FLOW,
            "ml", Dimension.VOLUME,
            "l", Dimension.VOLUME,
            "°dH", Dimension.HARDNESS);

    private Prose() {}

    static String in(Display display, String text) {
        if (display.equals(Display.METRIC) || text.isEmpty()) {
            return text;
        }
        Matcher m = MEASURE.matcher(text);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(out, Matcher.quoteReplacement(turned(display, m.group(1), m.group(2), m.group())));
        }
        return m.appendTail(out).toString();
    }

    private static String turned(Display display, String numbers, String symbol, String whole) {
        Dimension dimension = SORTS.get(symbol);
        Unit written = dimension.unit(symbol).orElseThrow();
        Matcher n = ONE.matcher(numbers);
        double most = 0;
        while (n.find()) {
            most = Math.max(most, Math.abs(written.toSi(value(n.group(2)))));
        }
        Unit shown = display.unitFor(most, dimension);
        if (display.unit(dimension).equals(Display.METRIC.unit(dimension))) {
            return whole;
        }
        StringBuilder out = new StringBuilder();
        n.reset();
        while (n.find()) {
            boolean rise = n.group(1) != null && dimension == Dimension.TEMPERATURE;
            Unit from = rise ? Display.METRIC.unit(Dimension.TEMPERATURE_RISE) : written;
            Unit to = rise ? display.unit(Dimension.TEMPERATURE_RISE) : shown;
            String sign = n.group(1) == null ? "" : n.group(1);
            n.appendReplacement(out, Matcher.quoteReplacement(sign + number(n.group(2), from, to)));
        }
        return n.appendTail(out) + " " + shown.symbol();
    }

    private static double value(String number) {
        return Double.parseDouble(number.replace('−', '-').replace(',', '.'));
    }

    /** With a digit for each that stood there: a unit five to fifteen times smaller needs one less. */
    private static String number(String number, Unit from, Unit to) {
        double value = to.fromSi(from.toSi(value(number)));
        int point = Math.max(number.indexOf('.'), number.indexOf(','));
        int places = point < 0 ? 0 : number.length() - point - 1;
        double finer = from.factor() / to.factor();
        int wanted = (int) Math.max(0, Math.min(4, places - Math.round(Math.log10(finer))));
        if (to.symbol().equals("psi") && Math.abs(value) >= 10) {
            wanted = 0; // no gauge in psi is read finer
        }
        String text =
                BigDecimal.valueOf(value).setScale(wanted, RoundingMode.HALF_UP).toPlainString();
        return (text.matches("-0(\\.0+)?") ? text.substring(1) : text).replace('-', number.contains("−") ? '−' : '-');
    }
}
