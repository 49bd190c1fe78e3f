package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wetside.physics.Water;

class FlashTest {
    private static final double STIFFNESS = 1.2e9;

    @Test
    void findsTheTemperatureOfAnyContentFromAnyStart() {
        Random random = new Random(20);
        double worst = 0;
        int failed = 0;
        int most = 0;
        for (int i = 0; i < 20_000; i++) {
            double volume = 0.25e-3 + random.nextDouble() * 4e-3;
            Flash flash = new Flash(volume, STIFFNESS);
            double t = 274.15 + 175 * random.nextDouble();
            double air = Math.pow(10, -9 + 6.5 * random.nextDouble());
            double fill = switch (i % 4) {
                case 0 -> 1.02 * random.nextDouble();
                case 1 -> 1e-3 * random.nextDouble();
                case 2 -> 0.99 + 0.02 * random.nextDouble();
                default -> random.nextDouble();
            };
            double mass = 1e-6 + fill * volume * 960;
            double energy = flash.at(mass, air, t);
            double pressure = flash.pressure();
            if (pressure > 3e8) {
                continue;
            }
            failed += flash.solve(mass, energy, air, 273.15 + 200 * random.nextDouble()) ? 0 : 1;
            most = Math.max(most, flash.turns());
            worst = Math.max(worst, Math.abs(flash.temperature() - t));
        }
        assertThat(failed).isZero();
        assertThat(worst).as("temperature found again [K]").isLessThan(2e-5);
        assertThat(most).as("evaluations").isLessThan(70);
    }

    @Test
    void aVesselBoiledDryHasATemperatureToo() {
        Flash flash = new Flash(1e-3, STIFFNESS);
        double energy = flash.at(1e-3, 1e-6, 720);
        assertThat(flash.level()).isZero();
        assertThat(flash.solve(1e-3, energy, 1e-6, 380)).isTrue();
        assertThat(flash.temperature()).isCloseTo(720, within(1e-4));
        assertThat(flash.pressure()).as("of a gas").isBetween(2.5e5, 3.5e5);
    }

    @Test
    void capacityIsTheSlopeOfTheEnergy() {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            Flash flash = new Flash(1e-3, STIFFNESS);
            double mass = 1.01 * random.nextDouble();
            double air = Math.pow(10, -7 + 4 * random.nextDouble());
            double t = 280 + 150 * random.nextDouble();
            double h = 1e-3;
            double difference = (flash.at(mass, air, t + h) - flash.at(mass, air, t - h)) / (2 * h);
            boolean dryAbove = flash.vapour() == mass;
            flash.at(mass, air, t);
            if (dryAbove == (flash.vapour() == mass)) {
                assertThat(flash.capacity()).isCloseTo(difference, within(1e-5 * Math.abs(difference) + 1e-3));
            }
        }
    }

    @Test
    void halfFullWithoutAirBoilsAtTheBoilingLine() {
        Flash flash = new Flash(2e-3, STIFFNESS);
        flash.at(1.0, 0, 273.15 + 124);
        assertThat(flash.pressure()).isCloseTo(Water.saturationPressure(273.15 + 124), within(20.0));
        assertThat(flash.level()).isBetween(0.52, 0.55);
    }

    @Test
    void squeezedAirFollowsBoyle() {
        Flash flash = new Flash(2e-3, STIFFNESS);
        double steam = Water.saturationPressure(293.15);
        flash.at(1.0, 0.95e-3, 293.15);
        double before = (flash.pressure() - steam) * (1 - flash.level());
        flash.at(1.9, 0.95e-3, 293.15);
        assertThat((flash.pressure() - steam) * (1 - flash.level())).isCloseTo(before, within(1e-6 * before));
    }

    @Test
    void fullVesselPushesBackAsStifflyAsWaterAndShell() {
        Flash flash = new Flash(1e-3, STIFFNESS);
        flash.at(0.960, 0, 366);
        double first = flash.pressure();
        flash.at(0.970, 0, 366);
        double second = flash.pressure();
        flash.at(0.975, 0, 366);
        assertThat(second).isGreaterThan(first + 5e6);
        assertThat((flash.pressure() - second) / (0.005 / 0.963)).isCloseTo(STIFFNESS, within(0.02 * STIFFNESS));
    }

    @Test
    void saysWhenNoTemperatureFits() {
        Flash flash = new Flash(1e-3, STIFFNESS);
        assertThat(flash.solve(0.5, 5e6, 1e-6, 300)).isFalse();
        assertThat(flash.solve(0.5, -1e6, 1e-6, 300)).isFalse();
    }

    @Test
    void rowOfTheFlowNetworkAgreesWithTheFlash() {
        Random random = new Random(11);
        for (int i = 0; i < 5000; i++) {
            double air = Math.pow(10, -7 + 4.3 * random.nextDouble());
            double t = 280 + 140 * random.nextDouble();
            double mass = 2.0 * 0.95 * random.nextDouble() * (i % 3 == 0 ? 0.01 : 1.05);
            Flash flash = new Flash(2e-3, STIFFNESS);
            flash.at(mass, air, t);
            VesselRow row = RowFixture.row(2e-3, STIFFNESS);
            row.at(mass, air, t, 8000);
            assertThat(row.pressure()).isCloseTo(flash.pressure(), within(2e-3 * flash.pressure()));
            assertThat(row.massAt(row.pressure(), air)).isCloseTo(mass, within(1e-6 * mass));
            double p = row.pressure() * (0.9 + 0.2 * random.nextDouble());
            row.massAt(p, air);
            double byPressure = row.byPressure;
            double byAir = row.byAir;
            double h = 1e-7 * p;
            double middle = (row.massAt(p + h, air) - row.massAt(p - h, air)) / (2 * h);
            assertThat(byPressure).isCloseTo(middle, within(1e-3 * Math.abs(middle) + 1e-11));
            double g = 1e-4 * air;
            double byMore = (row.massAt(p, air + g) - row.massAt(p, air - g)) / (2 * g);
            assertThat(byAir).isCloseTo(byMore, within(1e-3 * Math.abs(byMore) + 1e-6));
        }
    }

    private static final class RowFixture {
        static VesselRow row(double volume, double stiffness) {
            return VesselRow.of(new wetside.blueprint.FluidPlan.Vessel("v", volume, stiffness, 0.5, 0, 0, 0, 0, 0));
        }
    }
}
