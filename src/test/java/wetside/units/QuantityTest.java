package wetside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource({
        "9 bar, PRESSURE, 9e5",
        "9bar, PRESSURE, 9e5",
        "9 Bar, PRESSURE, 9e5",
        "-0.2 bar, PRESSURE, -2e4",
        "−0.2 bar, PRESSURE, -2e4",
        "850 kPa, PRESSURE, 8.5e5",
        "0.9 MPa, PRESSURE, 9e5",
        "100 psi, PRESSURE, 689475.729",
        "0 °C, TEMPERATURE, 273.15",
        "120 C, TEMPERATURE, 393.15",
        "248 °F, TEMPERATURE, 393.15",
        "300 K, TEMPERATURE, 300",
        "3 K, TEMPERATURE_RISE, 3",
        "3 °C, TEMPERATURE_RISE, 3",
        "9 °F, TEMPERATURE_RISE, 5",
        "0.7 mm, LENGTH, 7e-4",
        "1 in, LENGTH, 0.0254",
        "6 ml, VOLUME, 6e-6",
        "0.75 l, VOLUME, 7.5e-4",
        "0.75 L, VOLUME, 7.5e-4",
        "1 US gal, VOLUME, 3.785411784e-3",
        "2 lb, MASS, 0.90718474",
        "1.5 h, TIME, 5400",
        "3.6 kg/h, MASS_FLOW, 1e-3",
        "600 ml/min, VOLUME_FLOW, 1e-5",
        "100 l/h, VOLUME_FLOW, 2.7777777778e-5",
        "1.4 kW, POWER, 1400",
        "2 kohm, RESISTANCE, 2000",
        "2 kΩ, RESISTANCE, 2000",
        "2 kΩ, RESISTANCE, 2000",
        "10 MΩ, RESISTANCE, 1e7",
        "10 mΩ, RESISTANCE, 0.01",
        "5 µF, CAPACITANCE, 5e-6",
        "5 uF, CAPACITANCE, 5e-6",
        "250 µS/cm, CONDUCTIVITY, 0.025",
        "1 mS/cm, CONDUCTIVITY, 0.1",
        "1400 rpm, ROTATION, 23.3333333333",
        "1400 1/min, ROTATION, 23.3333333333",
        "3 %, RATIO, 0.03",
        "0.03, RATIO, 0.03",
        "7, NUMBER, 7",
        "3.6 per million hours, RATE, 1e-9",
        "12.50, MONEY, 12.5",
        "10 °dH, HARDNESS, 1.78325",
        "100 ppm CaCO3, HARDNESS, 0.999132",
        "1e-3 m3, VOLUME, 1e-3",
    })
    void readsANumberAndItsUnit(String text, Dimension dimension, double si) {
        Quantity read = Quantity.parse(text, dimension);
        assertThat(read.si()).isCloseTo(si, within(Math.abs(si) * 1e-6));
        assertThat(read.dimension()).isEqualTo(dimension);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9 | PRESSURE | \"9\" has no unit; a pressure is written in bar, mbar, kPa, MPa, Pa or psi | 9 bar",
                "9,5 bar | PRESSURE | \"9,5 bar\" has a comma in its number; the decimal sign is a point | 9.5 bar",
                "9 bra | PRESSURE | \"9 bra\": \"bra\" is not a unit of pressure; use bar, mbar, kPa, MPa, Pa or psi | 9 bar",
                "9 mm | PRESSURE | \"9 mm\" is a length; a pressure is wanted here (bar, mbar, kPa, MPa, Pa or psi) |",
                "9 bar abs | PRESSURE | \"9 bar abs\" is absolute; pressures are written as a gauge shows them, zero at the open air |",
                "warm | TEMPERATURE | \"warm\" is not a temperature in °C, K or °F |",
                "two | NUMBER | \"two\" is not a plain number |",
                "3 bar | NUMBER | \"3 bar\" is a pressure; a plain number is wanted here (no unit) |",
                "1e999 bar | PRESSURE | \"1e999 bar\" is too large a number |",
                "NaN bar | PRESSURE | \"NaN bar\" is not a pressure in bar, mbar, kPa, MPa, Pa or psi |",
            })
    void saysWhatIsWrongAndWhatWasProbablyMeant(String text, Dimension dimension, String message, String suggestion) {
        NotAQuantity wrong = catchThrowableOfType(NotAQuantity.class, () -> Quantity.parse(text, dimension));
        assertThat(wrong).hasMessage(message);
        assertThat(wrong.suggestion().orElse(null)).isEqualTo(suggestion);
    }

    @Test
    void doesNotRepeatAnEndlessText() {
        assertThatThrownBy(() -> Quantity.parse("9".repeat(1_000_000), Dimension.PRESSURE))
                .isInstanceOf(NotAQuantity.class)
                .message()
                .hasSizeLessThan(200);
    }

    @Test
    void capitalsMatterOnlyWhereTheyChangeTheMeaning() {
        assertThatThrownBy(() -> Quantity.parse("2 MOHM", Dimension.RESISTANCE)).isInstanceOf(NotAQuantity.class);
        assertThat(Quantity.parse("2 KOHM", Dimension.RESISTANCE).si()).isEqualTo(2000);
    }

    @Test
    void theUnitSaysTheDimension() {
        assertThat(Quantity.parseAny("3 g/s")).contains(new Quantity(3e-3, Dimension.MASS_FLOW));
        assertThat(Quantity.parseAny("5 %")).contains(new Quantity(0.05, Dimension.RATIO));
        assertThat(Quantity.parseAny("0.5")).contains(new Quantity(0.5, Dimension.RATIO));
        // a rise and a temperature are both written in kelvin; the first that knows the unit has it
        assertThat(Quantity.parseAny("2 K")).contains(new Quantity(2, Dimension.TEMPERATURE));
        for (String none : new String[] {"", "warm", "3 elephants", "1,5 bar", "1e999 bar", "9".repeat(100)}) {
            assertThat(Quantity.parseAny(none)).as(none).isEmpty();
        }
    }

    @Test
    void everyUnitReadsBackWhatItWrites() {
        SplittableRandom random = new SplittableRandom(1);
        for (Dimension dimension : Dimension.values()) {
            for (Unit unit : dimension.units()) {
                double si = random.nextDouble(0.1, 1000);
                Quantity read = Quantity.parse(unit.fromSi(si) + " " + unit.symbol(), dimension);
                assertThat(read.si()).as(dimension + " " + unit).isCloseTo(si, within(1e-9 * si));
                for (String alias : unit.aliases()) {
                    assertThat(dimension.unit(alias)).contains(unit);
                }
            }
        }
    }
}
