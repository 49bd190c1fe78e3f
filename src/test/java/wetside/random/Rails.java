package wetside.random;

/** Socket, breaker, cord, switch and earth; what is electrical hangs on what comes after them. */
final class Rails {
    final String line;
    final String neutral;
    final String earth;
    private final Draft draft;
    private String supply;

    Rails(Draft draft) {
        this.draft = draft;
        String socket = draft.part("socket");
        String breaker = draft.part("breaker");
        String cord = draft.part("power cord");
        String sw = draft.part("power switch");
        String bond = draft.part("protective conductor");
        draft.wire(socket + ".line", breaker + ".line in");
        draft.wire(socket + ".neutral", breaker + ".neutral in");
        draft.wire(breaker + ".line out", cord + ".socket line");
        draft.wire(breaker + ".neutral out", cord + ".socket neutral");
        draft.wire(socket + ".earth", cord + ".socket earth");
        draft.wire(cord + ".line", sw + ".line in");
        draft.wire(cord + ".neutral", sw + ".neutral in");
        draft.wire(cord + ".earth", bond + ".supply");
        line = sw + ".line out";
        neutral = sw + ".neutral out";
        earth = bond + ".case";
        if (draft.chance(0.7)) {
            String lamp = draft.part("lamp");
            draft.wire(line, lamp + ".1");
            draft.wire(neutral, lamp + ".2");
        }
    }

    /** The end of a fuse of its own. */
    String fused() {
        String fuse = draft.part("fuse", "rating: 10 A");
        draft.wire(line, fuse + ".1");
        return fuse + ".2";
    }

    /** Low voltage; the same for all. */
    String supply() {
        if (supply == null) {
            supply = draft.part("DC supply");
            draft.wire(fused(), supply + ".line");
            draft.wire(neutral, supply + ".neutral");
        }
        return supply;
    }
}
