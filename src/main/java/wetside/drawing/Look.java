package wetside.drawing;

/** The design's tokens for drawings: light theme, type sizes never below 12.5. */
public final class Look {
    static final String SHEET = "#FBFCFB";
    static final String LINE = "#C9D2CD";
    static final String EDGE = "#73827A";
    static final String INK = "#16201C";
    static final String INK2 = "#46554E";
    static final String INK3 = "#5A6962";
    static final String CORE = "#7C9791";

    public static final double TITLE = 19;
    public static final double NAME = 13.5;
    public static final double LABEL = 12.5;
    /** Mean width of a character of the semi-condensed face, as a share of its size; wider fall-back faces included. */
    private static final double ADVANCE = 0.56;

    private Look() {}

    /** Width a text takes at most [px], near enough to keep labels apart. */
    public static double width(String text, double size) {
        return text.codePointCount(0, text.length()) * size * ADVANCE;
    }
}
