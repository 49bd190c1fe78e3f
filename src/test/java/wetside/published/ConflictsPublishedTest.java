package wetside.published;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.diagnosis.exact.Conflicts;
import wetside.diagnosis.exact.Probes;

class ConflictsPublishedTest {
    private static final String POLYBOX =
            "three multipliers and two adders, de Kleer and Williams 1987 (setup; sets and"
                    + " figures derived again by a separate program)";
    private static final String ADDER = "full adder, Reiter 1987 (from memory, derived again by a separate program)";
    private static final String C17 = "ISCAS-85 c17, six NAND gates; sets by a separate program over all sets";
    private static final Tolerance SIX = Tolerance.absolute(5e-7);

    @RegisterExtension
    static final Published published = Published.topic("Diagnoses from conflicts");

    // ---- the polybox

    private static final List<String> BOX = List.of("A1", "A2", "M1", "M2", "M3");

    /** Values at X, Y, Z from the parts that are well and what is known; empty when they contradict each other. */
    private static Map<String, Integer> polybox(Set<String> well, Map<String, Integer> known) {
        Map<String, Integer> at = new HashMap<>(known);
        boolean fits = !well.contains("M1") || put(at, "X", 6);
        fits &= !well.contains("M2") || put(at, "Y", 6);
        fits &= !well.contains("M3") || put(at, "Z", 6);
        for (int i = 0; i < 3; i++) {
            fits &= !well.contains("A1") || sum(at, "X", "Y", 10);
            fits &= !well.contains("A2") || sum(at, "Y", "Z", 12);
        }
        return fits ? at : Map.of("impossible", 0);
    }

    private static boolean put(Map<String, Integer> at, String place, int value) {
        return at.merge(place, value, (old, now) -> old) == value;
    }

    private static boolean sum(Map<String, Integer> at, String one, String other, int sum) {
        if (at.containsKey(one)) {
            return put(at, other, sum - at.get(one));
        }
        return !at.containsKey(other) || put(at, one, sum - at.get(other));
    }

    private static Predicate<Set<String>> polyboxPossible(Map<String, Integer> known) {
        return well -> !polybox(well, known).containsKey("impossible");
    }

    private static Set<Set<String>> consistent(Map<String, Integer> known) {
        Set<Set<String>> sets = new LinkedHashSet<>();
        for (int bits = 0; bits < 32; bits++) {
            Set<String> bad = new TreeSet<>();
            Set<String> well = new TreeSet<>();
            for (int i = 0; i < 5; i++) {
                ((bits & 1 << i) != 0 ? bad : well).add(BOX.get(i));
            }
            if (polyboxPossible(known).test(well)) {
                sets.add(bad);
            }
        }
        return sets;
    }

    private static Probes probes(Map<String, Integer> known) {
        return new Probes(consistent(known), Set.copyOf(BOX), 0.01);
    }

    private static Probes.Place place(String name) {
        return bad -> {
            Set<String> well = new TreeSet<>(BOX);
            well.removeAll(bad);
            Integer value = polybox(well, Map.of()).get(name);
            return value == null ? OptionalInt.empty() : OptionalInt.of(value);
        };
    }

    @Test
    void polyboxSets() {
        Conflicts box = Conflicts.of(BOX, polyboxPossible(Map.of()));
        published.same("minimal conflicts", POLYBOX, "{A1,A2,M1,M3} {A1,M1,M2}", words(box.conflicts()));
        published.same("minimal diagnoses", POLYBOX, "{A1} {A2,M2} {M1} {M2,M3}", words(box.diagnoses()));
        published.check(
                "sets that may be bad, of 32",
                POLYBOX,
                27,
                consistent(Map.of()).size(),
                Tolerance.absolute(0),
                "a count");
    }

    @Test
    void polyboxShares() {
        Probes probes = probes(Map.of());
        check("share of A1 alone", 0.478026, probes.share(Set.of("A1")));
        check("share of M1 alone", 0.478026, probes.share(Set.of("M1")));
        check("share of each pair", 0.004829, probes.share(Set.of("A2", "M2")));
        check("A1 is bad", 0.497635, probes.bad("A1"));
        check("M2 is bad", 0.019609, probes.bad("M2"));
        check("M3 is bad", 0.014780, probes.bad("M3"));
        check("entropy [nat]", 0.942296, probes.entropy());
    }

