package wetside.casework;

import java.util.Optional;
import java.util.Set;
import wetside.diagnosis.Who;

/** What an owner whose words speak of danger is told before all else; nothing is tried with such a machine on the telephone. */
public final class Danger {
    /** Safety rule, common practice, no source: whatever is behind these words, the machine is better off. */
    private static final Set<String> DANGER = Set.of(
            "smoke", "smok", "smell", "stink", "spark", "flame", "fire", "bang", "explode", "burst", "blow", "blew",
            "melt", "breaker", "fuse", "trip", "scald");

    /** Coffee tastes of it, too. */
    private static final Set<String> BURNT = Set.of("burn", "burnt", "scorch");

    private static final Set<String> TASTE = Set.of("taste", "tast", "flavour", "flavor");

    /** Many sound machines do so while they warm up; what hisses steam scalds. */
    private static final Set<String> HISS = Set.of("hiss");

    private static final Set<String> STEAM = Set.of("steam");

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

    private Danger() {}

    /** What the owner is to do at once, in words to be said; empty where nothing speaks of danger. */
    public static Optional<String> said(String complaint) {
        Set<String> said = Heard.words(complaint);
        if (among(said, SHOCK)) {
            return Optional.of(UNTOUCHED);
        }
        boolean burnt = among(said, BURNT) && !among(said, TASTE);
        boolean blowing = among(said, HISS) && among(said, STEAM);
        return burnt || blowing || among(said, DANGER) ? Optional.of(OFF) : Optional.empty();
    }

    /** The same for whoever is at the machine: people of the trade are to look at it. */
    public static Optional<String> saidTo(Who who, String complaint) {
        return who == Who.OWNER ? said(complaint) : Optional.empty();
    }

    private static boolean among(Set<String> said, Set<String> words) {
        return said.stream().anyMatch(s -> words.stream().anyMatch(w -> Heard.alike(w, s)));
    }
}
