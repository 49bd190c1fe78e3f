package wetside.bench;

import java.util.List;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;

/**
 * What a finding goes by.
 *
 * @param today   what was found now
 * @param earlier what this very machine read when nothing was wrong with it
 * @param who     who is at the machine
 * @param rates   how often causes are in this shop
 */
record Knowledge(Observations today, Observations earlier, Who who, ShopRates rates) {
    /** The same knowledge gives the same key. */
    Object key() {
        return List.of(today.entered(), earlier.entered(), who, rates.key());
    }

    /** Whoever is at the machine, the same two causes would explain it. */
    Object whoever() {
        return List.of(today.entered(), earlier.entered(), rates.key());
    }

    /** What all begin with. */
    Knowledge nothing() {
        return new Knowledge(Observations.none(), earlier, Who.OWNER, rates);
    }
}
