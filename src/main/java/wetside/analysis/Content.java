package wetside.analysis;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be measured of a water, with the units it is reported in. A unit that means two things is none: {@code mg/l} of
 * hardness, {@code mmol/l} of alkalinity.
 */
public enum Content {
    HARDNESS("hardness", 0.05, 0.012, 0.5, hard(1)),
    CALCIUM("calcium", 0.05, 0.012, 2, hard(1), "mg/l", 1 / 40.078e3),
    MAGNESIUM("magnesium", 0.05, 0.012, 2, hard(1), "mg/l", 1 / 24.305e3),
    ALKALINITY("alkalinity", 0.05, 0.02, 1, hard(2), "mg/l HCO3", 1 / 61.016e3, "°dKH", 2 * 10 / 56.0774e3),
    SODIUM("sodium", 0.05, 0.03, 1, Map.of(), "mg/l", 1 / 22.990e3),
    POTASSIUM("potassium", 0.05, 0.01, 1, Map.of(), "mg/l", 1 / 39.098e3),
    CHLORIDE("chloride", 0.05, 0.03, 1, Map.of(), "mg/l", 1 / 35.45e3),
    SULFATE("sulfate", 0.05, 0.02, 2, Map.of(), "mg/l", 1 / 96.06e3, "mg/l S", 1 / 32.06e3),
    NITRATE("nitrate", 0.05, 0.01, 1, Map.of(), "mg/l", 1 / 62.004e3, "mg/l N", 1 / 14.007e3),
    SILICA("silica", 0.10, 0.004, 0, Map.of(), "mg/l", 1 / 60.083e3, "mg/l Si", 1 / 28.085e3),
    PH("pH", 0.2, 14, 0, Map.of("", 1.0)),
    CONDUCTIVITY("conductivity", 0.03, 1, 0, Map.of("µS/cm", 1e-4, "mS/cm", 0.1, "S/m", 1.0, "mS/m", 1e-3));

    private static final Map<String, String> SPELLINGS = Map.of(
            "mg/L", "mg/l", "dH", "°dH", "dKH", "°dKH", "fH", "°fH", "uS/cm", "µS/cm", "mmol/L", "mmol/l", "meq/L",
            "meq/l", "meq", "meq/l");

    private final String words;
    private final double usual;
    private final double most;
    private final double charge;
    private final Map<String, Double> units = new LinkedHashMap<>();

    Content(String words, double usual, double most, double charge, Map<String, Double> more, Object... own) {
        this.words = words;
        this.usual = usual;
        this.most = most;
        this.charge = charge;
        for (int i = 0; i < own.length; i += 2) {
            units.put((String) own[i], (Double) own[i + 1]);
        }
        units.putAll(more);
        if (charge >= 1 && !units.containsKey("meq/l")) {
            units.put("meq/l", 1e-3 / charge);
            if (!words.equals("alkalinity")) {
                units.put("mmol/l", 1e-3);
            }
        }
    }

    /** Units of hardness, and of alkalinity as the hardness it answers for: {@code per} of what is meant in a mol. */
    private static Map<String, Double> hard(double per) {
        Map<String, Double> m = new LinkedHashMap<>();
        m.put("°dH", per * 10 / 56.0774e3);
        m.put("mg/l CaCO3", per / 100.0869e3);
        m.put("°fH", per * 10 / 100.0869e3);
        m.put("gpg", per * 17.118 / 100.0869e3);
        m.put("°Clark", per * 14.254 / 100.0869e3);
        if (per == 1) {
            m.put("mmol/l", 1e-3);
            m.put("meq/l", 0.5e-3);
        } else {
            m.put("meq/l", 1e-3);
        }
        return m;
    }

    public String words() {
        return words;
    }

    public static List<String> names() {
        return Arrays.stream(values()).map(Content::words).toList();
    }

    public static Content of(String words) {
        return Arrays.stream(values())
                .filter(c -> c.words.equals(words))
                .findFirst()
                .orElseThrow();
    }

    /** What one unit of {@code symbol} is [mol/kg; alkalinity eq/kg; conductivity S/m]. */
    public Optional<Double> unit(String symbol) {
        return Optional.ofNullable(units.get(SPELLINGS.getOrDefault(symbol, symbol)));
    }

    /** Units it may be written in, the most usual first; none for pH. */
    public List<String> units() {
        return units.keySet().stream()
                .filter(u -> !u.isEmpty())
                .sorted(java.util.Comparator.comparing((String u) -> !u.equals(usualUnit())))
                .toList();
    }

    String unitsInWords() {
        List<String> all = List.copyOf(units.keySet());
        return all.size() == 1
                ? all.get(0)
                : String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.get(all.size() - 1);
    }

    /** Accuracy where none is said: a share of the value, for pH a half-width. */
    double usual() {
        return usual;
    }

    boolean isRelative() {
        return this != PH;
    }

    /** No water for a machine has more. */
    double most() {
        return most;
    }

    /** A value in the unit people read it in, of an SI value. */
    public double shown(double si, String symbol) {
        return si / unit(symbol).orElseThrow();
    }

    /** The unit a table shows it in. */
    public String usualUnit() {
        return switch (this) {
            case HARDNESS, ALKALINITY -> "°dH";
            case PH -> "";
            case CONDUCTIVITY -> "µS/cm";
            default -> "mg/l";
        };
    }
}
