package wetside.units;

import static wetside.units.Unit.from;
import static wetside.units.Unit.of;

import java.util.List;
import java.util.Optional;

/**
 * What kind of quantity a number is, and the units it may be written in (the usual one of the trade first).
 *
 * <p>Unit factors are exact by definition (SI brochure; inch 25.4 mm, foot 304.8 mm, pound 0.45359237 kg, US gallon 231 in³, g0
 * 9.80665 m/s²) except hardness, which uses M(CaCO3) = 100.0869 g/mol and M(CaO) = 56.0774 g/mol.
 */
public enum Dimension {
    PRESSURE(
            "a pressure",
            of("bar", 1e5, "barg", "bar(g)"),
            of("mbar", 100),
            of("kPa", 1e3),
            of("MPa", 1e6),
            of("Pa", 1),
            of("psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254), "psig")),
    TEMPERATURE(
            "a temperature",
            from("°C", 1, 273.15, "degC", "C"),
            of("K", 1),
            from("°F", 5 / 9.0, 273.15 - 32 * 5 / 9.0, "degF", "F")),
    TEMPERATURE_RISE("a temperature difference", of("K", 1, "°C", "degC", "C"), of("°F", 5 / 9.0, "degF", "F")),
    LENGTH(
            "a length",
            of("mm", 1e-3),
            of("cm", 1e-2),
            of("m", 1),
            of("µm", 1e-6, "um"),
            of("in", 0.0254, "inch"),
            of("ft", 0.3048)),
    AREA("an area", of("mm2", 1e-6), of("cm2", 1e-4), of("m2", 1)),
    VOLUME(
            "a volume",
            of("l", 1e-3, "L"),
            of("ml", 1e-6, "mL", "cm3"),
            of("m3", 1),
            of("US gal", 3.785411784e-3, "gal"),
            of("fl oz", 29.5735295625e-6)),
    MASS("a mass", of("g", 1e-3), of("kg", 1), of("mg", 1e-6), of("lb", 0.45359237), of("oz", 0.45359237 / 16)),
    TIME(
            "a time",
            of("s", 1),
            of("ms", 1e-3),
            of("min", 60),
            of("h", 3600),
            of("d", 86400),
            of("a", 31557600, "years")),
    MASS_FLOW(
            "a mass flow",
            of("g/s", 1e-3),
            of("g/min", 1e-3 / 60),
            of("g/h", 1e-3 / 3600),
            of("kg/h", 1 / 3600.0),
            of("kg/s", 1),
            of("lb/h", 0.45359237 / 3600)),
    VOLUME_FLOW(
            "a volume flow",
            of("ml/min", 1e-6 / 60, "mL/min"),
            of("ml/s", 1e-6, "mL/s"),
            of("l/min", 1e-3 / 60, "L/min"),
            of("l/h", 1e-3 / 3600, "L/h"),
            of("m3/h", 1 / 3600.0),
            of("m3/s", 1),
            of("US gal/min", 3.785411784e-3 / 60, "gpm"),
            of("fl oz/min", 29.5735295625e-6 / 60)),
    POWER("a power", of("W", 1), of("kW", 1e3), of("mW", 1e-3)),
    ENERGY("an energy", of("kJ", 1e3), of("J", 1), of("MJ", 1e6), of("Wh", 3600), of("kWh", 3.6e6)),
    VOLTAGE("a voltage", of("V", 1), of("mV", 1e-3), of("kV", 1e3)),
    CURRENT("a current", of("A", 1), of("mA", 1e-3), of("µA", 1e-6, "uA")),
    RESISTANCE(
            "a resistance",
            of("Ω", 1, "ohm"),
            of("mΩ", 1e-3, "mohm"),
            of("kΩ", 1e3, "kohm", "k"),
            of("MΩ", 1e6, "Mohm")),
    CAPACITANCE("a capacitance", of("µF", 1e-6, "uF"), of("nF", 1e-9), of("F", 1)),
    CONDUCTIVITY(
            "a conductivity of water", of("µS/cm", 1e-4, "uS/cm"), of("mS/cm", 0.1), of("S/m", 1), of("mS/m", 1e-3)),
    HEAT_CAPACITY("a heat capacity", of("J/K", 1), of("kJ/K", 1e3)),
    THERMAL_CONDUCTANCE("a thermal conductance", of("W/K", 1), of("mW/K", 1e-3)),
    FREQUENCY("a frequency", of("Hz", 1), of("kHz", 1e3)),
    ROTATION("a speed of rotation", of("rpm", 1 / 60.0, "1/min", "rev/min"), of("rev/s", 1, "1/s")),
    RATIO("a share", of("%", 0.01), of("", 1), of("‰", 1e-3)),
    NUMBER("a plain number", of("", 1)),
    RATE(
            "a rate",
            of("per million hours", 1 / 3.6e9),
            of("1/h", 1 / 3600.0, "per hour"),
            of("1/d", 1 / 86400.0, "per day"),
            of("1/a", 1 / 31557600.0, "per year"),
            of("1/s", 1, "per second")),
    MONEY("an amount of money", of("", 1)),
    HARDNESS(
            "a hardness of water",
            of("°dH", 10 / 56.0774, "dH"),
            of("°fH", 10 / 100.0869, "fH"),
            of("ppm CaCO3", 1 / 100.0869, "mg/l CaCO3", "ppm"),
            of("mmol/l", 1, "mol/m3", "mmol/L"),
            of("gpg", 17.118 / 100.0869));

    private final String article;
    private final List<Unit> units;

    Dimension(String article, Unit... units) {
        this.article = article;
        this.units = List.of(units);
    }

    /** The dimension in words with its article, for sentences: "a pressure". */
    public String article() {
        return article;
    }

    /** All units of this dimension, the usual one first. */
    public List<Unit> units() {
        return units;
    }

    /** True when a number without a unit is accepted. */
    public boolean allowsPlain() {
        return units.stream().anyMatch(Unit::isPlain);
    }

    /** The unit written {@code symbol}; capital and small letters are only told apart where it matters. */
    public Optional<Unit> unit(String symbol) {
        // loops: asked for every quantity of every file before anything is compiled
        Unit loose = null;
        boolean doubtful = false;
        for (Unit u : units) {
            if (u.isWritten(symbol)) {
                return Optional.of(u);
            }
            if (u.isWrittenIgnoringCase(symbol)) {
                doubtful |= loose != null;
                loose = u;
            }
        }
        return doubtful ? Optional.empty() : Optional.ofNullable(loose);
    }

    /** The units in words: "bar, mbar, kPa, MPa, Pa or psi". */
    public String unitsInWords() {
        List<String> names =
                units.stream().map(u -> u.isPlain() ? "no unit" : u.symbol()).toList();
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
