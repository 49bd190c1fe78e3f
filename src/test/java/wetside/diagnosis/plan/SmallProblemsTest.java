package wetside.diagnosis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Toy;
import wetside.diagnosis.Who;
import wetside.diagnosis.exact.Action;
import wetside.diagnosis.exact.Troubleshooting;
import wetside.diagnosis.inference.Assumptions;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;

/**
 * The planner that people get, on the problems whose best plan is known: the tables of {@code
 * TroubleshootingPublishedTest} made into libraries, the advice followed to the end, every outcome weighed.
 */
class SmallProblemsTest {
    /** More of them print what docs/theory/diagnosis.md says. */
    private static final int PROBLEMS = Integer.getInteger("problems", 8);

    private static Step first(Problem problem) {
        return NextStep.advise(problem.start(), problem.situation()).best();
    }

    @Test
    void twoTestsThatTellTheRepairOnlyTogether() {
        Problem problem = new Problem(new double[] {0.25, 0.25, 0.25, 0.25}, 200, 0)
                .repair("even", 30, 1, false, 0, 3)
                .repair("odd", 30, 1, false, 1, 2)
                .question("t1", 3, false, 0, 0, 0, 1, 1)
                .question("t2", 3, false, 0, 0, 1, 0, 1);
        assertThat(first(problem).sort()).isEqualTo(Step.Sort.ASK);
        assertThat(first(problem).expectedCost()).isEqualTo(36, within(1e-9));
        assertThat(first(problem).reason()).contains("only together");
        assertThat(problem.followed()).isEqualTo(36, within(1e-9));
    }

    /** Six states, five tests at one each; repairs so dear that nobody tries one before it is known to be the right one. */
    @Test
    void aSequenceOfTestsThatTheMostTellingOneWouldSpoil() {
        String[] rows = {"00000", "01001", "00110", "10011", "11000", "11110"};
        double repair = 1000;
        Problem problem = new Problem(new double[] {0.70, 0.01, 0.02, 0.10, 0.05, 0.12}, 100_000, 0);
        for (int s = 0; s < 6; s++) {
            problem.repair("r" + s, repair, 1, false, s);
        }
        for (int t = 0; t < 5; t++) {
            int[] answer = new int[6];
            for (int s = 0; s < 6; s++) {
                answer[s] = rows[s].charAt(t) - '0';
            }
            problem.question("t" + (t + 1), 1, false, 0, answer);
        }
        Step first = first(problem);
        assertThat(NextStep.advise(problem.start(), problem.situation())
                        .byInformation()
                        .get(0)
                        .id())
                .isNotEqualTo(first.id());
        assertThat(first.expectedCost()).isEqualTo(repair + 2.18, within(1e-6));
        assertThat(problem.followed()).as("greedy 2.86").isEqualTo(repair + 2.18, within(1e-6));
    }

    @Test
    void aPanelIsPaidOnceForAllBehindIt() {
        Problem problem = new Problem(new double[] {0.35, 0.35, 0.3}, 200, 14)
                .repair("x", 4, 1, true, 0)
                .repair("y", 4, 1, true, 1)
                .repair("z", 11, 1, false, 2);
        assertThat(first(problem).id()).isEqualTo("x");
        assertThat(problem.followed()).as("greedy 25").isEqualTo(23.9, within(1e-9));
    }

    /**
     * Several causes at once, each repair removing its own: what was done for one is done for all it stands with. Without
     * the third in a thousand that has all three.
     */
    private record Together(Posterior start, double best) {
        static final Situation SITUATION = Situation.of(Who.TECHNICIAN).with(new Rates(1, Map.of(), 0, Map.of(), 1000));

