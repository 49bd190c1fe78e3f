package wetside.diagnosis.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Toy;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;

class ExperienceTest {
    private static final Library BANK = Toy.pumpBank(16, 1);

    private static double[] weights(Library library) {
        return library.causes().stream().mapToDouble(Cause::weight).toArray();
    }

    /** Workshop case: alpha (4,3,2,1), counts (9,1,4,0): .541667 .166667 .25 .041667, by hand. */
    @Test
    void sharesAreDirichlet() {
        Experience shop = new Experience(List.of(), 10, 1);
        int[] counts = {9, 1, 4, 0};
        for (int c = 0; c < counts.length; c++) {
            for (int i = 0; i < counts[c]; i++) {
                shop = shop.with(
                        ClosedJob.proved("weak", 0, BANK.causes().get(c).id()));
            }
        }
        assertThat(weights(shop.applied(BANK, 100)))
                .containsExactly(new double[] {0.541667, 0.166667, 0.25, 0.041667}, within(1e-6));
    }

    @Test
    void nothingClosedIsWhatWasShippedAndOneTakenBackWasNeverThere() {
        assertThat(weights(Experience.NONE.applied(BANK, 5)))
                .containsExactly(new double[] {0.4, 0.3, 0.2, 0.1}, within(1e-12));
        ClosedJob job = ClosedJob.proved("noise", 3, "low relief");
        Experience one = Experience.NONE.with(job).with(ClosedJob.proved("weak", 4, "worn pump"));
        assertThat(one.without(job)).isEqualTo(Experience.NONE.with(ClosedJob.proved("weak", 4, "worn pump")));
        assertThatThrownBy(() -> Experience.NONE.without(job)).hasMessageContaining("never closed");
    }

    @Test
    void oldJobsFadeToWhatWasShippedAndComplaintsAreApart() {
        Experience shop = Experience.NONE;
        for (int i = 0; i < 40; i++) {
            shop = shop.with(
                    ClosedJob.proved(i % 2 == 0 ? "weak" : "noise", 0, i % 2 == 0 ? "worn pump" : "low relief"));
        }
        double fresh = weights(shop.applied(BANK, 0))[1];
        double old = weights(shop.applied(BANK, 60))[1];
        assertThat(fresh).isEqualTo((50 * 0.3 + 20) / 90, within(1e-12));
        assertThat(old).isBetween(0.3, fresh);
        assertThat(weights(shop.applied(BANK, 2000))[1]).isEqualTo(0.3, within(1e-6));
        assertThat(weights(shop.applied(BANK, 0, "weak"))[1])
                .isGreaterThan(weights(shop.applied(BANK, 0, "noise"))[1] + 0.2);
    }

    /** "Changed the pump and the relief, works": both share it by what was believed, others get none. */
    @Test
    void whatWasNotProvedCountsInParts() {
        Posterior believed = Inference.of(BANK).posterior(Observations.of(Observation.number("gauge", 7)));
        ClosedJob job = ClosedJob.unproved("weak", 0, believed, List.of("mend worn pump", "mend low relief"));
        Map<String, Double> credit = job.credit();
        assertThat(credit).containsOnlyKeys("worn pump", "low relief");
        double pump = believed.share("worn pump");
        double relief = believed.share("low relief");
        assertThat(credit.get("worn pump")).isEqualTo(pump / (pump + relief), within(1e-12));
        assertThat(ClosedJob.unproved("weak", 0, believed, List.of()).credit()).hasSize(4);
    }

    /** Streams of 100 jobs from a known rate: the 95 % interval holds it in 90 to 98 of 100 streams. */
    @Test
    void intervalsOfARateHoldTheTruth() {
        SplittableRandom random = new SplittableRandom(17);
        int held = 0;
        int rounds = 500;
        double truth = 0.02;
        for (int r = 0; r < rounds; r++) {
            double hours = 0;
            for (int i = 0; i < 100; i++) {
                hours -= Math.log(1 - random.nextDouble()) / truth;
            }
            Rate learnt = new Rate(0.5, 1).with(100, hours);
            held += learnt.quantile(0.025) < truth && truth < learnt.quantile(0.975) ? 1 : 0;
        }
        assertThat(held / (double) rounds).isBetween(0.90, 0.98);
    }
}
