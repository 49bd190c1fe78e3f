package wetside.diagnosis.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
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

    /** What was not seen is shared by what was believed of it; a pair is half the one and half the other. */
    @Test
    void whatWasNotProvedCountsInParts() {
        ClosedJob job = ClosedJob.unproved(
                "weak", 0, Map.of("worn pump", 0.6, "low relief", 0.3, Cause.pair("worn pump", "low relief"), 0.1));
        assertThat(job.credit().get("worn pump")).isEqualTo(0.65, within(1e-12));
        assertThat(job.credit().get("low relief")).isEqualTo(0.35, within(1e-12));
        Library one = Experience.NONE.with(job).applied(BANK, 0);
        assertThat(weights(one)[1]).isEqualTo((50 * 0.3 + 0.65) / 51, within(1e-12));
    }

    @Test
    void noJobsGiveTheVeryLibraryBack() {
        assertThat(Experience.NONE.applied(BANK, 7)).isSameAs(BANK);
        assertThat(Experience.NONE.applied(BANK, 7, "weak")).isSameAs(BANK);
    }

    @Test
    void oneByOneIsTheBatchBitForBit() {
        SplittableRandom random = new SplittableRandom(4);
        List<ClosedJob> batch = new ArrayList<>();
        Experience one = Experience.NONE;
        for (int i = 0; i < 60; i++) {
            Map<String, Double> believed =
                    Map.of("worn pump", random.nextDouble(0.5), "low relief", random.nextDouble(0.5));
            batch.add(ClosedJob.unproved("weak", i / 4, believed));
            one = one.with(batch.get(i));
        }
        Experience all = new Experience(batch, 50, 0.985);
        assertThat(weights(one.applied(BANK, 20))).containsExactly(weights(all.applied(BANK, 20)));
        ClosedJob more = ClosedJob.proved("noise", 19, "low relief");
        assertThat(weights(all.with(more).applied(BANK, 20))).isNotEqualTo(weights(all.applied(BANK, 20)));
        assertThat(weights(all.with(more).without(more).applied(BANK, 20)))
                .containsExactly(weights(all.applied(BANK, 20)));
    }

    /** What cannot show here gets nothing from jobs elsewhere, and those jobs do not thin out the others. */
    @Test
    void jobsOfCausesThatAreNotHereDoNotCount() {
        Experience shop = Experience.NONE.with(ClosedJob.proved("", 0, "another part: broken"));
        assertThat(weights(shop.applied(BANK, 0))).containsExactly(new double[] {0.4, 0.3, 0.2, 0.1}, within(1e-12));
    }

    /** Shops drawn from what is believed of shops, 100 jobs each: the 95 % interval of a share holds the truth. */
    @Test
    void intervalsOfSharesHoldTheTruth() {
        Random random = new Random(23);
        int held = 0;
        int rounds = 500;
        double[] shipped = {0.4, 0.3, 0.2, 0.1};
        for (int r = 0; r < rounds; r++) {
            double[] truth = dirichlet(random, shipped, 50);
            List<ClosedJob> jobs = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                jobs.add(ClosedJob.proved(
                        "", 0, BANK.causes().get(draw(random, truth)).id()));
            }
            Counts learnt = new Experience(jobs, 50, 1).shares(BANK.causes(), 0);
            int c = r % truth.length;
            held += learnt.quantile(c, 0.025) < truth[c] && truth[c] < learnt.quantile(c, 0.975) ? 1 : 0;
        }
        assertThat(held / (double) rounds).isBetween(0.90, 0.98);
    }

    /**
     * Jobs of a shop whose causes are not as shipped, none of them proved: each is shared by what its gauge and flow made
     * one believe under the shipped rates. One such step goes the right way, if not as far as proof does.
     */
    @Test
    void unprovedJobsComeNearerToTheTruthAndProvedOnesNearerStill() {
        double[] truth = {0.1, 0.1, 0.7, 0.1};
        Library hidden = Toy.pumpBank(64, 9);
        Inference believing = Inference.of(BANK);
        Random random = new Random(5);
        List<ClosedJob> proved = new ArrayList<>();
        List<ClosedJob> unproved = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            int cause = draw(random, truth);
            int k = random.nextInt(64);
            Posterior believed = believing.posterior(Observations.of(
                    Observation.number("gauge", hidden.signatures().value(cause, k, 0)),
                    Observation.number("flow", hidden.signatures().value(cause, k, 1))));
            Map<String, Double> shares = new HashMap<>();
            for (int c = 0; c < truth.length; c++) {
                shares.put(believed.id(c), believed.share(c));
            }
            unproved.add(ClosedJob.unproved("", 0, shares));
            proved.add(ClosedJob.proved("", 0, believed.id(cause)));
        }
        double shipped = distance(truth, weights(BANK));
        double byBelief = distance(truth, weights(new Experience(unproved, 50, 1).applied(BANK, 0)));
        double byProof = distance(truth, weights(new Experience(proved, 50, 1).applied(BANK, 0)));
        assertThat(byBelief).isLessThan(0.75 * shipped);
        assertThat(byProof).isLessThan(byBelief);
    }

    /** Relative entropy: nats lost by going by these weights where the truth is another. */
    private static double distance(double[] truth, double[] weights) {
        double sum = Arrays.stream(weights).sum();
        double lost = 0;
        for (int c = 0; c < truth.length; c++) {
            lost += truth[c] * Math.log(truth[c] * sum / weights[c]);
        }
        return lost;
    }

    private static int draw(Random random, double[] shares) {
        double u = random.nextDouble();
        int c = 0;
        while (c < shares.length - 1 && u >= shares[c]) {
            u -= shares[c++];
        }
        return c;
    }

    /** Gamma variates of whole and half shapes as sums of squares of normal ones. */
    private static double[] dirichlet(Random random, double[] mean, double strength) {
        double[] share = new double[mean.length];
        double sum = 0;
        for (int c = 0; c < share.length; c++) {
            for (int i = 0; i < 2 * mean[c] * strength; i++) {
                double z = random.nextGaussian();
                share[c] += 0.5 * z * z;
            }
            sum += share[c];
        }
        for (int c = 0; c < share.length; c++) {
            share[c] /= sum;
        }
        return share;
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
