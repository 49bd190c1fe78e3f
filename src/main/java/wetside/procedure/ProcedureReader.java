package wetside.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wetside.machine.Node;
import wetside.procedure.Procedure.Answer;
import wetside.procedure.Procedure.Hazard;
import wetside.procedure.Procedure.Sort;
import wetside.procedure.Procedure.Take;
import wetside.procedure.Procedure.Taking;
import wetside.procedure.Procedure.Who;
import wetside.procedure.Procedure.Word;
import wetside.units.Dimension;
import wetside.units.Quantity;

/** One procedure from its node. */
final class ProcedureReader {
    private ProcedureReader() {}

    static Optional<Procedure> read(String id, Node node) {
        node.only(
                "sort", "who", "says", "ask", "how", "caution", "hazard", "minutes", "tool", "inside", "during", "read",
                "answer");
        Taking taking = taking(node.need("read"));
        return Optional.of(new Procedure(
                id,
                Sort.valueOf(word(node, "sort", Sort.values())),
                Who.valueOf(word(node, "who", Who.values())),
                node.text("says"),
                node.text("ask", node.text("says")),
                node.has("how") ? node.texts("how") : List.of(),
                node.text("caution", ""),
                node.has("hazard") ? Hazard.valueOf(word(node, "hazard", Hazard.values())) : Hazard.NONE,
                node.quantity("minutes", Dimension.NUMBER),
                node.text("tool", ""),
                node.has("inside") ? node.texts("inside") : List.of(),
                node.text("during"),
                taking,
                answer(node.need("answer"))));
    }

    private static String word(Node node, String child, Enum<?>[] values) {
        List<String> words =
                Stream.of(values).map(v -> v.name().toLowerCase(Locale.ROOT)).toList();
        return node.choice(child, words).toUpperCase(Locale.ROOT);
    }

    private static Taking taking(Node node) {
        node.only("reading", "ohms between", "wires off", "take", "from", "to", "beyond", "of");
        List<String> ohms = node.has("ohms between") ? node.texts("ohms between") : List.of();
        if (ohms.isEmpty() != node.has("reading")) {
            node.problem(
                    "read needs either a reading or two terminals to measure ohms between", "reading: cup.water flow");
        }
        List<String> takes = Stream.of(Take.values())
                .map(t -> t.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
        Take take = node.has("take")
                ? Take.valueOf(
                        node.choice("take", takes).toUpperCase(Locale.ROOT).replace(' ', '_'))
                : Take.LAST;
        double beyond = node.has("beyond") ? any(node.need("beyond")) : 0;
        return new Taking(
                node.find("reading").map(Node::text),
                ohms,
                node.yes("wires off", false),
                take,
                node.text("from", ""),
                node.text("to", ""),
                beyond,
                node.text("of", ""),
                node.text("reading", ""));
    }

    private static Answer answer(Node node) {
        node.only("words", "error", "relative", "mistaken");
        List<Word> words = new ArrayList<>();
        if (node.has("words")) {
            node.entries("words").forEach((w, from) -> words.add(new Word(w, any(from))));
        }
        for (int i = 1; i < words.size(); i++) {
            if (words.get(i).from() <= words.get(i - 1).from()) {
                node.problem(
                        "words must stand in rising order: '" + words.get(i).word() + "' does not", "");
            }
        }
        return new Answer(
                List.copyOf(words),
                node.has("error") ? any(node.need("error")) : 0,
                node.has("relative") ? node.quantity("relative", Dimension.RATIO) : 0,
                node.has("mistaken") ? node.quantity("mistaken", Dimension.RATIO) : 0.05);
    }

    /** A quantity of whatever dimension its unit says; a plain number stays one. */
    private static double any(Node node) {
        String text = node.text();
        Optional<Quantity> quantity = Quantity.parseAny(text);
        if (quantity.isEmpty()) {
            node.problem("'" + text + "' is no quantity", "0.05 g/s");
        }
        return quantity.map(Quantity::si).orElse(0.0);
    }
}
