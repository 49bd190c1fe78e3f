package wetside.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How quantities are shown: in the trade's usual units, with as many digits as a reading of that kind deserves. Screen,
 * JSON, sheets and charts all print through here.
 *
 * @param pressure    bar or psi
 * @param temperature °C or °F; differences follow it
 * @param volume      l or US gal; flows of volume and lengths follow it
 * @param hardness    °dH, °fH, ppm CaCO3 or gpg
 */
public record Display(String pressure, String temperature, String volume, String hardness) {
    public static final Display METRIC = new Display("bar", "°C", "l", "°dH");
    public static final Display US = new Display("psi", "°F", "US gal", "gpg");

    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);

    /** Number and unit, such as "8.5 bar", "1.12 bar", "123 psi", "93.4 °C", "4.7 g/s", "44 Ω", "12 kΩ", "0.3 mA". */
    public String print(double si, Dimension dimension) {
        if (Double.isNaN(si)) {
            return "–";
        }
        Unit unit = unitFor(si, dimension);
        String number = number(unit.fromSi(si), unit, dimension);
        return unit.isPlain() ? number : number + " " + unit.symbol();
    }

    /** A range, such as "8.2 to 8.9 bar", "820 Ω to 1.2 kΩ", and "up to 0.3 mA" from nothing. */
    public String range(double low, double high, Dimension dimension) {
        String to = print(high, dimension);
        if (low == 0 && high > 0 && dimension != Dimension.TEMPERATURE && dimension != Dimension.TEMPERATURE_RISE) {
            return "up to " + to;
        }
        String from = print(low, dimension);
        String unit = to.substring(to.lastIndexOf(' ') + 1);
        boolean same = !unit.equals(to) && from.endsWith(" " + unit);
        return (same ? from.substring(0, from.length() - unit.length() - 1) : from) + " to " + to;
    }

    private boolean isGallons() {
        return volume.equals("US gal");
    }

    /** The one unit a column or an axis of this dimension is labelled with. */
    public Unit unit(Dimension dimension) {
        String symbol = switch (dimension) {
            case PRESSURE -> pressure;
            case TEMPERATURE -> temperature;
            case TEMPERATURE_RISE -> temperature.equals("°F") ? "°F" : "K";
            case LENGTH -> isGallons() ? "in" : "mm";
            case AREA -> "mm2";
            case VOLUME -> isGallons() ? "fl oz" : "ml";
            case MASS -> "g";
            case TIME -> "s";
            case MASS_FLOW -> "g/s";
            case VOLUME_FLOW -> isGallons() ? "fl oz/min" : "ml/min";
            case POWER -> "W";
            case ENERGY -> "kJ";
            case VOLTAGE -> "V";
            case CURRENT -> "A";
            case RESISTANCE -> "Ω";
            case CAPACITANCE -> "µF";
            case CONDUCTIVITY -> "µS/cm";
            case HEAT_CAPACITY -> "J/K";
            case THERMAL_CONDUCTANCE -> "W/K";
            case FREQUENCY -> "Hz";
            case ROTATION -> "rpm";
            case RATIO -> "%";
            case NUMBER, MONEY -> "";
            case RATE -> "per million hours";
            case HARDNESS -> hardness;
        };
        return named(symbol, dimension);
    }

    /** A sentence written in metric units with its measures in these: "back to 1.2 bar" becomes "back to 17 psi". */
    public String prose(String text) {
        return Prose.in(this, text);
    }

    /** The unit a single value of this size is read best in: 0.3 mA rather than 0.0003 A. */
    Unit unitFor(double si, Dimension dimension) {
        double size = Math.abs(si) * (1 + 1e-9);
        if (size == 0 || Double.isInfinite(size)) {
            return unit(dimension);
        }
        String symbol = switch (dimension) {
            case LENGTH -> size < 1 ? "" : isGallons() ? "ft" : "m";
            case VOLUME -> size < 1e-3 ? "" : !isGallons() ? "l" : size < 3.785e-3 ? "" : "US gal";
            case MASS -> size < 1e-3 ? "mg" : size < 1 ? "g" : "kg";
            case TIME -> size < 1 ? "ms" : size < 120 ? "s" : size < 7200 ? "min" : size < 172800 ? "h" : "d";
            case VOLUME_FLOW -> isGallons() || size < 1e-3 / 60 ? "" : "l/min";
            case POWER -> size < 1 ? "mW" : "W";
            case ENERGY -> size < 1e3 ? "J" : size < 3.6e5 ? "kJ" : "kWh";
            case VOLTAGE -> size < 1 ? "mV" : "V";
            case CURRENT -> size < 1e-4 ? "µA" : size < 0.1 ? "mA" : "A";
            case RESISTANCE -> size < 0.1 ? "mΩ" : size < 1e3 ? "Ω" : size < 1e6 ? "kΩ" : "MΩ";
            case CAPACITANCE -> size < 1e-6 ? "nF" : "µF";
            case HEAT_CAPACITY -> size < 1e4 ? "J/K" : "kJ/K";
            case PRESSURE,
                    TEMPERATURE,
                    TEMPERATURE_RISE,
                    AREA,
                    MASS_FLOW,
                    CONDUCTIVITY,
                    THERMAL_CONDUCTANCE,
                    FREQUENCY,
                    ROTATION,
                    RATIO,
                    NUMBER,
                    RATE,
                    MONEY,
                    HARDNESS -> "";
        };
        return symbol.isEmpty() ? unit(dimension) : named(symbol, dimension);
    }

    private static Unit named(String symbol, Dimension dimension) {
        return dimension.unit(symbol).orElseThrow(() -> new IllegalStateException(dimension + " in " + symbol));
    }

    private static String number(double value, Unit unit, Dimension dimension) {
        if (Double.isInfinite(value)) {
            return value > 0 ? "∞" : "-∞";
        }
        if (dimension == Dimension.PRESSURE) {
            return decimals(value, unit.symbol().equals("psi") ? 0 : Math.abs(value) < 2.995 ? 2 : 1);
        }
        if (dimension == Dimension.TEMPERATURE || dimension == Dimension.TEMPERATURE_RISE) {
            return decimals(value, 1);
        }
        return dimension == Dimension.MONEY ? decimals(value, 2) : significant(value);
    }

    private static String decimals(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** Three significant digits, whole numbers in full, no trailing zeros. */
    private static String significant(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = Math.abs(value) >= 1000
                ? exact.setScale(0, RoundingMode.HALF_UP)
                : exact.round(THREE).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
