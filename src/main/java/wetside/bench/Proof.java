package wetside.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wetside.casework.Candidate;
import wetside.casework.Casework;
import wetside.diagnosis.Cause;
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

    /** Measures of protection, or at live parts, whatever repair they prove. */
    private static final Pattern ELECTRICAL =
            Pattern.compile("(?i).*(protective|insulation|voltage|residual current|current drawn).*");

    /** What any machine that was open is put through before it gets current again: common practice, no source. */
    private static final List<String> BEFORE =
            List.of("cold leak check", "protective conductor resistance", "insulation resistance");

    private static final List<String> AFTER = List.of("hot leak check", "labels and covers back, owner shown");

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

    private static Level level(String check) {
        return ELECTRICAL.matcher(check).matches() ? Level.QUALIFIED : Level.TECHNICIAN;
    }

    /** Level and words of an entry are apart again. */
    static String words(String what, boolean passed, String read) {
        return (passed ? "passed: " : "failed: ") + what + (read.isEmpty() ? "" : " – " + read);
    }

    static Proof of(Optional<Casework> casework, String finding, List<Entry> timeline) {
        Set<String> wanted = new LinkedHashSet<>(BEFORE);
        casework.stream()
                .flatMap(c -> causes(c, finding).stream())
                .flatMap(c -> c.words().stream())
                .forEach(w -> wanted.addAll(w.prove()));
        wanted.addAll(AFTER);
        Set<Long> setAside = timeline.stream()
                .filter(e -> e.corrects() != null)
                .map(Entry::corrects)
                .collect(Collectors.toSet());
        Map<String, Item> done = new LinkedHashMap<>();
        for (Entry e : timeline) {
            Matcher m = ENTRY.matcher(e.words());
            if (e.sort().equals("proof") && !setAside.contains(e.id()) && m.matches()) {
                String what = m.group(2);
                String read = m.group(3) == null ? "" : m.group(3);
                done.put(what, new Item(what, level(what), m.group(1), read, e.who()));
            }
        }
        List<Item> items = new ArrayList<>();
        wanted.forEach(what ->
                items.add(done.containsKey(what) ? done.remove(what) : new Item(what, level(what), "", "", "")));
        items.addAll(done.values());
        return new Proof(items);
    }

    /** What was found: one cause, or two at once; none when it is none of this machine's. */
    static List<Candidate> causes(Casework casework, String finding) {
        return Arrays.stream(Cause.each(finding))
                .flatMap(part -> cause(casework, part).stream())
                .toList();
    }

    static Optional<Candidate> cause(Casework casework, String finding) {
        return casework.candidates().stream()
                .filter(c -> c.cause().id().equals(finding))
                .findFirst();
    }

    public long passed() {
        return items.stream().filter(Item::passed).count();
    }

    public long failed() {
        return items.stream().filter(i -> i.result().equals("failed")).count();
    }

    /** What nobody should sign for in silence: what has failed, and what an electrician has still to prove. */
    public List<String> open() {
        return items.stream()
                .filter(i -> i.result().equals("failed") || !i.passed() && i.level() == Level.QUALIFIED)
                .map(i -> i.what() + (i.result().isEmpty() ? " not proved" : " failed"))
                .toList();
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
