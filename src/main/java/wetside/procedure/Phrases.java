package wetside.procedure;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words that differ with the way something is done. A text says "{start brewing} and wait"; the way that is taken may say how
 * that is worded, "lift the lever"; otherwise it stands as it is. A capital at its beginning is kept.
 */
public final class Phrases {
    private static final Pattern PHRASE = Pattern.compile("\\{([^{}]+)}");

    private Phrases() {}

    /** A text in the words of a way. */
    static String said(String text, Map<String, String> words) {
        Matcher phrase = PHRASE.matcher(text);
        return phrase.replaceAll(m -> {
            String written = m.group(1);
            String plain = begun(written, false);
            String said = words.getOrDefault(plain, plain);
            return Matcher.quoteReplacement(Character.isUpperCase(written.charAt(0)) ? begun(said, true) : said);
        });
    }

    /** A text in nobody's words. */
    public static String plain(String text) {
        return said(text, Map.of());
    }

    private static String begun(String text, boolean capital) {
        String first = text.substring(0, 1);
        return (capital ? first.toUpperCase(Locale.ROOT) : first.toLowerCase(Locale.ROOT)) + text.substring(1);
    }
}
