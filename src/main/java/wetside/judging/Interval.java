package wetside.judging;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * A figure with the interval that holds it in 95 of 100 evaluations of as many jobs.
 *
 * @param value the figure
 * @param low   lower end
 * @param high  upper end
 */
public record Interval(double value, double low, double high) {
    private static final int ROUNDS = 2000;

    /** Ratio of two means over the same jobs, by drawing jobs with replacement: paired, so what all find hard drops out. */
    public static Interval ratio(double[] ours, double[] theirs, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] ratios = new double[ROUNDS];
        for (int r = 0; r < ROUNDS; r++) {
            double a = 0;
            double b = 0;
            for (int i = 0; i < ours.length; i++) {
                int job = random.nextInt(ours.length);
                a += ours[job];
                b += theirs[job];
            }
            ratios[r] = a / b;
        }
        Arrays.sort(ratios);
        double value = Arrays.stream(ours).sum() / Arrays.stream(theirs).sum();
        return new Interval(value, ratios[(int) (0.025 * ROUNDS)], ratios[(int) (0.975 * ROUNDS)]);
    }
}
