package wetside.machine;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import wetside.units.Nearest;

/** Names and sentences as messages and pages say them. */
public final class Wording {
    private static final int LONGEST_LIST = 24;

    private Wording() {}

    /** For "Maybe": the nearest of some names in quotation marks, or "". */
    public static String nearest(String said, Collection<String> names) {
        List<String> near = Nearest.all(said, names);
        return listed(near.stream().map(n -> "\"" + n + "\"").toList(), " or ");
    }

    /** As it begins a line: with a capital, unless a small letter belongs to a name of the trade (pH). */
    public static String capital(String text) {
        return text.isEmpty() || text.startsWith("pH")
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** With a capital and a full stop. */
    public static String sentence(String text) {
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0
                ? capital(text)
                : capital(text) + ".";
    }

    /** "a, b and c"; long lists are cut. */
    public static String inWords(Collection<String> names) {
        if (names.size() <= LONGEST_LIST) {
            return listed(List.copyOf(names), " and ");
        }
        List<String> shown = names.stream().limit(LONGEST_LIST).toList();
        return String.join(", ", shown) + " and " + (names.size() - LONGEST_LIST) + " more";
    }

    /** "there are a and b", "there is only a" or "there is none". */
    public static String thereAre(Collection<String> names) {
        return switch (names.size()) {
            case 0 -> "there is none";
            case 1 -> "there is only " + inWords(names);
            default -> "there are " + inWords(names);
        };
    }

    private static String listed(List<String> names, String word) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + word + names.get(last);
    }
}
