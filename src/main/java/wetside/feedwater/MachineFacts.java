package wetside.feedwater;

import java.util.List;
import java.util.Optional;
import wetside.casework.Installed;

/**
 * What waters meet in one machine, found once by its twin and good for all of them.
 *
 * @param jet bore of the jet brewing water passes [m]; NaN where there is none
 */
public record MachineFacts(Optional<Installed> installed, List<Hot> hot, Optional<Blindness> blindness, double jet) {
    /** No machine was named. */
    public static final MachineFacts NONE = new MachineFacts(Optional.empty(), Hot.USUAL, Optional.empty(), Double.NaN);

    public static MachineFacts of(Installed installed) {
        double jet =
                installed.machine().inRole("jet").map(c -> Hot.value(c, "bore")).orElse(Double.NaN);
        return new MachineFacts(Optional.of(installed), Hot.of(installed), Blindness.of(installed), jet);
    }

    /** The vessel steam is drawn from. */
    Optional<Hot> boiler() {
        return hot.stream().filter(h -> h.steams() && h.isVessel()).findFirst();
    }

    /** Whether brewing water comes out of the boiler that makes steam. */
    boolean brewsFromBoiler() {
        return hot.stream().allMatch(Hot::steams)
                || boiler().isPresent()
                        && hot.stream()
                                .filter(h -> !h.steams())
                                .allMatch(h -> h.id().equals(boiler().get().id()));
    }
}
