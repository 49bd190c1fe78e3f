package wetside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
    @ParameterizedTest
    @CsvSource({
        "8.5e5, PRESSURE, 8.5 bar, 123 psi",
        "1.12e5, PRESSURE, 1.12 bar, 16 psi",
        "-2e4, PRESSURE, -0.20 bar, -3 psi",
        "-1e-9, PRESSURE, 0.00 bar, 0 psi",
        "0, PRESSURE, 0.00 bar, 0 psi",
        "366.55, TEMPERATURE, 93.4 °C, 200.1 °F",
        "5, TEMPERATURE_RISE, 5.0 K, 9.0 °F",
        "4.7e-3, MASS_FLOW, 4.7 g/s, 4.7 g/s",
        "44, RESISTANCE, 44 Ω, 44 Ω",
        "44.083, RESISTANCE, 44.1 Ω, 44.1 Ω",
        "12000, RESISTANCE, 12 kΩ, 12 kΩ",
        "0.05, RESISTANCE, 50 mΩ, 50 mΩ",
        "3e-4, CURRENT, 0.3 mA, 0.3 mA",
        "10.62, CURRENT, 10.6 A, 10.6 A",
        "1329, POWER, 1329 W, 1329 W",
        "230, VOLTAGE, 230 V, 230 V",
        "0.75e-3, VOLUME, 750 ml, 25.4 fl oz",
        "2e-3, VOLUME, 2 l, 67.6 fl oz",
        "0.0007, LENGTH, 0.7 mm, 0.0276 in",
        "180, LENGTH, 180 m, 591 ft",
        "5e-6, VOLUME_FLOW, 300 ml/min, 10.1 fl oz/min",
        "27, TIME, 27 s, 27 s",
        "750, TIME, 12.5 min, 12.5 min",
        "0.105, RATIO, 10.5 %, 10.5 %",
        "3, NUMBER, 3, 3",
        "12.5, MONEY, 12.50, 12.50",
        "0.025, CONDUCTIVITY, 250 µS/cm, 250 µS/cm",
        "NaN, PRESSURE, –, –",
        "Infinity, RESISTANCE, ∞ Ω, ∞ Ω",
    })
    void printsAsTheTradeWrites(double si, Dimension dimension, String metric, String us) {
        assertThat(Display.METRIC.print(si, dimension)).isEqualTo(metric);
        assertThat(Display.US.print(si, dimension)).isEqualTo(us);
    }

    @Test
    void whatIsPrintedCanBeReadAgainToTheDigitsShown() {
        SplittableRandom random = new SplittableRandom(2);
        for (Display display : List.of(Display.METRIC, Display.US, new Display("psi", "°C", "l", "ppm CaCO3"))) {
            for (Dimension dimension : Dimension.values()) {
                for (int i = 0; i < 200; i++) {
                    double si = Math.exp(random.nextDouble(-12, 12))
                            * display.unit(dimension).factor();
                    double read = Quantity.parse(display.print(si, dimension), dimension)
                            .si();
                    double digit = switch (dimension) {
                        case PRESSURE -> 3600;
                        case TEMPERATURE, TEMPERATURE_RISE -> 0.051;
                        case MONEY -> 0.0051;
                        default -> 0;
                    };
                    assertThat(read).as(display.print(si, dimension)).isCloseTo(si, within(digit + 0.0051 * si));
                }
            }
        }
    }
}
