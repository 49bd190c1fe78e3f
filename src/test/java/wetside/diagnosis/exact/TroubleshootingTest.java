package wetside.diagnosis.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.inference.Shares;

class TroubleshootingTest {
    private static double[] prior(SplittableRandom random, int n) {
        double[] prior = new double[n];
        double all = 0;
        for (int i = 0; i < n; i++) {
            prior[i] = 0.05 + random.nextDouble();
            all += prior[i];
        }
        for (int i = 0; i < n; i++) {
            prior[i] /= all;
        }
        return prior;
    }

    private static List<Action> repairs(SplittableRandom random, int n) {
        List<Action> repairs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] works = new double[n];
            works[i] = 1;
            repairs.add(Action.repair("r" + i, 1 + 20 * random.nextDouble(), works));
        }
        return repairs;
    }

    @Test
    void chancePerCostIsTheBestOrderForOnePerfectFault() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 1000; round++) {
            int n = 2 + random.nextInt(5);
            Troubleshooting problem =
                    new Troubleshooting(prior(random, n), repairs(random, n), Map.of(), Double.POSITIVE_INFINITY);
            double best = problem.best();
            assertThat(problem.expectedCost(problem.byWorth().toArray(new String[0])))
                    .isEqualTo(best, within(1e-9));
            assertThat(problem.greedy()).isEqualTo(best, within(1e-9));
        }
    }

    @Test
    void lookingOneAheadIsNeverBetterThanTheBestPlanAndSeldomMuchWorse() {
        SplittableRandom random = new SplittableRandom(12);
        double ratios = 0;
        int rounds = 150;
        for (int round = 0; round < rounds; round++) {
            int n = 4;
            List<Action> actions = repairs(random, n);
            for (int t = 0; t < 3; t++) {
                double[][] chance = new double[n][];
                for (int s = 0; s < n; s++) {
                    double yes = random.nextInt(2) == 0 ? 0.1 : 0.9;
                    chance[s] = new double[] {yes, 1 - yes};
                }
                actions.add(Action.question("t" + t, 1 + 4 * random.nextDouble(), chance));
            }
            Troubleshooting problem = new Troubleshooting(prior(random, n), actions, Map.of(), 60);
            double best = problem.best();
            double ahead = problem.lookingOneAhead();
            assertThat(ahead).isGreaterThanOrEqualTo(best - 1e-9);
            assertThat(problem.greedy()).isGreaterThanOrEqualTo(best - 1e-9);
            ratios += ahead / best / rounds;
        }
        assertThat(ratios).isBetween(1.0, 1.05);
    }

    @Test
    void entropyIsNeverNegativeAndTestsAreExpectedToLowerIt() {
        SplittableRandom random = new SplittableRandom(13);
        for (int round = 0; round < 1000; round++) {
            int n = 2 + random.nextInt(8);
            double[] prior = prior(random, n);
            double before = Shares.bits(prior);
            double[][] chance = new double[n][3];
            for (double[] row : chance) {
                System.arraycopy(prior(random, 3), 0, row, 0, 3);
            }
            double after = 0;
            for (int k = 0; k < 3; k++) {
                double[] joint = new double[n];
                double all = 0;
                for (int s = 0; s < n; s++) {
                    joint[s] = prior[s] * chance[s][k];
                    all += joint[s];
                }
                for (int s = 0; s < n; s++) {
                    joint[s] /= all;
                }
                after += all * Shares.bits(joint);
            }
            assertThat(before).isNotNegative();
            assertThat(after).isBetween(0.0, before + 1e-12);
        }
    }
}
