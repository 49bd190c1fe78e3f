package wetside.diagnosis.plan;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a bit costs, about the repair needed or about the cause: two tests may tell the repair only together.
 *
 * @param ofRepair money per bit about the repair needed
 * @param ofCause money per bit about the cause
 */
record Price(double ofRepair, double ofCause) {

    /**
     * The price of the dearest bit that has to be bought, when questions are bought by what a bit costs until the cause is
     * known. A question worth less than that cannot make one wait for it. Bits that no question has, or has only dearer
     * than otherwise, are got otherwise.
     *
     * @param cost of each question
     * @param bits each question teaches now
     * @param entropy bits wanted
     * @param otherwise what a bit costs without a question: one repair tried, or a bit less handed over
     */
    static double perBit(double[] cost, double[] bits, double entropy, double otherwise) {
        int[] cheapest = IntStream.range(0, cost.length)
                .filter(i -> bits[i] > 0 && cost[i] < otherwise * bits[i])
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> cost[i] / bits[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double bought = 0;
        for (int i : cheapest) {
            bought += bits[i];
            if (bought >= entropy) {
                return cost[i] / bits[i];
            }
        }
        return otherwise;
    }
}
