package wetside.drawing;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How wide text is in the faces that pages and drawings are set in, from the advance widths of the fonts themselves
 * (tables {@code cmap} and {@code hmtx} of OpenType). Kerning is left out: it makes text narrower, never wider.
 */
public final class Typeface {
    /** Labels and drawings, weight 500. */
    public static final Typeface LABEL = new Typeface("encode-sans-semi-condensed-500");
    /** Strong labels in drawings, weight 600. */
    public static final Typeface STRONG_LABEL = new Typeface("encode-sans-semi-condensed-600");
    /** Running text, weight 400. */
    public static final Typeface TEXT = new Typeface("encode-sans-400");
    /** Titles, weight 600. */
    public static final Typeface STRONG = new Typeface("encode-sans-600");

    /** Advance of a sign that none of the fonts has, as a share of the size. */
    private static final double UNKNOWN = 0.7;

    private static final Map<String, Map<Integer, Double>> FONTS = new ConcurrentHashMap<>();
    private final List<String> files;

    private Typeface(String file) {
        files = List.of(file, file + "-ext", "wetside-signs");
    }

    /** Width of a text, in the unit of {@code size}. */
    public double width(String text, double size) {
        return size * text.codePoints().mapToDouble(this::advance).sum();
    }

    /** True when the face, or the signs that go with it, can show every character. */
    public boolean shows(String text) {
        return text.codePoints().allMatch(c -> files.stream().anyMatch(f -> font(f).containsKey(c)));
    }

    /** Text in lines no wider than {@code width} as far as words allow. */
    public List<String> wrapped(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && width(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private double advance(int character) {
        for (String file : files) {
            Double advance = font(file).get(character);
            if (advance != null) {
                return advance;
            }
        }
        return UNKNOWN;
    }

    /** Advance of each character a font has, as a share of its size. */
    private static Map<Integer, Double> font(String file) {
        return FONTS.computeIfAbsent(file, Typeface::read);
    }

    private static Map<Integer, Double> read(String file) {
        try (InputStream in = Typeface.class.getResourceAsStream("/wetside/fonts/" + file + ".ttf")) {
            if (in == null) {
                throw new IllegalStateException("the font " + file + " is missing");
            }
            return advances(ByteBuffer.wrap(new DataInputStream(in).readAllBytes()));
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the font " + file, e);
        }
    }

    private static Map<Integer, Double> advances(ByteBuffer font) {
        int hmtx = table(font, "hmtx");
        int last = font.getChar(table(font, "hhea") + 34) - 1;
        double unitsPerEm = font.getChar(table(font, "head") + 18);
        Map<Integer, Double> advances = new HashMap<>();
        glyphs(font)
                .forEach((character, glyph) ->
                        advances.put(character, font.getChar(hmtx + 4 * Math.min(glyph, last)) / unitsPerEm));
        return advances;
    }

    private static int table(ByteBuffer font, String tag) {
        for (int i = 0; i < font.getChar(4); i++) {
            int entry = 12 + 16 * i;
            if (font.getInt(entry)
                    == ByteBuffer.wrap(tag.getBytes(java.nio.charset.StandardCharsets.US_ASCII))
                            .getInt()) {
                return font.getInt(entry + 8);
            }
        }
        throw new IllegalStateException("a font without a table " + tag);
    }

    /** Character to glyph, from a subtable of format 4, which every font for the basic plane has. */
    private static Map<Integer, Integer> glyphs(ByteBuffer font) {
        int cmap = table(font, "cmap");
        for (int i = 0; i < font.getChar(cmap + 2); i++) {
            int at = cmap + font.getInt(cmap + 8 + 8 * i);
            if (font.getChar(at) == 4) {
                return segments(font, at);
            }
        }
        throw new IllegalStateException("a font without characters of the basic plane");
    }

    private static Map<Integer, Integer> segments(ByteBuffer font, int at) {
        int size = font.getChar(at + 6);
        int ends = at + 14;
        int starts = ends + size + 2;
        int deltas = starts + size;
        int offsets = deltas + size;
        Map<Integer, Integer> glyphs = new HashMap<>();
        for (int s = 0; s < size; s += 2) {
            int offset = font.getChar(offsets + s);
            int start = font.getChar(starts + s);
            for (int c = start; c <= font.getChar(ends + s) && c < 0xFFFF; c++) {
                int raw = offset == 0 ? c : font.getChar(offsets + s + offset + 2 * (c - start));
                int glyph = raw == 0 && offset != 0 ? 0 : raw + font.getChar(deltas + s) & 0xFFFF;
                if (glyph != 0) {
                    glyphs.put(c, glyph);
                }
            }
        }
        return glyphs;
    }
}
