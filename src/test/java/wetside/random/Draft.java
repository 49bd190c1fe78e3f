package wetside.random;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import wetside.kind.Kinds;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.units.Dimension;
import wetside.units.Unit;

/** The text of a machine file while it is being made up: parts with values, and joins. */
final class Draft {
    final SplittableRandom random;
    private final StringBuilder parts = new StringBuilder();
    private final List<String> lines = new ArrayList<>();
    private final List<String> wires = new ArrayList<>();
    private final List<String> contacts = new ArrayList<>();
    private final List<String> linkages = new ArrayList<>();
    private final Set<String> kinds = new LinkedHashSet<>();
    private int count;

    Draft(SplittableRandom random) {
        this.random = random;
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    boolean has(String kind) {
        return kinds.contains(kind);
    }

    static boolean exists(String kind) {
        return Kinds.declarations().stream().anyMatch(d -> d.name().equals(kind));
    }

    static Declaration declaration(String kind) {
        return Kinds.declarations().stream()
                .filter(d -> d.name().equals(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no kind " + kind));
    }

    /** Adds a part; {@code said} are values such as {@code "bore: 3 mm"}. Returns its id. */
    String part(String kind, String... said) {
        kinds.add(kind);
        String id = kind.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "-" + ++count;
        parts.append("  ").append(id).append(":\n    kind: ").append(kind).append('\n');
        if (chance(0.6)) {
            parts.append(String.format(Locale.ROOT, "    at: [%d mm, %d mm, %d mm]%n", place(), place(), place()));
            if (chance(0.5)) {
                parts.append("    behind: [top]\n");
            }
        }
        Set<String> values = new LinkedHashSet<>(List.of(said));
        declaration(kind).parameters().stream()
                .filter(p -> values.stream().noneMatch(v -> v.startsWith(p.name() + ":")))
                .map(this::value)
                .filter(v -> !v.isEmpty())
                .toList()
                .forEach(values::add);
        if (!values.isEmpty()) {
            parts.append("    set: {").append(String.join(", ", values)).append("}\n");
        }
        return id;
    }

    private int place() {
        return 500 + random.nextInt(1000);
    }

    /** What must be given lies in the middle of its range, some of the rest near its usual value. */
    private String value(Parameter p) {
        double middle = Math.sqrt(Math.max(1e-12, p.min()) * p.max());
        double si = p.mustBeGiven() ? middle : p.usual() * (0.8 + 0.45 * random.nextDouble());
        boolean built = p.use() != Parameter.Use.CONDITION && p.usual() > 0 && chance(0.25);
        if (!p.mustBeGiven() && !built || wholeNumber(p)) {
            return "";
        }
        Unit unit = p.dimension().units().get(0);
        double shown = unit.fromSi(Math.max(p.min(), Math.min(p.max(), inRange(p, si))));
        return p.name() + ": "
                + String.format(Locale.ROOT, "%.5f %s", shown, unit.symbol()).trim();
    }

    /** Temperatures move by a few kelvin, not by a share of their distance from nothing. */
    private static double inRange(Parameter p, double si) {
        boolean temperature = p.dimension() == Dimension.TEMPERATURE && !p.mustBeGiven();
        return temperature ? p.usual() + (si / p.usual() - 1) * 20 : si;
    }

    private static boolean wholeNumber(Parameter p) {
        return !p.mustBeGiven()
                && (p.dimension() == Dimension.NUMBER
                        || p.dimension() == Dimension.VOLTAGE
                        || p.name().contains("start"));
    }

    /** A fitting: both ports are one node. */
    void fitting(String from, String to) {
        lines.add(from + " > " + to);
    }

    /** A pipe of some bore and length. */
    void pipe(String from, String to) {
        int length = 50 + random.nextInt(600);
        lines.add(String.format(
                Locale.ROOT,
                "{join: %s > %s, bore: %.1f mm, length: %d mm, rise: %d mm}",
                from,
                to,
                3 + 5 * random.nextDouble(),
                length,
                random.nextInt(length) - length / 2));
    }

    void wire(String from, String to) {
        wires.add(from + " > " + to);
    }

    void contact(String from, String to) {
        contacts.add(from + " ~ " + to);
    }

    void loosely(String from, String to) {
        contacts.add(String.format(
                Locale.ROOT, "{join: %s ~ %s, conductance: %.2f W/K}", from, to, 0.5 + 4 * random.nextDouble()));
    }

    void linkage(String from, String to) {
        linkages.add(from + " ~ " + to);
    }

    String text(String title) {
        return "wetside machine: 1\ntitle: " + title + "\n"
                + "case: {width: 2 m, depth: 2 m, height: 2 m}\n"
                + "panels:\n  top: {name: top, minutes: 3, caution: unplugged and cold}\n"
                + "components:\n" + parts + section("lines", lines) + section("wires", wires)
                + section("contacts", contacts) + section("linkages", linkages);
    }

    private static String section(String name, List<String> joins) {
        if (joins.isEmpty()) {
            return "";
        }
        StringBuilder all = new StringBuilder(name).append(":\n");
        joins.forEach(j -> all.append("  - ").append(j).append('\n'));
        return all.toString();
    }
}
