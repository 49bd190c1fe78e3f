package wetside.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.diagnosis.exact.Action;
import wetside.diagnosis.exact.TestSequence;
import wetside.diagnosis.exact.Troubleshooting;

class TroubleshootingPublishedTest {
    private static final String HECKERMAN = "form: Heckerman, Breese, Rommelse, CACM 38(3), 1995; made-up example,"
            + " value by a separate program over all orders";
    private static final String DERIVED = "made-up example, exact value by a separate program";
    private static final String WILDCATTER =
            "oil wildcatter, Raiffa; costs and 22.5 in Shenoy 1992, tables from memory";
    private static final String SEQUENCE = "six states, Pattipati and Alexandridis 1990 (from memory)";
    private static final Tolerance EXACT = Tolerance.absolute(1e-9);
    private static final String SUM = "finite sum: rounding only";
    private static final Tolerance SIX = Tolerance.absolute(5e-7);
    private static final String DIGITS = "printed digits";

    @RegisterExtension
    static final Published published = Published.topic("Troubleshooting by expected cost");

    private static Troubleshooting inspections() {
        return new Troubleshooting(
                new double[] {0.4, 0.3, 0.2, 0.1},
                List.of(
                        Action.inspection("a", 8, 20, 0, 4),
                        Action.inspection("b", 3, 10, 1, 4),
                        Action.inspection("c", 1, 40, 2, 4),
                        Action.inspection("d", 2, 5, 3, 4)),
                Map.of(),
                Double.POSITIVE_INFINITY);
    }

    @Test
    void e1InspectionsInOrder() {
        Troubleshooting problem = inspections();
        String[] orders = {"cbad", "cbda", "abcd", "dabc", "adbc", "bacd"};
        double[] costs = {27.1, 27.1, 29.8, 30.4, 30.4, 28.6};
        for (int i = 0; i < orders.length; i++) {
            double cost = problem.expectedCost(orders[i].split(""));
            published.check("expected cost of order " + orders[i], HECKERMAN, costs[i], cost, EXACT, SUM);
        }
        published.same("order by chance per cost", HECKERMAN, "c b a d", String.join(" ", problem.byWorth()));
        published.check("best of all orders", HECKERMAN, 27.1, problem.best(), EXACT, SUM);
    }

    private static Troubleshooting press(boolean test) {
        List<Action> actions = new ArrayList<>(List.of(
                Action.repair("pump", 60, 1, 0, 0),
                Action.repair("valve", 25, 0, 1, 0),
                Action.repair("control", 90, 0, 0, 1)));
        if (test) {
            actions.add(Action.question("press", 5, new double[][] {{0.9, 0.1}, {0.2, 0.8}, {0.1, 0.9}}));
        }
        return new Troubleshooting(new double[] {0.5, 0.3, 0.2}, actions, Map.of(), 150);
    }

    @Test
    void e2TestBeforeRepair() {
        published.check("repairs alone", DERIVED, 85, press(false).best(), EXACT, SUM);
        published.check("press test first", DERIVED, 76.05, press(true).asking("press"), EXACT, SUM);
        published.check("best plan", DERIVED, 76.05, press(true).best(), EXACT, SUM);
        published.check(
                "looking one question ahead", DERIVED, 76.05, press(true).lookingOneAhead(), EXACT, SUM);
    }

    @Test
    void e3PanelPaidOnce() {
        Troubleshooting problem = new Troubleshooting(
                new double[] {0.35, 0.35, 0.3},
                List.of(
                        Action.repair("x", 4, 1, 0, 0).behind("back"),
                        Action.repair("y", 4, 0, 1, 0).behind("back"),
                        Action.repair("z", 11, 0, 0, 1)),
                Map.of("back", 14.0),
                200);
        String source = "setting: Ottosen and Jensen, UAI 2010; " + DERIVED;
        published.check("best plan", source, 23.9, problem.best(), EXACT, SUM);
        published.check("each repair charged the panel", source, 25, problem.greedy(), EXACT, SUM);
    }

    @Test
    void e4TwoTestsThatOnlyHelpTogether() {
        Troubleshooting problem = new Troubleshooting(
                new double[] {0.25, 0.25, 0.25, 0.25},
                List.of(
                        Action.repair("even", 30, 1, 0, 0, 1),
                        Action.repair("odd", 30, 0, 1, 1, 0),
                        Action.question("t1", 3, new double[][] {{1, 0}, {1, 0}, {0, 1}, {0, 1}}),
                        Action.question("t2", 3, new double[][] {{1, 0}, {0, 1}, {1, 0}, {0, 1}})),
                Map.of(),
                200);
        published.check("best plan", DERIVED, 36, problem.best(), EXACT, SUM);
        published.check("looking one question ahead", DERIVED, 45, problem.lookingOneAhead(), EXACT, SUM);
        published.check("one test, then repairs", DERIVED, 48, problem.asking("t1"), EXACT, SUM);
    }

    @Test
    void e5OverlappingRepairs() {
        Troubleshooting problem = new Troubleshooting(
                new double[] {0.20, 0.25, 0.40, 0.15},
                List.of(
                        Action.repair("alpha", 1, 0, 1, 1, 0),
                        Action.repair("beta", 1, 1, 0, 1, 0),
                        Action.repair("gamma", 1, 0, 1, 0, 1)),
                Map.of(),
                20);
        published.check("best plan", DERIVED, 1.4, problem.best(), EXACT, SUM);
        published.check("beta, gamma", DERIVED, 1.4, problem.expectedCost("beta", "gamma"), EXACT, SUM);
        published.check("by chance per cost", DERIVED, 1.5, problem.greedy(), EXACT, SUM);
    }

