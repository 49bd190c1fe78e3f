package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SaturationTest {
    private final double[] at = new double[Saturation.SIZE];

    @Test
    void followsTheFullFormulation() {
        for (double t = 273.15; t <= 493.15; t += 0.25) {
            Saturation.at(t, at);
            double ps = Water.saturationPressure(t);
            WaterState liquid = Liquid.state(ps, t);
            WaterState vapour = Steam.state(ps, t);
            assertThat(at[Saturation.PRESSURE]).isEqualTo(ps);
            close(at[Saturation.LIQUID_VOLUME], liquid.volume(), 3e-6 * liquid.volume());
            close(at[Saturation.VAPOUR_VOLUME], vapour.volume(), 5e-6 * vapour.volume());
            close(at[Saturation.LIQUID_ENERGY], liquid.internalEnergy(), 12);
            close(at[Saturation.VAPOUR_ENERGY], vapour.internalEnergy(), 4);
            double mu = Transport.viscosity(liquid.density(), t);
            close(Saturation.liquidViscosity(t), mu, 3e-4 * mu);
        }
    }

    @Test
    void slopesAreDifferences() {
        double[] below = new double[Saturation.SIZE];
        double[] above = new double[Saturation.SIZE];
        double step = 1e-3;
        for (double t = 272; t < 495; t += 0.7) {
            Saturation.at(t, at);
            Saturation.at(t - step, below);
            Saturation.at(t + step, above);
            for (int k = 0; k < Saturation.SIZE; k += 2) {
                double difference = (above[k] - below[k]) / (2 * step);
                close(at[k + 1], difference, 1e-7 * Math.abs(difference) + 1e-9 * Math.abs(at[k]));
            }
        }
    }

    @Test
    void staysMonotoneAStepBeyondItsEnds() {
        double[] before = new double[Saturation.SIZE];
        Saturation.at(272, before);
        for (double t = 272.1; t < 495; t += 0.1) {
            Saturation.at(t, at);
            assertThat(at[Saturation.LIQUID_ENERGY]).isGreaterThan(before[Saturation.LIQUID_ENERGY]);
            assertThat(at[Saturation.VAPOUR_ENERGY]).isGreaterThan(before[Saturation.VAPOUR_ENERGY]);
            assertThat(at[Saturation.VAPOUR_VOLUME]).isLessThan(before[Saturation.VAPOUR_VOLUME]);
            System.arraycopy(at, 0, before, 0, before.length);
        }
    }

    /** A boiler that has boiled dry goes on getting hotter. */
    @Test
    void goesOnWithoutAJumpAsAGasOfConstantHeat() {
        double[] end = new double[Saturation.SIZE];
        Saturation.at(495, end);
        Saturation.at(495 + 1e-6, at);
        for (int k = 0; k < Saturation.SIZE; k += 2) {
            assertThat(at[k]).isCloseTo(end[k], within(1e-6 * Math.abs(end[k])));
        }
        Saturation.at(800, at);
        assertThat(at[Saturation.PRESSURE] * at[Saturation.VAPOUR_VOLUME] / 800)
                .as("as an ideal gas")
                .isCloseTo(end[Saturation.PRESSURE] * end[Saturation.VAPOUR_VOLUME] / 495, within(1e-6));
        assertThat(at[Saturation.VAPOUR_ENERGY] - end[Saturation.VAPOUR_ENERGY]).isCloseTo(305 * 1550.0, within(1e-3));
    }

    @Test
    void holdsTheCoefficientsTheFitPrints() {
        for (SaturationFit.Property property : SaturationFit.Property.values()) {
            double[] held = Saturation.coefficients()[property.ordinal()];
            double[] fitted = property.coefficients();
            assertThat(held).hasSameSizeAs(fitted);
            for (int k = 0; k < held.length; k++) {
                close(held[k], fitted[k], 1e-9);
            }
        }
    }

    private static void close(double computed, double expected, double tolerance) {
        assertThat(computed).isCloseTo(expected, within(tolerance));
    }
}
