package wetside.bench;

import java.util.List;
import wetside.casework.Session;
import wetside.diagnosis.inference.Plausibility;
import wetside.machine.Wording;

/** When none explains it: the readings that are odd, to be taken again; and two causes at once, to be thought of. */
final class FaultOdd {
    private static final int LINES = 2;

    private FaultOdd() {}

    /**
     * Null when one explains all.
     *
     * @param trial pairs run or being run, null for none
     */
    static FaultView.Odd of(Session session, FaultCase about, FaultCauses causes, PairTrial trial) {
        boolean running = trial != null && !trial.isOver();
        if (session.isExplained() && !running) {
            return null;
        }
        List<FaultView.OddReading> lines = session.plausibility().odd().stream()
                .limit(LINES)
                .map(o -> odd(session, about, causes, o))
                .toList();
        boolean offer = trial == null && !session.pairsWorth().isEmpty();
        return new FaultView.Odd(
                lines,
                offer,
                running,
                words(trial, offer, session.pairsTried()),
                running ? 100 * trial.done() / Math.max(1, trial.total()) : 0);
    }

    private static FaultView.OddReading odd(
            Session session, FaultCase about, FaultCauses causes, Plausibility.Oddity odd) {
        String id = odd.observation().about();
        boolean reading = session.casework().asking(id).isPresent();
        return new FaultView.OddReading(
                Wording.capital(causes.said(odd.observation())) + " is odd beside the best of them, "
                        + session.posterior().best().words() + ".",
                id,
                reading ? about.link("step", id) : "");
    }

    private static String words(PairTrial trial, boolean offer, int tried) {
        if (trial == null) {
            return offer ? "" : "No two of the causes together promise to explain it better.";
        }
        if (!trial.isOver()) {
            return progress(trial);
        }
        return tried == 0
                ? "No two of the causes together promise to explain it better."
                : "Two causes at once were thought of as well, and do not explain it either.";
    }

    private static String progress(PairTrial trial) {
        return "Two at once: " + trial.done() + " of " + trial.total() + " runs of the twin, " + trial.pairs()
                + (trial.pairs() == 1 ? " pair" : " pairs");
    }
}
