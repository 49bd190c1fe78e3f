package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wetside.diagnosis.Observation;
import wetside.diagnosis.inference.Readings.Report;

/**
 * Whether a cause explains what was observed, whatever its rivals do: each observation is held against what the cause,
 * fitted to the others, makes of it.
 *
 * @param cause position of the cause
 * @param chance probability that a machine with this cause looks at least as odd
 * @param oddities every observation with its own probability of being so odd, the oddest first
 */
public record Plausibility(int cause, double chance, List<Oddity> oddities) {
    private static final double ENOUGH = 0.01;
    private static final double ODD_NUMBER = 0.01;
    /** A report that contradicts the cause keeps the reporter's error rate as its chance, so it is odd sooner. */
    private static final double ODD_REPORT = 0.1;

    /**
     * One observation under a cause.
     *
     * @param observation the observation
     * @param deviations how many standard deviations it lies off; 0 for an option
     * @param chance probability of something at least as odd
     */
    public record Oddity(Observation observation, double deviations, double chance) {}

    /** Holds the observations against a cause. */
    public static Plausibility of(Posterior posterior, int cause) {
        List<Oddity> oddities = new ArrayList<>();
        double square = 0;
        int numbers = 0;
        if (cause < posterior.somethingElse() && posterior.fit(cause).humps.length > 0) {
            Fit fit = posterior.inference().rounded(posterior.readings(), cause);
            Hump hump = likeliest(fit);
            Centre centre = hump.likeliest();
            for (int i = 0; i < hump.dims.length; i++) {
                double z = centre.dropped[i] ? alone(posterior.readings(), hump, i) : centre.surprise(i);
                oddities.add(new Oddity(posterior.readings().numbers.get(hump.dims[i]), z, Normal.beyond(z)));
                square += centre.dropped[i] ? z * z : centre.pull[i] * residual(posterior.readings(), hump, i);
                numbers++;
            }
            addReports(posterior, cause, fit, oddities);
        }
        oddities.sort(Comparator.comparingDouble(Oddity::chance));
        double worst = oddities.isEmpty() ? 1 : oddities.size() * oddities.get(0).chance;
        double together = numbers == 0 ? 1 : Normal.chiSquareBeyond(Math.max(0, square), numbers);
        return new Plausibility(cause, Math.min(1, 2 * Math.min(worst, together)), List.copyOf(oddities));
    }

    private static Hump likeliest(Fit fit) {
        int best = 0;
        for (int h = 1; h < fit.humps.length; h++) {
            best = fit.share[h] > fit.share[best] ? h : best;
        }
        return fit.humps[best];
    }

    private static double residual(Readings readings, Hump hump, int i) {
        return readings.value[hump.dims[i]] - hump.mean[i];
    }

    private static double alone(Readings readings, Hump hump, int i) {
        return residual(readings, hump, i) / Math.sqrt(hump.variance(i) + readings.variance[hump.dims[i]]);
    }

    private static void addReports(Posterior posterior, int cause, Fit fit, List<Oddity> oddities) {
        for (List<Report> group : posterior.readings().reports) {
            for (Report report : group) {
                double[] truth = fit.options(report.question());
                double chance = 0;
                double valued = 0;
                for (int t = 0; t < truth.length; t++) {
                    chance += truth[t] * report.choice().chance(report.option(), t);
                    valued += truth[t];
                }
                oddities.add(new Oddity(report.observation(), 0, chance + (1 - valued) * report.broad()));
            }
        }
    }

    /** Whether the cause can be believed on these observations at all. */
    public boolean plausible() {
        return chance >= ENOUGH;
    }

    /** The observations that do not fit, the oddest first; empty when all do. */
    public List<Oddity> odd() {
        return oddities.stream()
                .filter(o -> o.chance < (o.observation.kind() == Observation.Kind.NUMBER ? ODD_NUMBER : ODD_REPORT))
                .toList();
    }
}
