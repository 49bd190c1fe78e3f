package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WaterTest {
    @Test
    void slopeOfTheBoilingLineIsTheDifferenceOfPressures() {
        for (double t = 273.15; t < 600; t += 3.7) {
            double step = 1e-3;
            double difference = (Water.saturationPressure(t + step) - Water.saturationPressure(t - step)) / (2 * step);
            assertThat(Water.saturationSlope(t)).isCloseTo(difference, within(1e-8 * difference));
        }
    }

    @Test
    void boilingTemperatureUndoesBoilingPressure() {
        for (double t = 273.16; t < 640; t += 1.3) {
            assertThat(Water.saturationTemperature(Water.saturationPressure(t))).isCloseTo(t, within(1e-9 * t));
        }
    }

    @Test
    void enthalpyChangesWithTemperatureByTheHeatCapacity() {
        double step = 1e-3;
        for (double t = 280; t < 470; t += 11) {
            double p = 2e6;
            double difference = (Liquid.state(p, t + step).enthalpy()
                            - Liquid.state(p, t - step).enthalpy())
                    / (2 * step);
            assertThat(Liquid.state(p, t).heatCapacity()).isCloseTo(difference, within(1e-5 * difference));
            double ps = 0.9 * Water.saturationPressure(t);
            difference = (Steam.state(ps, t + step).enthalpy()
                            - Steam.state(ps, t - step).enthalpy())
                    / (2 * step);
            assertThat(Steam.state(ps, t).heatCapacity()).isCloseTo(difference, within(1e-5 * difference));
        }
    }

    @Test
    void expansionAndCompressibilityAreDifferencesOfVolume() {
        double p = 9e5;
        double t = 366;
        WaterState state = Liquid.state(p, t);
        double byT =
                (Liquid.state(p, t + 0.01).volume() - Liquid.state(p, t - 0.01).volume()) / 0.02;
        double byP =
                (Liquid.state(p + 1e4, t).volume() - Liquid.state(p - 1e4, t).volume()) / 2e4;
        assertThat(state.expansion()).isCloseTo(byT / state.volume(), within(1e-8));
        assertThat(state.compressibility()).isCloseTo(-byP / state.volume(), within(1e-15));
    }

    @Test
    void aStateOutsideTheFormulationIsRefused() {
        assertThatThrownBy(() -> Liquid.state(1e5, 700)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Steam.state(1e5, 200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Water.saturationTemperature(100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Liquid.state(Double.NaN, 300)).isInstanceOf(IllegalArgumentException.class);
    }
}
