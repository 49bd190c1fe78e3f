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

    /** Any chain of treatments: charge is kept throughout, and what no step takes out is there to the last. */
    @Test
    void chainsKeepChargeAndMass() {
        SplittableRandom r = new SplittableRandom(13);
        for (int i = 0; i < 200; i++) {
            Composition first = any(r);
            Composition other = any(r);
            double chloride = first.chloride();
            double sulfate = first.sulfate();
            double sodium = first.sodium();
            Composition now = first;
            for (int step = 0; step < 5; step++) {
                Composition before = now;
                switch (r.nextInt(5)) {
                    case 0 -> {
                        now = Treatment.softening(r.nextDouble()).of(now);
                        sodium += 2 * (before.hardness() - now.hardness());
                    }
                    case 1 ->
                        now = Treatment.hydrogenExchange(r.nextDouble())
                                .bypassedBy(r.nextDouble())
                                .of(now);
                    case 2 -> {
                        double share = r.nextDouble();
                        now = Treatment.mixing(other, share).of(now);
                        chloride = share * chloride + (1 - share) * other.chloride();
                        sulfate = share * sulfate + (1 - share) * other.sulfate();
                        sodium = share * sodium + (1 - share) * other.sodium();
                    }
                    case 3 -> {
                        Composition salts = Salt.MAGNESIUM_SULFATE.dissolved(r.nextDouble(1e-3));
                        now = Treatment.dosing(salts).of(now);
                        sulfate += salts.sulfate();
                    }
                    default -> now = Treatment.boilingOff(ConstantSet.STANDARD).of(now);
                }
                assertThat(now.cations() - now.anions()).isCloseTo(0, within(1e-11));
                assertThat(now.chloride()).isCloseTo(chloride, within(1e-12));
                assertThat(now.sulfate()).isCloseTo(sulfate, within(1e-12));
                assertThat(now.sodium()).isCloseTo(sodium, within(1e-12));
            }
        }
    }

    @Test
    void moreOfEverythingConductsMoreAndDropsMore() {
        SplittableRandom r = new SplittableRandom(14);
        Equilibrium hot = Equilibrium.at(ConstantSet.STANDARD, 393.15);
        for (int i = 0; i < 60; i++) {
            Composition raw = any(r);
            double conductivity = 0;
            double falls = Double.NEGATIVE_INFINITY;
            for (double factor = 1; factor < 4; factor *= 1.4) {
                Composition more = raw.times(factor);
                assertThat(Conductivity.atRoom(more)).isGreaterThan(conductivity);
                conductivity = Conductivity.atRoom(more);
                double now = Precipitation.calcite(hot, more);
                assertThat(now > falls || now < 0).isTrue();
                falls = now;
            }
        }
    }

    /** What is boiled down is still there, dissolved or fallen. */
    @Test
    void boilingDownLosesNothingButSteamAndGas() {
        SplittableRandom r = new SplittableRandom(15);
        for (boolean leaves : new boolean[] {false, true}) {
            for (int i = 0; i < 4; i++) {
                Composition feed = any(r);
                BoilDown.Left left =
                        new BoilDown(Equilibrium.at(ConstantSet.STANDARD, 397.15), leaves, true).by(feed, 3);
                Composition w = left.water().times(1 / 3.0);
                assertThat(w.chloride()).isCloseTo(feed.chloride(), within(1e-12));
                assertThat(w.calcium() + left.calcite() + left.sulfate()).isCloseTo(feed.calcium(), within(1e-9));
                assertThat(w.alkalinity() + 2 * left.calcite()).isCloseTo(feed.alkalinity(), within(2e-9));
                assertThat(w.carbon() + left.calcite()).isLessThan(feed.carbon() + 1e-9);
            }
        }
    }
}
