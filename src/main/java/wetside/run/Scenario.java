package wetside.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.machine.Node;
import wetside.units.Dimension;

/**
 * A list of operator actions, machine-independent as long as it names roles.
 *
 * @param name  e.g. "warm-up"
 * @param from  scenario at whose end it begins, or empty for a cold machine as it stands
 * @param says  one line for people
 * @param steps what is done
 */
public record Scenario(String name, Optional<String> from, String says, List<Action> steps) {
    private static final String HEADER = "wetside scenario";

    /** Reads a file that holds one scenario. */
    public static Scenario read(Path file) {
        Node root = Node.read(file);
        root.header(HEADER, 1);
        root.only(HEADER, "from", "says", "steps");
        Scenario scenario = of(file.getFileName().toString(), root);
        root.check();
        return scenario;
    }

    /** Reads {@code from}, {@code says} and {@code steps}; problems are collected in the node's file. */
    public static Scenario of(String name, Node node) {
        List<Action> steps = new ArrayList<>();
        node.items("steps").forEach(step -> action(step).ifPresent(steps::add));
        return new Scenario(name, node.find("from").map(Node::text), node.text("says", name), List.copyOf(steps));
    }

    private static Optional<Action> action(Node step) {
        if (step.has("set")) {
            step.only("set", "to");
            return Optional.of(new Action.Move(step.text("set"), step.text("to")));
        }
        if (step.has("wait")) {
            step.only("wait");
            return Optional.of(new Action.Wait(step.quantity("wait", Dimension.TIME)));
        }
        if (step.has("mark")) {
            step.only("mark");
            return Optional.of(new Action.Mark(step.text("mark")));
        }
        if (step.has("until")) {
            return until(step);
        }
        step.problem("a step is one of set, wait, until, mark", "- wait: 10 s");
        return Optional.empty();
    }

    private static Optional<Action> until(Node step) {
        step.only("until", "above", "below", "is", "at most");
        for (Action.Test test : Action.Test.values()) {
            String word = test.name().toLowerCase(java.util.Locale.ROOT);
            if (step.has(word)) {
                return Optional.of(new Action.Until(
                        step.text("until"), test, step.text(word), step.quantity("at most", Dimension.TIME)));
            }
        }
        step.problem("until needs above, below or is", "above: 90 °C");
        return Optional.empty();
    }

    /** Names of handles and readings it uses. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        for (Action a : steps) {
            if (a instanceof Action.Move m) {
                names.add(m.handle());
            } else if (a instanceof Action.Until u) {
                names.add(u.reading());
            }
        }
        return names;
    }
}
