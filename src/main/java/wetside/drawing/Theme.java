package wetside.drawing;

/** Colours of drawings and pages on light paper and on a dark screen; each pair was checked for contrast. */
public enum Theme {
    LIGHT,
    DARK;

    /** What a colour is for. */
    public enum Token {
        BENCH("#E7ECE9", "#0E1412"),
        SHEET("#FBFCFB", "#171F1C"),
        INSET("#F0F4F1", "#1F2925"),
        LINE("#C9D2CD", "#34413B"),
        EDGE("#73827A", "#7D8D85"),
        INK("#16201C", "#E8EEEB"),
        INK2("#46554E", "#B7C4BD"),
        INK3("#5A6962", "#9AA9A2"),
        ENAMEL("#1E5A48", "#8ACDB3"),
        ENAMEL_ON("#FFFFFF", "#0B1E17"),
        ENAMEL_TINT("#DBEAE2", "#1E3A30"),
        BAND("#C3D0CD", "#34453F"),
        CORE("#7C9791", "#6F9086"),
        WATER("#1B5E9E", "#86BCF0"),
        WATER_TINT("#D8E7F5", "#16304A"),
        STEAM("#86366F", "#DFA3D2"),
        STEAM_TINT("#F3E0ED", "#3E2239"),
        DRAIN("#625E38", "#C4BE8C"),
        DRAIN_TINT("#ECEADA", "#34321F"),
        CURRENT("#94470F", "#EBA56B"),
        CURRENT_TINT("#F7E5D6", "#412A1A"),
        SENSING("#46545E", "#AAB8C1"),
        SENSING_TINT("#E2E8EB", "#28333B"),
        OK("#24663B", "#8FD0A0"),
        OK_TINT("#DCEFE1", "#1A3A25"),
        CARE("#7A5000", "#EBC065"),
        CARE_TINT("#FBEBC8", "#3C2F10"),
        DANGER("#A1261B", "#FF9C8F"),
        DANGER_TINT("#FBE3DF", "#48201B");

        private final String light;
        private final String dark;

        Token(String light, String dark) {
            this.light = light;
            this.dark = dark;
        }
    }

    public String of(Token token) {
        return this == LIGHT ? token.light : token.dark;
    }
}
