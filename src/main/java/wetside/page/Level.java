package wetside.page;

import java.util.Locale;

/** Who may: always shown by shape, word and colour together. */
public enum Level {
    OWNER("owner may"),
    TECHNICIAN("technician"),
    QUALIFIED("qualified electrician");

    private final String words;

    Level(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Name of the class in the style sheet. */
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The level of a word in a file: owner, technician or qualified. */
    public static Level of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
