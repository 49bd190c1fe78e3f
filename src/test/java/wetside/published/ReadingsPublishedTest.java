package wetside.published;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Toy;
import wetside.diagnosis.inference.Assumptions;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;

/** Closed forms of likelihoods against the code that judges real readings, given draws in even steps. */
class ReadingsPublishedTest {
    private static final String SEVERITY =
            "y = 9 - 6 s + e, s even in (0, 1), sd 0.3: closed form with the normal integral";
    private static final String SHARED = "two readings with one common tolerance: bivariate normal in closed form";
    private static final String MASKING = "two faults that hide each other, one draw each: normal densities by hand";
    private static final int STEPS = 20_000;
    private static final Tolerance STEPPED = Tolerance.relative(2e-6);
    private static final String WHY = "20 000 even steps stored in single precision";

    @RegisterExtension
    static final Published published = Published.topic("Readings under tolerance and severity");

    private static Posterior severity(double reading) {
        List<Cause> causes = List.of(Toy.cause("normal", 1), Toy.cause("leak", 1));
        List<Question> questions = List.of(Toy.number("pressure", 0.3), Toy.number("severity", 1));
        float[][] leak = new float[STEPS][];
        for (int k = 0; k < STEPS; k++) {
            double s = (k + 0.5) / STEPS;
            leak[k] = new float[] {(float) (9 - 6 * s), (float) s};
        }
        Library library = Toy.library(causes, questions, new float[][] {{9, 0}}, leak);
        return Inference.of(library, Assumptions.TEXTBOOK)
                .posterior(Observations.of(Observation.number("pressure", reading)));
    }

    @Test
    void t14Severity() {
        double[] readings = {8.9, 8.4, 7.5};
        double[] factor = {0.0835435, 0.905012, 33631.1};
        double[] mean = {0.046591, 0.102762, 0.25};
        for (int i = 0; i < readings.length; i++) {
            Posterior posterior = severity(readings[i]);
            double odds = Math.exp(posterior.logWeight(1) - posterior.logWeight(0));
            String at = " at a reading of " + readings[i] + " bar";
            published.check("odds for a leak" + at, SEVERITY, factor[i], odds, STEPPED, WHY);
            published.check(
                    "expected severity" + at,
                    SEVERITY,
                    mean[i],
                    posterior.expected(1, 1).mean(),
                    Tolerance.relative(2e-5),
                    "printed digits, and " + WHY);
        }
    }

    @Test
    void t13SharedTolerance() {
        List<Cause> causes = List.of(Toy.cause("zero", 1), Toy.cause("two", 1));
        List<Question> questions = List.of(Toy.number("one", 0.3), Toy.number("other", 0.3));
        float[][] zero = new float[STEPS][];
        float[][] two = new float[STEPS][];
        for (int k = 0; k < STEPS; k++) {
            float tau = (float) Toy.normal((k + 0.5) / STEPS);
            zero[k] = new float[] {tau, tau};
            two[k] = new float[] {2 + tau, 2 + tau};
        }
        Posterior posterior = Inference.of(Toy.library(causes, questions, zero, two), Assumptions.TEXTBOOK)
                .posterior(Observations.of(Observation.number("one", 2), Observation.number("other", 2)));
        double odds = Math.exp(posterior.logWeight(1) - posterior.logWeight(0));
        published.check("odds for a mean of 2", SHARED, 6.7793, odds, Tolerance.digit(0.0001), "printed digits");
        double apart = 1;
        for (String question : List.of("one", "other")) {
            Posterior alone = posterior.given(Observations.of(Observation.number(question, 2)));
            apart *= Math.exp(alone.logWeight(1) - alone.logWeight(0));
        }
        published.check(
                "odds if the readings were wrongly taken apart", SHARED, 39.2411, apart, Tolerance.relative(2e-5), WHY);
    }

    private static Posterior masked(double sd, Observation... observations) {
        double f = 0.05;
        List<Cause> causes = List.of(
                Toy.cause("normal", (1 - f) * (1 - f)),
                Toy.cause("f1", f * (1 - f)),
                Toy.cause("f2", f * (1 - f)),
                Toy.cause("both", f * f));
        Library library = Toy.library(
                causes,
                List.of(Toy.number("y1", sd), Toy.number("y2", sd)),
                new float[][] {{0, 0}},
                new float[][] {{-2, 0}},
                new float[][] {{2, 2}},
                new float[][] {{0, 2}});
        return Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.of(observations));
    }

    @Test
    void t15Masking() {
        Observation first = Observation.number("y1", 0);
        Observation second = Observation.number("y2", 2);
        masked("both after y1, sd 0.5", 0.002762, masked(0.5, first).share("both"));
        masked("normal after y1, sd 0.5", 0.997202, masked(0.5, first).share("normal"));
        masked(
                "both after y1 and y2, sd 0.5",
                0.886935,
                masked(0.5, first, second).share("both"));
        masked(
                "normal after y1 and y2, sd 0.5",
                0.107410,
                masked(0.5, first, second).share("normal"));
        masked(
                "f2 after y1 and y2, sd 0.5",
                0.005653,
                masked(0.5, first, second).share("f2"));
        masked("both after y1 and y2, sd 1", 0.018948, masked(1, first, second).share("both"));
        masked("f2 after y1 and y2, sd 1", 0.048723, masked(1, first, second).share("f2"));
    }

    private static void masked(String quantity, double expected, double computed) {
        published.check(quantity, MASKING, expected, computed, Tolerance.absolute(5e-7), "printed digits");
    }
}
