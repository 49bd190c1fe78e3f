package wetside.machine;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ParserException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Turns YAML text into {@link Node}s. Wetside's files are plain maps, lists and texts: aliases, tags and second documents
 * are refused where they stand, so a small file cannot grow into a large one.
 */
final class YamlText {
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int DEEPEST = 20;
    private static final int MOST_CHARACTERS = 2_000_000;

    private final Problems problems;
    private final Iterator<Event> events;
    private int depth;

    private YamlText(String text, Problems problems) {
        this.problems = problems;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(problems.file())
                .setCodePointLimit(MOST_CHARACTERS)
                .setMaxAliasesForCollections(0)
                .build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    /** The root of the file; throws {@link BadFile} when the text is not YAML of this plain sort. */
    static Node read(String file, String text) {
        Problems problems = new Problems(file, text.lines().toList());
        try {
            Node root = new YamlText(text, problems).document();
            problems.throwIfAny();
            return root;
        } catch (MarkedYamlEngineException e) {
            problems.add(mark(e.getProblemMark()), "", "this is not valid YAML: " + plain(e), "");
        } catch (Refused e) {
            problems.add(e.mark, "", e.getMessage(), "");
        } catch (ReaderException e) {
            problems.add(
                    new Problems.Mark(0, 0, 0), "", "this is not a text file: there are control characters in it", "");
        } catch (YamlEngineException e) {
            problems.add(new Problems.Mark(0, 0, 0), "", "this is not valid YAML: " + firstLine(e.getMessage()), "");
        }
        throw new BadFile(problems.all());
    }

    private Node document() {
        Event event = events.next();
        while (!isContent(event)) {
            if (event.getEventId() == Event.ID.StreamEnd) {
                throw new Refused(new Problems.Mark(0, 0, 0), "the file is empty");
            }
            event = events.next();
        }
        Node root = node(event, Node.Name.ROOT);
        while (events.hasNext()) {
            Event after = events.next();
            if (after.getEventId() == Event.ID.DocumentStart) {
                throw new Refused(mark(after.getStartMark()), "a second document begins here; one file holds one");
            }
        }
        return root;
    }

    private static boolean isContent(Event event) {
        return switch (event.getEventId()) {
            case MappingStart, SequenceStart, Scalar, Alias -> true;
            default -> false;
        };
    }

    private Node node(Event event, Node.Name name) {
        refuseOddities(event);
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar, name);
        }
        if (++depth > DEEPEST) {
            throw new Refused(mark(event.getStartMark()), "this is nested more than " + DEEPEST + " deep");
        }
        Node node = event.getEventId() == Event.ID.MappingStart ? map(event, name) : list(event, name);
        depth--;
        return node;
    }

    private Node scalar(ScalarEvent scalar, Node.Name name) {
        String value = scalar.getValue();
        boolean quoted = scalar.getScalarStyle() != ScalarStyle.PLAIN;
        boolean nothing = !quoted && (value.isEmpty() || value.equals("~") || value.equals("null"));
        Problems.Mark mark = mark(scalar);
        return nothing ? Node.nothing(problems, mark, name) : Node.scalar(problems, mark, name, onOneLine(value));
    }

    /** White space of any length is one blank; looked for first, because most texts have none to change. */
    private static String onOneLine(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c < ' ' || c == ' ' && (i == 0 || i + 1 == value.length() || value.charAt(i + 1) == ' ')) {
                return SPACES.matcher(value).replaceAll(" ").strip();
            }
        }
        return value.strip();
    }

    private Node map(Event start, Node.Name name) {
        Map<String, Node> entries = new LinkedHashMap<>();
        for (Event e = events.next(); e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
            refuseOddities(e);
            if (!(e instanceof ScalarEvent key)) {
                throw new Refused(mark(e.getStartMark()), "a name is wanted here, not a list or map");
            }
            String said = key.getValue().strip();
            Node value = node(events.next(), name.inside(said, mark(key)));
            Node first = entries.putIfAbsent(said, value);
            if (first != null) {
                problems.add(
                        mark(key),
                        name.path(),
                        "\"" + said + "\" is there twice; the first is in line "
                                + first.name().mark().line(),
                        "");
            }
        }
        return Node.map(problems, mark(start.getStartMark()), name, entries);
    }

    private Node list(Event start, Node.Name name) {
        List<Node> items = new ArrayList<>();
        for (Event e = events.next(); e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
            items.add(node(e, name.inside(String.valueOf(items.size() + 1), null)));
        }
        return Node.list(problems, mark(start.getStartMark()), name, items);
    }

    private static void refuseOddities(Event event) {
        if (event instanceof AliasEvent) {
            throw new Refused(mark(event.getStartMark()), "aliases (*name) are not used here; write the values out");
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        if (tag.filter(t -> !t.equals("!")).isPresent()) {
            throw new Refused(mark(event.getStartMark()), "tags (!name) are not used here; leave it out");
        }
    }

    private static Problems.Mark mark(ScalarEvent scalar) {
        Problems.Mark start = mark(scalar.getStartMark());
        int length = scalar.getEndMark()
                .filter(end -> end.getLine() + 1 == start.line())
                .map(end -> end.getColumn() + 1 - start.column())
                .orElse(1);
        return new Problems.Mark(start.line(), start.column(), Math.max(1, length));
    }

    private static Problems.Mark mark(Optional<org.snakeyaml.engine.v2.exceptions.Mark> at) {
        return at.map(m -> new Problems.Mark(m.getLine() + 1, m.getColumn() + 1, 1))
                .orElse(new Problems.Mark(0, 0, 0));
    }

    private static String plain(MarkedYamlEngineException e) {
        String problem = firstLine(e.getProblem());
        return e instanceof ParserException && e.getContext() != null ? e.getContext() + ", " + problem : problem;
    }

    private static String firstLine(String message) {
        return message == null
                ? "it cannot be parsed"
                : message.lines().findFirst().orElse("it cannot be parsed");
    }

    /** Valid YAML that Wetside does not take. */
    private static final class Refused extends RuntimeException {
        private final transient Problems.Mark mark;

        Refused(Problems.Mark mark, String message) {
            super(message, null, false, false);
            this.mark = mark;
        }
    }
}
