package wetside.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The markup of a drawing, as a browser or the PDF wants it. */
public final class Picture {
    private static final Pattern HEAD = Pattern.compile("<svg ([^>]*)>");
    private static final Pattern SIZE = Pattern.compile("\\b(width|height)=\"[0-9.]+\" ?");

    private static final Pattern STYLE = Pattern.compile(" ?style=\"[^\"]*\"");

    private Picture() {}

    /** An {@code svg} element; called by the template {@code drawing}, which trusts it. */
    public static String markup(Block.Drawing drawing, boolean paper) {
        Matcher head = HEAD.matcher(drawing.svg());
        if (!head.find()) {
            throw new IllegalArgumentException("not an svg element");
        }
        String attributes = SIZE.matcher(head.group(1)).replaceAll("");
        String alt = escaped(drawing.alt());
        String rest = drawing.svg().substring(head.end());
        if (paper) {
            return onPaper("<svg alt=\"" + alt + "\" " + attributes + ">" + rest);
        }
        return Theme.following("<svg aria-label=\"" + alt + "\" " + attributes + ">" + rest);
    }

    /** A linked drawing made in the light theme, for a page: follows its theme, is no picture but a group of links. */
    public static String onPage(String svg) {
        Matcher head = HEAD.matcher(svg);
        if (!head.find()) {
            throw new IllegalArgumentException("not an svg element");
        }
        String attributes = STYLE.matcher(head.group(1)).replaceAll("").replace("role=\"img\"", "role=\"group\"");
        String rest = svg.substring(head.end()).replaceFirst("(?s)<title>(.*?)</title>\\s*<desc>.*?</desc>", "");
        return Theme.following("<svg " + attributes + ">" + rest);
    }

    /** Labels in a face of our own whatever is installed, in the two weights there are. */
    private static String onPaper(String svg) {
        return Theme.printed(svg)
                .replaceAll(
                        "font-family=\"[^\"]*\"",
                        "font-family=\"'" + Fonts.LABELS + "','Encode Sans Ext','Wetside Signs'\"")
                .replaceAll("font-weight=\"[45]00\"", "font-weight=\"normal\"")
                .replaceAll("font-weight=\"[67]00\"", "font-weight=\"bold\"");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
