package wetside.casework;

import java.util.List;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Signatures;
import wetside.procedure.Trial;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;
import wetside.units.Quantity;

/** Answers as people give them, made into observations, or told what would be right. */
public final class Answers {
    /** Words that mean nobody knows. */
    public static final List<String> UNKNOWN = List.of("don't know", "dont know", "unknown", "can't reach", "?");

    private Answers() {}

    /** Not an answer to what was asked. */
    public static final class NotAnAnswer extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotAnAnswer(String message) {
            super(message);
        }
    }

    /** @throws NotAnAnswer with what would be one */
    public static Observation parse(Asking asking, String said) {
        String id = asking.question().id();
        String text = said.strip();
        if (UNKNOWN.contains(text.toLowerCase(java.util.Locale.ROOT))) {
            return Observation.unknown(id);
        }
        if (asking.question().answering() instanceof Answering.Choice choice) {
            int i = option(choice.options(), text);
            if (i < 0) {
                throw new NotAnAnswer("\"" + text + "\" is no answer to \"" + id + "\"; it is answered by "
                        + String.join(", ", choice.options()) + ", or don't know");
            }
            return Observation.choice(id, i);
        }
        return Observation.number(id, asking.kept(number(asking, text)));
    }

    private static int option(List<String> options, String text) {
        int exact = options.indexOf(text);
        if (exact >= 0) {
            return exact;
        }
        List<Integer> begins = java.util.stream.IntStream.range(0, options.size())
                .filter(i -> options.get(i)
                        .toLowerCase(java.util.Locale.ROOT)
                        .startsWith(text.toLowerCase(java.util.Locale.ROOT)))
                .boxed()
                .toList();
        return begins.size() == 1 && !text.isEmpty() ? begins.get(0) : -1;
    }

    private static double number(Asking asking, String text) {
        if (asking.dimension() == Dimension.RESISTANCE && text.equalsIgnoreCase("open")) {
            return Trial.OPEN;
        }
        try {
            return Quantity.parse(text, asking.dimension()).si();
        } catch (NotAQuantity e) {
            throw new NotAnAnswer("\"" + asking.question().id() + "\": " + e.getMessage()
                    + e.suggestion().map(s -> ". Maybe \"" + s + "\"").orElse(""));
        }
    }

    /**
     * Whether any cause, however bad, makes the twin read anything near a number; a reading far outside all of them is a slip
     * of the pen, or another instrument.
     *
     * @throws NotAnAnswer when it is out of any sense
     */
    public static void sensible(Asking asking, Observation observation, Library library) {
        if (observation.kind() != Observation.Kind.NUMBER) {
            return;
        }
        Signatures s = library.signatures();
        int q = library.question(asking.question().id());
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < s.causes(); c++) {
            for (int k = 0; k < s.draws(c); k++) {
                float v = s.value(c, k, q);
                low = v < low ? v : low;
                high = v > high ? v : high;
            }
        }
        double sd = Math.sqrt(((Answering.Number) asking.question().answering()).variance(high));
        double room = 0.5 * (high - low) + 10 * sd;
        if (high >= low && (observation.value() < low - room || observation.value() > high + room)) {
            throw new NotAnAnswer("\"" + asking.question().id() + "\" cannot be "
                    + print(asking, observation.value()) + ": whatever is wrong with this machine, it reads between "
                    + print(asking, low) + " and " + print(asking, high));
        }
    }

    private static String print(Asking asking, double kept) {
        return wetside.units.Display.METRIC.print(asking.si(kept), asking.dimension());
    }

    /** An observation as people read it. */
    public static String words(Asking asking, Observation o) {
        return switch (o.kind()) {
            case NUMBER ->
                asking.si(o.value()) >= Trial.OPEN * 0.99 && asking.dimension() == Dimension.RESISTANCE
                        ? "open"
                        : print(asking, o.value());
            case CHOICE ->
                ((Answering.Choice) asking.question().answering()).options().get(o.option());
            case UNKNOWN -> "don't know";
            case STILL_BAD -> "done, still there";
        };
    }
}
