package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Toy;

class PosteriorTest {
    private final Library bank = Toy.pumpBank(64, 1);
    private final Inference inference = Inference.of(bank);

    @Test
    void nothingLearntIsThePrior() {
        Posterior posterior = inference.posterior(Observations.none());
        assertThat(posterior.share("healthy")).isEqualTo(0.98 * 0.4, within(1e-12));
        assertThat(posterior.share(Cause.SOMETHING_ELSE)).isEqualTo(0.02, within(1e-12));
    }

    @Test
    void findsEachCauseFromItsReadings() {
        assertThat(best(8.2, 2.85, 0, 1)).isEqualTo("low relief");
        assertThat(best(6.5, 2.55, 1, 0)).isEqualTo("worn pump");
        assertThat(best(9.4, 1.6, 1, 1)).isEqualTo("blocked jet");
        assertThat(best(9.4, 3.05, 1, 1)).isEqualTo("healthy");
    }

    private String best(double gauge, double flow, int drips, int noisy) {
        return inference.posterior(learnt(gauge, flow, drips, noisy)).best().id();
    }

    private static Observations learnt(double gauge, double flow, int drips, int noisy) {
        return Observations.of(
                Observation.number("gauge", gauge),
                Observation.number("flow", flow),
                Observation.choice("drips", drips),
                Observation.choice("noisy", noisy));
    }

    @Test
    void notKnowingChangesNothing() {
        Observations before = learnt(8.0, 2.8, 0, 1).without("noisy");
        double[] shares = inference.posterior(before).shares();
        assertThat(inference
                        .posterior(before.with(Observation.unknown("noisy")))
                        .shares())
                .containsExactly(shares, within(1e-12));
    }

    @Test
    void orderCannotMatter() {
        List<Observation> entered = new ArrayList<>(learnt(8.0, 2.8, 0, 1).entered());
        entered.add(Observation.number("gauge", 8.3));
        entered.add(Observation.choice("drips", 1).by("neighbour"));
        double[] shares = inference.posterior(Observations.of(entered)).shares();
        for (int i = 0; i < 30; i++) {
            Collections.shuffle(entered, new Random(i));
            assertThat(inference.posterior(Observations.of(entered)).shares()).containsExactly(shares);
        }
    }

    @Test
    void takingBackLeavesNoTrace() {
        Observations all = learnt(8.0, 2.8, 0, 1);
        for (Observation observation : all) {
            Observations undone = all.without(observation);
            assertThat(inference.posterior(undone.with(observation)).shares())
                    .containsExactly(inference.posterior(all).shares());
        }
        assertThat(all.with(Observation.number("gauge", 1)).undo()).isEqualTo(all);
    }

    @Test
    void noSingleNumberMovesOddsBeyondTheCap() {
        SplittableRandom random = new SplittableRandom(5);
        // one reading more also changes how the others are weighed, worth up to a factor of ten
        double most = Math.log(10 * Assumptions.USUAL.mostOdds());
        for (int i = 0; i < 300; i++) {
            Observations others = Observations.of(
                    Observation.number("gauge", random.nextDouble(0, 12)),
                    Observation.number("flow", random.nextDouble(0, 4)));
            Observation further = Observation.number("gauge", random.nextDouble(-50, 50));
            Posterior before = inference.posterior(others);
            Posterior after = inference.posterior(others.with(further));
            for (int a = 0; a < 4; a++) {
                for (int b = 0; b < a; b++) {
                    double moved = after.logWeight(a) - after.logWeight(b) - before.logWeight(a) + before.logWeight(b);
                    assertThat(Math.abs(moved)).isLessThan(most);
                }
            }
        }
    }

    /**
     * A gauge read between what two causes make of it, many of its deviations from both or from one: that it was misread costs
     * what a misreading costs, two in a hundred times what anything might have been read, and no more for a finer gauge.
     */
    @Test
    void aSlipIsAsLikelyAsAssumedHoweverFineTheGauge() {
        double coarse = slipped(0.8);
        double fine = slipped(0.4);
        assertThat(coarse - fine).as("log odds: the peak is as much higher").isCloseTo(-Math.log(2), within(0.1));
        assertThat(fine).isBetween(Math.log(100), Math.log(1000));
        assertThat(slipped(1e-4)).as("a twin is not that exact").isCloseTo(Math.log(1000), within(0.1));
    }

