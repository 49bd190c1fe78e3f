package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Toy;

class EvidenceTest {
    private final Inference inference = Inference.of(Toy.pumpBank(64, 1));

    @Test
    void oneReportWeighsTheReporter() {
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)),
                List.of(Toy.yesNo("d", 0.1)),
                new float[][] {{0}},
                new float[][] {{1}});
        Posterior posterior =
                Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.of(Observation.choice("d", 0)));
        Evidence.Weight weight = Evidence.of(posterior).of(0).get(0);
        assertThat(weight.nats()).isEqualTo(Math.log(9), within(1e-9));
        assertThat(weight.decibans()).isEqualTo(9.5424, within(1e-3));
        assertThat(weight.strength()).isEqualTo(Evidence.Strength.SOME);
        assertThat(Evidence.of(posterior).of(1).get(0).speaksFor()).isFalse();
    }

    @Test
    void namesTheReadingThatSpeaksAgainst() {
        Posterior posterior = inference.posterior(Observations.of(
                Observation.number("gauge", 9.4),
                Observation.number("flow", 1.6),
                Observation.choice("noisy", 1),
                Observation.unknown("drips")));
        assertThat(posterior.best().id()).isEqualTo("blocked jet");
        Evidence evidence = Evidence.of(posterior);
        int healthy = posterior.position("healthy");
        assertThat(evidence.whyNot(healthy).orElseThrow().observation().about()).isEqualTo("flow");
        int worn = posterior.position("worn pump");
        assertThat(evidence.whyNot(worn).orElseThrow().observation().about()).isIn("flow", "gauge");
        assertThat(evidence.whyNot(posterior.best().position())).isEmpty();
        assertThat(evidence.of(healthy))
                .filteredOn(w -> w.observation().about().equals("drips"))
                .allMatch(w -> w.strength() == Evidence.Strength.NONE && w.nats() == 0);
    }

    @Test
    void twoGaugesThatSayTheSameShareTheirWeight() {
        Inference nobodyMisreads = Inference.of(Toy.pumpBank(64, 1), Assumptions.TEXTBOOK.smoothing(0.8));
        Posterior posterior = nobodyMisreads.posterior(Observations.of(
                Observation.number("gauge", 8.4),
                Observation.number("gauge", 8.4).by("second look")));
        for (Evidence.Weight weight : Evidence.of(posterior).of(posterior.position("healthy"))) {
            assertThat(Math.abs(weight.last())).isLessThan(Math.abs(weight.first()));
        }
    }

    @Test
    void causesWithoutOddsHaveFiniteWeights() {
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1), Toy.cause("never", 0)),
                List.of(Toy.yesNo("d", 0.1)),
                new float[][] {{0}},
                new float[][] {{1}},
                new float[][] {{1}});
        Posterior posterior = Inference.of(library)
                .posterior(Observations.of(Observation.choice("d", 0), Observation.stillBad("mend b")));
        Evidence evidence = Evidence.of(posterior);
        for (int c = 0; c < 3; c++) {
            assertThat(evidence.of(c)).allMatch(w -> Double.isFinite(w.nats()));
            assertThat(evidence.of(c, 0)).allMatch(w -> Double.isFinite(w.nats()));
        }
        assertThat(evidence.whyNot(1).orElseThrow().observation()).isEqualTo(Observation.stillBad("mend b"));
    }

    @Test
    void theOddReadingIsNamed() {
        Posterior posterior = inference.posterior(Observations.of(
                Observation.number("gauge", 9.4),
                Observation.number("flow", 0.1).by("first"),
                Observation.number("flow", 3.07),
                Observation.choice("noisy", 1)));
        Plausibility plausibility = Plausibility.of(posterior, posterior.best().position());
        assertThat(posterior.best().id()).isEqualTo("healthy");
        assertThat(plausibility.odd().get(0).observation().value()).isEqualTo(0.1);
        assertThat(plausibility.plausible()).isFalse();
    }

    @Test
    void readingsDrawnFromACauseArePlausibleUnderIt() {
        Library hidden = Toy.pumpBank(50, 99);
        int refused = 0;
        for (int k = 0; k < 50; k++) {
            Posterior posterior = inference.posterior(Observations.of(
                    Observation.number("gauge", hidden.signatures().value(1, k, 0)),
                    Observation.number("flow", hidden.signatures().value(1, k, 1)),
                    Observation.choice("noisy", (int) hidden.signatures().value(1, k, 3))));
            refused += Plausibility.of(posterior, 1).plausible() ? 0 : 1;
        }
        assertThat(refused).isLessThanOrEqualTo(2);
    }

    @Test
    void chiSquareTailsAreThoseOfTheTables() {
        assertThat(Normal.chiSquareBeyond(3.841459, 1)).isEqualTo(0.05, within(1e-6));
        assertThat(Normal.chiSquareBeyond(5.991465, 2)).isEqualTo(0.05, within(1e-6));
        assertThat(Normal.chiSquareBeyond(7.814728, 3)).isEqualTo(0.05, within(1e-6));
        assertThat(Normal.chiSquareBeyond(18.307038, 10)).isEqualTo(0.05, within(1e-6));
        assertThat(Normal.chiSquareBeyond(19.675138, 11)).isEqualTo(0.05, within(1e-6));
    }
}
