package wetside.page;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The colours of the design by name, in its two themes and in print. */
public final class Theme {
    private static final Map<String, String[]> TOKENS = new LinkedHashMap<>();
    private static final Map<String, String> NAMES = new LinkedHashMap<>();
    private static final Pattern USE = Pattern.compile("var\\(--([a-z0-9-]+)\\)");
    private static final Pattern PAINT = Pattern.compile("\\b(fill|stroke|stop-color|color)=\"(#[0-9A-Fa-f]{6})\"");

    static {
        // name, light, dark, print where it differs from light: tints are off on paper
        token("bench", "#E7ECE9", "#0E1412", "#FFFFFF");
        token("sheet", "#FBFCFB", "#171F1C", "#FFFFFF");
        token("inset", "#F0F4F1", "#1F2925", "#FFFFFF");
        token("line", "#C9D2CD", "#34413B");
        token("edge", "#73827A", "#7D8D85");
        token("ink", "#16201C", "#E8EEEB");
        token("ink2", "#46554E", "#B7C4BD");
        token("ink3", "#5A6962", "#9AA9A2");
        token("enamel", "#1E5A48", "#8ACDB3");
        token("enamel-on", "#FFFFFF", "#0B1E17");
        token("enamel-tint", "#DBEAE2", "#1E3A30");
        token("band", "#C3D0CD", "#34453F");
        token("core", "#7C9791", "#6F9086");
        token("water", "#1B5E9E", "#86BCF0");
        token("water-tint", "#D8E7F5", "#16304A");
        token("steam", "#86366F", "#DFA3D2");
        token("steam-tint", "#F3E0ED", "#3E2239");
        token("drain", "#625E38", "#C4BE8C");
        token("drain-tint", "#ECEADA", "#34321F");
        token("current", "#94470F", "#EBA56B");
        token("current-tint", "#F7E5D6", "#412A1A");
        token("sensing", "#46545E", "#AAB8C1");
        token("sensing-tint", "#E2E8EB", "#28333B");
        token("ok", "#24663B", "#8FD0A0");
        token("ok-tint", "#DCEFE1", "#1A3A25", "#FFFFFF");
        token("care", "#7A5000", "#EBC065");
        token("care-tint", "#FBEBC8", "#3C2F10", "#FFFFFF");
        token("danger", "#A1261B", "#FF9C8F");
        token("danger-tint", "#FBE3DF", "#48201B", "#FFFFFF");
    }

    private Theme() {}

    private static void token(String name, String light, String dark) {
        token(name, light, dark, light);
    }

    private static void token(String name, String light, String dark, String print) {
        TOKENS.put(name, new String[] {light, dark, print});
        NAMES.putIfAbsent(light, name);
    }

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
