package wetside.judging;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Means over some jobs of one policy.
 *
 * @param n          jobs
 * @param toldFirst  share where a hidden cause stood first when asking gave way to doing
 * @param first      share where it stood first before the last thing done
 * @param three      share where it stood among the first three then
 * @param repair     share where the first thing named when doing began asks for the repair that was needed
 * @param minutes    of the person
 * @param cost       until fixed
 * @param questions  asked
 * @param wrongParts fitted without need
 * @param hazard     minutes inside or at live parts
 * @param handedOver share handed over
 * @param brier      of the belief when doing began, 0 to 2
 * @param log        minus the natural log of the share of the truth then
 * @param covered    share whose truth lay among the causes that held 90 % then
 * @param touched    share where something was done to the machine, or somebody called to it
 * @param alarm      share where a fault was named as found, a part fitted without need, or somebody called
 */
public record Tally(
        int n,
        double toldFirst,
        double first,
        double three,
        double repair,
        double minutes,
        double cost,
        double questions,
        double wrongParts,
        double hazard,
        double handedOver,
        double brier,
        double log,
        double covered,
        double touched,
        double alarm) {
    /** A cause given no share at all is not infinitely wrong: that would drown everything else [nat]. */
    private static final double MOST = 20;

    static Tally of(List<Outcome> all) {
        return new Tally(
                all.size(),
                share(all, o -> o.first().right()),
                share(all, o -> o.last().right()),
                share(all, o -> o.last().rank() <= 3),
                share(all, o -> o.first().repair()),
                mean(all, Outcome::minutes),
                mean(all, Outcome::cost),
                mean(all, Outcome::questions),
                mean(all, Outcome::wrongParts),
                mean(all, Outcome::hazard),
                share(all, Outcome::handedOver),
                mean(all, o -> o.first().brier()),
                mean(all, o -> Math.min(MOST, -Math.log(o.first().ofTruth()))),
                share(all, o -> o.first().covered()),
                share(all, Outcome::touched),
                share(all, Outcome::alarm));
    }

    private static double mean(List<Outcome> all, ToDoubleFunction<Outcome> of) {
        return all.stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    private static double share(List<Outcome> all, Predicate<Outcome> is) {
        return mean(all, o -> is.test(o) ? 1 : 0);
    }
}
