package wetside.bench;

import java.util.List;
import wetside.casework.Pairs;
import wetside.diagnosis.inference.PairSearch;

/** Pairs of causes run on the twin while people go on; what is there when it is stopped is kept. */
final class PairTrial {
    private final Pairs pairs;
    private final List<PairSearch.Pair> worth;
    private final long total;
    private final long before;
    private volatile boolean stopped;
    private volatile List<PairSearch.Pair> there = List.of();
    private volatile boolean over;

    PairTrial(Pairs pairs, List<PairSearch.Pair> worth) {
        this.pairs = pairs;
        this.worth = worth;
        total = pairs.missing(worth);
        before = pairs.done();
    }

    void run() {
        there = pairs.run(worth, () -> stopped);
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
        return worth.size();
    }

    /** Runs of the twin it takes. */
    long total() {
        return total;
    }

    long done() {
        return Math.min(total, pairs.done() - before);
    }
}
