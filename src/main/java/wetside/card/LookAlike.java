package wetside.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.cabinet.Cabinet;
import wetside.cabinet.Fitted;
import wetside.machine.Body;
import wetside.machine.Component;

/**
 * The part that one could be taken for: the nearest of the same kind, else the nearest of much the same shape and size
 * that is looked for from the same side.
 *
 * @param other    the other part
 * @param sameKind true when it is of the same kind
 * @param differs  how the two are told apart, one line each
 */
public record LookAlike(Fitted other, boolean sameKind, List<String> differs) {
    /** Measures within this factor look alike. */
    private static final double ALIKE = 1.9;
    /** Something of another kind is mixed up only when it is this near [m]. */
    private static final double NEAR = 0.15;
    /** Places this near are no help [m]. */
    private static final double TELLS = 0.015;

    private static final String[][] WAYS = {
        {"to the left", "to the right"}, {"further back", "further forward"}, {"lower", "higher"}
    };

    static Optional<LookAlike> of(Fitted part, Cabinet cabinet) {
        Comparator<Fitted> nearest = Comparator.comparingDouble(other -> distance(part.body(), other.body()));
        List<Fitted> others = cabinet.parts().stream().filter(o -> o != part).toList();
        Optional<Fitted> same = others.stream()
                .filter(o -> o.component().kind() == part.component().kind())
                .min(nearest);
        if (same.isPresent()) {
            return same.map(o -> new LookAlike(o, true, differs(part, o)));
        }
        return others.stream()
                .filter(o -> o.home().stream().anyMatch(part.home()::contains))
                .filter(o -> distance(part.body(), o.body()) < NEAR && alike(part.body(), o.body()))
                .min(nearest)
                .map(o -> new LookAlike(o, false, differs(part, o)));
    }

    private static double distance(Body a, Body b) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += Math.pow(a.middle(i) - b.middle(i), 2);
        }
        return Math.sqrt(sum);
    }

    private static boolean alike(Body a, Body b) {
        if (a.form() != b.form()) {
            return false;
        }
        double[] one = measures(a);
        double[] two = measures(b);
        for (int i = 0; i < 3; i++) {
            if (Math.abs(Math.log(one[i] / two[i])) > Math.log(ALIKE)) {
                return false;
            }
        }
        return true;
    }

    private static double[] measures(Body b) {
        double[] m = {b.size(0), b.size(1), b.size(2)};
        Arrays.sort(m);
        return m;
    }

    private static List<String> differs(Fitted part, Fitted other) {
        List<String> differs = new ArrayList<>();
        Component a = part.component();
        Component b = other.component();
        place(part.body(), other.body()).ifPresent(differs::add);
        if (!b.place().mark().isEmpty()) {
            differs.add("it is the " + b.place().mark().replaceFirst("^(the|a|an) ", ""));
        }
        String mine = a.place().part();
        String its = b.place().part();
        if (!mine.isEmpty() && mine.equals(its)) {
            differs.add("the same part, " + mine + ": either fits");
        } else if (!its.isEmpty()) {
            differs.add("another part, " + its);
        }
        return differs;
    }

    /** Where the other one is, as seen from the front. */
    private static Optional<String> place(Body mine, Body its) {
        List<String> ways = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double further = its.middle(i) - mine.middle(i);
            if (Math.abs(further) >= TELLS) {
                String way = WAYS[i][further > 0 ? 1 : 0];
                ways.add(String.format(Locale.ROOT, "%.0f mm %s", Math.abs(further) * 1000, way));
            }
        }
        return ways.isEmpty()
                ? Optional.empty()
                : Optional.of("it sits " + String.join(", ", ways) + ", seen from the front");
    }
}
