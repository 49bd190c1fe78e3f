package wetside.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.casework.Asking;
import wetside.casework.Expected;
import wetside.procedure.Procedure.Hazard;

/** What is safe to tell an owner at once: that it may be normal, or what to keep away from; else nothing. */
final class SayNow {
    /** Safety rule, common practice, no source: whatever is behind these words, the machine is better off. */
    private static final Set<String> DANGER = Set.of(
            "smoke", "smok", "smell", "stink", "burn", "burnt", "spark", "flame", "fire", "bang", "explode", "burst",
            "blow", "blew", "melt", "breaker", "fuse", "trip", "scald", "hiss", "scorch");

    /** The case may be live: not even its switch is touched. */
    private static final Set<String> SHOCK = Set.of("shock", "tingle", "tingl", "electrocut", "zap");

    private static final String OFF =
            "Please switch it off and, if plug, cord and hands are dry, pull the plug; else switch its circuit off in the fuse"
                    + " box. Leave it off, leave the case shut, and keep clear of steam until somebody of ours has looked."
                    + " If it goes on smoking or burns: out of the room, and call the fire service.";

    private static final String UNTOUCHED =
            "Please touch neither the machine nor water round it, not even its switch or plug. Switch its circuit off in the"
                    + " fuse box and let nobody near it until somebody of ours or a qualified electrician has looked. Whoever"
                    + " got a shock should see a doctor.";

    /** Of the cautions of a check those that say what to do, not how to do the check. */
    private static final List<String> AWAY = List.of("switch off", "keep away", "hand away", "unplug");

    /** Share of sound machines that must answer so before it is called normal. */
    private static final double MOSTLY = 0.6;

    private SayNow() {}

    /**
     * @param meant    the signs kept, or the likeliest
     * @param expected what a sound machine answers; may be empty
     */
    static Optional<String> of(String complaint, List<Asking> meant, Map<String, Expected> expected) {
        Optional<String> stop = stop(complaint);
        if (stop.isPresent()) {
            return stop;
        }
        String normal = meant.stream()
                .flatMap(a -> normal(a, expected).stream())
                .findFirst()
                .orElse("");
        String care = meant.stream()
                .filter(a -> a.procedure().hazard() != Hazard.NONE)
                .map(a -> a.procedure().caution())
                .filter(c -> AWAY.stream().anyMatch(c.toLowerCase(Locale.ROOT)::contains))
                .findFirst()
                .orElse("");
        String both = (normal + " " + care).strip();
        return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }

    /** What an owner is to do before all else, and that nothing is tried with the machine; empty where nothing speaks of danger. */
    static Optional<String> stop(String complaint) {
        Set<String> said = Signs.words(complaint);
        return among(said, SHOCK) ? Optional.of(UNTOUCHED) : among(said, DANGER) ? Optional.of(OFF) : Optional.empty();
    }

    private static boolean among(Set<String> said, Set<String> words) {
        return said.stream().anyMatch(s -> words.stream().anyMatch(w -> Signs.alike(w, s)));
    }

    /** When a sound machine shows it too, and shows more than nothing. */
    private static Optional<String> normal(Asking a, Map<String, Expected> expected) {
        Expected e = expected.get(a.question().id());
        if (e == null || a.options().isEmpty()) {
            return Optional.empty();
        }
        List<String> more = a.options().subList(1, a.options().size());
        return e.shares().entrySet().stream()
                .filter(s -> more.contains(s.getKey()) && s.getValue() >= MOSTLY)
                .map(s -> "That may be normal. “" + a.procedure().ask() + "” On a machine that works as it should: “"
                        + s.getKey() + "”.")
                .findFirst();
    }
}
