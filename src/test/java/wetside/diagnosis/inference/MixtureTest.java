package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Toy;

/** Normal mixtures of few draws against kernel sums of very many. */
class MixtureTest {
    private static final int SHIPPED = 64;

    private static final List<Observations> CASES = made();

    private static List<Observations> cases() {
        return CASES;
    }

    private static List<Observations> made() {
        List<Observations> cases = new ArrayList<>();
        Library hidden = Toy.pumpBank(6, 77);
        for (int c = 0; c < 4; c++) {
            for (int k = 0; k < 6; k++) {
                cases.add(Observations.of(
                        Observation.number("gauge", hidden.signatures().value(c, k, 0)),
                        Observation.number("flow", hidden.signatures().value(c, k, 1)),
                        Observation.choice("noisy", (int) hidden.signatures().value(c, k, 3))));
            }
        }
        return cases;
    }

    /** Total variation from the plain kernel sum of very many draws, mean over the cases and three seeds. */
    @Test
    void agreesWithTheKernelSumOfManyDraws() {
        Inference many = Inference.of(Toy.pumpBank(8192, 3), Assumptions.USUAL.smoothing(0));
        List<double[]> truth =
                cases().stream().map(c -> many.posterior(c).shares()).toList();
        assertThat(apart(truth, 64, 0.8)).isLessThan(0.045);
        assertThat(apart(truth, 256, 0.8)).isLessThan(0.03);
        assertThat(apart(truth, 64, 0.02))
                .as("the plain kernel sum, from as few draws, is worse")
                .isGreaterThan(apart(truth, 64, 0.8));
        assertThat(apart(truth, 1024, 100))
                .as("one normal distribution does not get there with any number of draws")
                .isGreaterThan(apart(truth, 1024, 0.8));
    }

    private static double apart(List<double[]> truth, int draws, double smoothing) {
        double mean = 0;
        for (int seed = 0; seed < 3; seed++) {
            Inference few = Inference.of(Toy.pumpBank(draws, seed), Assumptions.USUAL.smoothing(smoothing));
            for (int i = 0; i < truth.size(); i++) {
                mean += apart(few.posterior(cases().get(i)).shares(), truth.get(i)) / truth.size() / 3;
            }
        }
        return mean;
    }

    @Test
    void fewDrawsSufficeForAStablePosterior() {
        List<List<double[]>> seeds = new ArrayList<>();
        for (int seed = 0; seed < 20; seed++) {
            Inference inference = Inference.of(Toy.pumpBank(SHIPPED, seed));
            seeds.add(cases().stream().map(c -> inference.posterior(c).shares()).toList());
        }
        double worst = 0;
        double mean = 0;
        for (int i = 0; i < cases().size(); i++) {
            for (int c = 0; c < 4; c++) {
                double sd = sd(seeds, i, c);
                mean += sd / cases().size() / 4;
                worst = Math.max(worst, sd);
            }
        }
        assertThat(mean).isLessThan(0.016);
        assertThat(worst).isLessThan(0.1);
    }

    private static double sd(List<List<double[]>> seeds, int of, int cause) {
        double mean =
                seeds.stream().mapToDouble(s -> s.get(of)[cause]).average().orElseThrow();
        return Math.sqrt(seeds.stream()
                .mapToDouble(s -> Math.pow(s.get(of)[cause] - mean, 2))
                .average()
                .orElseThrow());
    }

    private static double apart(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += Math.abs(one[i] - other[i]);
        }
        return 0.5 * sum;
    }
}
