package wetside.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/** The faces pages are set in, from our own resources: nothing is fetched and nothing has to be installed. */
final class Fonts {
    /** A web address for fonts inside the program, for who resolves it with {@link #forPaper}. */
    static final String PROTOCOL = "font";

    private static final String EXTENDED =
            "U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1E00-1E9F,U+20A0-20AB";
    private static final String SIGNS = "Wetside Signs";
    /** The semi-condensed face under a name of its own, in the two weights that drawings on paper use. */
    static final String LABELS = "Wetside Labels";

    private static final List<Face> FACES = List.of(
            new Face("Encode Sans", 400, "encode-sans-400"),
            new Face("Encode Sans", 500, "encode-sans-500"),
            new Face("Encode Sans", 600, "encode-sans-600"),
            new Face("Encode Sans Semi Condensed", 500, "encode-sans-semi-condensed-500"),
            new Face("Encode Sans Semi Condensed", 600, "encode-sans-semi-condensed-600"));

    private Fonts() {}

    private record Face(String family, int weight, String file) {}

    /** Faces inside the style sheet, the rarer ones only where {@code text} has letters for them. */
    static String embedded(String text) {
        boolean extended = text.codePoints().anyMatch(c -> c >= 0x100 && c < 0x2000);
        boolean signs = text.codePoints().anyMatch(c -> c >= 0x370 && c < 0x400 || c >= 0x2010);
        StringBuilder css = new StringBuilder();
        for (Face face : FACES) {
            css.append(rule(face.family, face.weight, data(face.file), ""));
            if (extended) {
                css.append(rule(face.family, face.weight, data(face.file + "-ext"), "unicode-range:" + EXTENDED));
            }
        }
        return signs ? css.append(rule(SIGNS, 400, data("wetside-signs"), "")).toString() : css.toString();
    }

    /** Faces by the address {@link #forPaper} knows; each family has its letters in two files under two names. */
    static String addressed() {
        StringBuilder css = new StringBuilder();
        for (Face face : FACES) {
            css.append(rule(face.family, face.weight, address(face.file), "-fs-font-subset:subset"));
            css.append(rule(face.family + " Ext", face.weight, address(face.file + "-ext"), "-fs-font-subset:subset"));
        }
        // What draws the drawings knows two weights only.
        css.append(rule(LABELS, 400, address("encode-sans-semi-condensed-500"), "-fs-font-subset:subset"));
        css.append(rule(LABELS, 700, address("encode-sans-semi-condensed-600"), "-fs-font-subset:subset"));
        return css.append(rule(SIGNS, 400, address("wetside-signs"), "-fs-font-subset:subset"))
                .toString();
    }

    private static String rule(String family, int weight, String source, String more) {
        return "@font-face{font-family:'" + family + "';font-style:normal;font-weight:" + weight + ";src:" + source
                + ";" + more + "}\n";
    }

    private static String address(String file) {
        return "url('" + PROTOCOL + "://wetside/" + file + ".ttf')";
    }

    private static String data(String file) {
        try (InputStream in = open(file + ".woff2")) {
            return "url(data:font/woff2;base64," + Base64.getEncoder().encodeToString(in.readAllBytes())
                    + ") format('woff2')";
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the font " + file, e);
        }
    }

    /**
     * A font for paper. Its substitutions are left out: a ligature is set as one sign that no reader of a PDF could search
     * for, copy or speak.
     */
    static InputStream forPaper(String address) {
        try (InputStream in = open(address)) {
            byte[] font = in.readAllBytes();
            for (int entry = 12; entry < 12 + 16 * font[5]; entry += 16) {
                if (new String(font, entry, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                    font[entry] = 'x';
                }
            }
            return new ByteArrayInputStream(font);
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the font " + address, e);
        }
    }

    /** One of our font files; there is no other way in. */
    static InputStream open(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        InputStream in = Fonts.class.getResourceAsStream("/wetside/fonts/" + name);
        if (in == null) {
            throw new IllegalStateException("the font " + name + " is missing");
        }
        return in;
    }
}
