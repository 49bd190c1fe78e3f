package wetside.casework;

import java.util.stream.IntStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;

/**
 * What a library stands on.
 *
 * @param draws  of each cause
 * @param fewest draws simulated of any cause; the others were told from those
 * @param most   the same of the cause simulated most
 * @param causes how many there are
 * @param whole  of how many every draw was simulated
 */
public record Standing(int draws, int fewest, int most, int causes, int whole) {
    public static Standing of(Library library) {
        Signatures s = library.signatures();
        int draws = Signing.drawn(library);
        int[] simulated = IntStream.range(1, s.causes()).map(s::simulated).toArray();
        return new Standing(
                draws,
                IntStream.of(simulated).min().orElse(draws),
                IntStream.of(simulated).max().orElse(draws),
                simulated.length,
                (int) IntStream.of(simulated).filter(n -> n >= draws).count());
    }

    public boolean allSimulated() {
        return fewest >= draws;
    }

    /** E.g. "128 machines for each cause, 5 to 64 of them simulated, the others told from those". */
    public String words() {
        if (allSimulated()) {
            return draws + " simulated machines for each cause";
        }
        String some = fewest == 0
                ? "told from one or two simulated"
                : (fewest == most ? fewest + "" : fewest + " to " + most)
                        + " of them simulated, the others told from those";
        return draws + " machines for each cause, " + some;
    }
}
