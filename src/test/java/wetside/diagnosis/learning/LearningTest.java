package wetside.diagnosis.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LearningTest {
    @Test
    void jobsOneByOneAreTheBatchAndOneTakenBackWasNeverThere() {
        Counts prior = Counts.of(4, 3, 2);
        Counts one = prior.with(1, 0, 0).with(0, 1, 0).with(0.5, 0.5, 0);
        Counts batch = prior.with(1.5, 1.5, 0);
        for (int i = 0; i < 3; i++) {
            assertThat(one.mean(i)).isEqualTo(batch.mean(i), within(1e-12));
            assertThat(one.with(-1.5, -1.5, 0).mean(i)).isEqualTo(prior.mean(i), within(1e-12));
        }
        assertThat(new Rate(2, 100).with(1, 50).with(0, 50)).isEqualTo(new Rate(2, 100).with(1, 100));
        assertThat(new Rate(2, 100).with(1, 50).with(-1, -50)).isEqualTo(new Rate(2, 100));
    }

    @Test
    void quantileAndTailAgree() {
        for (double p : new double[] {0.025, 0.5, 0.9, 0.999}) {
            assertThat(new Rate(2.7, 33).above(new Rate(2.7, 33).quantile(p))).isEqualTo(1 - p, within(1e-9));
        }
    }

    @Test
    void refusesWhatIsNoRate() {
        assertThatThrownBy(() -> new Rate(0, 1)).hasMessageContaining("positive");
        assertThatThrownBy(() -> Counts.of(1, 0)).hasMessageContaining("positive");
    }
}
