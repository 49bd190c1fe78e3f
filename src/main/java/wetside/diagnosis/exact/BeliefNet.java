package wetside.diagnosis.exact;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.diagnosis.inference.Shares;

/**
 * A belief network of things that are so or not, summed over every combination. For small networks of textbooks; twenty
 * unknowns are a million combinations.
 */
public final class BeliefNet {
    private final Map<String, Node> nodes = new LinkedHashMap<>();

    private record Node(List<Integer> parents, double[] table) {}

    /**
     * Adds something that depends on things added before.
     *
     * @param name its name
     * @param parents what it depends on
     * @param chances probability that it is so, for each combination of the parents, the first parent changing slowest,
     *     "so" before "not so"
     */
    public BeliefNet with(String name, List<String> parents, double... chances) {
        if (chances.length != 1 << parents.size()) {
            throw new IllegalArgumentException(name + " needs " + (1 << parents.size()) + " probabilities");
        }
        nodes.put(name, new Node(parents.stream().map(this::index).toList(), chances));
        return this;
    }

    /**
     * Adds something any of its parents may bring about by itself.
     *
     * <pre>P(not so) = (1 - leak) PROD over parents that are so (1 - q)</pre>
     */
    public BeliefNet withAny(String name, List<String> parents, double leak, double... q) {
        double[] chances = new double[1 << parents.size()];
        for (int row = 0; row < chances.length; row++) {
            double not = 1 - leak;
            for (int i = 0; i < q.length; i++) {
                not *= (row >> q.length - 1 - i & 1) == 0 ? 1 - q[i] : 1;
            }
            chances[row] = 1 - not;
        }
        return with(name, parents, chances);
    }

    private int index(String name) {
        int at = new ArrayList<>(nodes.keySet()).indexOf(name);
        if (at < 0) {
            throw new IllegalArgumentException("no such thing in the network: " + name);
        }
        return at;
    }

    /** Probability that something is so, given what is known of others. */
    public double chance(String name, Map<String, Boolean> known) {
        double[] both = {logSum(name, true, known), logSum(name, false, known)};
        return Shares.of(both)[0];
    }

    /** Probability of all that is known. */
    public double chance(Map<String, Boolean> known) {
        return Math.exp(logSum(null, true, known));
    }

    private double logSum(String name, boolean so, Map<String, Boolean> known) {
        List<Node> list = List.copyOf(nodes.values());
        int fixed = 0;
        int values = 0;
        for (Map.Entry<String, Boolean> entry : known.entrySet()) {
            fixed |= 1 << index(entry.getKey());
            values |= entry.getValue() ? 1 << index(entry.getKey()) : 0;
        }
        if (name != null) {
            if ((fixed & 1 << index(name)) != 0 && (values & 1 << index(name)) != 0 != so) {
                return Double.NEGATIVE_INFINITY;
            }
            fixed |= 1 << index(name);
            values = so ? values | 1 << index(name) : values & ~(1 << index(name));
        }
        List<Double> logs = new ArrayList<>();
        for (int world = 0; world < 1 << list.size(); world++) {
            if ((world & fixed) == values) {
                logs.add(log(list, world));
            }
        }
        return Shares.logSum(logs.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double log(List<Node> list, int world) {
        double log = 0;
        for (int i = 0; i < list.size(); i++) {
            int row = 0;
            for (int parent : list.get(i).parents) {
                row = row << 1 | ((world & 1 << parent) != 0 ? 0 : 1);
            }
            double so = list.get(i).table[row];
            log += Math.log((world & 1 << i) != 0 ? so : 1 - so);
        }
        return log;
    }
}
