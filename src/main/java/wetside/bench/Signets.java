package wetside.bench;

import wetside.shop.Entry;

/** The little pictures in the squares before the entries of a timeline, as paths in a box of twenty by twenty. */
public final class Signets {
    private static final String PEN = "M4 16l1-4 9-9 3 3-9 9zM12 5l3 3";
    private static final String TICK = "M4 10.500l4 4 8-9";
    private static final String GAUGE = "M10 3a7 7 0 1 1 0 14a7 7 0 1 1 0-14zM10 10l3-4M10 10v.01";

    private Signets() {}

    /** Of an entry, by its sort. */
    public static String of(Entry e) {
        if (e.corrects() != null) {
            return PEN;
        }
        return switch (e.sort()) {
            case "said" -> "M3 4h14v9H9l-4 4v-4H3z";
            case "state" -> "M3 10h13M11 5l5 5-5 5";
            case "assigned" -> "M10 3a3.500 3.500 0 1 1 0 7a3.500 3.500 0 1 1 0-7zM3.500 17c0-7 13-7 13 0";
            case "work" ->
                "M12 8a4.500 4.500 0 0 1 5-5l-2.500 2.500l.5 2l2 .5L19.500 5.500M12 8L4 16.500l-1.500-1.500L10.500 6.500";
            case "finding", "proof" -> TICK;
            case "part" -> "M3 6.500L10 3l7 3.500v7L10 17l-7-3.500zM3 6.500l7 3.500l7-3.500M10 10v7";
            case "reading", "answer" -> GAUGE;
            case "photo" -> "M3 6h4l1.500-2h3L13 6h4v10H3zM10 8.500a2.500 2.500 0 1 1 0 5a2.500 2.500 0 1 1 0-5z";
            case "time" -> "M10 3a7 7 0 1 1 0 14a7 7 0 1 1 0-14zM10 6v4l3 2";
            case "signed" -> PEN;
            case "yours", "ours" -> "M5 17V3h10l-2 3.500l2 3.500H5";
            default -> "M4 6h12M4 10h12M4 14h8";
        };
    }
}
