package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;

/** What was done to a run by hand and what happened in it, in order. */
final class Logbook {
    private static final int MOST_EVENTS = 500;

    private final List<Event> events = new ArrayList<>();
    private final List<Moved> moves = new CopyOnWriteArrayList<>();

    /** Something that happened [s]. */
    record Event(double time, String words) {}

    private record Moved(double time, String handle, String value) {}

    void say(double time, String words) {
        events.add(new Event(time, words));
        if (events.size() > MOST_EVENTS) {
            events.remove(0);
        }
    }

    void moved(double time, String handle, String value) {
        moves.add(new Moved(time, handle, value));
    }

    void clear() {
        events.clear();
        moves.clear();
    }

    List<Event> events() {
        return List.copyOf(events);
    }

    /**
     * What was done so far, as a scenario file: the command line and the page can do it again.
     *
     * @param title  of the machine
     * @param broken faults as the command line takes them
     * @param until  how long the run has gone [s]
     */
    String scenario(String title, List<String> broken, double until) {
        StringBuilder yaml = new StringBuilder("wetside scenario: 1\n");
        yaml.append("# ").append(title).append('\n');
        broken.forEach(b -> yaml.append("# broken: --break \"").append(b).append("\"\n"));
        yaml.append("says: \"as done by hand on the bench\"\nsteps:\n");
        double at = 0;
        for (Moved m : List.copyOf(moves)) {
            wait(yaml, m.time() - at);
            at = m.time();
            yaml.append("  - {set: \"")
                    .append(m.handle())
                    .append("\", to: \"")
                    .append(m.value())
                    .append("\"}\n");
        }
        wait(yaml, until - at);
        yaml.append("  - mark: end\n");
        return yaml.toString();
    }

    private static void wait(StringBuilder yaml, double seconds) {
        if (seconds > 0.05) {
            yaml.append(String.format(Locale.ROOT, "  - wait: %.1f s\n", seconds));
        }
    }
}
