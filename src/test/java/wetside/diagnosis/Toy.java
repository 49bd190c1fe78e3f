package wetside.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.diagnosis.Answering.Choice;
import wetside.diagnosis.Answering.Number;

/**
 * Small made-up libraries for tests. The pump bank: a pump pressure with a relief valve that clips it, a gauge with a
 * tolerance, a flow with a jet; four causes; two gauges and two things to be asked.
 */
public final class Toy {
    public static final List<String> YES_NO = List.of("yes", "no");

    private Toy() {}

    public static Cause cause(String id, double weight) {
        return cause(id, weight, new Effort(20, 40, Set.of(), Hazard.NONE, Who.OWNER));
    }

    public static Cause cause(String id, double weight, Effort effort) {
        return new Cause(id, id + " in words", weight, "", new Repair("mend " + id, "mend it", effort, 1));
    }

    public static Question number(String id, double sd) {
        return new Question(id, id + "?", new Number("bar", sd, 0, 0), Effort.minutes(3));
    }

    public static Question yesNo(String id, double errorRate) {
        return new Question(id, id + "?", new Choice(YES_NO, errorRate), Effort.minutes(1));
    }

    /** Libraries whose draws are given as rows, one list of rows per cause. */
    public static Library library(List<Cause> causes, List<Question> questions, float[][]... draws) {
        float[][] rows = new float[causes.size()][];
        for (int c = 0; c < rows.length; c++) {
            rows[c] = new float[draws[c].length * questions.size()];
            for (int k = 0; k < draws[c].length; k++) {
                System.arraycopy(draws[c][k], 0, rows[c], k * questions.size(), questions.size());
            }
        }
        return new Library(causes, questions, Signatures.of(questions.size(), rows));
    }

    public static Library pumpBank(int draws, long seed) {
        List<Cause> causes =
                List.of(cause("healthy", 4), cause("worn pump", 3), cause("low relief", 2), cause("blocked jet", 1));
        List<Question> questions =
                List.of(number("gauge", 0.15), number("flow", 0.1), yesNo("drips", 0.05), yesNo("noisy", 0.1));
        float[][] rows = new float[causes.size()][];
        for (int c = 0; c < causes.size(); c++) {
            rows[c] = pumpRows(c, draws, seed);
        }
        return new Library(causes, questions, Signatures.of(questions.size(), rows));
    }

    /** Latin hypercube over pump, relief, gauge and jet tolerances and the severity. */
    private static float[] pumpRows(int cause, int draws, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 31 + cause);
        double[][] u = new double[5][];
        for (int i = 0; i < u.length; i++) {
            u[i] = stratified(random, draws);
        }
        float[] rows = new float[draws * 4];
        for (int k = 0; k < draws; k++) {
            double severity = u[4][k];
            double pump = 9.5 + 0.4 * normal(u[0][k]) - (cause == 1 ? 1 + 4 * severity : 0);
            double relief = 10 + 0.35 * normal(u[1][k]) - (cause == 2 ? 1.5 + 3 * severity : 0);
            double pressure = Math.min(pump, relief);
            double jet = (1 + 0.05 * normal(u[3][k])) * (cause == 3 ? 1 - 0.3 - 0.6 * severity : 1);
            rows[k * 4] = (float) (pressure + 0.15 * normal(u[2][k]));
            rows[k * 4 + 1] = (float) (jet * Math.sqrt(pressure));
            rows[k * 4 + 2] = pump > relief ? 0 : 1;
            rows[k * 4 + 3] = pump < 7.5 ? 0 : 1;
        }
        return rows;
    }

    private static double[] stratified(SplittableRandom random, int n) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            values.add(random.nextInt(i + 1), (i + random.nextDouble()) / n);
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Quantile of the standard normal distribution by bisection. */
    public static double normal(double u) {
        double low = -8;
        double high = 8;
        for (int i = 0; i < 50; i++) {
            double z = 0.5 * (low + high);
            boolean above = wetside.diagnosis.inference.NormalProbe.below(z) > u;
            high = above ? z : high;
            low = above ? low : z;
        }
        return 0.5 * (low + high);
    }
}
