package wetside.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;

/**
 * Where a machine stands, as far as somebody has said. What is known goes into the machine's supply, socket and
 * surroundings with a narrow tolerance; what is not keeps their usual values and wide ones.
 *
 * @param fedFrom how the selector at the inlet should stand, for whoever operates the machine
 * @param facts   what is known
 */
public record Installation(Optional<Feed> fedFrom, Map<Fact, Known> facts) {
    /** Nothing is known. */
    public static final Installation UNKNOWN = new Installation(Optional.empty(), Map.of());

    private static final String FED_FROM = "fed from";

    public Installation {
        facts = Map.copyOf(facts);
    }

    /** What the machine draws its water from. */
    public enum Feed {
        TANK,
        MAINS;

        /** As written in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A value in SI and how far the truth may lie from it. */
    public record Known(double si, Spread spread) {}

    /** What can be known of a place; the spread is that of somebody who looked. */
    public enum Fact {
        SUPPLY_PRESSURE("supply pressure", "water mains", "pressure", Dimension.PRESSURE, 0, 10e5, 0.2e5),
        SUPPLY_TEMPERATURE(
                "supply temperature", "water mains", "temperature", Dimension.TEMPERATURE, 273.15, 323.15, 2),
        CONDUCTIVITY(
                "water conductivity",
                "water mains, water tank",
                "conductivity",
                Dimension.CONDUCTIVITY,
                1e-5,
                1,
                20e-4),
        VOLTAGE("voltage", "socket", "voltage", Dimension.VOLTAGE, 80, 265, 4),
        ALTITUDE("altitude", "surroundings", "altitude", Dimension.LENGTH, -450, 5500, 20),
        AMBIENT("ambient", "surroundings", "temperature", Dimension.TEMPERATURE, 263.15, 328.15, 2);

        private final String words;
        private final List<String> kinds;
        private final String parameter;
        private final Dimension dimension;
        private final double min;
        private final double max;
        private final Spread looked;

        Fact(
                String words,
                String kinds,
                String parameter,
                Dimension dimension,
                double min,
                double max,
                double halfWidth) {
            this.words = words;
            this.kinds = List.of(kinds.split(", "));
            this.parameter = parameter;
            this.dimension = dimension;
            this.min = min;
            this.max = max;
            this.looked = Spread.absolute(halfWidth);
        }

        /** As written in files and, with hyphens, as an option. */
        public String words() {
            return words;
        }

        public Dimension dimension() {
            return dimension;
        }

        /**
         * What a text such as {@code 2 bar} or {@code 2 bar ± 0.5 bar} says of this.
         *
         * @throws NotAQuantity when it says nothing or nothing sensible
         */
        public Known parse(String text) {
            Amount amount = Amount.parse(text, dimension);
            if (!(amount.si() >= min && amount.si() <= max)) {
                throw new NotAQuantity(
                        "\"" + text + "\" makes no sense: " + words + " lies between "
                                + PartReader.shown(min, dimension) + " and " + PartReader.shown(max, dimension),
                        null);
            }
            return new Known(amount.si(), amount.spread() == null ? looked : amount.spread());
        }

        /** The components of a machine this is a fact about. */
        private List<Component> on(Machine machine) {
            return machine.components().stream()
                    .filter(c -> kinds.contains(c.kind().name()))
                    .filter(c -> c.kind().parameter(parameter).isPresent())
                    .toList();
        }
    }

    /** Reads the map under {@code installation} in a case; what is wrong is noted in its file. */
    public static Installation read(Node node) {
        List<String> names =
                new ArrayList<>(Arrays.stream(Fact.values()).map(Fact::words).toList());
        names.add(FED_FROM);
        node.only(names.toArray(String[]::new));
        Map<Fact, Known> facts = new EnumMap<>(Fact.class);
        for (Fact fact : Fact.values()) {
            node.find(fact.words).filter(Installation::isSaid).ifPresent(said -> {
                try {
                    facts.put(fact, fact.parse(said.text()));
                } catch (NotAQuantity e) {
                    said.problem(
                            e.getMessage(),
                            e.suggestion().map(s -> "\"" + s + "\"").orElse(""));
                }
            });
        }
        return new Installation(node.find(FED_FROM).filter(Installation::isSaid).flatMap(Installation::feed), facts);
    }

    /** "unknown" is a good answer. */
    private static boolean isSaid(Node node) {
        return !node.isText() || !node.text().equals("unknown");
    }

    private static Optional<Feed> feed(Node node) {
        String said = node.choice(Arrays.stream(Feed.values()).map(Feed::word).toList());
        return Arrays.stream(Feed.values()).filter(f -> f.word().equals(said)).findFirst();
    }

    public Installation with(Fact fact, Known known) {
        Map<Fact, Known> more = new EnumMap<>(Fact.class);
        more.putAll(facts);
        more.put(fact, known);
        return new Installation(fedFrom, more);
    }

    public Installation with(Feed feed) {
        return new Installation(Optional.of(feed), facts);
    }

    /** The machine in this place. */
    public Machine around(Machine machine) {
        Machine placed = machine;
        for (Map.Entry<Fact, Known> entry : new TreeMap<>(facts).entrySet()) {
            Fact fact = entry.getKey();
            placed = placed.withAll(fact.on(placed).stream()
                    .map(c -> told(c, fact, entry.getValue()))
                    .toList());
        }
        return placed;
    }

    private static Component told(Component c, Fact fact, Known known) {
        Parameter p = c.kind().parameter(fact.parameter).orElseThrow();
        double value = Math.max(p.min(), Math.min(p.max(), known.si()));
        return c.with(p, value).withSpread(c.kind().indexOf(p), known.spread());
    }

    /** The voltage at the socket, where somebody has said [V]. */
    public OptionalDouble voltage() {
        Known known = facts.get(Fact.VOLTAGE);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known.si());
    }

    /** What is known but says nothing about this machine, such as the supply pressure of one without a mains inlet. */
    public List<Fact> idleOn(Machine machine) {
        return facts.keySet().stream()
                .sorted()
                .filter(f -> f.on(machine).isEmpty())
                .toList();
    }
}
