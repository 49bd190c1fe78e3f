package wetside.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.drawing.PartNumbers;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;

/** How far the parts of a map move when the machine changes a little. */
final class Stability {
    private Stability() {}

    /** Parts that end a line: taken away one at a time, they make all the small changes a file can have. */
    static List<String> leaves(Machine machine) {
        return machine.components().stream()
                .filter(c -> c.kind().ports().stream()
                                .filter(p -> p.medium() == Medium.FLUID)
                                .count()
                        == 1)
                .filter(c -> c.kind().ports().stream().allMatch(p -> p.medium() == Medium.FLUID))
                .map(Component::id)
                .toList();
    }

    static Machine without(Machine machine, String id) {
        List<Component> left =
                machine.components().stream().filter(c -> !c.id().equals(id)).toList();
        Machine.Joins j = machine.joins();
        return new Machine(
                machine.identity(),
                left,
                new Machine.Joins(
                        j.lines().stream()
                                .filter(l -> !l.from().component().equals(id)
                                        && !l.to().component().equals(id))
                                .toList(),
                        j.wires(),
                        j.contacts(),
                        j.linkages()));
    }

    /** Shift of each part between two maps, the common shift of all taken off, as shares of the width. */
    static double[] moves(Machine before, Machine after, Set<Layer> layers) {
        PartNumbers numbers = PartNumbers.of(before);
        Sheet a = MachineMap.of(before, numbers, layers).sheet();
        Sheet b = MachineMap.of(after, numbers, layers).sheet();
        Map<String, double[]> old = a.places();
        List<Double> dx = new ArrayList<>();
        List<Double> dy = new ArrayList<>();
        b.places().forEach((id, p) -> {
            if (old.containsKey(id)) {
                dx.add(p[0] - old.get(id)[0]);
                dy.add(p[1] - old.get(id)[1]);
            }
        });
        double mx = median(dx);
        double my = median(dy);
        double[] moves = new double[dx.size()];
        for (int i = 0; i < moves.length; i++) {
            moves[i] = Math.hypot(dx.get(i) - mx, dy.get(i) - my) / a.width();
        }
        Arrays.sort(moves);
        return moves;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.isEmpty() ? 0 : sorted.get(sorted.size() / 2);
    }
}
