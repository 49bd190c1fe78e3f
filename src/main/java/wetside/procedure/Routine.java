package wetside.procedure;

import java.util.List;
import java.util.Map;
import wetside.machine.Node;
import wetside.run.Scenario;

/**
 * Something done while procedures read, as it is written: one way of doing it or several, best first.
 *
 * @param says what is done, for people, whatever the way
 * @param ways never empty
 */
record Routine(String name, String says, List<Way> ways) {
    /**
     * One way of doing it.
     *
     * @param words what a phrase of procedures and routines is called here, e.g. "start brewing" to "lift the lever"
     */
    record Way(Scenario scenario, Map<String, String> words) {}

    /** @param words how brewing is worded, by the name a way calls it */
    static Routine read(String name, Node node, Map<String, Map<String, String>> words) {
        if (!node.has("ways")) {
            node.only("from", "says", "steps", "words");
            Scenario whole = Scenario.of(name, node);
            return new Routine(name, whole.says(), List.of(way(whole, node, words)));
        }
        node.only("from", "says", "ways");
        Scenario common = new Scenario(name, node.find("from").map(Node::text), node.text("says", name), List.of());
        List<Way> ways =
                node.items("ways").stream().map(n -> way(common, n, words)).toList();
        if (ways.isEmpty()) {
            node.problem("a routine needs at least one way, or steps of its own");
        }
        return new Routine(name, common.says(), ways);
    }

    /** A way begins where the routine does, unless it says otherwise. */
    private static Way way(Scenario common, Node node, Map<String, Map<String, String>> words) {
        node.only("from", "says", "steps", "words");
        Scenario own = Scenario.of(common.name(), node);
        Scenario scenario =
                new Scenario(common.name(), own.from().or(common::from), node.text("says", common.says()), own.steps());
        return new Way(scenario, node.has("words") ? words.get(node.choice("words", words.keySet())) : Map.of());
    }
}
