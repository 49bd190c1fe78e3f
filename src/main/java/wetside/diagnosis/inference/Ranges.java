package wetside.diagnosis.inference;

import java.util.Arrays;
import java.util.SplittableRandom;

/** How much the shares would move with other draws: the draws of each cause are resampled, the same way every time. */
public final class Ranges {
    private static final int TIMES = 40;
    private static final double NEGLIGIBLE = 1e-4;

    private final double[][] shares;

    /** Lower and upper end of a share. */
    public record Range(double low, double high) {}

    Ranges(Posterior posterior) {
        int causes = posterior.somethingElse();
        double[][] logs = new double[TIMES][causes + 1];
        for (int c = 0; c <= causes; c++) {
            boolean vary = c < causes
                    && posterior.share(c) > NEGLIGIBLE
                    && posterior.fit(c).draws() > 1;
            double[] again = vary ? resampled(posterior, c) : new double[TIMES];
            for (int t = 0; t < TIMES; t++) {
                logs[t][c] = posterior.logWeight(c) + again[t];
            }
        }
        shares = new double[causes + 1][TIMES];
        for (int t = 0; t < TIMES; t++) {
            double[] once = Shares.of(logs[t]);
            for (int c = 0; c <= causes; c++) {
                shares[c][t] = once[c];
            }
        }
        for (double[] share : shares) {
            Arrays.sort(share);
        }
    }

    private static double[] resampled(Posterior posterior, int cause) {
        Fit fit = posterior.fit(cause);
        SplittableRandom random = new SplittableRandom(31L * cause + fit.draws());
        double[] change = new double[TIMES];
        for (int t = 0; t < TIMES; t++) {
            double[] counts = new double[fit.draws()];
            for (int k = 0; k < counts.length; k++) {
                counts[random.nextInt(counts.length)]++;
            }
            change[t] = fit.logRecounted(counts) - fit.logLikelihood;
        }
        return change;
    }

    Range of(int cause) {
        return new Range(shares[cause][TIMES / 20], shares[cause][TIMES - 1 - TIMES / 20]);
    }
}
