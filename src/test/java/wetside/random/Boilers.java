package wetside.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Boilers with what is screwed into them, how they are heated, and the groups that hang on them. */
final class Boilers {
    private final Draft draft;
    private final Rails rails;
    private final Water water;
    final List<String> ids = new ArrayList<>();

    Boilers(Draft draft, Rails rails, Water water) {
        this.draft = draft;
        this.rails = rails;
        this.water = water;
    }

    String boiler(double fill) {
        String id = draft.part(
                "boiler",
                String.format(Locale.ROOT, "volume: %.2f l", 0.3 + 2 * draft.random.nextDouble()),
                String.format(Locale.ROOT, "filled at start: %.1f %%", 100 * fill));
        ids.add(id);
        String valve = draft.part("safety valve");
        draft.fitting(id + ".relief", valve + ".in");
        draft.fitting(valve + ".out", draft.part("blow-off") + ".in");
        return id;
    }

    /** A boiler that is kept full, with a group. */
    void brew(String feed) {
        String id = boiler(0.99);
        draft.pipe(water.throughAny(feed), id + ".feed");
        heat(id);
        if (draft.chance(0.5)) {
            leverGroup(id);
        } else if (draft.chance(0.5)) {
            springGroup(id);
        } else {
            solenoidGroup(id);
        }
        if (draft.chance(0.3)) {
            draft.fitting(id + ".drain", draft.part("drain cock") + ".in");
        }
    }

    /** A boiler with steam in it, filled by a valve or by hand. */
    void steam(String feed) {
        String id = boiler(0.2 + 0.7 * draft.random.nextDouble());
        heat(id);
        if (draft.chance(0.7)) {
            String valve = draft.part("solenoid valve");
            String check = draft.part("check valve");
            draft.pipe(feed, valve + ".in");
            draft.fitting(valve + ".out", check + ".in");
            draft.pipe(check + ".out", id + ".feed");
            board(id, valve);
        } else {
            water.tapped(feed, "water tap");
            draft.fitting(id + ".filler", draft.part("filler cap") + ".boiler");
        }
        fittings(id);
    }

    private void fittings(String id) {
        water.tapped(id + ".steam", "steam tap");
        if (draft.chance(0.6)) {
            water.tapped(id + ".tap", "water tap");
        }
        if (draft.chance(0.6)) {
            String breaker = draft.part("vacuum breaker");
            draft.fitting(id + ".breaker", breaker + ".in");
            draft.fitting(breaker + ".out", draft.part("drain tube") + ".in");
        }
        if (draft.chance(0.6)) {
            draft.fitting(id + ".gauge", draft.part("pressure gauge") + ".in");
        }
        if (draft.chance(0.5)) {
            String glass = draft.part("sight glass");
            draft.fitting(id + ".glass top", glass + ".top");
            draft.fitting(id + ".glass bottom", glass + ".bottom");
        }
    }

    /** Fills by a level probe, as a board does. */
    private void board(String id, String valve) {
        String board = draft.part("control board");
        String probe = draft.part("level probe");
        draft.fitting(id + ".probe", probe + ".boiler");
        draft.wire(rails.supply() + ".plus", board + ".plus");
        draft.wire(rails.supply() + ".minus", board + ".minus");
        draft.wire(board + ".probe", probe + ".rod");
        draft.wire(board + ".probe return", rails.earth);
        draft.wire(probe + ".body", rails.earth);
        draft.wire(rails.fused(), board + ".line");
        draft.wire(board + ".fill", valve + ".a");
        draft.wire(valve + ".b", rails.neutral);
        draft.wire(board + ".tank", board + ".common");
        draft.wire(board + ".brew", board + ".common");
        water.lamp(board + ".pump");
        draft.wire(board + ".brew heat", board + ".steam heat");
    }

