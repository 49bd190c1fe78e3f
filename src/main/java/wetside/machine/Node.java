package wetside.machine;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;
import wetside.units.Quantity;

/**
 * A map, list or text in a file, with its place. Readers ask it for what they want; what is missing or wrong is noted and
 * a harmless value given back, so that one reading finds everything. When done, call {@link #check()} once: it throws
 * {@link BadFile} with all that was noted.
 */
public final class Node {
    private final Problems problems;
    private final Problems.Mark mark;
    private final Name name;
    private final String text;
    private final Map<String, Node> entries;
    private final List<Node> items;
    private final boolean absent;

    /**
     * What a node is called, and where its name stands. Paths are put together when somebody asks, which is when something is
     * wrong.
     *
     * @param around what it is in, null for the root
     * @param last   its own name or number
     * @param mark   of its name; null in lists
     */
    record Name(Name around, String last, Problems.Mark mark) {
        static final Name ROOT = new Name(null, "", null);

        Name inside(String child, Problems.Mark mark) {
            return new Name(this, child, mark);
        }

        /** Names from the root to here. */
        String path() {
            return around == null || around == ROOT ? last : around.path() + " / " + last;
        }
    }

    private Node(
            Problems problems,
            Problems.Mark mark,
            Name name,
            String text,
            Map<String, Node> entries,
            List<Node> items,
            boolean absent) {
        this.problems = problems;
        this.mark = mark;
        this.name = name;
        this.text = text;
        this.entries = entries;
        this.items = items;
        this.absent = absent;
    }

    static Node scalar(Problems problems, Problems.Mark mark, Name name, String text) {
        return new Node(problems, mark, name, text, null, null, false);
    }

    static Node map(Problems problems, Problems.Mark mark, Name name, Map<String, Node> entries) {
        return new Node(problems, mark, name, null, entries, null, false);
    }

    static Node list(Problems problems, Problems.Mark mark, Name name, List<Node> items) {
        return new Node(problems, mark, name, null, null, items, false);
    }

    static Node nothing(Problems problems, Problems.Mark mark, Name name) {
        return new Node(problems, mark, name, null, null, null, false);
    }

    /** Stands in for what has already been noted as missing, and keeps silent. */
    private Node standIn(String child) {
        return new Node(problems, mark, name.inside(child, name.mark), null, null, null, true);
    }

    /** The root of a file. */
    public static Node read(Path file) {
        return YamlText.read(file.toString(), TextFile.read(file));
    }

    /** The root of a text; {@code file} is what messages call it. */
    public static Node read(String file, String text) {
        return YamlText.read(file, text);
    }

    Name name() {
        return name;
    }

    public String file() {
        return problems.file();
    }

    /** Line in the file, from 1. */
    public int line() {
        return mark.line();
    }

    public int column() {
        return mark.column();
    }

    /** Names from the root to here, e.g. {@code components / brew-gauge / set}. */
    public String path() {
        return name.path();
    }

    public boolean isText() {
        return text != null;
    }

    public boolean isMap() {
        return entries != null;
    }

    public boolean isList() {
        return items != null;
    }

    boolean isNothing() {
        return text == null && entries == null && items == null;
    }

    /** Notes when this file is not of the wanted sort or of a later version: its first line says {@code sort: 1}. */
    public void header(String sort, int newest) {
        Node version = find(sort).orElse(null);
        if (version == null) {
            problems.add(mark, "", "this is no " + sort + " file: it has no line \"" + sort + ": " + newest + "\"", "");
            check();
        } else if (!version.isText() || !version.text.equals(String.valueOf(newest))) {
            version.problem("this Wetside reads version " + newest + " of " + sort + " files");
            check();
        }
    }

    /** Its text, or "" when it is none. */
    public String text() {
        if (text == null) {
            wanted("a text");
        }
        return text == null ? "" : text;
    }

    /** Its number in SI, or NaN. */
    public double quantity(Dimension dimension) {
        Amount amount = amountOf(dimension, false);
        return amount == null ? Double.NaN : amount.si();
    }

    /** Its number and tolerance, or null. */
    Amount amount(Dimension dimension) {
        return amountOf(dimension, true);
    }

    private Amount amountOf(Dimension dimension, boolean tolerance) {
        if (text == null) {
            wanted(dimension.article());
            return null;
        }
        try {
            return tolerance
                    ? Amount.parse(text, dimension)
                    : new Amount(Quantity.parse(text, dimension).si(), null);
        } catch (NotAQuantity e) {
            problem(e.getMessage(), e.suggestion().map(s -> "\"" + s + "\"").orElse(""));
            return null;
        }
    }

    /** Its items, or none when it is no list. */
    public List<Node> items() {
        if (items == null) {
            wanted("a list");
        }
        return items == null ? List.of() : items;
    }

