package wetside.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wetside.casework.Asking;
import wetside.casework.Danger;
import wetside.casework.Expected;
import wetside.procedure.Procedure.Hazard;

/** What is safe to tell an owner at once: that it may be normal, or what to keep away from; else nothing. */
final class SayNow {
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
        Optional<String> stop = Danger.said(complaint);
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
