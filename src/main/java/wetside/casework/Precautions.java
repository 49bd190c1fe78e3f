package wetside.casework;

import java.util.Collection;
import wetside.machine.Component;
import wetside.machine.Machine;

/** What is said before hands do anything, and before current comes back. */
public final class Precautions {
    private static final String OPENING =
            "Switch off, unplug and keep the plug in sight, shut the cock, let cool, let the pressure off at steam tap, water"
                    + " tap and group until nothing comes; loosen the first joint slowly. Measure a terminal dead before it is"
                    + " touched. ";

    private static final String EDGES = "Mind sharp sheet edges.";
    private static final String CAPACITOR = "Mind the motor's capacitor, which may hold charge.";

    public static final String AFTER_OPENING =
            "If the case was open: covers back, then protective conductor and insulation by a qualified electrician before it"
                    + " gets current.";

    public static final String FIRST = "Local codes and licensed practice come first.";

    private Precautions() {}

    /** Before panels of a machine come off. */
    public static String beforeOpening(Machine machine, Collection<String> panels) {
        return OPENING + about(machine, panels, EDGES);
    }

    /** What was said, and what else is in reach once these panels are off. */
    static String about(Machine machine, Collection<String> panels, String says) {
        return reachesCapacitor(machine, panels) ? says + " " + CAPACITOR : says;
    }

    private static boolean reachesCapacitor(Machine machine, Collection<String> panels) {
        return machine.components().stream()
                .filter(c -> c.kind().parameter("capacitance left").isPresent())
                .map(Component::place)
                .anyMatch(p -> panels.containsAll(p.behind()));
    }
}
