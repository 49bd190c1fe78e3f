package wetside.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProseTest {
    private static final Display OTHER = new Display("psi", "°F", "US gal", "°fH");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hold it at 9 bar|hold it at 131 psi",
                "8.2 to 8.9 bar|119 to 129 psi",
                "back to 1.2 bar, then 1.1 bar|back to 17 psi, then 16 psi",
                "11.5 bar ± 0.5 bar|167 psi ± 7 psi",
                "93.5 °C ± 0.7 °C|200.3 °F ± 1.3 °F",
                "93 ± 2 °C|199 ± 4 °F",
                "92–96 °C|198–205 °F",
                "falls by 3 K|falls by 5 °F",
                "0.75 l and 1.5 l|25 fl oz and 51 fl oz",
                "12 l|3.2 US gal",
                "30 ml|1.0 fl oz",
                "7.8 → 3.4 °dH alkalinity|13.9 → 6.1 °fH alkalinity",
                "240 ml/min|8.1 fl oz/min",
                "0.3 bar less|4 psi less",
                "3 levers, 230 V, 4.7 g/s, 2 lamps|3 levers, 230 V, 4.7 g/s, 2 lamps",
                "F-2209 C|F-2209 C",
                "at 25 °C, 390 µS/cm|at 77 °F, 390 µS/cm",
            })
    void turnsMeasuresAndNothingElse(String written, String turned) {
        assertThat(OTHER.prose(written)).isEqualTo(turned);
        assertThat(Display.METRIC.prose(written)).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"9 bar at 93 °C|131 psi at 93 °C"})
    void eachQuantityIsChosenByItself(String written, String turned) {
        assertThat(new Display("psi", "°C", "l", "°dH").prose(written)).isEqualTo(turned);
    }
}
