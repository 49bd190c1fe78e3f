package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import wetside.casework.Pairs;
import wetside.casework.Session;
import wetside.casework.TwinFailed;

/** Runs pairs of causes, and says so, when single ones leave something odd. */
final class PairTrial {
    private PairTrial() {}

    static void on(Session session, Console console) {
        if (session.pairsWorth().isEmpty()) {
            return;
        }
        Pairs pairs = session.pairs();
        List<Progress> bars = new ArrayList<>();
        try {
            session.tryPairs(session.triedPairs(() -> false, round -> {
                bars.forEach(Progress::stop);
                long before = pairs.done();
                long missing = pairs.missing(round);
                if (missing > 0) {
                    bars.add(new Progress(console, "Running pairs of causes", () -> pairs.done() - before, missing));
                    bars.get(bars.size() - 1).start();
                }
            }));
        } catch (TwinFailed e) {
            // single causes stand as they did
            console.errors().println("Pairs of causes were not tried: " + e.getMessage() + ".");
        } finally {
            bars.forEach(Progress::stop);
        }
    }
}
