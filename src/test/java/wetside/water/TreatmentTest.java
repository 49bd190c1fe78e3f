package wetside.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TreatmentTest {
    private static final double BREW = 366.15;

    /** A believable water, charges in balance. */
    private static Composition any(SplittableRandom r) {
        double ca = r.nextDouble(0.1e-3, 3e-3);
        double mg = r.nextDouble(0.05e-3, 1.2e-3);
        double alkalinity = r.nextDouble(0.2e-3, 2 * (ca + mg));
        double chloride = r.nextDouble(0.1e-3, 1.5e-3);
        double sulfate = r.nextDouble(0.05e-3, 1e-3);
        double sodium = alkalinity + chloride + 2 * sulfate - 2 * ca - 2 * mg;
        double extra = Math.max(0, -sodium);
        Composition c =
                new Composition(ca, mg, Math.max(0, sodium), 0, chloride + extra, sulfate, 0, 0.1e-3, alkalinity, 0);
        return Equilibrium.at(ConstantSet.STANDARD, 298.15).sampled(c, r.nextDouble(6.8, 8.3));
    }

    @Test
    void everyTreatmentKeepsChargeInBalance() {
        SplittableRandom r = new SplittableRandom(7);
        for (int i = 0; i < 300; i++) {
            Composition raw = any(r);
            for (Treatment t : List.of(
                    Treatment.softening(r.nextDouble()),
                    Treatment.hydrogenExchange(r.nextDouble()),
                    Treatment.reverseOsmosis(0.05, 0.01, 1e-4),
                    Treatment.softening(0.02).bypassedBy(r.nextDouble()),
                    Treatment.softening(0).then(Treatment.reverseOsmosis(0.05, 0.01, 1e-4)),
                    Treatment.mixing(any(r), r.nextDouble()),
                    Treatment.dosing(
                            Salt.MAGNESIUM_SULFATE.dissolved(5e-4).plus(Salt.POTASSIUM_BICARBONATE.dissolved(8e-4))),
                    Treatment.aired(ConstantSet.STANDARD),
                    Treatment.boilingOff(ConstantSet.STANDARD))) {
                Composition treated = t.of(raw);
                assertThat(treated.cations() - treated.anions()).as("%s", raw).isCloseTo(0, within(1e-12));
                assertThat(treated.calcium()).isGreaterThanOrEqualTo(0);
            }
        }
    }

    @Test
    void softeningTakesScaleAwayAndLeavesAlkalinity() {
        SplittableRandom r = new SplittableRandom(8);
        Equilibrium hot = Equilibrium.at(ConstantSet.STANDARD, BREW);
        for (int i = 0; i < 100; i++) {
            Composition raw = any(r);
            double before = Precipitation.calcite(hot, raw);
            double last = before;
            for (double leak : new double[] {0.6, 0.3, 0.05}) {
                Composition soft = Treatment.softening(leak).of(raw);
                assertThat(soft.alkalinity()).isEqualTo(raw.alkalinity());
                double now = Precipitation.calcite(hot, soft);
                assertThat(now).isLessThan(last + 1e-9);
                last = now;
            }
        }
    }

    @Test
    void hydrogenExchangeLowersAlkalinityAndPh() {
        SplittableRandom r = new SplittableRandom(9);
        Equilibrium room = Equilibrium.at(ConstantSet.STANDARD, 298.15);
        for (int i = 0; i < 100; i++) {
            Composition raw = any(r);
            Composition treated = Treatment.hydrogenExchange(0.8).of(raw);
            assertThat(2 * (raw.hardness() - treated.hardness()))
                    .isCloseTo(raw.alkalinity() - treated.alkalinity(), within(1e-12));
            assertThat(room.of(treated).ph()).isLessThan(room.of(raw).ph());
        }
    }

    @Test
    void hotterMeansMoreScaleInAClosedVessel() {
        SplittableRandom r = new SplittableRandom(10);
        for (int i = 0; i < 60; i++) {
            Composition raw = any(r);
            double last = Double.NEGATIVE_INFINITY;
            for (double t = 288.15; t < 410; t += 15) {
                double index =
                        Equilibrium.at(ConstantSet.HIGH_TEMPERATURE, t).of(raw).index(Mineral.CALCITE);
                assertThat(index).as("%s at %s K", raw, t).isGreaterThan(last);
                last = index;
            }
        }
    }

    @Test
    void aBypassOfAllIsTheRawWater() {
        Composition raw = any(new SplittableRandom(11));
        assertThat(Treatment.softening(0).bypassedBy(1).of(raw).calcium()).isEqualTo(raw.calcium());
    }

    @Test
    void boilingOffLeavesWhatIsNotLime() {
        Composition raw = any(new SplittableRandom(12));
        Composition boiled = Treatment.boilingOff(ConstantSet.STANDARD).of(raw);
        assertThat(boiled.chloride()).isEqualTo(raw.chloride());
        assertThat(boiled.alkalinity()).isLessThan(raw.alkalinity());
        assertThat(raw.alkalinity() - boiled.alkalinity())
                .isCloseTo(2 * (raw.calcium() - boiled.calcium()), within(1e-12));
    }
}