    /** Its entries in file order, or none when it is no map. */
    public Map<String, Node> entries() {
        if (entries == null) {
            wanted("a map (name: value)");
        }
        return entries == null ? Map.of() : entries;
    }

    /** Its items as texts; a single text counts as a list of one. */
    public List<String> texts() {
        return isText() ? List.of(text) : items().stream().map(Node::text).toList();
    }

    /** Its text if it is one of these, else "" and a problem naming them. */
    public String choice(Collection<String> allowed) {
        String said = text();
        if (text == null || allowed.contains(said)) {
            return said;
        }
        problem("\"" + said + "\" is none of " + Wording.inWords(allowed), Wording.nearest(said, allowed));
        return "";
    }

    /** A month such as 2021-06, or empty. */
    public Optional<YearMonth> month() {
        if (text == null) {
            wanted("a month like 2021-06");
            return Optional.empty();
        }
        try {
            return Optional.of(YearMonth.parse(text));
        } catch (DateTimeException e) {
            problem("\"" + text + "\" is no month; a month is written like 2021-06", "");
            return Optional.empty();
        }
    }

    public boolean has(String child) {
        return entries != null && entries.containsKey(child);
    }

    /** The entry of this name, if it is there. */
    public Optional<Node> find(String child) {
        return entries == null ? Optional.empty() : Optional.ofNullable(entries.get(child));
    }

    /** The entry of this name; noted when it is missing. */
    public Node need(String child) {
        Node there = find(child).orElse(null);
        if (there == null) {
            if (isMap()) {
                problem("\"" + child + "\" is missing");
            } else {
                wanted("a map (name: value)");
            }
            return standIn(child);
        }
        return there;
    }

    public String text(String child) {
        return need(child).text();
    }

    public String text(String child, String usual) {
        return find(child).map(Node::text).orElse(usual);
    }

    public double quantity(String child, Dimension dimension) {
        return need(child).quantity(dimension);
    }

    public double quantity(String child, Dimension dimension, double usual) {
        return find(child).map(n -> n.quantity(dimension)).orElse(usual);
    }

    /** Texts of an entry that may be missing. */
    public List<String> texts(String child) {
        return find(child).map(Node::texts).orElse(List.of());
    }

    /** Items of an entry that may be missing. */
    public List<Node> items(String child) {
        return find(child).map(Node::items).orElse(List.of());
    }

    /** Entries of an entry that may be missing. */
    public Map<String, Node> entries(String child) {
        return find(child).map(Node::entries).orElse(Map.of());
    }

    public String choice(String child, Collection<String> allowed) {
        return need(child).choice(allowed);
    }

    public boolean yes(String child, boolean usual) {
        return find(child)
                .map(n -> n.choice(List.of("yes", "no")).equals("yes"))
                .orElse(usual);
    }

    /** Notes every entry that has none of these names. */
    public void only(String... names) {
        only(Arrays.asList(names), n -> false);
    }

    void only(Collection<String> names, Predicate<String> alsoFine) {
        if (entries == null) {
            entries();
            return;
        }
        entries.forEach((said, child) -> {
            if (!names.contains(said) && !alsoFine.test(said)) {
                child.unknown(
                        "\"" + said + "\" is not known here; known are " + Wording.inWords(names),
                        Wording.nearest(said, names));
            }
        });
    }

    /** Notes a problem with this value. */
    public void problem(String what) {
        problem(what, "");
    }

    /** Notes a problem with this value; {@code maybe} is what was probably meant, as it should be shown. */
    public void problem(String what, String maybe) {
        if (!absent) {
            problems.add(text == null && name.mark != null ? name.mark : mark, name.path(), what, maybe);
        }
    }

    /** Notes a problem with the name of this value rather than the value. */
    public void unknown(String what, String maybe) {
        if (!absent) {
            problems.add(name.mark == null ? mark : name.mark, name.path(), what, maybe);
        }
    }

    /** Notes a problem with a piece of this text, so that the caret stands under it. */
    public void problemAt(String piece, String what, String maybe) {
        int at = problems.line(mark.line())
                .indexOf(
                        piece,
                        Math.min(mark.column() - 1, problems.line(mark.line()).length()));
        if (at < 0 || piece.isEmpty()) {
            problem(what, maybe);
        } else {
            int column = problems.line(mark.line()).codePointCount(0, at) + 1;
            problems.add(new Problems.Mark(mark.line(), column, piece.length()), name.path(), what, maybe);
        }
    }

    public Problems problems() {
        return problems;
    }

    /** Throws {@link BadFile} with everything noted so far in this file; does nothing when all is well. */
    public void check() {
        problems.throwIfAny();
    }

    private void wanted(String article) {
        problem(isNothing() ? "nothing is written here; " + article + " is wanted" : article + " is wanted here");
    }
}
