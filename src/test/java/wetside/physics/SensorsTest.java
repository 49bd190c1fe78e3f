package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SensorsTest {
    private static final double[] LAW = {3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8};

    @Test
    void everyLawReadsBackTheTemperatureItWrites() {
        for (double t = 240; t < 430; t += 2.3) {
            assertThat(Thermistor.betaTemperature(47e3, 3950, Thermistor.beta(47e3, 3950, t)))
                    .isCloseTo(t, within(1e-9));
            assertThat(Thermistor.fourTerms(LAW, 1e4, Thermistor.fourTermsResistance(LAW, 1e4, t)))
                    .isCloseTo(t, within(1e-9));
            assertThat(Platinum.temperature(1000, Platinum.resistance(1000, t))).isCloseTo(t, within(1e-8));
        }
    }

    @Test
    void waterConductsBetterWhenHotAndPureWaterHardlyAtAll() {
        double tap = Conductor.electrode(20, 0.04, 298.15);
        assertThat(tap).isCloseTo(500, within(1e-9));
        assertThat(Conductor.electrode(20, 0.04, 393.15)).isLessThan(tap / 2);
        assertThat(Conductor.electrode(20, 1e-4, 298.15)).isGreaterThan(100e3);
    }

    @Test
    void aSiliconSensorIsReadBack() {
        for (double t = 230; t < 430; t += 7) {
            assertThat(SiliconSensor.temperature(1000, SiliconSensor.resistance(1000, t)))
                    .isCloseTo(t, within(1e-9));
        }
        assertThat(SiliconSensor.temperature(1000, 50)).isNaN();
    }
}
