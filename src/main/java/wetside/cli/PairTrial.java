package wetside.cli;

import java.util.List;
import wetside.casework.Pairs;
import wetside.casework.Session;
import wetside.diagnosis.inference.PairSearch;

/** Runs pairs of causes, and says so, when single ones leave something odd. */
final class PairTrial {
    private PairTrial() {}

    static void on(Session session, Console console) {
        List<PairSearch.Pair> worth = session.pairsWorth();
        if (worth.isEmpty()) {
            return;
        }
        Pairs pairs = session.pairs();
        long before = pairs.done();
        long runs = Pairs.DRAWS * worth.stream().filter(PairSearch.Pair::run).count();
        if (runs == 0) {
            session.tryPairs(worth);
            return;
        }
        Progress progress = new Progress(console, "Running pairs of causes", () -> pairs.done() - before, runs);
        progress.start();
        try {
            session.tryPairs(worth);
        } finally {
            progress.stop();
        }
    }
}
