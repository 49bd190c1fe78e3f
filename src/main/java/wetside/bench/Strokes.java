package wetside.bench;

import java.util.regex.Pattern;

/** A signature as drawn: points in a box of 600 by 160. */
public final class Strokes {
    private static final Pattern FORM = Pattern.compile("(\\d{1,3},\\d{1,3}( \\d{1,3},\\d{1,3})*;?)*");

    private Strokes() {}

    static String checked(String strokes) {
        if (!FORM.matcher(strokes).matches()) {
            throw new BadForm("Signature: the strokes are damaged; draw it again, or type the name only");
        }
        return strokes;
    }

    /** As the path of a drawing. */
    public static String path(String strokes) {
        StringBuilder path = new StringBuilder();
        for (String stroke : strokes.split(";")) {
            if (!stroke.isBlank()) {
                path.append('M').append(stroke.strip().replaceFirst(" ", "L").replace(',', ' '));
            }
        }
        return path.toString();
    }
}
