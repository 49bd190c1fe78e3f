package wetside.diagnosis.plan;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What the questions still open could teach about the repair needed or the cause, and at what price.
 *
 * @param perBit money per bit, by the few cheapest questions; 0 when none teaches anything
 * @param bits what they could teach together, at most
 */
record Supply(double perBit, double bits) {
    private static final int FEW = 4;

    static Supply of(double[] cost, double[] bits) {
        int[] cheapest = IntStream.range(0, cost.length)
                .filter(i -> bits[i] > 1e-3)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> cost[i] / bits[i]))
                .limit(FEW)
                .mapToInt(Integer::intValue)
                .toArray();
        double money = IntStream.of(cheapest).mapToDouble(i -> cost[i]).sum();
        double learnt = IntStream.of(cheapest).mapToDouble(i -> bits[i]).sum();
        return new Supply(
                learnt > 0 ? money / learnt : 0,
                IntStream.range(0, bits.length).mapToDouble(i -> bits[i]).sum());
    }

    /** When one of the questions is used up. */
    Supply without(double used) {
        return new Supply(perBit, Math.max(0, bits - used));
    }

    /** Price of knowing: what cannot be asked has to be tried, at about one repair a bit. */
    double price(double entropy, double repair) {
        double asked = Math.min(entropy, bits);
        return asked * perBit + (entropy - asked) * Math.max(perBit, repair);
    }

    /** Of bits about the repair needed, and of bits about the cause: two tests may tell the repair only together. */
    record Both(Supply repair, Supply cause) {}
}
