package wetside.map;

import java.util.List;
import wetside.machine.Component;
import wetside.machine.Machine;

/**
 * What is drawn as one line between two parts.
 *
 * @param from  where it leaves, as it is meant to flow
 * @param to    where it arrives
 * @param layer what it carries
 * @param wire  a wire rather than a line
 * @param earth a protective wire
 * @param along hoses, pipes or leads it consists of
 */
public record Way(Machine.End from, Machine.End to, Layer layer, boolean wire, boolean earth, List<Component> along) {
    Way turned() {
        List<Component> back = new java.util.ArrayList<>(along);
        java.util.Collections.reverse(back);
        return new Way(to, from, layer, wire, earth, back);
    }

    boolean touches(Machine.End end) {
        return from.equals(end) || to.equals(end);
    }

    /** The end that is not the given one. */
    Machine.End other(Machine.End end) {
        return from.equals(end) ? to : from;
    }
}
