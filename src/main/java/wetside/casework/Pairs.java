package wetside.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Library;
import wetside.diagnosis.inference.PairSearch;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Machine;

/** Two causes at once, run on the twin when single ones do not explain what was found. */
public final class Pairs {
    /** Share of the faulty machines that have two causes: assumed. */
    public static final double SHARE = 0.1;
    /** Pairs run on the twin for one look. */
    public static final int MOST = 10;
    /** Draws of each. */
    public static final int DRAWS = 8;

    private final Casework casework;
    private final Map<String, float[]> known = new ConcurrentHashMap<>();
    private final AtomicLong done = new AtomicLong();

    public Pairs(Casework casework) {
        this.casework = casework;
    }

    /** Runs so far. */
    public long done() {
        return done.get();
    }

    /** Pairs that may well explain what the leading single causes leave odd. */
    public List<PairSearch.Pair> worth(Posterior singles) {
        return new PairSearch(singles, SHARE).best(MOST);
    }

    /** The library with these pairs beside the single causes. */
    public Library with(Library library, List<PairSearch.Pair> pairs) {
        List<Cause> causes = new ArrayList<>();
        float[][] rows = new float[pairs.size()][];
        for (int i = 0; i < rows.length; i++) {
            PairSearch.Pair pair = pairs.get(i);
            causes.add(pair.cause());
            float[] run = pair.run() ? known.computeIfAbsent(pair.cause().id(), id -> run(pair)) : null;
            rows[i] = PairSearch.rows(
                    library,
                    pair,
                    run == null
                            ? null
                            : Earlier.behind(library, run, casework.askings().size()));
        }
        return library.with(causes, rows);
    }

    /** Runs of the twin that these take and that have not been made. */
    public long missing(List<PairSearch.Pair> worth) {
        return (long) DRAWS
                * worth.stream()
                        .filter(p -> p.run() && !known.containsKey(p.cause().id()))
                        .count();
    }

    /** Runs those worth it one after the other, until it is stopped; gives those that can be looked at then. */
    public List<PairSearch.Pair> run(List<PairSearch.Pair> worth, BooleanSupplier stopped) {
        List<PairSearch.Pair> there = new ArrayList<>();
        for (PairSearch.Pair pair : worth) {
            String id = pair.cause().id();
            if (pair.run() && !known.containsKey(id)) {
                float[] rows = run(pair, stopped);
                if (rows == null) {
                    continue;
                }
                known.put(id, rows);
            }
            there.add(pair);
        }
        return there;
    }

    private float[] run(PairSearch.Pair pair) {
        return run(pair, () -> false);
    }

    /** Null when stopped on the way. */
    private float[] run(PairSearch.Pair pair, BooleanSupplier stopped) {
        Candidate one = casework.candidates().get(pair.one());
        Candidate other = casework.candidates().get(pair.other());
        int width = casework.askings().size();
        float[] rows = new float[DRAWS * width];
        for (int k = 0; k < DRAWS; k++) {
            if (stopped.getAsBoolean()) {
                return null;
            }
            Machine drawn = casework.draws().machine(k);
            Machine broken =
                    other.in(drawn, casework.draws().severity(other.cause().id(), k));
            System.arraycopy(casework.row(broken, one, k), 0, rows, k * width, width);
            done.incrementAndGet();
        }
        return rows;
    }
}
