package wetside.bench;

import java.util.List;
import wetside.casework.Session;
import wetside.diagnosis.inference.PairSearch;

/** Pairs of causes run on the twin while people go on; what is there when it is stopped is kept. */
final class PairTrial {
    private final Session session;
    private volatile int pairs;
    private volatile long total;
    private final long before;
    private volatile boolean stopped;
    private volatile List<PairSearch.Pair> there = List.of();
    private volatile boolean over;

    /** @param session that nothing else is asked of */
    PairTrial(Session session) {
        this.session = session;
        before = session.pairs().done();
        begins(session.pairsWorth());
    }

    private void begins(List<PairSearch.Pair> round) {
        pairs = round.size();
        total = session.pairs().done() - before + session.pairs().missing(round);
    }

    void run() {
        there = session.triedPairs(() -> stopped, this::begins);
    }

    /** From now on it can be looked at. */
    void end() {
        over = true;
    }

    void stop() {
        stopped = true;
    }

    boolean isOver() {
        return over;
    }

    /** Those that can be looked at. */
    List<PairSearch.Pair> there() {
        return there;
    }

    /** Pairs it is about. */
    int pairs() {
        return pairs;
    }

    /** Runs of the twin it takes. */
    long total() {
        return total;
    }

    long done() {
        return Math.min(total, session.pairs().done() - before);
    }
}
