package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Toy;

class ProjectionTest {
    private static final int DRAWS = 37;
    private static final int QUESTIONS = 6;

    /** Numbers that hang together, the last one missing in a few draws, one in words between them. */
    private static Library library() {
        SplittableRandom random = new SplittableRandom(5);
        List<Question> questions = new ArrayList<>();
        for (int q = 0; q < QUESTIONS; q++) {
            questions.add(q == 2 ? Toy.yesNo("q2", 0.1) : Toy.number("q" + q, 0.2));
        }
        float[] rows = new float[DRAWS * QUESTIONS];
        for (int k = 0; k < DRAWS; k++) {
            double common = Toy.normal(random.nextDouble());
            for (int q = 0; q < QUESTIONS; q++) {
                double own = Toy.normal(random.nextDouble());
                rows[k * QUESTIONS + q] = (float) (q == 2 ? (own > 0 ? 1 : 0) : 9 + common + 0.4 * own);
            }
            rows[k * QUESTIONS + 5] = k % 9 == 4 ? Float.NaN : rows[k * QUESTIONS + 5];
        }
        return new Library(List.of(Toy.cause("a", 1)), questions, Signatures.of(QUESTIONS, new float[][] {rows}));
    }

    /** The sums over all numbers side by side give what the definition gives, one question and one draw at a time. */
    @Test
    void sumsSideBySideAreThoseOfTheDefinition() {
        Posterior posterior = Inference.of(library())
                .posterior(Observations.of(
                        Observation.number("q0", 9.7), Observation.number("q1", 10.4), Observation.choice("q2", 1)));
        Fit fit = posterior.fit(0);
        assertThat(fit.humps).hasSize(1);
        for (int q : new int[] {0, 1, 3, 4, 5}) {
            Hump.Expected expected = fit.predict(0, q);
            double[] defined = defined(posterior.inference().rows(0), fit.humps[0], q);
            assertThat(expected.mean()).as("mean of q" + q).isEqualTo(defined[0], within(1e-12));
            assertThat(expected.variance()).as("variance of q" + q).isEqualTo(defined[1], within(1e-12));
            assertThat(expected.valued()).isEqualTo(defined[2], within(1e-12));
        }
        assertThat(fit.predict(0, 5).valued()).isBetween(0.5, 0.99);
        assertThat(fit.predict(0, 3).mean()).as("drawn along by q0 and q1").isGreaterThan(9.5);
    }

    private static double[] defined(float[] rows, Hump hump, int q) {
        double weights = 0;
        double valued = 0;
        double centre = 0;
        for (int m = 0; m < DRAWS; m++) {
            double x = rows[m * QUESTIONS + q];
            weights += Double.isNaN(x) ? 0 : hump.weight(m);
            valued += Double.isNaN(x) ? 0 : hump.share[m];
            centre += Double.isNaN(x) ? 0 : hump.weight(m) * x;
        }
        centre /= weights;
        double variance = 0;
        double[] cross = new double[2];
        for (int m = 0; m < DRAWS; m++) {
            double off = rows[m * QUESTIONS + q] - centre;
            for (int j = 0; j < 2 && !Double.isNaN(off); j++) {
                cross[j] += hump.correlated() * hump.weight(m) / weights * off * hump.deviation(m, j);
            }
            variance += Double.isNaN(off) ? 0 : hump.weight(m) / weights * off * off;
        }
        double mean = 0;
        double square = 0;
        for (int m = 0; m < DRAWS; m++) {
            double x = rows[m * QUESTIONS + q];
            double pulled = cross[0] * hump.pull(m)[0] + cross[1] * hump.pull(m)[1];
            double at = centre + hump.spread() * (x - centre) + pulled;
            mean += Double.isNaN(x) ? 0 : hump.share[m] / valued * at;
            square += Double.isNaN(x) ? 0 : hump.share[m] / valued * at * at;
        }
        return new double[] {mean, hump.left(variance, cross) + square - mean * mean, valued};
    }
}
