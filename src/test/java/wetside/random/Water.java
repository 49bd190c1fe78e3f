package wetside.random;

import java.util.ArrayList;
import java.util.List;
import wetside.kind.Kinds;
import wetside.machine.Declaration;
import wetside.machine.Medium;
import wetside.machine.Port;
import wetside.machine.Trait;

/** The cold side: sources, pump, what is put into lines, and where water ends. */
final class Water {
    private final Draft draft;
    private final Rails rails;

    Water(Draft draft, Rails rails) {
        this.draft = draft;
        this.rails = rails;
    }

    /** From a source to a port that gives water, under pressure or not. */
    String supply() {
        String source = draft.chance(0.4) ? selected() : draft.chance(0.5) ? tank() : mains();
        return draft.chance(0.8) ? relieved(pumped(source)) : throughAny(source);
    }

    private String tank() {
        String tank = draft.part("water tank");
        String seat = draft.part("tank seat valve");
        draft.fitting(tank + ".out", seat + ".in");
        if (draft.chance(0.5)) {
            String sensor = draft.part("reed sensor");
            draft.linkage(tank + ".float", sensor + ".magnet");
            draft.wire(rails.supply() + ".plus", sensor + ".1");
            String lamp = draft.part("signal lead");
            draft.wire(sensor + ".2", lamp + ".1");
            draft.wire(lamp + ".2", rails.supply() + ".minus");
        }
        return throughAny(seat + ".out");
    }

    private String mains() {
        String mains = draft.part("water mains");
        String cock = draft.part("mains cock");
        draft.fitting(mains + ".out", cock + ".in");
        return through("hose", cock + ".out");
    }

    private String selected() {
        String selector = draft.part("source selector");
        draft.fitting(tank(), selector + ".tank");
        draft.pipe(mains(), selector + ".mains");
        return selector + ".out";
    }

    private String pumped(String source) {
        String pump = draft.part("rotary vane pump");
        String motor = draft.part("motor");
        String coupling = draft.part("coupling");
        draft.pipe(source, pump + ".in");
        draft.linkage(motor + ".shaft", coupling + ".motor");
        draft.linkage(coupling + ".pump", pump + ".shaft");
        String arm = draft.part("microswitch");
        String lever = draft.part("lever");
        draft.linkage(lever + ".tab", arm + ".cam");
        // the cams of this lever move nothing but switches, so that a group may have its own
        for (String cam : List.of("brew-cam", "drain-cam")) {
            String more = draft.part("microswitch");
            draft.linkage(lever + "." + cam, more + ".cam");
            draft.wire(rails.fused(), more + ".1");
            lamp(more + ".2");
        }
        draft.wire(rails.fused(), arm + ".1");
        draft.wire(arm + ".2", motor + ".line");
        draft.wire(motor + ".neutral", rails.neutral);
        draft.wire(rails.earth, motor + ".earth");
        return pump + ".out";
    }

    void lamp(String live) {
        String lamp = draft.part("lamp");
        draft.wire(live, lamp + ".1");
        draft.wire(lamp + ".2", rails.neutral);
    }

    /** A way with a relief on it; nothing that shuts comes after. */
    String relieved(String from) {
        String tee = draft.part("tee");
        String valve = draft.part("over-pressure valve");
        draft.fitting(throughAny(from), tee + ".a");
        draft.fitting(tee + ".b", valve + ".in");
        draft.fitting(valve + ".out", draft.part("drain tube") + ".in");
        return tee + ".c";
    }

    /** Tees one after the other until there are so many ways on. */
    List<String> split(String from, int count) {
        List<String> ways = new ArrayList<>();
        String at = from;
        for (int k = 1; k < count; k++) {
            String tee = draft.part("tee");
            draft.fitting(at, tee + ".a");
            ways.add(tee + ".c");
            at = tee + ".b";
        }
        ways.add(at);
        return ways;
    }

    /** Through none, one or two parts that sit in a line. */
    String throughAny(String from) {
        String at = from;
        for (int k = draft.random.nextInt(3); k > 0; k--) {
            at = through(draft.any(inline()), at);
        }
        return at;
    }

    private String through(String kind, String from) {
        String part = draft.part(kind);
        if (draft.chance(0.5)) {
            draft.fitting(from, part + ".in");
        } else {
            draft.pipe(from, part + ".in");
        }
        return part + ".out";
    }

    /** Kinds that have nothing but an inlet and an outlet, and let water through both ways or one. */
    private static List<String> inline() {
        return Kinds.declarations().stream()
                .filter(Water::isInline)
                .map(Declaration::name)
                .toList();
    }

    private static boolean isInline(Declaration kind) {
        List<Port> must = kind.ports().stream().filter(p -> !p.optional()).toList();
        return must.size() == 2
                && must.stream().allMatch(p -> p.medium() == Medium.FLUID)
                && kind.port("in").isPresent()
                && kind.port("out").isPresent()
                && !kind.is(Trait.RELIEF)
                && !kind.is(Trait.CLOSED_VESSEL);
    }

    void letOut(String from) {
        draft.pipe(from, draft.part("outlet") + ".in");
    }

    /** Through a tap to a spout. */
    void tapped(String from, String kind) {
        String tap = draft.part(kind);
        draft.pipe(from, tap + ".in");
        letOut(tap + ".out");
    }

    /** Behind a tap that is shut until somebody opens it: nothing runs all day. */
    String tap(String from) {
        String tap = draft.part("water tap");
        draft.pipe(from, tap + ".in");
        return tap + ".out";
    }
}
