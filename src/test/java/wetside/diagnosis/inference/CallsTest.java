package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Toy;
import wetside.diagnosis.Who;

/** A gauge and a puddle an owner sees, a resistance only a technician measures. */
class CallsTest {
    private static final Effort INSIDE = new Effort(10, 0, Set.of("lid"), Hazard.INSIDE, Who.TECHNICIAN);
    private static final float[] SOUND = {9, 1, 50};

    /** Four machines that work: gauge 8.5 to 9.5 with an instrument of 0.2, dry. */
    private final Library library = Toy.library(
            List.of(Toy.cause("healthy", 3), Toy.cause("hidden", 5), Toy.cause("leak", 1), Toy.cause("weak", 1)),
            List.of(
                    Toy.number("gauge", 0.2),
                    Toy.yesNo("puddle", 0.05),
                    new Question("coil", "coil?", new Answering.Number("Ω", 1, 0, 0), INSIDE)),
            new float[][] {{8.5f, 1, 50}, {9, 1, 50}, {9, 1, 50}, {9.5f, 1, 50}},
            new float[][] {{8.5f, 1, 90}, {9, 1, 90}, {9, 1, 90}, {9.5f, 1, 90}},
            new float[][] {{8.5f, 0, 50}, {9, 0, 50}, {9, 0, 50}, {9.5f, 1, 50}},
            new float[][] {{8.4f, 1, 50}, {8, 1, 50}, {7, 1, 50}, {6, 1, 50}});

    private final Calls calls = new Calls(library);

    @Test
    void countsInDeviationsOfMachinesThatWork() {
        double sd = Math.sqrt(0.125 + 0.04);
        assertThat(calls.oddness(0, 8)).isCloseTo(1 / sd, within(1e-6));
        assertThat(calls.oddness(1, 1)).isLessThan(0.7);
        // seen on none of four, misheard in 5 of 100: sqrt(-2 ln(0.05 / 5))
        assertThat(calls.oddness(1, 0)).isCloseTo(Math.sqrt(-2 * Math.log(0.01)), within(1e-9));
        assertThat(calls.oddness(0, Float.NaN)).isZero();
    }

    @Test
    void onlyWhatTheCauseBroughtAboutStrikes() {
        assertThat(calls.strikes(0, 8, 8)).isZero();
        assertThat(calls.strikes(1, 0, 0)).isZero();
        assertThat(calls.strikes(1, 0, 1)).isGreaterThan(Calls.STRIKING);
        assertThat(calls.strikes(new float[] {9, 1, 500}, 0, SOUND, 0))
                .as("nobody sees a coil")
                .isZero();
    }

    @Test
    void whatNobodyNoticesBringsOneInTwenty() {
        assertThat(calls.chance(0)).isEqualTo(1);
        assertThat(calls.chance(1)).isCloseTo(0.05, within(1e-9));
        assertThat(calls.chance(2)).isCloseTo((3 + 0.05) / 4, within(1e-9));
        double[] weak = calls.weights(3, java.util.Optional.empty());
        assertThat(weak[0]).isLessThan(weak[2]);
        assertThat((weak[0] + weak[1] + weak[2] + weak[3]) / 4).isCloseTo(1, within(1e-9));
    }

    @Test
    void aSymptomCalledAboutSpeaksForItsCauseAndAReadingAsItShouldBeForNone() {
        Inference called = Inference.of(library).called();
        Observation puddle = Observation.choice("puddle", 0);
        Observation gauge = Observation.number("gauge", 9);
        assertThat(share(called, puddle.complaint(), "leak")).isGreaterThan(share(called, puddle, "leak"));
        assertThat(share(called, gauge.complaint(), "leak")).isLessThan(share(called, gauge, "leak"));
        assertThat(share(called, gauge.complaint(), "healthy")).isGreaterThan(share(called, gauge, "healthy"));
    }

    /** Who calls about a fault calls about what strikes; about what is as it should be one in twenty at most, by chance. */
    @Test
    void aReadingAsItShouldBeIsCalledAboutByChanceOnly() {
        Readings.Complaint sound = new Readings.Complaint(0, 9);
        Readings.Complaint puddle = new Readings.Complaint(1, 0);
        double called = calls.chance(2);
        double[] leak = calls.weights(2, java.util.Optional.of(sound));
        assertThat(leak).as("by chance, about any").containsOnly(0.05 / called);
        assertThat(calls.weights(2, java.util.Optional.of(puddle))[0])
                .as("nothing else strikes, of two things an owner sees")
                .isCloseTo((0.05 + 0.95 * 2) / called, within(1e-9));
        assertThat(calls.weights(0, java.util.Optional.of(sound))[1])
                .as("unsure")
                .isCloseTo(1, within(1e-9));
    }

    /** A gauge that reads odd because the machine always did is no sign of a leak that leaves the gauge alone. */
    @Test
    void whatTheCauseDidNotBringAboutIsCalledAboutByChanceOnly() {
        Readings.Complaint low = new Readings.Complaint(0, 7.5f);
        assertThat(calls.oddness(0, 7.5f)).isGreaterThan(Calls.STRIKING);
        assertThat(calls.weights(2, java.util.Optional.of(low))).containsOnly(0.05 / calls.chance(2));
        assertThat(calls.weights(3, java.util.Optional.of(low))[2]).isGreaterThan(1);
        assertThat(calls.weights(0, java.util.Optional.of(low))[1]).isGreaterThan(1);
    }

    private static double share(Inference inference, Observation observation, String cause) {
        return inference.posterior(Observations.of(observation)).share(cause);
    }

    /** The order of answers does not matter, whichever of them was called about. */
    @Test
    void theOrderDoesNotMatter() {
        Inference called = Inference.of(library).called();
        Observation puddle = Observation.choice("puddle", 0).complaint();
        Observation coil = Observation.number("coil", 52);
        assertThat(called.posterior(Observations.of(puddle, coil)).share("leak"))
                .isEqualTo(called.posterior(Observations.of(coil, puddle)).share("leak"));
    }

    @Test
    void causesWithoutDrawsCount() {
        Cause cause = Toy.cause("not run yet", 1);
        Library more = library.with(List.of(cause), new float[][] {{}});
        assertThat(new Calls(more).chance(more.cause("not run yet"))).isEqualTo(1);
    }
}
