package wetside.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wetside.casework.Candidate;
import wetside.casework.Casework;
import wetside.page.Level;
import wetside.shop.Entry;

/**
 * What has to be shown before a repaired machine goes home.
 *
 * @param items in the order of doing
 */
public record Proof(List<Item> items) {
    /** "passed: what" or "failed: what", with what was read behind a dash. */
    private static final Pattern ENTRY = Pattern.compile("(?s)(passed|failed): (.*?)(?: – (.*))?");

    private static final Map<String, Level> BEFORE = before();
    private static final Map<String, Level> AFTER = after();

    /**
     * @param level  who may do it
     * @param result passed, failed, "" when still to do
     * @param read   what was read, may be ""
     * @param who    did it
     */
    public record Item(String what, Level level, String result, String read, String who) {
        public boolean passed() {
            return result.equals("passed");
        }
    }

    /** What any machine is put through after it was open: common practice, no source. */
    private static Map<String, Level> before() {
        Map<String, Level> all = new LinkedHashMap<>();
        all.put("cold leak check", Level.TECHNICIAN);
        return all;
    }

    private static Map<String, Level> after() {
        Map<String, Level> all = new LinkedHashMap<>();
        all.put("hot leak check", Level.TECHNICIAN);
        all.put("protective conductor resistance", Level.QUALIFIED);
        all.put("insulation resistance", Level.QUALIFIED);
        all.put("labels and covers back, owner shown", Level.TECHNICIAN);
        return all;
    }

    /** Level and words of an entry are apart again. */
    static String words(String what, boolean passed, String read) {
        return (passed ? "passed: " : "failed: ") + what + (read.isEmpty() ? "" : " – " + read);
    }

    static Proof of(Optional<Casework> casework, String finding, List<Entry> timeline) {
        Map<String, Level> wanted = new LinkedHashMap<>(BEFORE);
        casework.flatMap(c -> cause(c, finding))
                .flatMap(Candidate::words)
                .ifPresent(w -> w.prove().forEach(p -> wanted.putIfAbsent(p, Level.TECHNICIAN)));
        AFTER.forEach(wanted::put);
        Set<Long> setAside = timeline.stream()
                .filter(e -> e.corrects() != null)
                .map(Entry::corrects)
                .collect(Collectors.toSet());
        Map<String, Item> done = new LinkedHashMap<>();
        for (Entry e : timeline) {
            Matcher m = ENTRY.matcher(e.words());
            if (e.sort().equals("proof") && !setAside.contains(e.id()) && m.matches()) {
                Level level = wanted.getOrDefault(m.group(2), Level.TECHNICIAN);
                done.put(
                        m.group(2),
                        new Item(m.group(2), level, m.group(1), m.group(3) == null ? "" : m.group(3), e.who()));
            }
        }
        List<Item> items = new ArrayList<>();
        wanted.forEach((what, level) ->
                items.add(done.containsKey(what) ? done.remove(what) : new Item(what, level, "", "", "")));
        items.addAll(done.values());
        return new Proof(items);
    }

    static Optional<Candidate> cause(Casework casework, String finding) {
        return casework.candidates().stream()
                .filter(c -> c.cause().id().equals(finding))
                .findFirst();
    }

    public long passed() {
        return items.stream().filter(Item::passed).count();
    }

    /** The first that has not passed; "" when all have. */
    public String next() {
        return items.stream()
                .filter(i -> !i.passed())
                .map(Item::what)
                .findFirst()
                .orElse("");
    }
}
