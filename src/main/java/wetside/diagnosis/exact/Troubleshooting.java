package wetside.diagnosis.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A small troubleshooting problem: states of the machine with their probabilities, actions, panels, and a call that ends
 * everything at a price. Costs are expected costs until the machine is mended; panels are paid once.
 *
 * <pre>V(b) = min(C_call, min_a [ C_a(b) + SUM_k V(b after a, k) ])</pre>
 *
 * with beliefs b not normalised, so that probabilities multiply by themselves. Every action can be done once.
 */
public final class Troubleshooting {
    private final double[] prior;
    private final List<Action> actions;
    private final Map<String, Double> panelCost;
    private final double callCost;
    private final Map<String, Double> known = new HashMap<>();

    /**
     * States a problem.
     *
     * @param prior probability of each state, adding up to one
     * @param actions what can be done
     * @param panelCost cost of opening and closing each panel
     * @param callCost cost of the call, infinite when there is none
     */
    public Troubleshooting(double[] prior, List<Action> actions, Map<String, Double> panelCost, double callCost) {
        this.prior = prior.clone();
        this.actions = List.copyOf(actions);
        this.panelCost = Map.copyOf(panelCost);
        this.callCost = callCost;
    }

    private record Node(double[] belief, int done, Set<String> open, String history) {
        double mass() {
            double sum = 0;
            for (double b : belief) {
                sum += b;
            }
            return sum;
        }
    }

    private Node root() {
        return new Node(prior, 0, Set.of(), "");
    }

    private Node next(Node node, int action, int outcome) {
        Set<String> open = new HashSet<>(node.open);
        open.addAll(actions.get(action).panels());
        return new Node(
                actions.get(action).after(node.belief, outcome),
                node.done | 1 << action,
                open,
                node.history + (char) ('a' + action) + outcome);
    }

    private double cost(Node node, Action action) {
        double opening = action.panels().stream()
                .filter(panel -> !node.open.contains(panel))
                .mapToDouble(panel -> panelCost.getOrDefault(panel, 0.0))
                .sum();
        return action.expectedCost(node.belief) + node.mass() * opening;
    }

    private double call(Node node) {
        return node.mass() == 0 ? 0 : node.mass() * callCost;
    }

    /** Expected cost of doing the actions in this order until mended, and calling when none is left. */
    public double expectedCost(String... order) {
        Node node = root();
        double sum = 0;
        for (String id : order) {
            int action = index(id);
            if (actions.get(action).isQuestion()) {
                throw new IllegalArgumentException("an order of repairs cannot hold the question " + id);
            }
            sum += cost(node, actions.get(action));
            node = next(node, action, 0);
        }
        return sum + (node.mass() > 1e-12 ? call(node) : 0);
    }

    private int index(String id) {
        for (int i = 0; i < actions.size(); i++) {
            if (actions.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no action " + id);
    }

    /** Expected cost of the best plan, questions and call included. */
    public double best() {
        known.clear();
        return best(root());
    }

    private double best(Node node) {
        if (node.mass() < 1e-12) {
            return 0;
        }
        String key = key(node);
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        double least = call(node);
        for (int a = 0; a < actions.size(); a++) {
            if ((node.done & 1 << a) == 0) {
                double after = cost(node, actions.get(a));
                for (int k = 0; k < actions.get(a).outcomes(); k++) {
                    after += best(next(node, a, k));
                }
                least = Math.min(least, after);
            }
        }
        known.put(key, least);
        return least;
    }

    /** Beliefs depend on what was learnt, not on the order, unless repairs lead from fault to fault. */
    private String key(Node node) {
        boolean ordered = actions.stream().anyMatch(a -> a.leadsTo().length > 0 && anywhere(a.leadsTo()));
        if (ordered) {
            return node.history;
        }
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < node.history.length(); i += 2) {
            pairs.add(node.history.substring(i, i + 2));
        }
        pairs.sort(Comparator.naturalOrder());
        return String.join("", pairs);
    }

    private static boolean anywhere(int[] leadsTo) {
        for (int state : leadsTo) {
            if (state >= 0) {
                return true;
            }
        }
        return false;
    }

    /** The repairs by chance of mending per cost of their own, fixed at the start; ties keep the given order. */
    public List<String> byWorth() {
        return actions.stream()
                .filter(action -> !action.isQuestion())
                .sorted(Comparator.comparingDouble(action -> -worth(root(), action)))
                .map(Action::id)
                .toList();
    }

    /** Worth as the first step: the certain part of the cost counts, not what follows a bad finding. */
    private double worth(Node node, Action action) {
        double least = Double.POSITIVE_INFINITY;
        for (double c : action.cost()) {
            least = Math.min(least, c);
        }
        double opening = action.panels().stream()
                .filter(panel -> !node.open.contains(panel))
                .mapToDouble(panel -> panelCost.getOrDefault(panel, 0.0))
                .sum();
        return action.mends(node.belief) / node.mass() / (least + opening);
    }

    /** Expected cost of always doing the repair of most worth, each action charged its panels, until mended or called. */
    public double greedy() {
        return greedy(root());
    }

    private double greedy(Node node) {
        if (node.mass() < 1e-12) {
            return 0;
        }
        int best = -1;
        double most = 0;
        for (int a = 0; a < actions.size(); a++) {
            if ((node.done & 1 << a) == 0 && !actions.get(a).isQuestion()) {
                double worth = worth(node, actions.get(a));
                best = worth > most * (1 + 1e-12) ? a : best;
                most = Math.max(most, worth);
            }
        }
        return best < 0
                ? call(node)
                : Math.min(call(node), cost(node, actions.get(best)) + greedy(next(node, best, 0)));
    }

    /** Expected cost of asking this first and then mending by worth. */
    public double asking(String question) {
        return asking(root(), index(question));
    }

    private double asking(Node node, int question) {
        double sum = cost(node, actions.get(question));
        for (int k = 0; k < actions.get(question).outcomes(); k++) {
            sum += greedy(next(node, question, k));
        }
        return sum;
    }

    /** Expected cost of the policy that looks one question ahead, planning anew after every outcome. */
    public double lookingOneAhead() {
        return lookingOneAhead(root());
    }

    private double lookingOneAhead(Node node) {
        if (node.mass() < 1e-12) {
            return 0;
        }
        double least = greedy(node);
        int best = -1;
        for (int a = 0; a < actions.size(); a++) {
            if ((node.done & 1 << a) == 0 && actions.get(a).isQuestion()) {
                double asking = asking(node, a);
                best = asking < least - 1e-12 * node.mass() ? a : best;
                least = Math.min(least, asking);
            }
        }
        if (best < 0) {
            return repairing(node);
        }
        double sum = cost(node, actions.get(best));
        for (int k = 0; k < actions.get(best).outcomes(); k++) {
            sum += lookingOneAhead(next(node, best, k));
        }
        return sum;
    }

    private double repairing(Node node) {
        int best = -1;
        double most = 0;
        for (int a = 0; a < actions.size(); a++) {
            if ((node.done & 1 << a) == 0 && !actions.get(a).isQuestion() && worth(node, actions.get(a)) > most) {
                best = a;
                most = worth(node, actions.get(a));
            }
        }
        return best < 0 || call(node) <= greedy(node)
                ? call(node)
                : cost(node, actions.get(best)) + lookingOneAhead(next(node, best, 0));
    }
}