        static Together of(double[] chance, double[] cost) {
            List<Cause> causes = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                Effort effort = new Effort(0, cost[i], Set.of(), Hazard.NONE, Who.OWNER);
                String id = "ABC".substring(i, i + 1);
                causes.add(new Cause(id, id, odds(chance[i]), "", new Repair("mend " + id, id, effort, 1)));
            }
            int[][] pairs = {{0, 1}, {0, 2}, {1, 2}};
            for (int[] pair : pairs) {
                double weight = odds(chance[pair[0]]) * odds(chance[pair[1]]);
                causes.add(causes.get(pair[0]).and(causes.get(pair[1]), weight));
            }
            List<Action> actions = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                double[] works = new double[6];
                int[] leads = {-1, -1, -1, -1, -1, -1};
                works[i] = 1;
                for (int p = 0; p < 3; p++) {
                    if (pairs[p][0] == i || pairs[p][1] == i) {
                        works[3 + p] = 1;
                        leads[3 + p] = pairs[p][0] + pairs[p][1] - i;
                    }
                }
                actions.add(Action.repair("mend " + i, cost[i], works).leadingTo(leads));
            }
            double all = causes.stream().mapToDouble(Cause::weight).sum();
            double[] prior = causes.stream().mapToDouble(c -> c.weight() / all).toArray();
            float[][][] nothing = new float[6][1][0];
            Library library = Toy.library(causes, List.of(), nothing);
            Posterior start = Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.none());
            return new Together(start, new Troubleshooting(prior, actions, Map.of(), 1000).best());
        }

        double followed() {
            return new Followed(SITUATION).cost(start);
        }
    }

    @Test
    void severalCausesAtOnce() {
        Together e7 = Together.of(new double[] {0.1, 0.2, 0.05}, new double[] {10, 15, 4});
        assertThat(NextStep.advise(e7.start, Together.SITUATION).best().id()).isEqualTo("mend B");
        assertThat(e7.followed()).isEqualTo(e7.best, within(1e-9));
        SplittableRandom random = new SplittableRandom(8);
        double ratios = 0;
        for (int round = 0; round < 100; round++) {
            double[] chance = random.doubles(3, 0.02, 0.3).toArray();
            Together problem = Together.of(chance, random.doubles(3, 4, 40).toArray());
            ratios += problem.followed() / problem.best / 100;
        }
        assertThat(ratios).as("pairs are planned as a repair of their own").isBetween(1 - 1e-9, 1.005);
        if (PROBLEMS > 8) {
            System.out.printf("several at once: mean %.4f%n", ratios);
        }
    }

    private static double odds(double chance) {
        return chance / (1 - chance);
    }

    @Test
    void repairsThatDoNotAlwaysHoldAndAnswersNobodyKnows() {
        double[] prior = {0.55, 0.30, 0.15};
        double[][] drip = {{0.7, 0.1, 0.2}, {0.1, 0.7, 0.2}, {0.1, 0.7, 0.2}};
        String[] names = {"seal", "descale", "probe"};
        double[] cost = {18, 12, 35};
        double[] works = {0.8, 0.9, 1};
        List<Cause> causes = new ArrayList<>();
        List<Action> actions = new ArrayList<>(List.of(Action.question("drip", 1, drip)));
        float[][][] draws = new float[3][10][1];
        for (int c = 0; c < 3; c++) {
            Effort effort = new Effort(0, cost[c], Set.of(), Hazard.NONE, Who.OWNER);
            causes.add(new Cause(names[c], names[c], prior[c], "", new Repair(names[c], names[c], effort, works[c])));
            double[] by = new double[3];
            by[c] = works[c];
            actions.add(Action.repair(names[c], cost[c], by));
            for (int k = 0; k < 10; k++) {
                draws[c][k][0] = k < 10 * drip[c][0] ? 0 : k < 10 * (drip[c][0] + drip[c][1]) ? 1 : 2;
            }
        }
        Effort asking = new Effort(0, 1, Set.of(), Hazard.NONE, Who.OWNER);
        Answering answering = new Answering.Choice(List.of("yes", "no", "cannot tell"), 0);
        Library library = Toy.library(causes, List.of(new Question("drip", "drip?", answering, asking)), draws);
        Situation situation = Situation.of(Who.TECHNICIAN).with(new Rates(1, Map.of(), 0, Map.of(), 120));
        Posterior start = Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.none());
        assertThat(NextStep.advise(start, situation).best().id()).isEqualTo("drip");
        assertThat(new Troubleshooting(prior, actions, Map.of(), 120).best())
                .as("each repair done once at most")
                .isEqualTo(47.921, within(1e-9));
        actions.add(actions.get(1));
        actions.add(actions.get(2));
        double best = new Troubleshooting(prior, actions, Map.of(), 120).best();
        assertThat(best).as("ours may be done once more").isLessThan(47.921);
        assertThat(new Followed(situation).cost(start)).isEqualTo(best, within(0.005 * best));
    }

    /** Two tell the same, one in a minute on live parts, one in five with the case shut. */
    @Test
    void hazardIsACostToThoseWhoMayAndAGateToThoseWhoMayNot() {
        Answering answering = new Answering.Choice(Toy.YES_NO, 0);
        Effort live = new Effort(1, 0, Set.of(), Hazard.LIVE, Who.OWNER);
        List<Question> questions = List.of(
                new Question("live", "?", answering, live), new Question("shut", "?", answering, Effort.minutes(5)));
        Library library = Toy.library(
                List.of(Toy.cause("a", 1), Toy.cause("b", 1)), questions, new float[][] {{0, 0}}, new float[][] {{1, 1}
                });
        Posterior start = Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.none());
        Rates usual = Rates.USUAL;
        Rates reckless = new Rates(1, Map.of(), usual.otherPanel(), Map.of(), usual.callIn());
        assertThat(NextStep.advise(start, Situation.of(Who.TECHNICIAN)).best().id())
                .isEqualTo("shut");
        assertThat(NextStep.advise(start, Situation.of(Who.TECHNICIAN).with(reckless))
                        .best()
                        .id())
                .isEqualTo("live");
        Advice owner = NextStep.advise(start, Situation.of(Who.OWNER).with(reckless));
        assertThat(owner.best().id()).as("whatever it costs").isEqualTo("shut");
        assertThat(owner.steps()).extracting(Step::id).doesNotContain("live");
    }

    /** Problems drawn at random against the best plan there is; the shares left out of an advice make 0.2 % at most. */
    @Test
    void adviceOnSmallProblemsCostsWhatTheBestPlanCosts() {
        Map<String, Problem.Family> families = Map.of(
                "certain answers", new Problem.Family(6, 5, 0, 0, 0, 1, 300),
                "answers that may be wrong", new Problem.Family(6, 5, 0.2, 0, 0, 1, 300),
                "repairs shared by causes", new Problem.Family(8, 5, 0.1, 0, 0.6, 1, 300),
                "a panel", new Problem.Family(6, 4, 0.1, 0.6, 0.3, 1, 300),
                "repairs that may not hold", new Problem.Family(4, 4, 0.1, 0, 0, 0.8, 300),
                "a cheap call", new Problem.Family(6, 4, 0.1, 0, 0.3, 1, 60));
        int rounds = PROBLEMS;
        families.forEach((name, family) -> {
            SplittableRandom random = new SplittableRandom(7);
            double ratios = 0;
            double worst = 0;
            for (int round = 0; round < rounds; round++) {
                Problem problem = family.draw(random);
                double ratio = problem.followed() / problem.best();
                assertThat(ratio).as(name).isGreaterThan(0.998);
                ratios += ratio / rounds;
                worst = Math.max(worst, ratio);
            }
            if (rounds > 8) {
                System.out.printf("%-30s mean %.4f worst %.4f%n", name, ratios, worst);
            }
            assertThat(ratios).as(name).isLessThan(1.005);
            assertThat(worst).as(name).isLessThan(1.05);
        });
    }
}