    @Test
    void e6ImperfectRepairsAndUnknownAnswers() {
        List<Action> repairs = List.of(
                Action.repair("seal", 18, 0.8, 0, 0),
                Action.repair("descale", 12, 0, 0.9, 0),
                Action.repair("probe", 35, 0, 0, 1));
        List<Action> all = new ArrayList<>(repairs);
        all.add(Action.question("drip", 1, new double[][] {{0.7, 0.1, 0.2}, {0.1, 0.7, 0.2}, {0.1, 0.7, 0.2}}));
        double[] prior = {0.55, 0.30, 0.15};
        published.check(
                "without the question",
                DERIVED,
                51.67,
                new Troubleshooting(prior, repairs, Map.of(), 120).best(),
                EXACT,
                SUM);
        published.check("with it", DERIVED, 47.921, new Troubleshooting(prior, all, Map.of(), 120).best(), EXACT, SUM);
    }

    @Test
    void e7SeveralFaultsAtOnce() {
        double[] chance = {0.1, 0.2, 0.05};
        double[] prior = new double[7];
        double all = 0;
        for (int set = 1; set < 8; set++) {
            prior[set - 1] = 1;
            for (int i = 0; i < 3; i++) {
                prior[set - 1] *= (set & 1 << i) != 0 ? chance[i] : 1 - chance[i];
            }
            all += prior[set - 1];
        }
        for (int s = 0; s < 7; s++) {
            prior[s] /= all;
        }
        published.check("A alone", DERIVED, 0.240506, prior[0], SIX, DIGITS);
        published.check("A and B", DERIVED, 0.060127, prior[2], SIX, DIGITS);
        List<Action> repairs = new ArrayList<>();
        double[] cost = {10, 15, 4};
        for (int i = 0; i < 3; i++) {
            double[] works = new double[7];
            int[] leads = new int[7];
            for (int set = 1; set < 8; set++) {
                works[set - 1] = (set & 1 << i) != 0 ? 1 : 0;
                leads[set - 1] = (set & ~(1 << i)) - 1;
            }
            repairs.add(Action.repair("ABC".substring(i, i + 1), cost[i], works).leadingTo(leads));
        }
        Troubleshooting problem = new Troubleshooting(prior, repairs, Map.of(), Double.POSITIVE_INFINITY);
        String[] orders = {"BCA", "BAC", "CBA", "ABC", "CAB", "ACB"};
        double[] costs = {20, 20.221519, 20.455696, 22.025316, 22.354430, 22.531646};
        for (int i = 0; i < orders.length; i++) {
            double computed = problem.expectedCost(orders[i].split(""));
            published.check("expected cost of order " + orders[i], DERIVED, costs[i], computed, SIX, DIGITS);
        }
        published.check("best plan", DERIVED, 20, problem.best(), SIX, DIGITS);
    }

    @Test
    void t10OilWildcatter() {
        double[] prior = {0.5, 0.3, 0.2};
        Action drill = new Action(
                "drill",
                new double[] {70, -50, -200},
                java.util.Set.of(),
                new double[0][],
                new double[] {1, 1, 1},
                new int[] {-1, -1, -1});
        double[][] table = {{0.6, 0.3, 0.1}, {0.3, 0.4, 0.3}, {0.1, 0.4, 0.5}};
        double[][] perfect = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double without = -new Troubleshooting(prior, List.of(drill), Map.of(), 0).best();
        double with =
                -new Troubleshooting(prior, List.of(drill, Action.question("test", 10, table)), Map.of(), 0).best();
        double free =
                -new Troubleshooting(prior, List.of(drill, Action.question("test", 0, table)), Map.of(), 0).best();
        double told =
                -new Troubleshooting(prior, List.of(drill, Action.question("told", 0, perfect)), Map.of(), 0).best();
        published.check("without the test [k$]", WILDCATTER, 20, without, EXACT, SUM);
        published.check("with the test [k$]", WILDCATTER, 22.5, with, EXACT, SUM);
        published.check("worth of a free test [k$]", WILDCATTER, 12.5, free - without, EXACT, SUM);
        published.check("worth of knowing [k$]", WILDCATTER, 35, told - without, EXACT, SUM);
    }

    @Test
    void t11SequencesOfTests() {
        String[] rows = {"00000", "01001", "00110", "10011", "11000", "11110"};
        boolean[][] answer = new boolean[6][5];
        for (int s = 0; s < 6; s++) {
            for (int t = 0; t < 5; t++) {
                answer[s][t] = rows[s].charAt(t) == '1';
            }
        }
        TestSequence sequence = new TestSequence(new double[] {0.70, 0.01, 0.02, 0.10, 0.05, 0.12}, answer);
        published.check("entropy [bit]", SEQUENCE, 1.454873, sequence.entropy(), SIX, DIGITS);
        published.check("no plan can beat", SEQUENCE, 1.59, sequence.lowerBound(), EXACT, SUM);
        published.check("best plan", SEQUENCE, 2.18, sequence.best(), EXACT, SUM);
        published.same("first test of the best plan", SEQUENCE, "t2", "t" + (sequence.first() + 1));
        published.check("next test by information", SEQUENCE, 2.86, sequence.byInformation(1), EXACT, SUM);
        published.check("looking two tests ahead", SEQUENCE, 2.18, sequence.byInformation(2), EXACT, SUM);
    }
}
