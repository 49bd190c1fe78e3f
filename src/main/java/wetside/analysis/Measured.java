package wetside.analysis;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A measured value and what it may be in truth: a normal law cut at three standard deviations, {@code half} being two, or
 * evenly between two ends where a drop test has counted.
 *
 * @param value the middle
 * @param half  half of the width
 * @param even  evenly spread
 * @param said  as written
 */
public record Measured(double value, double half, boolean even, String said) {
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)", Pattern.DOTALL);
    private static final Pattern DROPS = Pattern.compile("(\\d{1,3}) drops? (?:of|each) (.+)", Pattern.DOTALL);

    /** Says what is wrong with a text. */
    static final class NotAMeasure extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotAMeasure(String message) {
            super(message);
        }
    }

    /**
     * {@code 9 °dH}, {@code 9 °dH ± 1 °dH}, {@code 14 mg/l ± 10 %}, {@code below 1 °dH}, {@code 9 drops of 1 °dH}: the ninth
     * drop turned the colour, so the truth lies above eight.
     */
    static Measured parse(String text, Content content) {
        String clean =
                text.strip().replace('\u2212', '-').replace('\u03BC', '\u00B5').replaceAll("\\s+", " ");
        if (clean.length() > 60) {
            throw new NotAMeasure("this is too long for " + content.words());
        }
        Matcher drops = DROPS.matcher(clean);
        if (drops.matches()) {
            int n = Integer.parseInt(drops.group(1));
            double drop = number(drops.group(2), content);
            if (n == 0 || !(drop > 0)) {
                throw new NotAMeasure("a drop test counts at least one drop of something");
            }
            return sensible(new Measured((n - 0.5) * drop, drop / 2, true, clean), content);
        }
        if (clean.startsWith("below ") || clean.startsWith("<")) {
            double top = number(clean.replaceFirst("^(below |<)\\s*", ""), content);
            return sensible(new Measured(top / 2, Math.abs(top) / 2, true, clean), content);
        }
        String[] parts = clean.split("±|\\+/-|\\+-", 2);
        double value = number(parts[0].strip(), content);
        double half = content.usual() * (content.isRelative() ? Math.abs(value) : 1);
        if (parts.length == 2) {
            half = half(parts[1].strip(), value, content);
        }
        return sensible(new Measured(value, half, false, clean), content);
    }

    private static double half(String text, double value, Content content) {
        if (text.endsWith("%") && content.isRelative()) {
            Matcher m = NUMBER.matcher(text.substring(0, text.length() - 1).strip());
            if (m.matches() && m.group(2).isEmpty()) {
                return Math.abs(Double.parseDouble(m.group(1)) / 100 * value);
            }
        }
        return Math.abs(number(text, content));
    }

    private static double number(String text, Content content) {
        Matcher m = NUMBER.matcher(text);
        if (text.matches("[+-]?\\d+,\\d+.*")) {
            throw new NotAMeasure("\"" + text + "\" has a comma in its number; the decimal sign is a point");
        }
        if (!m.matches()) {
            throw new NotAMeasure("\"" + text + "\" is no " + content.words() + "; write a number"
                    + (content == Content.PH ? "" : " and a unit (" + content.unitsInWords() + ")"));
        }
        String unit = m.group(2).strip();
        double factor = content.unit(unit).orElseThrow(() -> new NotAMeasure(wrong(m.group(1), unit, content)));
        return Double.parseDouble(m.group(1)) * factor;
    }

    private static String wrong(String number, String unit, Content content) {
        if (unit.isEmpty()) {
            return "the unit is missing: " + content.words() + " is written in " + content.unitsInWords()
                    + ", such as \"" + number + " " + content.usualUnit() + "\"";
        }
        String twice = switch (unit) {
            case "mg/l", "mg/L", "ppm" ->
                content == Content.HARDNESS || content == Content.ALKALINITY
                        ? "of what? write mg/l CaCO3"
                        : "write mg/l for the ion itself";
            case "mmol/l", "mmol/L" -> "may mean acid capacity or calcium carbonate: write meq/l or mg/l CaCO3";
            default -> content == Content.PH ? "pH has no unit" : "use " + content.unitsInWords();
        };
        return "\"" + number + " " + unit + "\" of " + content.words() + ": " + twice;
    }

    private static Measured sensible(Measured m, Content content) {
        if (content == Content.PH && !(m.value >= 4.5 && m.value <= 10.5)) {
            throw new NotAMeasure("a pH of " + m.said + " is no water for a machine: it lies between 4.5 and 10.5."
                    + " Measure again with a fresh strip or a calibrated meter");
        }
        if (m.value < 0) {
            throw new NotAMeasure("there is no negative " + content.words());
        }
        if (m.value > content.most()) {
            throw new NotAMeasure(m.said + " of " + content.words() + " is brine, not water to brew with;"
                    + " check the number and its unit");
        }
        return m;
    }

    /** The value below which the truth lies with a chance. */
    public double at(double chance) {
        double v =
                even ? value + half * (2 * chance - 1) : value + half / 2 * Math.max(-3, Math.min(3, normal(chance)));
        return Math.max(0, v);
    }

    /** Quantile of the normal law, to 0.004. */
    static double normal(double chance) {
        double x = 2 * Math.max(1e-6, Math.min(1 - 1e-6, chance)) - 1;
        double l = Math.log(1 - x * x);
        double a = 2 / (Math.PI * 0.147) + l / 2;
        return Math.signum(x) * Math.sqrt(2) * Math.sqrt(Math.sqrt(a * a - l / 0.147) - a);
    }
}