    /** Limit, something that regulates or nothing, element. */
    private void heat(String id) {
        String element = draft.part(
                "heating element",
                String.format(Locale.ROOT, "rated power: %d W", 500 + draft.random.nextInt(1500)),
                "legs: " + (1 + draft.random.nextInt(2)));
        draft.contact(element + ".water", id + ".water");
        draft.wire(rails.earth, element + ".earth");
        String limit = draft.part(
                "thermal limit", String.format(Locale.ROOT, "trips at: %d °C", 125 + draft.random.nextInt(40)));
        draft.contact(limit + ".face", draft.chance(0.7) ? id + ".shell" : element + ".sheath");
        draft.wire(rails.line, limit + ".1");
        String live = regulated(id, limit + ".2");
        draft.wire(live, element + ".1");
        draft.wire(element + ".2", rails.neutral);
    }

    private String regulated(String id, String live) {
        if (draft.chance(0.3)) {
            return live;
        }
        String relay = draft.part("solid-state relay");
        String controller = draft.part(
                "temperature controller",
                String.format(Locale.ROOT, "set point: %d °C", 90 + draft.random.nextInt(35)));
        String sensor = draft.part(draft.chance(0.8) ? "NTC sensor" : "Pt sensor");
        String lead = draft.part("signal lead");
        draft.contact(sensor + ".tip", id + ".water");
        draft.wire(rails.supply() + ".plus", controller + ".plus");
        draft.wire(rails.supply() + ".minus", controller + ".minus");
        draft.wire(rails.supply() + ".plus", controller + ".feed");
        draft.wire(controller + ".output", relay + ".plus");
        draft.wire(relay + ".minus", rails.supply() + ".minus");
        draft.wire(controller + ".sensor 1", lead + ".1");
        draft.wire(lead + ".2", sensor + ".1");
        draft.wire(sensor + ".2", controller + ".sensor 2");
        draft.wire(live, relay + ".load 1");
        return relay + ".load 2";
    }

    private void leverGroup(String id) {
        String group = draft.part("lever group");
        String lever = draft.part("lever");
        String arm = draft.part("microswitch");
        String jet = draft.part("jet");
        for (String way : List.of("upper", "lower")) {
            String pipe = draft.part("thermosiphon pipe");
            draft.fitting(id + "." + way, pipe + ".in");
            draft.fitting(pipe + ".out", group + "." + way);
        }
        draft.fitting(group + ".feed", jet + ".in");
        draft.fitting(jet + ".out", group + ".brew");
        draft.fitting(group + ".cup", draft.part("outlet") + ".in");
        draft.fitting(group + ".drain", draft.part("outlet") + ".in");
        draft.linkage(lever + ".brew-cam", group + ".brew-cam");
        draft.linkage(lever + ".drain-cam", group + ".drain-cam");
        draft.linkage(lever + ".tab", arm + ".cam");
        draft.wire(rails.fused(), arm + ".1");
        water.lamp(arm + ".2");
    }

    private void springGroup(String id) {
        String group = draft.part("spring lever group");
        draft.fitting(id + ".dip", group + ".feed");
        draft.fitting(group + ".cup", draft.part("outlet") + ".in");
        draft.loosely(group + ".neck", id + ".shell");
    }

    private void solenoidGroup(String id) {
        String group = draft.part("solenoid group");
        String valve = draft.part("three-way solenoid valve");
        draft.fitting(id + ".upper", valve + ".boiler");
        draft.fitting(valve + ".group", group + ".in");
        draft.fitting(valve + ".drain", draft.part("outlet") + ".in");
        draft.fitting(group + ".cup", draft.part("outlet") + ".in");
        draft.loosely(group + ".flange", id + ".shell");
        String arm = draft.part("power switch");
        draft.wire(rails.fused(), arm + ".line in");
        draft.wire(rails.neutral, arm + ".neutral in");
        draft.wire(arm + ".line out", valve + ".a");
        draft.wire(arm + ".neutral out", valve + ".b");
    }
}
