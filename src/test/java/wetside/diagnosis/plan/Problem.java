package wetside.diagnosis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.Toy;
import wetside.diagnosis.Who;
import wetside.diagnosis.exact.Action;
import wetside.diagnosis.exact.Troubleshooting;
import wetside.diagnosis.inference.Assumptions;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;

/** A small problem told twice: as a library for the planner, and as states and actions for the exact solver. */
final class Problem {
    static final String PANEL = "back";

    private final double[] prior;
    private final double call;
    private final double panel;
    private final List<Cause> causes = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<int[]> answers = new ArrayList<>();
    private final List<Action> actions = new ArrayList<>();

    /**
     * States it.
     *
     * @param prior of the causes
     * @param call cost of handing over
     * @param panel cost of the one panel
     */
    Problem(double[] prior, double call, double panel) {
        this.prior = prior;
        this.call = call;
        this.panel = panel;
    }

    private static Effort money(double money, boolean behind) {
        return new Effort(0, money, behind ? Set.of(PANEL) : Set.of(), Hazard.NONE, Who.OWNER);
    }

    /** The next causes, so many as named, mended by one repair; one that does not always hold may be done twice. */
    Problem repair(String id, double cost, double works, boolean behind, int... mended) {
        double[] by = new double[prior.length];
        for (int cause : mended) {
            by[cause] = works;
            causes.add(new Cause(
                    "c" + cause, "c" + cause, prior[cause], "", new Repair(id, id, money(cost, behind), works)));
        }
        for (int times = 0; times < (works < 1 ? 2 : 1); times++) {
            Action action = Action.repair(id + times, cost, by);
            actions.add(behind ? action.behind(PANEL) : action);
        }
        return this;
    }

    /** A question; {@code answer} by cause, mistaken as often as told. */
    Problem question(String id, double cost, boolean behind, double error, int... answer) {
        questions.add(new Question(id, id, new Answering.Choice(Toy.YES_NO, error), money(cost, behind)));
        answers.add(answer);
        double[][] chance = new double[prior.length][];
        for (int c = 0; c < prior.length; c++) {
            chance[c] = answer[c] == 0 ? new double[] {1 - error, error} : new double[] {error, 1 - error};
        }
        Action action = Action.question(id, cost, chance);
        actions.add(behind ? action.behind(PANEL) : action);
        return this;
    }

    Posterior start() {
        causes.sort(Comparator.comparing(Cause::id));
        float[][] rows = new float[prior.length][questions.size()];
        for (int c = 0; c < prior.length; c++) {
            for (int q = 0; q < questions.size(); q++) {
                rows[c][q] = answers.get(q)[c];
            }
        }
        Library library = new Library(causes, questions, Signatures.of(questions.size(), rows));
        return Inference.of(library, Assumptions.TEXTBOOK).posterior(Observations.none());
    }

    Situation situation() {
        return Situation.of(Who.TECHNICIAN).with(new Rates(1, Map.of(PANEL, panel), 0, Map.of(), call));
    }

    double followed() {
        return new Followed(situation()).cost(start());
    }

    double best() {
        return new Troubleshooting(prior, actions, Map.of(PANEL, panel), call).best();
    }

    /**
     * What a problem is drawn from.
     *
     * @param causes how many
     * @param questions how many, at 1 to 8 each
     * @param error how often answers are mistaken at most
     * @param behind share of the repairs, and of half the questions, behind a panel that costs 15
     * @param shared share of the causes mended by a repair that mends another as well
     * @param works how often repairs hold, at 5 to 65 each
     * @param call cost of handing over
     */
    record Family(int causes, int questions, double error, double behind, double shared, double works, double call) {
        Problem draw(SplittableRandom random) {
            double[] prior = new double[causes];
            double all = 0;
            for (int c = 0; c < causes; c++) {
                prior[c] = Math.exp(Toy.normal(random.nextDouble()));
                all += prior[c];
            }
            for (int c = 0; c < causes; c++) {
                prior[c] /= all;
            }
            Problem problem = new Problem(prior, call, 15);
            List<List<Integer>> groups = new ArrayList<>();
            for (int c = 0; c < causes; c++) {
                if (groups.isEmpty() || random.nextDouble() >= shared) {
                    groups.add(new ArrayList<>());
                }
                groups.get(random.nextInt(groups.size())).add(c);
            }
            groups.removeIf(List::isEmpty);
            for (int g = 0; g < groups.size(); g++) {
                int[] mended =
                        groups.get(g).stream().mapToInt(Integer::intValue).toArray();
                double cost = 5 + 60 * random.nextDouble();
                problem.repair("r" + g, cost, works, random.nextDouble() < behind, mended);
            }
            for (int q = 0; q < questions; q++) {
                int[] answer = random.ints(causes, 0, 2).toArray();
                double often = random.nextInt(3) * error / 2;
                boolean inside = random.nextDouble() < behind / 2;
                problem.question("q" + q, 1 + 7 * random.nextDouble(), inside, often, answer);
            }
            return problem;
        }
    }
}