    /** Log odds of a cause that reads 4 against one that reads 8, when 4 is read. */
    private static double slipped(double sd) {
        Library library = Toy.library(
                List.of(Toy.cause("low", 1), Toy.cause("high", 1)),
                List.of(Toy.number("gauge", sd)),
                new float[][] {{4}, {4}, {4}, {4}},
                new float[][] {{8}, {8}, {8}, {8}});
        Posterior posterior = Inference.of(library).posterior(Observations.of(Observation.number("gauge", 4)));
        return posterior.logWeight(0) - posterior.logWeight(1);
    }

    @Test
    void noReportMovesOddsBeyondTheReporter() {
        double most = Math.log(0.95 / 0.05) + 1e-9;
        Posterior before = inference.posterior(Observations.none());
        Posterior after = inference.posterior(Observations.of(Observation.choice("drips", 0)));
        for (int c = 0; c < 4; c++) {
            assertThat(Math.abs(after.logWeight(c) - after.logWeight(0) - before.logWeight(c) + before.logWeight(0)))
                    .isLessThanOrEqualTo(most);
        }
    }

    @Test
    void aReportEveryDrawContradictsCostsItsErrorRateAndNoMore() {
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)),
                List.of(Toy.number("p", 0.2), Toy.yesNo("d", 0.05)),
                rows(64, 0),
                rows(64, 1));
        Posterior posterior = Inference.of(library)
                .posterior(Observations.of(Observation.choice("d", 0), Observation.number("p", 5.1)));
        assertThat(posterior.logWeight(0) - posterior.logWeight(1)).isEqualTo(Math.log(19), within(1e-9));
    }

    private static float[][] rows(int draws, int option) {
        float[][] rows = new float[draws][];
        for (int k = 0; k < draws; k++) {
            rows[k] = new float[] {5 + 0.01f * k, option};
        }
        return rows;
    }

    @Test
    void theSamePersonAskedTwiceIsOneWitness() {
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)),
                List.of(Toy.yesNo("d", 0.1)),
                new float[][] {{0}},
                new float[][] {{1}});
        Inference textbook = Inference.of(library, Assumptions.TEXTBOOK);
        Observation yes = Observation.choice("d", 0);
        assertThat(odds(textbook, yes)).isEqualTo(9, within(1e-9));
        assertThat(odds(textbook, yes, yes)).isEqualTo(9, within(1e-9));
        assertThat(odds(textbook, yes, yes.by("neighbour"))).isEqualTo(81, within(1e-9));
        assertThat(odds(Inference.of(library), yes, yes)).isBetween(9.0, 11.0);
        assertThat(odds(Inference.of(library), yes, Observation.choice("d", 1)))
                .as("said and unsaid")
                .isEqualTo(1, within(1e-9));
    }

    /** A word the twin does not have, seen by three people, is one mistake of the twin and not three. */
    @Test
    void whatTheTwinHasWrongIsWrongForWhoeverLooks() {
        Answering.Choice level = new Answering.Choice(List.of("low", "middle", "high"), 0.1, 0.02);
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)),
                List.of(new Question("level", "level", level, Effort.minutes(1))),
                new float[][] {{2}},
                new float[][] {{1}});
        Inference textbook = Inference.of(library, Assumptions.TEXTBOOK);
        Observation middle = Observation.choice("level", 1);
        double once = 0.98 * 0.05 + 0.01 * 0.9 + 0.01 * 0.05;
        assertThat(odds(textbook, middle)).isEqualTo(once / (1 - 2 * once), within(1e-9));
        double right = 0.98 * 0.9 * 0.9 + 2 * 0.01 * 0.05 * 0.05;
        double wrong = 0.98 * 0.05 * 0.05 + 0.01 * 0.9 * 0.9 + 0.01 * 0.05 * 0.05;
        assertThat(odds(textbook, middle, middle.by("neighbour"))).isEqualTo(wrong / right, within(1e-9));
        assertThat(odds(textbook, middle.complaint(), middle, middle.by("neighbour")))
                .as("who called has seen it more than once and does not err")
                .isEqualTo(0.01 / 0.98, within(1e-9));
    }

    private static double odds(Inference inference, Observation... observations) {
        Posterior posterior = inference.posterior(Observations.of(observations));
        return Math.exp(posterior.logWeight(0) - posterior.logWeight(1));
    }

    @Test
    void twoHundredReadingsDoNotUnderflow() {
        Observations many = Observations.none();
        for (int i = 0; i < 200; i++) {
            many = many.with(Observation.choice("drips", i % 3 == 0 ? 1 : 0).by("person " + i));
        }
        Posterior posterior = inference.posterior(many);
        assertThat(posterior.logEvidence()).isLessThan(-100);
        assertThat(posterior.shares()).doesNotContain(Double.NaN);
        double sum = 0;
        for (double share : posterior.shares()) {
            sum += share;
        }
        assertThat(sum).isEqualTo(1, within(1e-12));
    }

    @Test
    void aRepairInVainClearsItsCauseAsFarAsItWorks() {
        Posterior posterior = inference.posterior(Observations.of(Observation.stillBad("mend worn pump")));
        assertThat(posterior.share("worn pump")).isZero();
        assertThat(posterior.share("healthy")).isEqualTo(0.98 * 0.4 / (1 - 0.98 * 0.3), within(1e-12));
    }

    @Test
    void readingsNobodyForesawGoToSomethingElse() {
        Posterior posterior = inference.posterior(learnt(2.0, 3.9, 0, 0));
        assertThat(posterior.share(Cause.SOMETHING_ELSE)).isGreaterThan(0.5);
        assertThat(Plausibility.of(posterior, posterior.best().position()).plausible())
                .isFalse();
    }

    @Test
    void aReadingACauseHasNoValueForSaysNothingAboutIt() {
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1), Toy.cause("none", 1)),
                List.of(Toy.number("p", 0.2)),
                new float[][] {{5}, {5.1f}},
                new float[][] {{9}, {9.1f}},
                new float[][] {{Float.NaN}, {Float.NaN}});
        Posterior posterior = Inference.of(library).posterior(Observations.of(Observation.number("p", 5.05)));
        assertThat(posterior.share("none")).isBetween(0.02, 0.3);
        assertThat(posterior.share("a")).isGreaterThan(posterior.share("none"));
        assertThat(posterior.share("b")).isLessThan(posterior.share("none"));
    }

    @Test
    void aCauseWithoutDrawsYetKeepsItsPlace() {
        Library library = new Library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)),
                List.of(Toy.number("p", 0.2)),
                Signatures.empty(2, 1).with(0, 5, 5.1f));
        Posterior posterior = Inference.of(library).posterior(Observations.of(Observation.number("p", 5.05)));
        assertThat(posterior.share("b")).isBetween(0.01, 0.5);
    }

    @Test
    void rangesHoldTheShareAndNarrowWithDraws() {
        Observations learnt = learnt(8.4, 2.8, 1, 1);
        double wide = width(Inference.of(Toy.pumpBank(8, 1)).posterior(learnt));
        double narrow = width(Inference.of(Toy.pumpBank(256, 1)).posterior(learnt));
        assertThat(narrow).isLessThan(wide);
        Ranges.Range range = inference.posterior(learnt).range(1);
        assertThat(inference.posterior(learnt).share(1)).isBetween(range.low() - 0.05, range.high() + 0.05);
        assertThat(inference.posterior(learnt).range(1)).isEqualTo(range);
    }

    private static double width(Posterior posterior) {
        double most = 0;
        for (int c = 0; c < 4; c++) {
            most = Math.max(most, posterior.range(c).high() - posterior.range(c).low());
        }
        return most;
    }
}
