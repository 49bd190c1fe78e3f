package wetside.casework;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The words somebody used, so that what was meant by them can be looked for. */
public final class Heard {
    /** Words shorter than this carry no meaning here; and this much of two words must agree to be the same. */
    private static final int STEM = 4;

    private static final Set<String> EMPTY = Set.of(
            "when",
            "that",
            "this",
            "with",
            "from",
            "does",
            "have",
            "there",
            "what",
            "after",
            "before",
            "they",
            "them",
            "then",
            "into",
            "over",
            "just",
            "very",
            "like",
            "some",
            "much",
            "more",
            "only",
            "comes",
            "coming",
            "goes",
            "going",
            "doesn",
            "machine",
            "coffee",
            "while",
            "minutes",
            "minute",
            "about",
            "your",
            "broken",
            "wrong",
            "anymore",
            "again",
            "always",
            "sometimes",
            "think",
            "made",
            "make",
            "makes",
            "watch",
            "look",
            "read",
            "it's",
            "switch",
            "switched",
            "switching",
            "turn",
            "turned",
            "turning",
            "tell",
            "time",
            "something",
            "anything",
            "nothing",
            "thing");

    /** Where one clause ends and another begins. */
    private static final Pattern CLAUSES = Pattern.compile("[,.;:!?\\n]+|\\b(?:but|and|though|although|while)\\b");

    private static final Pattern WELL = Pattern.compile(
            "\\b(?:fine|ok|okay|alright|all right|normal|normally|perfect|perfectly|good|well|as (?:always|usual|ever|before))\\b");

    private static final Pattern NOT = Pattern.compile("\\b(?:not|no|never|hardly|nor)\\b|n't\\b|n’t\\b");

    private Heard() {}

    /** Words of what is complained of, without those of clauses that say that something is as it should be. */
    public static Set<String> trouble(String text) {
        Set<String> words = new LinkedHashSet<>();
        for (String clause : CLAUSES.split(text.toLowerCase(Locale.ROOT))) {
            if (!WELL.matcher(clause).find() || NOT.matcher(clause).find()) {
                words.addAll(words(clause));
            }
        }
        return words.isEmpty() ? words(text) : words;
    }

    /** Whether one is the other or begins it, and is long enough to mean something. */
    public static boolean alike(String a, String b) {
        return a.equals(b) || a.length() >= STEM && b.startsWith(a) || b.length() >= STEM && a.startsWith(b);
    }

    /** Those that carry a meaning, each once, without endings. */
    public static Set<String> words(String text) {
        Set<String> words = new LinkedHashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}']+")) {
            String bare = bare(word);
            if (bare.length() >= STEM - 1 && !EMPTY.contains(word) && !EMPTY.contains(bare)) {
                words.add(bare);
            }
        }
        return words;
    }

    /** Without the ending of a plural or a verb. */
    private static String bare(String word) {
        for (String ending : new String[] {"ing", "ed", "s"}) {
            if (word.endsWith(ending) && !word.endsWith("ss") && word.length() - ending.length() >= STEM - 1) {
                String stem = word.substring(0, word.length() - ending.length());
                int n = stem.length();
                boolean doubled = n >= STEM && stem.charAt(n - 1) == stem.charAt(n - 2);
                return doubled ? stem.substring(0, n - 1) : stem;
            }
        }
        return word;
    }
}
