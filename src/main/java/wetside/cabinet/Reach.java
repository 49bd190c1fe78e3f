package wetside.cabinet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wetside.machine.Bodies;
import wetside.machine.Machine;

/**
 * How to get at a part: panels, then what stands in the way, in the order of doing.
 *
 * @param panels to take off, the outermost first
 * @param first  parts that must come off before, the outermost first
 */
public record Reach(Fitted part, List<Machine.Panel> panels, List<Fitted> first) {
    public Reach {
        panels = List.copyOf(panels);
        first = List.copyOf(first);
    }

    /** Minutes for the panels, off and on again. */
    public double minutes() {
        return panels.stream().mapToDouble(Machine.Panel::minutes).sum();
    }

    /** One thing to do each: "right side panel off (4 min)", "lift the water tank out". */
    public List<String> steps() {
        List<String> steps = new ArrayList<>();
        for (Machine.Panel panel : panels) {
            steps.add(String.format(Locale.ROOT, "%s off (%.0f min)", panel.name(), panel.minutes()));
        }
        for (Fitted p : first) {
            boolean byHand = Bodies.liftsOut(p.component().kind());
            steps.add((byHand ? "lift the " : "take the ") + p.name() + " (" + p.number() + ") "
                    + (byHand ? "out" : "off"));
        }
        return steps;
    }

    public String words() {
        return steps().isEmpty() ? "from outside" : String.join(", then ", steps());
    }
}
