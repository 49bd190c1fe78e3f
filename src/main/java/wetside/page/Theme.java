package wetside.page;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wetside.drawing.Theme.Token;

/** The colours of the design by name, in its two themes and in print. */
public final class Theme {
    private static final Map<String, String[]> TOKENS = new LinkedHashMap<>();
    private static final Map<String, String> NAMES = new LinkedHashMap<>();
    private static final Pattern USE = Pattern.compile("var\\(--([a-z0-9-]+)\\)");
    private static final Pattern PAINT = Pattern.compile("\\b(fill|stroke|stop-color|color)=\"(#[0-9A-Fa-f]{6})\"");

    /** Grounds and tints that are off on paper. */
    private static final Set<Token> WHITE =
            EnumSet.of(Token.BENCH, Token.SHEET, Token.INSET, Token.OK_TINT, Token.CARE_TINT, Token.DANGER_TINT);

    static {
        for (Token token : Token.values()) {
            String name = token.name().toLowerCase(Locale.ROOT).replace('_', '-');
            String light = wetside.drawing.Theme.LIGHT.of(token);
            String dark = wetside.drawing.Theme.DARK.of(token);
            TOKENS.put(name, new String[] {light, dark, WHITE.contains(token) ? "#FFFFFF" : light});
            NAMES.putIfAbsent(light, name);
        }
    }

    private Theme() {}

    /** Declarations that give every name its colour in the reader's theme, and on paper. */
    public static String declarations() {
        return ":root{" + values(0) + "}\n@media (prefers-color-scheme:dark){:root{" + values(1)
                + "}}\n@media print{:root{" + values(2) + "}}\n";
    }

    private static String values(int which) {
        StringBuilder css = new StringBuilder();
        TOKENS.forEach((name, colours) ->
                css.append("--").append(name).append(':').append(colours[which]).append(';'));
        return css.toString();
    }

    /** Style with every name replaced by its colour on paper, for what knows no names. */
    static String onPaper(String css) {
        return USE.matcher(css).replaceAll(use -> Matcher.quoteReplacement(colours(use.group(1))[2]));
    }

    /** A drawing made in the light theme as it is printed: on white, tints off where the sheet has them off. */
    static String printed(String svg) {
        return PAINT.matcher(svg).replaceAll(paint -> {
            String name = NAMES.get(paint.group(2).toUpperCase(Locale.ROOT));
            return Matcher.quoteReplacement(
                    name == null ? paint.group() : paint.group(1) + "=\"" + colours(name)[2] + "\"");
        });
    }

    private static String[] colours(String name) {
        String[] colours = TOKENS.get(name);
        if (colours == null) {
            throw new IllegalStateException("no colour is called " + name);
        }
        return colours;
    }

    /** A drawing made in the light theme, so that it follows the theme of the page it stands on. */
    static String following(String svg) {
        return PAINT.matcher(svg).replaceAll(paint -> {
            String name = NAMES.get(paint.group(2).toUpperCase(Locale.ROOT));
            return Matcher.quoteReplacement(
                    name == null ? paint.group() : paint.group(1) + "=\"var(--" + name + "," + paint.group(2) + ")\"");
        });
    }
}
