package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EnthalpyTest {
    @Test
    void waterShutInAndHeatedStaysWaterBeyondAnyBoilingLine() {
        Enthalpy enthalpy = new Enthalpy();
        for (double pressure : new double[] {9e6, 22e6, 6e7}) {
            double h = enthalpy.ofLiquid(420, pressure);
            assertThat(enthalpy.temperature(h, pressure)).isCloseTo(420, within(0.01));
            assertThat(enthalpy.vapourShare(h, pressure)).isZero();
            assertThat(enthalpy.boiling(pressure)).isBetween(570.0, 590.0);
        }
    }
}
