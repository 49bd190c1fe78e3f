package wetside.diagnosis.exact;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import wetside.diagnosis.inference.Shares;

/**
 * Diagnoses with their probabilities, and where to probe next: the place whose value is expected to leave the least
 * entropy.
 *
 * <pre>$ = SUM_v P(v) ln P(v) + p(U) ln p(U) - n p(U)/m ln(p(U)/m),   P(v) = p(S_v) + p(U)/m</pre>
 *
 * S_v are the diagnoses that predict value v, U those that predict none, m the number of values a place can have, n the
 * number of predicted values. The least $ wins; entropy now plus $ is the entropy expected.
 */
public final class Probes {
    private final Map<Set<String>, Double> shares;

    /** Shares of diagnoses by prior chances of their parts, each set of bad parts weighed alike otherwise. */
    public Probes(Set<Set<String>> diagnoses, Set<String> parts, double chanceOfBad) {
        List<Set<String>> sets = List.copyOf(diagnoses);
        double[] logs = sets.stream()
                .mapToDouble(set ->
                        set.size() * Math.log(chanceOfBad) + (parts.size() - set.size()) * Math.log1p(-chanceOfBad))
                .toArray();
        double[] normalised = Shares.of(logs);
        shares = new LinkedHashMap<>();
        for (int i = 0; i < normalised.length; i++) {
            shares.put(sets.get(i), normalised[i]);
        }
    }

    public double share(Set<String> diagnosis) {
        return shares.getOrDefault(diagnosis, 0.0);
    }

    /** Probability that a part is bad. */
    public double bad(String part) {
        return shares.entrySet().stream()
                .filter(entry -> entry.getKey().contains(part))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /** Entropy of the diagnoses [nat]. */
    public double entropy() {
        return Shares.bits(shares.values().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray())
                * Math.log(2);
    }

    /** What a diagnosis predicts at one place: a value, or nothing. */
    public interface Place {
        OptionalInt predicted(Set<String> diagnosis);
    }

    /** Share of the diagnoses that predict a value; of those that predict none when the value is empty. */
    public double predicting(Place place, OptionalInt value) {
        return shares.entrySet().stream()
                .filter(entry -> place.predicted(entry.getKey()).equals(value))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /** The score of a place whose value is one of {@code values}; the least wins. */
    public double score(Place place, int values) {
        int[] predicted = shares.keySet().stream()
                .map(place::predicted)
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt)
                .distinct()
                .toArray();
        double open = predicting(place, OptionalInt.empty());
        double sum = open > 0 ? open * Math.log(open) - predicted.length * open / values * Math.log(open / values) : 0;
        for (int value : predicted) {
            double chance = predicting(place, OptionalInt.of(value)) + open / values;
            sum += chance * Math.log(chance);
        }
        return sum;
    }
}