    @Test
    void polyboxProbes() {
        Probes probes = probes(Map.of());
        check("X reads 6", 0.502365, probes.predicting(place("X"), OptionalInt.of(6)));
        check("X reads 4", 0.492561, probes.predicting(place("X"), OptionalInt.of(4)));
        check("X is not predicted", 0.005074, probes.predicting(place("X"), OptionalInt.empty()));
        check("score of X [nat]", -0.716152, probes.score(place("X"), 16));
        check("score of Y [nat]", -0.056276, probes.score(place("Y"), 16));
        check("score of Z [nat]", -0.032567, probes.score(place("Z"), 16));
        check("M1 alone after X = 4", 0.960596, probes(Map.of("X", 4)).share(Set.of("M1")));
        check("A1 alone after X = 6", 0.942037, probes(Map.of("X", 6)).share(Set.of("A1")));
        published.same(
                "conflicts after X = 6",
                POLYBOX,
                "{A1,A2,M3} {A1,M2}",
                words(Conflicts.of(BOX, polyboxPossible(Map.of("X", 6))).conflicts()));
    }

    private static void check(String quantity, double expected, double computed) {
        published.check(quantity, POLYBOX, expected, computed, SIX, "printed digits");
    }

    // ---- logic circuits

    /** Gates in the order of the signal; a bad gate may put out anything. */
    private record Gate(String kind, String one, String other) {
        boolean out(boolean a, boolean b) {
            return switch (kind) {
                case "and" -> a && b;
                case "or" -> a || b;
                case "xor" -> a ^ b;
                default -> !(a && b);
            };
        }
    }

    private static boolean possible(
            Map<String, Gate> gates, Map<String, Boolean> inputs, Map<String, Boolean> observed, Set<String> well) {
        List<String> free =
                gates.keySet().stream().filter(gate -> !well.contains(gate)).toList();
        for (int bits = 0; bits < 1 << free.size(); bits++) {
            Map<String, Boolean> at = new HashMap<>(inputs);
            for (Map.Entry<String, Gate> gate : gates.entrySet()) {
                int index = free.indexOf(gate.getKey());
                Gate made = gate.getValue();
                boolean out =
                        index >= 0 ? (bits & 1 << index) != 0 : made.out(at.get(made.one()), at.get(made.other()));
                at.put(gate.getKey(), out);
            }
            if (observed.entrySet().stream().allMatch(o -> at.get(o.getKey()).equals(o.getValue()))) {
                return true;
            }
        }
        return false;
    }

    private static String diagnoses(
            Map<String, Gate> gates, Map<String, Boolean> inputs, Map<String, Boolean> observed) {
        return words(Conflicts.of(gates.keySet(), well -> possible(gates, inputs, observed, well))
                .diagnoses());
    }

    private static String words(Set<Set<String>> sets) {
        return sets.stream()
                .map(set -> "{" + String.join(",", new TreeSet<>(set)) + "}")
                .sorted()
                .collect(Collectors.joining(" "));
    }

    @Test
    void fullAdder() {
        Map<String, Gate> gates = new LinkedHashMap<>();
        gates.put("X1", new Gate("xor", "a", "b"));
        gates.put("X2", new Gate("xor", "X1", "c"));
        gates.put("A1", new Gate("and", "a", "b"));
        gates.put("A2", new Gate("and", "X1", "c"));
        gates.put("O1", new Gate("or", "A1", "A2"));
        Map<String, Boolean> inputs = Map.of("a", true, "b", false, "c", true);
        published.same(
                "diagnoses", ADDER, "{A2,X2} {O1,X2} {X1}", diagnoses(gates, inputs, Map.of("X2", true, "O1", false)));
    }

    private static Map<String, Gate> c17() {
        Map<String, Gate> gates = new LinkedHashMap<>();
        gates.put("G10", new Gate("nand", "1", "3"));
        gates.put("G11", new Gate("nand", "3", "6"));
        gates.put("G16", new Gate("nand", "2", "G11"));
        gates.put("G19", new Gate("nand", "G11", "7"));
        gates.put("G22", new Gate("nand", "G10", "G16"));
        gates.put("G23", new Gate("nand", "G16", "G19"));
        return gates;
    }

    private static String c17(boolean inputs, boolean flip22, boolean flip23) {
        Map<String, Boolean> in = new HashMap<>();
        List.of("1", "2", "3", "6", "7").forEach(name -> in.put(name, inputs));
        boolean g22 = inputs;
        boolean g23 = false;
        return diagnoses(c17(), in, Map.of("G22", g22 ^ flip22, "G23", g23 ^ flip23));
    }

    @Test
    void c17Circuit() {
        published.same("all inputs 1, output 22 wrong", C17, "{G10} {G22}", c17(true, true, false));
        published.same(
                "all inputs 1, both outputs wrong",
                C17,
                "{G10,G11,G16} {G10,G19} {G10,G23} {G11,G22} {G16,G22} {G19,G22} {G22,G23}",
                c17(true, true, true));
        published.same(
                "all inputs 0, both outputs wrong",
                C17,
                "{G10,G19} {G10,G23} {G16} {G19,G22} {G22,G23}",
                c17(false, true, true));
    }
}
