package wetside.judging;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What an evaluation has found so far. */
public final class Verdict {
    private static final List<String> SORTS =
            List.of("a part at fault", "a wrong setting", "wrongly installed", Jobs.TWO, Jobs.HEALTHY);

    private final List<Played> played;
    private final List<NotPlayed> notPlayed;
    private final List<Policy> policies;
    private final long seed;

    /** One job and how each policy did on it. */
    public record Played(Job job, Map<Policy, Outcome> outcomes) {}

    Verdict(List<Played> played, List<NotPlayed> notPlayed, List<Policy> policies, long seed) {
        this.played = List.copyOf(played);
        this.notPlayed = List.copyOf(notPlayed);
        this.policies = policies;
        this.seed = seed;
    }

    /** That of no job. */
    public static Verdict none(List<Policy> policies, long seed) {
        return new Verdict(List.of(), List.of(), policies, seed);
    }

    public List<Played> played() {
        return played;
    }

    /** Jobs that count for no policy, because one could not play them. */
    public List<NotPlayed> notPlayed() {
        return notPlayed;
    }

    public List<Policy> policies() {
        return policies;
    }

    private List<Outcome> outcomes(Policy policy, Predicate<Job> which) {
        return played.stream()
                .filter(p -> which.test(p.job()))
                .map(p -> p.outcomes().get(policy))
                .toList();
    }

    public Tally tally(Policy policy) {
        return Tally.of(outcomes(policy, job -> true));
    }

    /** By what was wrong, only sorts that came up. */
    public Map<String, Tally> bySort(Policy policy) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        for (String sort : SORTS) {
            List<Outcome> some = outcomes(policy, job -> job.sort().equals(sort));
            if (!some.isEmpty()) {
                tallies.put(sort, Tally.of(some));
            }
        }
        return tallies;
    }

    /**
     * Jobs our plan did badly: a false alarm at a machine with nothing wrong, or a truth that did not stand first in the end.
     */
    public List<Played> goneWrong() {
        return played.stream()
                .filter(p -> isHealthy(p.job())
                        ? p.outcomes().get(Policy.PLAN).alarm()
                        : !p.outcomes().get(Policy.PLAN).last().right())
                .toList();
    }

    private static boolean isHealthy(Job job) {
        return job.sort().equals(Jobs.HEALTHY);
    }

    /** Jobs with one cause only. */
    public Tally singles(Policy policy) {
        return Tally.of(outcomes(policy, Verdict::isSingle));
    }

    private static boolean isSingle(Job job) {
        return !isHealthy(job) && !isTwo(job);
    }

    private static boolean isTwo(Job job) {
        return job.sort().equals(Jobs.TWO);
    }

    /** Share of machines with nothing wrong at which something was done. */
    public Tally healthy(Policy policy) {
        return Tally.of(outcomes(policy, Verdict::isHealthy));
    }

    /** The same of what was believed before the last thing done. */
    public Calibration calibrationAtEnd(Policy policy) {
        return Calibration.of(
                outcomes(policy, job -> true).stream().map(Outcome::last).toList());
    }

    public Calibration calibration(Policy policy) {
        return Calibration.of(
                outcomes(policy, job -> true).stream().map(Outcome::first).toList());
    }

    /**
     * Whether two causes are thought of as often as they are there.
     *
     * @param said mean share of all pairs together when asking first gave way to doing
     * @param were share of jobs that had two
     */
    public record Two(double said, double were) {}

    /** How often two causes were thought of, and how often they were there. */
    public Two two(Policy policy) {
        double said = outcomes(policy, job -> true).stream()
                .mapToDouble(o -> o.first().two())
                .average()
                .orElse(Double.NaN);
        double were = (double) outcomes(policy, Verdict::isTwo).size() / Math.max(1, played.size());
        return new Two(said, were);
    }

    public double limit(Policy policy) {
        return calibration(policy).limit(seed);
    }

    /** The same of what was believed in the end. */
    public double limitAtEnd(Policy policy) {
        return calibrationAtEnd(policy).limit(seed);
    }

    /** Mean cost of our plan over that of another policy, over the same jobs. */
    public Interval ratio(Policy other) {
        return Interval.ratio(costs(Policy.PLAN), costs(other), seed);
    }

    private double[] costs(Policy policy) {
        return outcomes(policy, job -> true).stream().mapToDouble(Outcome::cost).toArray();
    }
}
