package wetside.judging;

import java.util.List;
import java.util.Optional;
import wetside.diagnosis.Observation;

/**
 * How one policy did on one job.
 *
 * @param minutes     of the person, until fixed or handed over
 * @param cost        until fixed, what handing over costs included
 * @param questions   asked
 * @param wrongParts  repairs with a part or material that were not needed
 * @param hazard      minutes inside the machine or at live parts
 * @param handedOver  whether somebody else had to come
 * @param touched     whether anything was done to the machine other than to explain it
 * @param alarm       whether a fault was named as found, a part fitted without need, or somebody called
 * @param first       belief when asking first gave way to doing
 * @param last        belief before the last thing done
 * @param steps       the complaint, then what was asked and done, in order
 */
public record Outcome(
        double minutes,
        double cost,
        int questions,
        int wrongParts,
        double hazard,
        boolean handedOver,
        boolean touched,
        boolean alarm,
        Belief first,
        Belief last,
        List<Step> steps) {
    /**
     * Something said, asked or done, and what came of it.
     *
     * @param answer  none to a repair that mended all there was
     * @param told    what stood first then
     * @param top     its share
     * @param ofTruth share of the truth then
     */
    public record Step(String id, Optional<Observation> answer, String told, double top, double ofTruth) {}
}
