package wetside.feedwater;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import wetside.analysis.Ranged;

/** Numbers of waters as sentences and tables show them. */
public final class Said {
    private Said() {}

    /** With a number of decimals, a true minus sign and no negative zero. */
    public static String number(double v, int decimals) {
        String s = String.format(Locale.ROOT, "%." + decimals + "f", v);
        if (s.matches("-0(\\.0+)?")) {
            s = s.substring(1);
        }
        return s.replace('-', '−');
    }

    /** With two figures that count. */
    public static String short2(double v) {
        if (Double.isInfinite(v) || Double.isNaN(v)) {
            return "–";
        }
        if (Math.abs(v) < 1e-3) {
            return "0";
        }
        return new BigDecimal(v)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString()
                .replace('-', '−');
    }

    /** Middle and, where it is one, the range: {@code 48 mg/l (40 to 55)}. */
    public static String ranged(Ranged r, int decimals, String unit) {
        String middle = number(r.middle(), decimals) + (unit.isEmpty() ? "" : " " + unit);
        String low = number(r.low(), decimals);
        String high = number(r.high(), decimals);
        return low.equals(high) ? middle : middle + " (" + low + " to " + high + ")";
    }

    public static String signed(Ranged r) {
        String low = plus(r.low());
        String high = plus(r.high());
        return low.equals(high) ? plus(r.middle()) : plus(r.middle()) + " (" + low + " to " + high + ")";
    }

    private static String plus(double v) {
        String s = number(v, 1);
        return v >= 0.05 ? "+" + s : s;
    }

    public static String microsiemens(Ranged r) {
        return ranged(r.times(1e4), 0, "µS/cm");
    }

    public static String celsius(double kelvin) {
        return number(kelvin - 273.15, 0) + " °C";
    }

    /** A time as people plan: weeks, months, years. */
    public static String time(double years) {
        if (years >= Forecast.NEVER) {
            return "over " + (int) Forecast.NEVER + " years";
        }
        if (years < 0.25) {
            return Math.max(1, Math.round(years * 52)) + " weeks";
        }
        return years < 3 ? Math.round(years * 12) + " months" : Math.round(years) + " years";
    }

    public static String times(Ranged years) {
        String low = time(years.low());
        String high = time(years.high());
        String middle = time(years.middle());
        return low.equals(high) ? middle : middle + " (" + low + " to " + high + ")";
    }
}
