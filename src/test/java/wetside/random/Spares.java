package wetside.random;

import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.machine.Declaration;
import wetside.machine.Medium;
import wetside.machine.Port;
import wetside.machine.Trait;

/**
 * Hangs a part of any kind on a machine by what its ports are called and carry: water in from a cold way, water out over a spout,
 * current behind a fuse, heat at a boiler's shell, motion from a lever of its own. No good machine, but a machine.
 */
final class Spares {
    private static final Set<String> INLETS =
            Set.of("in", "a", "mains", "tank", "cold", "feed", "boiler", "hot", "upper");
    private static final Set<String> RETURNS =
            Set.of("neutral", "minus", "2", "b", "return", "coil 2", "off", "load 2");
    private static final Set<String> METAL = Set.of("earth", "case", "body");
    /** Kinds that look into a boiler: which of its ports each of theirs is screwed to. */
    private static final Map<String, Map<String, String>> IN_BOILER = Map.of(
            "level probe",
            Map.of("boiler", "probe"),
            "sight glass",
            Map.of("top", "glass top", "bottom", "glass bottom"),
            "filler cap",
            Map.of("boiler", "filler"),
            "heat exchanger tube",
            Map.of("boiler", "tube"));

    private static final List<String> MOTIONS = List.of("tab", "brew-cam", "drain-cam");

    private final Draft draft;
    private final Rails rails;
    private final Water water;
    private final Boilers boilers;

    Spares(Draft draft, Rails rails, Water water, Boilers boilers) {
        this.draft = draft;
        this.rails = rails;
        this.water = water;
        this.boilers = boilers;
    }

    /** @param cold ways that give water; what is used is taken off */
    void hang(Declaration kind, List<String> cold) {
        if (kind.name().equals("surroundings")) {
            return;
        }
        if (kind.is(Trait.CLOSED_VESSEL) && kind.port("relief").isEmpty() && !cold.isEmpty()) {
            cold.set(0, water.relieved(cold.get(0)));
        }
        String id = draft.part(kind.name());
        boolean vessel = kind.is(Trait.CLOSED_VESSEL);
        String boiler = IN_BOILER.containsKey(kind.name()) ? boilers.boiler(0.7) : "";
        String live = kind.ports().stream().anyMatch(p -> p.medium() == Medium.CURRENT) ? live(kind, id) : "";
        int motion = 0;
        String lever = "";
        for (Port port : kind.ports()) {
            String end = id + "." + port.name();
            if (port.optional()
                    && !METAL.contains(port.name())
                    && !(vessel && port.name().equals("relief"))) {
                continue;
            }
            switch (port.medium()) {
                case FLUID -> fluid(kind, port, end, cold, boiler);
                case CURRENT ->
                    draft.wire(
                            METAL.contains(port.name())
                                    ? rails.earth
                                    : RETURNS.contains(port.name()) ? rails.neutral : live,
                            end);
                case HEAT -> draft.loosely(end, draft.any(boilers.ids) + ".shell");
                case MOTION -> {
                    if (lever.isEmpty()) {
                        lever = draft.part("lever");
                    }
                    draft.linkage(lever + "." + MOTIONS.get(motion % 3), end);
                    motion++;
                }
                default -> throw new IllegalStateException();
            }
        }
        finish(lever, motion);
    }

    /** Behind a fuse; what heats water that is shut in, behind a limit on its metal too. */
    private String live(Declaration kind, String id) {
        String fuse = rails.fused();
        String metal = kind.ports().stream()
                .filter(p -> p.medium() == Medium.HEAT)
                .map(Port::name)
                .findFirst()
                .orElse("");
        if (!kind.is(Trait.CLOSED_VESSEL) || metal.isEmpty()) {
            return fuse;
        }
        String limit = draft.part("thermal limit", "trips at: 150 °C");
        draft.contact(limit + ".face", id + "." + metal);
        draft.wire(fuse, limit + ".1");
        return limit + ".2";
    }

    private void fluid(Declaration kind, Port port, String end, List<String> cold, String boiler) {
        Map<String, String> screwed = IN_BOILER.getOrDefault(kind.name(), Map.of());
        if (screwed.containsKey(port.name())) {
            draft.fitting(boiler + "." + screwed.get(port.name()), end);
        } else if (port.name().equals("relief")) {
            String valve = draft.part("safety valve");
            draft.fitting(end, valve + ".in");
            draft.fitting(valve + ".out", draft.part("blow-off") + ".in");
        } else if (INLETS.contains(port.name()) && !cold.isEmpty()) {
            draft.pipe(kind.is(Trait.CLOSED_VESSEL) ? cold.remove(0) : water.tap(cold.remove(0)), end);
        } else if (port.name().equals("in")) {
            draft.pipe(water.tap(draft.part("water mains") + ".out"), end);
        } else {
            water.tapped(end, "water tap");
        }
    }

    /** A lever needs all its cams joined. */
    private void finish(String lever, int used) {
        for (int k = used; k < 3 && !lever.isEmpty(); k++) {
            String arm = draft.part("microswitch");
            draft.linkage(lever + "." + MOTIONS.get(k), arm + ".cam");
            draft.wire(rails.fused(), arm + ".1");
            water.lamp(arm + ".2");
        }
    }
}
